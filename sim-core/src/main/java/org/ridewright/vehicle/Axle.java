package org.ridewright.vehicle;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * An axle, or a wheel pair in its place, with all that stands between it and the body.
 *
 * @param name unique in the vehicle
 * @param behindFrontAxle (m); the first axle is at 0
 * @param track distance between the wheels' centre planes (m), > 0; absent for a single wheel
 * @param unsprungMass whole axle with its wheels (kg), > 0; an independent wheel has half of it
 * @param rollInertia of a beam with its wheels about its centre (kg·m²); absent: estimated
 * @param rollAxisHeight where the body's roll axis passes this axle, above ground (m)
 * @param antiRollBar torsional rate between axle and body per angle of roll between them (N·m/rad)
 * @param swayRate with which it holds the body sideways at the roll axis (N/m)
 * @param swayDamping of the same (N·s/m)
 */
public record Axle(
        String name,
        AxleKind kind,
        Measure behindFrontAxle,
        Optional<Measure> track,
        Measure unsprungMass,
        Optional<Measure> rollInertia,
        Optional<Measure> rollAxisHeight,
        Wheel wheel,
        List<Spring> springs,
        List<Damper> dampers,
        Optional<Measure> antiRollBar,
        Optional<Measure> swayRate,
        Optional<Measure> swayDamping) {
    public Axle {
        springs = List.copyOf(springs);
        dampers = List.copyOf(dampers);
    }

    /** The name with the word axle, once. */
    public String title() {
        return title(name);
    }

    /** A name of an axle with the word axle, once. */
    public static String title(String name) {
        return name.toLowerCase(Locale.ROOT).endsWith("axle") ? name : name + " axle";
    }

    /** ISO 8855 longitudinal coordinate (m). */
    public double x() {
        return -behindFrontAxle.value();
    }
}
