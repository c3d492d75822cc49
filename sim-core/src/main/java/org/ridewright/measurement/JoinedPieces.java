package org.ridewright.measurement;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.ridewright.comfort.AxisVibration;
import org.ridewright.comfort.Jerk;
import org.ridewright.comfort.Level;
import org.ridewright.comfort.MotionBands;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.comfort.Window;

/**
 * Measures of several pieces of one ride as one: mean squares by length, doses by their fourth powers, the largest of peaks and of running
 * means, none of which then reaches across a dropout. The joint window begins where the first does and is as long as all together.
 */
final class JoinedPieces {
    private JoinedPieces() {}

    static VibrationMetrics metrics(List<VibrationMetrics> pieces) {
        if (pieces.size() == 1) {
            return pieces.get(0);
        }
        double length = pieces.stream().mapToDouble(p -> p.window().length()).sum();
        double from = pieces.get(0).window().from();
        double fourths = pieces.stream().mapToDouble(p -> Math.pow(p.vdv(), 4)).sum();
        return new VibrationMetrics(
                new Window(from, from + length),
                rms(pieces, VibrationMetrics::rms, p -> p.window().length()),
                largest(pieces, VibrationMetrics::mtvv),
                Math.sqrt(Math.sqrt(fourths)),
                largest(pieces, VibrationMetrics::peak),
                largest(pieces, VibrationMetrics::unweightedPeak));
    }

    static AxisVibration axis(List<AxisVibration> pieces) {
        AxisVibration first = pieces.get(0);
        if (pieces.size() == 1) {
            return first;
        }
        ToDoubleFunction<AxisVibration> length = p -> p.metrics().window().length();
        return new AxisVibration(
                first.position(),
                first.axis(),
                metrics(pieces.stream().map(AxisVibration::metrics).toList()),
                metrics(pieces.stream().map(AxisVibration::british).toList()),
                new MotionBands(
                        level(
                                pieces,
                                p -> p.bands().heave().rms(),
                                p -> p.bands().heave().peak(),
                                length),
                        level(
                                pieces,
                                p -> p.bands().jolt().rms(),
                                p -> p.bands().jolt().peak(),
                                length),
                        level(
                                pieces,
                                p -> p.bands().buzz().rms(),
                                p -> p.bands().buzz().peak(),
                                length),
                        level(
                                pieces,
                                p -> p.bands().whole().rms(),
                                p -> p.bands().whole().peak(),
                                length)),
                new Jerk(
                        largest(pieces, p -> p.jerk().sampled()),
                        level(
                                pieces,
                                p -> p.jerk().felt().rms(),
                                p -> p.jerk().felt().peak(),
                                length)),
                first.trusted(),
                pieces.stream().mapToDouble(AxisVibration::leadIn).min().orElseThrow());
    }

    private static Level level(
            List<AxisVibration> pieces,
            ToDoubleFunction<AxisVibration> rms,
            ToDoubleFunction<AxisVibration> peak,
            ToDoubleFunction<AxisVibration> length) {
        return new Level(rms(pieces, rms, length), largest(pieces, peak));
    }

    private static <T> double rms(List<T> pieces, ToDoubleFunction<T> rms, ToDoubleFunction<T> length) {
        double square = 0;
        double whole = 0;
        for (T piece : pieces) {
            double value = rms.applyAsDouble(piece);
            square += value * value * length.applyAsDouble(piece);
            whole += length.applyAsDouble(piece);
        }
        return Math.sqrt(square / whole);
    }

    private static <T> double largest(List<T> pieces, ToDoubleFunction<T> value) {
        return pieces.stream().mapToDouble(value).max().orElseThrow();
    }
}
