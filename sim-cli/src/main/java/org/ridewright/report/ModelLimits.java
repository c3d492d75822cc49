package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.Scenario;

/** What the model of a run leaves out: what single vehicles lack, then what none ever has. */
final class ModelLimits {
    private final List<RideResult> results;
    private final List<String> limits = new ArrayList<>();

    private ModelLimits(List<RideResult> results) {
        this.results = results;
    }

    /** Items of a list, plain text. */
    static List<String> of(Scenario scenario, List<RideResult> results) {
        ModelLimits all = new ModelLimits(results);
        all.vehicles(scenario.braked());
        all.always();
        return List.copyOf(all.limits);
    }

    private void vehicles(boolean braked) {
        of(
                r -> r.model().coordinates().surge() < 0,
                braked
                        ? "surge, to and fro, held by the brake"
                        : "surge, to and fro, and the speed lost at an obstacle");
        of(r -> rolls(r) && r.model().coordinates().sway() < 0, "sway of the body across its axles");
        of(r -> !rolls(r), "whatever tells left from right, sway and roll among it");
        of(r -> !r.model().vehicle().layout().pitches(), "pitch");
        of(r -> seats(r, s -> s.seat().occupant().isEmpty()), "a person's body beyond one mass on the seat");
        of(r -> seats(r, s -> s.seat().backrest().isEmpty()), "vibration at the backrest");
    }

    private void always() {
        boolean changes = results.stream().anyMatch(r -> !r.plan().isSteady());
        limits.add(
                changes
                        ? "the pitching that goes with gaining and losing speed; the wheels keep to the plan of speeds"
                        : "changes of speed: the wheels come to everything at the steady speed stated");
        limits.add("yaw and steering, tyres sideways and sideways slip on the road");
        limits.add("bending of body and frame beyond a twist that the file states, looseness, heat and wear");
        limits.add("the width of wheels: each is a narrow disc on its own track");
    }

    /** A thing left out of those vehicles, under those of their loads, of which it can be said. */
    private void of(Predicate<RideResult> lacks, String what) {
        List<String> lacking = results.stream()
                .filter(lacks)
                .map(ModelLimits::vehicle)
                .distinct()
                .toList();
        long all = results.stream().map(ModelLimits::vehicle).distinct().count();
        if (!lacking.isEmpty()) {
            limits.add(what + (lacking.size() == all ? "" : " (" + String.join("; ", lacking) + ")"));
        }
    }

    private static String vehicle(RideResult result) {
        return result.model().vehicle().name();
    }

    private static boolean rolls(RideResult result) {
        return result.model().vehicle().layout().rolls();
    }

    private static boolean seats(RideResult result, Predicate<SeatPlace> is) {
        return result.model().seats().stream().anyMatch(is);
    }
}
