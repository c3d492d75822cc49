package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideResult.ElementResult;
import org.ridewright.ride.RideResult.SeatResult;
import org.ridewright.ride.RideResult.WheelResult;

/** One line for each seat or named point of each ride test. */
final class ComparisonTable {
    private static final String NONE = "–";

    private ComparisonTable() {}

    static List<List<String>> rows(List<RideResult> results) {
        List<List<String>> rows = new ArrayList<>();
        for (RideResult result : results) {
            RideName name = RideName.of(result);
            for (SeatResult seat : result.seats()) {
                rows.add(row(name, result, "seat " + seat.seat(), seat.peak(), Optional.of(seat)));
            }
            for (RideResult.PointResult point : result.points()) {
                Felt felt = new Felt(point.point(), false, point.greatest(), point.least());
                rows.add(row(name, result, "point " + point.point(), felt.peak(), Optional.empty()));
            }
            if (result.seats().isEmpty() && result.points().isEmpty()) {
                rows.add(row(name, result, NONE, Double.NaN, Optional.empty()));
            }
        }
        return rows;
    }

    private static List<String> row(
            RideName name, RideResult result, String place, double peak, Optional<SeatResult> seat) {
        Optional<VibrationMetrics> vertical = seat.map(s -> s.metrics().get(Axis.Z));
        Optional<ElementResult> spring = Extremes.farthestSpring(result);
        WheelResult lightest = Extremes.lightestWheel(result);
        WheelResult longest = Extremes.longestOff(result);
        return List.of(
                name.vehicle(),
                name.load(),
                name.road(),
                name.speed(),
                place,
                Numbers.of(peak),
                metric(vertical, VibrationMetrics::mtvv),
                metric(vertical, VibrationMetrics::vdv),
                metric(vertical, VibrationMetrics::rms),
                vertical.map(m -> Numbers.of(m.window().from()) + " to "
                                + Numbers.of(m.window().to()))
                        .orElse(NONE),
                spring.map(s -> Numbers.of(1000 * Extremes.travel(s)) + " " + s.element())
                        .orElse(NONE),
                Numbers.of(Extremes.leastLoad(lightest)) + " " + lightest.wheel(),
                longest.timeOff() > 0 ? Numbers.of(longest.timeOff()) + " " + longest.wheel() : "0",
                Numbers.of(result.draught().value()),
                Numbers.of(result.energy().relativeResidual(), 2));
    }

    private static String metric(Optional<VibrationMetrics> metrics, ToDoubleFunction<VibrationMetrics> which) {
        return metrics.map(m -> Numbers.of(which.applyAsDouble(m))).orElse(NONE);
    }
}
