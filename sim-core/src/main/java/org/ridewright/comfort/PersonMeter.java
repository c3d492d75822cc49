package org.ridewright.comfort;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;

/** All axes of one person, measured together from samples that come one by one. */
public final class PersonMeter {
    private final Map<Position, Map<Axis, AxisMeter>> meters = new EnumMap<>(Position.class);

    /**
     * @param measured axes at each position, at least one, each with a weighting there
     * @param window over which all is measured
     * @param sampleRate samples per second (Hz)
     * @param start instant of the first sample (s)
     * @param startUp what the signals were before
     * @throws IllegalArgumentException as {@link AxisMeter} does, or if nothing is measured
     */
    public PersonMeter(
            Map<Position, Set<Axis>> measured, Window window, double sampleRate, double start, StartUp startUp) {
        measured.forEach((position, axes) ->
                axes.forEach(axis -> meters.computeIfAbsent(position, p -> new EnumMap<>(Axis.class))
                        .put(axis, new AxisMeter(position, axis, window, sampleRate, start, startUp))));
        if (meters.isEmpty()) {
            throw new IllegalArgumentException("need at least 1 axis to measure, got 0");
        }
    }

    /** Takes the next sample of one axis at one position (m/s² or rad/s²). */
    public void accept(Position position, Axis axis, double sample) {
        AxisMeter meter = meters.getOrDefault(position, Map.of()).get(axis);
        if (meter == null) {
            throw new IllegalArgumentException("axis " + axis + " at position " + position + " is not measured");
        }
        meter.accept(sample);
    }

    /** What was measured; ends the taking of samples. */
    public PersonVibration result() {
        Map<Position, Map<Axis, AxisVibration>> points = new EnumMap<>(Position.class);
        meters.forEach((position, axes) -> {
            Map<Axis, AxisVibration> results = new EnumMap<>(Axis.class);
            axes.forEach((axis, meter) -> results.put(axis, meter.result()));
            points.put(position, results);
        });
        return new PersonVibration(points);
    }
}
