package org.ridewright.ringdown;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.ringdown.DecayCurve.Place;
import org.ridewright.ringdown.DecayFit.Fitted;

/** Reads off what a fit says. */
final class Reading {
    /** A half cycle smaller than this many times the noise is not counted. */
    private static final double COUNTED = 2;

    /** Samples of a half cycle that must count for its size to be told. */
    private static final int FEWEST_SAMPLES = 3;

    private Reading() {}

    static RingDown of(ReleaseFit.Window window, Fitted fitted, DecayFit fit, List<String> remarks) {
        Estimate zeta = fitted.estimate(Place.ZETA);
        Estimate friction = fitted.estimate(Place.FRICTION);
        double noise = noise(fitted);
        double[] parameters = fitted.fit().parameters();
        FrictionOscillation motion = fitted.curve().motion(parameters);
        List<FrictionOscillation.Turn> turns = motion.turns();
        double floor = COUNTED * noise / Math.sqrt(Math.max(1, samplesPerHalf(fitted)) / 2.0);
        int half = 0;
        while (half < turns.size() - 1
                && Math.abs(turns.get(half).after()) > floor
                && turns.get(half + 1).time() <= window.times()[window.times().length - 1]) {
            half++;
        }
        double counted = turns.get(half).time() - turns.get(0).time();
        Fitted dry = fit.among(fitted.counted(), alone(fitted, Place.ZETA), without(fitted, Place.ZETA));
        Fitted viscous = fit.among(fitted.counted(), alone(fitted, Place.FRICTION), without(fitted, Place.FRICTION));
        List<String> all = new ArrayList<>(remarks);
        Remarks.add(fitted, half, all);
        return new RingDown(
                fitted.value(Place.START),
                window.times()[window.times().length - 1],
                DampingKind.of(friction, zeta),
                frequency(fitted, half),
                natural(fitted),
                zeta,
                friction,
                length(fitted),
                half,
                counted,
                Math.abs(turns.get(0).place()) / square(Math.exp(fitted.value(Place.LOG_OMEGA))),
                fitted.value(Place.FIRST),
                noise,
                fitted.samples(),
                fitted.fit().effective(),
                new RingDown.OneKind(dry.estimate(Place.FRICTION), noise(dry)),
                new RingDown.OneKind(viscous.estimate(Place.ZETA), noise(viscous)),
                fitted.varies(Place.SOFTNESS)
                        ? Optional.of(fitted.estimate(Place.SOFTNESS).notNegative())
                        : Optional.empty(),
                second(fitted),
                curve(window, fitted),
                amplitudes(fitted, half),
                all);
    }

    private static double noise(Fitted fitted) {
        return Math.sqrt(fitted.fit().sumOfSquares()
                / Math.max(1, fitted.samples() - fitted.curve().free().size()));
    }

    private static double samplesPerHalf(Fitted fitted) {
        return Math.PI
                / Math.exp(fitted.value(Place.LOG_OMEGA))
                / fitted.curve().interval();
    }

    private static List<Place> alone(Fitted fitted, Place left) {
        List<Place> free = new ArrayList<>(fitted.curve().free());
        free.remove(left);
        if (left == Place.FRICTION) {
            free.remove(Place.SOFTNESS);
        }
        return free;
    }

    /** The other kind takes over the whole decay, to begin with. */
    private static double[] without(Fitted fitted, Place left) {
        double[] base = fitted.curve().whole(fitted.fit().parameters());
        double first = Math.abs(base[Place.FIRST.index()]);
        double perHalf = 2 * base[Place.FRICTION.index()] + first * Math.PI * base[Place.ZETA.index()];
        if (left == Place.ZETA) {
            base[Place.FRICTION.index()] = fitted.varies(Place.SOFTNESS) ? base[Place.FRICTION.index()] : perHalf / 3;
            base[Place.ZETA.index()] = 0;
        } else {
            base[Place.ZETA.index()] = Math.min(0.5, Math.max(0.005, perHalf / first / Math.PI));
            base[Place.FRICTION.index()] = 0;
            base[Place.SOFTNESS.index()] = 0;
        }
        return base;
    }

    private static Estimate natural(Fitted fitted) {
        double natural = Math.exp(fitted.value(Place.LOG_OMEGA)) / (2 * Math.PI);
        return Estimate.of(
                natural,
                natural * fitted.standardError(Place.LOG_OMEGA),
                fitted.fit().quantile());
    }

    /** From turn to turn; for a rigid slider {@code ω√(1 − ζ²)/2π}. */
    private static Estimate frequency(Fitted fitted, int half) {
        if (half > 0 && fitted.varies(Place.SOFTNESS)) {
            return fitted.estimate((motion, whole) -> {
                List<FrictionOscillation.Turn> turns = motion.turns();
                int last = Math.min(half, turns.size() - 1);
                return last / (2 * (turns.get(last).time() - turns.get(0).time()));
            });
        }
        return fitted.estimate((motion, whole) -> {
            double zeta = whole[Place.ZETA.index()];
            return Math.exp(whole[Place.LOG_OMEGA.index()]) * Math.sqrt(1 - zeta * zeta) / (2 * Math.PI);
        });
    }

    /** f/ω². */
    private static Estimate length(Fitted fitted) {
        double omega = Math.exp(fitted.value(Place.LOG_OMEGA));
        double length = fitted.value(Place.FRICTION) / (omega * omega);
        double variance = variance(fitted, Place.FRICTION, 1 / (omega * omega), Place.LOG_OMEGA, -2 * length);
        return Estimate.of(length, Math.sqrt(variance), fitted.fit().quantile());
    }

    private static double variance(Fitted fitted, Place a, double slopeA, Place b, double slopeB) {
        return Math.max(
                0,
                slopeA * slopeA * fitted.covariance(a, a)
                        + 2 * slopeA * slopeB * fitted.covariance(a, b)
                        + slopeB * slopeB * fitted.covariance(b, b));
    }

    private static Optional<RingDown.SecondMode> second(Fitted fitted) {
        if (!fitted.varies(Place.SECOND_LOG_OMEGA)) {
            return Optional.empty();
        }
        double frequency = Math.exp(fitted.value(Place.SECOND_LOG_OMEGA)) / (2 * Math.PI);
        return Optional.of(new RingDown.SecondMode(
                Estimate.of(
                        frequency,
                        frequency * fitted.standardError(Place.SECOND_LOG_OMEGA),
                        fitted.fit().quantile()),
                fitted.estimate(Place.SECOND_ZETA),
                secondShare(fitted)));
    }

    static double secondShare(Fitted fitted) {
        return Math.hypot(fitted.value(Place.SECOND_COSINE), fitted.value(Place.SECOND_SINE))
                / Math.abs(fitted.value(Place.FIRST));
    }

    private static RingDown.Curve curve(ReleaseFit.Window window, Fitted fitted) {
        double[] times = window.times();
        double[] whole = fitted.curve().values(fitted.fit().parameters());
        double[] recorded = new double[times.length];
        double[] drawn = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            double line = fitted.value(Place.OFFSET) + fitted.value(Place.DRIFT) * (times[i] - times[0]);
            recorded[i] = window.values()[i] - line;
            drawn[i] = whole[i] - line;
        }
        return new RingDown.Curve(times, recorded, drawn, fitted.counted());
    }

    /** Of each half cycle, how much of its fitted shape is in the record, the second mode taken off. */
    private static List<RingDown.Amplitude> amplitudes(Fitted fitted, int half) {
        List<FrictionOscillation.Turn> turns =
                fitted.curve().motion(fitted.fit().parameters()).turns();
        double[] shape = fitted.curve().first(fitted.fit().parameters());
        double[] recorded = new double[half];
        for (int j = 0; j < half; j++) {
            recorded[j] = Math.abs(turns.get(j).after())
                    * present(
                            fitted, shape, turns.get(j).time(), turns.get(j + 1).time());
        }
        double[] straight = SizeLines.straight(recorded);
        double[] exponential = SizeLines.exponential(recorded);
        List<RingDown.Amplitude> amplitudes = new ArrayList<>();
        for (int j = 0; j < half; j++) {
            amplitudes.add(new RingDown.Amplitude(
                    turns.get(j).time(),
                    recorded[j],
                    Math.abs(turns.get(j).after()),
                    straight[j],
                    exponential[j],
                    left(fitted, j)));
        }
        return amplitudes;
    }

    private static Estimate left(Fitted fitted, int half) {
        return fitted.estimate(
                (motion, whole) -> half + 1 < motion.turns().size() ? motion.swing(half) / motion.swing(0) : 0);
    }

    private static double square(double x) {
        return x * x;
    }

    /** Share of a shape that is in the record between two instants; NaN where too few samples count. */
    private static double present(Fitted fitted, double[] shape, double from, double to) {
        double[] residuals = fitted.fit().residuals();
        double product = 0;
        double square = 0;
        int n = 0;
        for (int i = 0; i < shape.length; i++) {
            double t = fitted.curve().time(i);
            if (fitted.counted()[i] && t >= from && t < to) {
                product += shape[i] * (shape[i] + residuals[i]);
                square += shape[i] * shape[i];
                n++;
            }
        }
        return n < FEWEST_SAMPLES ? Double.NaN : product / square;
    }
}
