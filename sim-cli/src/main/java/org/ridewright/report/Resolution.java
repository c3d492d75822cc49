package org.ridewright.report;

import java.util.List;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Vehicle;

/**
 * What a run can tell apart: a crude bound on the relative error of its accelerations.
 *
 * <p>{@code max(1 %, ½ √Σ (tolerance/value)²)} over the stated tolerances of spring rates, friction and masses of a vehicle. Accelerations go
 * with the square root of a rate over a mass, hence the half; that every input counts in full makes it wide. For two vehicles, the root of
 * the sum of the squares.
 *
 * @param relative (1)
 * @param stated how many tolerances it rests on
 */
record Resolution(double relative, int stated) {
    /** Below this a difference is not told (common practice). */
    static final double NUMERICAL = 0.01;

    /** Of one vehicle. */
    static Resolution of(Vehicle vehicle) {
        double squares = 0;
        int stated = 0;
        for (DescriptionRows.Entry entry : DescriptionRows.measures(vehicle, "vehicle")) {
            Measure m = entry.measure();
            if (counts(entry.path(), m.kind()) && m.value() != 0 && m.tolerance() > 0) {
                squares += Math.pow(m.tolerance() / m.value(), 2);
                stated++;
            }
        }
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

    private static boolean counts(String path, QuantityKind kind) {
        return switch (kind) {
            case MASS, RATE -> true;
            default -> path.contains("friction");
        };
    }

    /** Where the bound comes from, in words. */
    String words() {
        return stated == 0
                ? Numbers.percent(relative) + ", the least this program claims, as no tolerances are stated"
                : Numbers.percent(relative) + ", from " + stated + " stated tolerances";
    }
}
