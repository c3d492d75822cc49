package org.ridewright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideResult.WheelResult;
import org.ridewright.ride.Scenario;
import org.ridewright.vehicle.Vehicle;

/**
 * Two sentences that answer, each chosen by a difference against what the run can resolve: who rides roughest, and what speed does; where
 * there is but one of either, whether a wheel leaves the ground.
 */
final class Answer {
    private Answer() {}

    /** A place in a ride test. */
    private record Reading(RideName name, RideResult result, Felt felt) {
        double peak() {
            return felt.peak();
        }

        String kind() {
            return felt.seat() ? "seat" : "point " + felt.name();
        }

        Vehicle vehicle() {
            return result.model().vehicle();
        }

        String where() {
            return felt.seat() ? "on the seat '" + felt.name() + "'" : "at '" + felt.name() + "'";
        }
    }

    /** The two sentences, plain text. */
    static List<String> sentences(Scenario scenario, List<RideResult> results) {
        List<Reading> readings = readings(results);
        return List.of(
                betweenSubjects(readings).orElseGet(() -> alone(readings)),
                betweenSpeeds(readings).orElseGet(() -> grip(results)));
    }

    private static List<Reading> readings(List<RideResult> results) {
        List<Reading> readings = new ArrayList<>();
        for (RideResult result : results) {
            RideName name = RideName.of(result);
            List<Felt> all = Felt.all(result);
            List<Felt> seats = all.stream().filter(Felt::seat).toList();
            if (!seats.isEmpty()) {
                readings.add(new Reading(name, result, Felt.worst(seats)));
            }
            all.stream().filter(f -> !f.seat()).forEach(f -> readings.add(new Reading(name, result, f)));
        }
        return readings;
    }

    private static Map<List<Object>, List<Reading>> grouped(
            List<Reading> readings, Function<Reading, List<Object>> by) {
        Map<List<Object>, List<Reading>> groups = new LinkedHashMap<>();
        readings.forEach(
                r -> groups.computeIfAbsent(by.apply(r), k -> new ArrayList<>()).add(r));
        groups.values().removeIf(g -> g.size() < 2);
        return groups;
    }

    /** Of the like places over one road at one speed: where most subjects meet, then the fastest. */
    private static Optional<String> betweenSubjects(List<Reading> readings) {
        return grouped(readings, r -> List.of(r.name().road(), r.result().speed(), r.kind())).values().stream()
                .max(Comparator.<List<Reading>>comparingInt(List::size)
                        .thenComparingDouble(g -> g.get(0).result().speed()))
                .map(Answer::subjects);
    }

    private static String subjects(List<Reading> group) {
        Reading rough =
                group.stream().max(Comparator.comparingDouble(Reading::peak)).orElseThrow();
        Reading smooth =
                group.stream().min(Comparator.comparingDouble(Reading::peak)).orElseThrow();
        Resolution resolution = Resolution.ofAll(List.of(rough.vehicle(), smooth.vehicle()));
        String over = "Over " + rough.name().road() + " at " + rough.name().speed() + ", ";
        if (!told(rough, smooth, resolution)) {
            return over
                    + "it cannot be told who rides roughest: the greatest vertical acceleration is %s m/s² in the %s and %s m/s² in the %s, a difference of %s, and the run resolves %s."
                            .formatted(
                                    Numbers.of(rough.peak()),
                                    rough.name().subject(),
                                    Numbers.of(smooth.peak()),
                                    smooth.name().subject(),
                                    Numbers.percent(difference(rough, smooth)),
                                    resolution.words());
        }
        return over
                + "of %d ride tests the roughest is that of the %s, with %s m/s² %s, and the smoothest that of the %s, with %s m/s² %s; they differ by %s of the larger, and the run resolves %s."
                        .formatted(
                                group.size(),
                                rough.name().subject(),
                                Numbers.of(rough.peak()),
                                rough.where(),
                                smooth.name().subject(),
                                Numbers.of(smooth.peak()),
                                smooth.where(),
                                Numbers.percent(difference(rough, smooth)),
                                resolution.words());
    }

    private static Optional<String> betweenSpeeds(List<Reading> readings) {
        return grouped(
                        readings,
                        r -> List.of(
                                r.result().vehicleFile(),
                                r.name().load(),
                                r.name().road(),
                                r.kind()))
                .values()
                .stream()
                .map(Answer::slowestAndFastest)
                .max(Comparator.comparingDouble(pair -> difference(pair.get(0), pair.get(1))))
                .map(pair -> speeds(pair.get(0), pair.get(1)));
    }

    private static List<Reading> slowestAndFastest(List<Reading> group) {
        Comparator<Reading> bySpeed = Comparator.comparingDouble(r -> r.result().speed());
        return List.of(
                group.stream().min(bySpeed).orElseThrow(),
                group.stream().max(bySpeed).orElseThrow());
    }

    private static String speeds(Reading slow, Reading fast) {
        Resolution resolution = Resolution.of(slow.vehicle());
        String numbers = "%s m/s² at %s and %s m/s² at %s"
                .formatted(
                        Numbers.of(slow.peak()),
                        slow.name().speed(),
                        Numbers.of(fast.peak()),
                        fast.name().speed());
        String between = "a difference of %s, and the run resolves %s."
                .formatted(Numbers.percent(difference(slow, fast)), resolution.words());
        if (!told(slow, fast, resolution)) {
            return "Whether speed makes the ride rougher cannot be told for any vehicle: it changes most in the %s, %s, %s"
                    .formatted(slow.name().subject(), numbers, between);
        }
        return "Speed matters most to the %s, which rides %s %s when it goes faster: %s, %s"
                .formatted(
                        slow.name().subject(),
                        fast.peak() > slow.peak() ? "rougher" : "smoother",
                        slow.where(),
                        numbers,
                        between);
    }

    private static boolean told(Reading a, Reading b, Resolution resolution) {
        return difference(a, b) > resolution.relative();
    }

    /** |a − b| over the larger. */
    private static double difference(Reading a, Reading b) {
        double larger = Math.max(a.peak(), b.peak());
        return larger > 0 ? Math.abs(a.peak() - b.peak()) / larger : 0;
    }

    private static String alone(List<Reading> readings) {
        if (readings.isEmpty()) {
            return "Nobody is aboard and no point is read off, so there is no acceleration to compare.";
        }
        Reading worst =
                readings.stream().max(Comparator.comparingDouble(Reading::peak)).orElseThrow();
        return "There are no two ride tests alike enough to compare; the greatest vertical acceleration is %s m/s² %s of the %s."
                .formatted(Numbers.of(worst.peak()), worst.where(), worst.name().words());
    }

    /** Whether a wheel leaves the ground, against what the run resolves of its load. */
    private static String grip(List<RideResult> results) {
        RideResult ride = results.stream()
                .min(Comparator.comparingDouble(r -> share(Extremes.lightestByShare(r))))
                .orElseThrow();
        WheelResult wheel = Extremes.lightestByShare(ride);
        Resolution resolution = Resolution.of(ride.model().vehicle());
        String where = "the " + wheel.wheel() + " of the " + RideName.of(ride).words();
        double share = share(wheel);
        if (wheel.timeOff() > 0 || share <= 0) {
            return "Wheels leave the ground: " + where + " for " + Numbers.of(wheel.timeOff()) + " s.";
        }
        String least = "%s keeps %s of its load at rest, and the run resolves %s."
                .formatted(where, Numbers.percent(share), resolution.words());
        return share > resolution.relative()
                ? "No wheel leaves the ground; the least loaded, " + least
                : "Whether a wheel leaves the ground cannot be told; " + least;
    }

    private static double share(WheelResult wheel) {
        return Extremes.leastLoad(wheel) / wheel.loadAtRest();
    }
}
