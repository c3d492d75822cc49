package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;

/**
 * A body on a front and a rear spring, in closed form: {@code m z̈ + (k_f + k_r) z + (k_r b − k_f a) θ = 0} and likewise for pitch, of which the
 * frequencies are the roots of a quadratic. Axle weights {@code m g b/l}, {@code m g a/l}; heights by how much each end sinks under a load of 75 kg
 * halfway.
 */
final class BounceAndPitch implements ForwardModel {
    private static final double WHEELBASE = 1.65;
    private static final double G = 9.80665;

    /** What may be measured, with the uncertainty of yard and stopwatch. */
    static final List<Datum> MEASURABLE = List.of(
            Datum.of("lower frequency", "Hz", 1.5, 0.03),
            Datum.of("higher frequency", "Hz", 2, 0.04),
            Datum.of("front weight", "kg", 90, 2),
            Datum.of("rear weight", "kg", 90, 2),
            Datum.of("front sinks", "mm", 13, 1),
            Datum.of("rear sinks", "mm", 11, 1));

    private final List<Unknown> unknowns = List.of(
            unknown("body.mass", 180, 25, QuantityKind.MASS),
            unknown("body.centre of mass.behind front axle", 0.8, 0.08, QuantityKind.LENGTH),
            unknown("body.pitch inertia", 90, 35, QuantityKind.INERTIA),
            unknown("front rate", 26_000, 6000, QuantityKind.RATE),
            unknown("rear rate", 32_000, 8000, QuantityKind.RATE));

    static Unknown unknown(String path, double value, double tolerance, QuantityKind kind) {
        Measure measure = new Measure(kind, value, tolerance, Provenance.ESTIMATED, "");
        return Unknown.of(new NamedValue(path, "", java.util.Optional.of(measure)));
    }

    List<Unknown> unknowns() {
        return unknowns;
    }

    @Override
    public double[] predict(double[] z) {
        double m = unknowns.get(0).spread().at(z[0]);
        double a = unknowns.get(1).spread().at(z[1]);
        double inertia = unknowns.get(2).spread().at(z[2]);
        double front = unknowns.get(3).spread().at(z[3]);
        double rear = unknowns.get(4).spread().at(z[4]);
        double b = WHEELBASE - a;
        double p = (front + rear) / m;
        double q = (rear * b - front * a) / m;
        double r = (front * a * a + rear * b * b) / inertia;
        double coupling = q * q * m / inertia;
        double half = (p + r) / 2;
        double root = Math.sqrt((p - r) * (p - r) / 4 + coupling);
        return new double[] {
            Math.sqrt(half - root) / (2 * Math.PI),
            Math.sqrt(half + root) / (2 * Math.PI),
            m * b / WHEELBASE,
            m * a / WHEELBASE,
            1000 * 37.5 * G / front,
            1000 * 37.5 * G / rear
        };
    }

    /** A true vehicle drawn from the tolerances. */
    double[] truth(Random chance) {
        return unknowns.stream().mapToDouble(u -> chance.nextGaussian()).toArray();
    }

    /** What would be measured on it. */
    List<Datum> measured(double[] truth, List<Datum> which, Random chance) {
        double[] exact = predict(truth);
        List<Datum> data = new ArrayList<>();
        for (Datum datum : which) {
            double y = exact[MEASURABLE.indexOf(datum)] + datum.uncertainty() * chance.nextGaussian();
            data.add(Datum.of(datum.label(), datum.unit(), y, datum.uncertainty()));
        }
        return data;
    }
}
