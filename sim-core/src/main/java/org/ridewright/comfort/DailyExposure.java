package org.ridewright.comfort;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a day with a stated time of riding adds up to at the seat, if all of it is like the ride that was measured. For each of the axes x,
 * y, z, of which the worst counts:
 *
 * <pre>
 *   A(8) = k a_w (t/8 h)^½        VDV_day = k VDV (t/T)^¼        k = 1.4, 1.4, 1
 * </pre>
 *
 * with t the time of riding a day and T the window of the measurement.
 *
 * <p>Source: Directive 2002/44/EC, article 3 and annex B; ISO 2631-1:1997, 7.2.3 and annex B (k from memory for the directive).
 *
 * @param axes x, y and z, as far as measured; not empty
 */
public record DailyExposure(List<AxisDose> axes) {
    /** Reference duration of A(8) (s). */
    public static final double REFERENCE_DURATION = 28_800;

    private static final double DAY = 86_400;

    /** To be printed beside every such value. */
    public static final String CAUTION =
            "This sets a modelled or recorded ride beside published exposure values. It is no assessment of health and no finding that"
                    + " a vehicle or a day's work is safe: that is for local rules and for those licensed to practise"
                    + " under them, with measurements made for the purpose.";

    /**
     * A day's dose along one axis.
     *
     * @param a8 A(8) (m/s²)
     * @param vdv VDV of the day (m/s^1.75)
     */
    public record AxisDose(Axis axis, double a8, double vdv) {}

    /** @throws IllegalArgumentException if there is no axis */
    public DailyExposure {
        axes = List.copyOf(axes);
        if (axes.isEmpty()) {
            throw new IllegalArgumentException("need at least 1 of the axes x, y, z at the seat");
        }
    }

    /** k of an axis at the seat for health (1). */
    public static double factor(Axis axis) {
        return switch (axis) {
            case X, Y -> 1.4;
            case Z -> 1;
            case ROLL, PITCH, YAW ->
                throw new IllegalArgumentException("daily exposure knows the axes X, Y, Z only, got " + axis);
        };
    }

    /**
     * @param seat measures at the seat, with the weightings of {@link Position#SEAT}; rotations are left out
     * @param riding t, time of riding a day (s), above 0 and at most 24 h
     */
    public static DailyExposure of(Map<Axis, VibrationMetrics> seat, double riding) {
        if (!(riding > 0 && riding <= DAY)) {
            throw new IllegalArgumentException("riding a day must be > 0 s and ≤ " + DAY + " s, got " + riding + " s");
        }
        return new DailyExposure(seat.entrySet().stream()
                .filter(e -> e.getKey().compareTo(Axis.Z) <= 0)
                .sorted(Map.Entry.comparingByKey())
                .map(e -> dose(e.getKey(), e.getValue(), riding))
                .toList());
    }

    private static AxisDose dose(Axis axis, VibrationMetrics m, double riding) {
        double k = factor(axis);
        return new AxisDose(
                axis,
                k * m.rms() * Math.sqrt(riding / REFERENCE_DURATION),
                k * m.vdv() * Math.sqrt(Math.sqrt(riding / m.window().length())));
    }

    /** Several parts of one day together: A(8) by squares, VDV by fourth powers, axis by axis. */
    public static DailyExposure together(Collection<DailyExposure> parts) {
        Map<Axis, AxisDose> sums = new EnumMap<>(Axis.class);
        parts.stream().flatMap(p -> p.axes.stream()).forEach(d -> sums.merge(d.axis(), d, DailyExposure::plus));
        return new DailyExposure(List.copyOf(sums.values()));
    }

    private static AxisDose plus(AxisDose one, AxisDose other) {
        double fourths = Math.pow(one.vdv(), 4) + Math.pow(other.vdv(), 4);
        return new AxisDose(one.axis(), Math.hypot(one.a8(), other.a8()), Math.sqrt(Math.sqrt(fourths)));
    }

    /** A(8) of the worst axis. */
    public AxisDose worstByA8() {
        return axes.stream().max(Comparator.comparingDouble(AxisDose::a8)).orElseThrow();
    }

    /** VDV of the worst axis. */
    public AxisDose worstByVdv() {
        return axes.stream().max(Comparator.comparingDouble(AxisDose::vdv)).orElseThrow();
    }

    /** Time of such riding after which A(8) reaches a value (s), {@code 8 h (A/(k a_w))²}; may exceed a day; infinite where nothing moves. */
    public static double timeToA8(Map<Axis, VibrationMetrics> seat, ExposureThreshold threshold) {
        double unit = of(seat, REFERENCE_DURATION).worstByA8().a8();
        double ratio = threshold.eightHours() / unit;
        return REFERENCE_DURATION * ratio * ratio;
    }

    /** Time of such riding after which VDV reaches a value (s), {@code T (V/(k VDV))⁴}; as above. */
    public static double timeToVdv(Map<Axis, VibrationMetrics> seat, ExposureThreshold threshold) {
        double unit = of(seat, REFERENCE_DURATION).worstByVdv().vdv();
        return REFERENCE_DURATION * Math.pow(threshold.dose() / unit, 4);
    }
}
