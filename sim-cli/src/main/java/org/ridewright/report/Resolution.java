package org.ridewright.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Vehicle;

/**
 * What a run can tell apart: a crude bound on the relative error of its accelerations.
 *
 * <p>{@code max(1 %, ½ √(k² + s² + m²))} with the largest stated relative tolerance of any spring rate k, of any spring's dry friction s and
 * of any mass m of the vehicle and its loads, as if all of one kind were wrong together. Accelerations go with the square root of a rate
 * over a mass, hence the half (common practice). For two vehicles, the root of the sum of the squares.
 *
 * @param relative (1)
 * @param stated how many tolerances it rests on
 */
record Resolution(double relative, int stated) {
    /** Below this a difference is not told (common practice). */
    static final double NUMERICAL = 0.01;

    /** Of one vehicle. */
    static Resolution of(Vehicle vehicle) {
        Map<String, Double> largest = new HashMap<>();
        int stated = 0;
        for (DescriptionRows.Entry entry : DescriptionRows.measures(vehicle, "")) {
            Measure m = entry.measure();
            String kind = kind(entry.path(), m.kind());
            if (!kind.isEmpty() && m.value() != 0 && m.tolerance() > 0) {
                largest.merge(kind, m.tolerance() / Math.abs(m.value()), Math::max);
                stated++;
            }
        }
        double squares = largest.values().stream().mapToDouble(r -> r * r).sum();
        return new Resolution(Math.max(NUMERICAL, Math.sqrt(squares) / 2), stated);
    }

    /** Of a comparison: once for one vehicle, together for two. */
    static Resolution ofAll(List<Vehicle> vehicles) {
        double squares = 0;
        int stated = 0;
        for (Vehicle vehicle : vehicles.stream().distinct().toList()) {
            Resolution one = of(vehicle);
            squares += one.relative() * one.relative();
            stated += one.stated();
        }
        return new Resolution(Math.sqrt(squares), stated);
    }

    private static String kind(String path, QuantityKind kind) {
        if (path.contains("friction › share of load") || path.contains("friction › constant")) {
            return "friction";
        }
        if (path.contains("elasticity") && (kind == QuantityKind.RATE || kind == QuantityKind.FORCE)) {
            return "rate";
        }
        return kind == QuantityKind.MASS ? "mass" : "";
    }

    /** Where the bound comes from, in words. */
    String words() {
        return stated == 0
                ? Numbers.percent(relative) + ", the least this program claims, as no tolerances are stated"
                : Numbers.percent(relative) + ", from " + stated + " stated tolerances";
    }
}
