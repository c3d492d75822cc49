package org.ridewright.comfort;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that was measured of one person over one window, and the totals.
 *
 * @param points axes measured at each position; not empty
 */
public record PersonVibration(Map<Position, Map<Axis, AxisVibration>> points) {
    /** Copies deeply. */
    public PersonVibration {
        Map<Position, Map<Axis, AxisVibration>> copy = new EnumMap<>(Position.class);
        points.forEach((position, axes) -> copy.put(position, Collections.unmodifiableMap(new EnumMap<>(axes))));
        points = Collections.unmodifiableMap(copy);
    }

    /** One axis at one position, where measured. */
    public Optional<AxisVibration> axis(Position position, Axis axis) {
        return Optional.ofNullable(points.getOrDefault(position, Map.of()).get(axis));
    }

    /** Weighted measures of all axes at a position. */
    public Map<Axis, VibrationMetrics> metrics(Position position) {
        Map<Axis, VibrationMetrics> map = new EnumMap<>(Axis.class);
        points.getOrDefault(position, Map.of()).forEach((axis, vibration) -> map.put(axis, vibration.metrics()));
        return map;
    }

    /** The same with the weightings of BS 6841. */
    public Map<Axis, VibrationMetrics> british(Position position) {
        Map<Axis, VibrationMetrics> map = new EnumMap<>(Axis.class);
        points.getOrDefault(position, Map.of()).forEach((axis, vibration) -> map.put(axis, vibration.british()));
        return map;
    }

    /**
     * Point vibration total a_v of a position (m/s²); at the seat with 1.4 on x and y where no axis of the backrest was
     * measured. Empty where nothing was measured.
     */
    public Optional<Double> pointTotal(Position position) {
        Map<Axis, Double> rms = new EnumMap<>(Axis.class);
        metrics(position).forEach((axis, m) -> rms.put(axis, m.rms()));
        if (rms.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                position == Position.SEAT && !points.containsKey(Position.BACKREST)
                        ? VibrationTotal.ofSeatWithoutBackrest(rms)
                        : VibrationTotal.ofPoint(position, rms));
    }

    /** Overall vibration total over all positions measured (m/s²). */
    public double overallTotal() {
        List<Double> totals = points.keySet().stream()
                .map(position -> pointTotal(position).orElseThrow())
                .toList();
        return VibrationTotal.overall(totals);
    }

    /** {@code {Σ (k VDV)⁴}^¼} over all axes and positions, weighted after BS 6841 (m/s^1.75). */
    public double britishDose() {
        double sum = 0;
        for (Position position : points.keySet()) {
            for (Map.Entry<Axis, VibrationMetrics> entry : british(position).entrySet()) {
                sum += Math.pow(
                        position.factor(entry.getKey()) * entry.getValue().vdv(), 4);
            }
        }
        return Math.sqrt(Math.sqrt(sum));
    }
}
