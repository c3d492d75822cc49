package org.ridewright.ride;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

/**
 * How fast a vehicle goes along its way: steadily, or in legs with a smooth change of speed between them.
 *
 * @param name in the author's words; absent where the speed itself is name enough
 * @param legs at least one; the first from station 0, the others farther and farther on
 * @param changeOver distance over which each change of speed takes place, from the station at which a leg begins (m), > 0
 */
public record SpeedPlan(Optional<String> name, List<Leg> legs, Measure changeOver) {
    /** Distance over which a change of speed takes place unless stated (m). */
    public static final double USUAL_CHANGE = 10;

    private static final double ROUNDING = 1e-9;

    public SpeedPlan {
        legs = List.copyOf(legs);
    }

    /**
     * A stretch of the way.
     *
     * @param from station of the front axle at which it begins (m)
     * @param speed on it (m/s), > 0
     */
    public record Leg(Measure from, Measure speed) {}

    /** One speed (m/s) all along. */
    public static SpeedPlan steady(Measure speed) {
        return new SpeedPlan(
                Optional.empty(),
                List.of(new Leg(Measure.of(0, QuantityKind.LENGTH), speed)),
                Measure.of(USUAL_CHANGE, QuantityKind.LENGTH));
    }

    /** Whether there is only one speed. */
    public boolean isSteady() {
        return legs.size() == 1;
    }

    /** Greatest speed on any leg (m/s). */
    public double greatest() {
        return legs.stream().mapToDouble(leg -> leg.speed().value()).max().orElse(0);
    }

    /** Whether a vehicle rides alike by both, whatever they are called and in whatever units written. */
    boolean isTheSameAs(SpeedPlan other) {
        if (legs.size() != other.legs.size()) {
            return false;
        }
        boolean same = isSteady() || alike(changeOver, other.changeOver);
        for (int i = 0; i < legs.size(); i++) {
            same &= alike(legs.get(i).from(), other.legs.get(i).from());
            same &= alike(legs.get(i).speed(), other.legs.get(i).speed());
        }
        return same;
    }

    private static boolean alike(Measure one, Measure other) {
        return Math.abs(one.value() - other.value()) <= ROUNDING * Math.abs(one.value());
    }

    /** As {@link #written}, without tolerance and provenance. */
    public String title() {
        return bare(written());
    }

    /** The greatest speed as written, without tolerance and provenance. */
    public String greatestWritten() {
        return bare(legs.stream()
                .map(Leg::speed)
                .max(Comparator.comparingDouble(Measure::value))
                .orElseThrow()
                .written());
    }

    private static String bare(String written) {
        return written.replaceAll("\\s*\\(.*\\)", "").replaceAll("\\s*±.*", "").strip();
    }

    /** As the author names it, or the speed as written. */
    public String written() {
        return name.orElseGet(() -> legs.get(0).speed().written());
    }
}
