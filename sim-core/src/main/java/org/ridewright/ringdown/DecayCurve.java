package org.ridewright.ringdown;

import java.util.List;

/**
 * A ring-down as {@link CurveFit} varies it: {@link FrictionOscillation}, a second viscous mode if wanted, and a straight line for what the
 * sensor's zero does meanwhile. Parameters are a choice of {@link Place}s; the others keep the values of a base.
 */
final class DecayCurve implements CurveFit.Curve {
    private static final double WIDEST = Math.log(1.6);
    private static final double MOST_DAMPING = 0.8;
    private static final double LEAST_DAMPING = -0.3;
    private static final double SOFTEST = 4;

    /** The first turn may move by this much of a phase (rad). */
    private static final double LATEST = 1.2;

    /** Places in the whole vector. */
    enum Place {
        /** ln ω, ω in rad/s. */
        LOG_OMEGA(0),
        /** ζ. */
        ZETA(1),
        /** f (m/s²). */
        FRICTION(2),
        /** First turn (s). */
        START(3),
        /** Acceleration just after it (m/s²). */
        FIRST(4),
        /** Of the straight line, at the first sample (m/s²). */
        OFFSET(5),
        /** Of the straight line (m/s³). */
        DRIFT(6),
        /** q = k/k_p. */
        SOFTNESS(7),
        /** ln ω of the second mode. */
        SECOND_LOG_OMEGA(8),
        /** ζ of the second mode. */
        SECOND_ZETA(9),
        /** Cosine part of the second mode at the first sample (m/s²). */
        SECOND_COSINE(10),
        /** Sine part (m/s²). */
        SECOND_SINE(11);

        private final int index;

        Place(int index) {
            this.index = index;
        }

        /** Place in the vector, from 0. */
        int index() {
            return index;
        }
    }

    private final double[] times;
    private final double width;
    private final List<Place> free;
    private final double[] base;

    /**
     * @param times of the samples (s), rising
     * @param width half the time over which a jump is drawn out (s)
     * @param free what is varied, in the order of the fit's parameters
     * @param base the whole vector, by the places of {@link Place}
     */
    DecayCurve(double[] times, double width, List<Place> free, double[] base) {
        this.times = times;
        this.width = width;
        this.free = List.copyOf(free);
        this.base = base.clone();
    }

    /** The base with the fit's parameters put in. */
    double[] whole(double[] parameters) {
        double[] whole = base.clone();
        for (int k = 0; k < parameters.length; k++) {
            whole[free.get(k).index()] = parameters[k];
        }
        return whole;
    }

    /** The fit's parameters of the base. */
    double[] start() {
        return free.stream().mapToDouble(place -> base[place.index()]).toArray();
    }

    List<Place> free() {
        return free;
    }

    FrictionOscillation motion(double[] parameters) {
        double[] p = whole(parameters);
        return new FrictionOscillation(
                Math.exp(p[Place.LOG_OMEGA.index()]),
                p[Place.ZETA.index()],
                p[Place.FRICTION.index()],
                p[Place.SOFTNESS.index()],
                p[Place.START.index()],
                p[Place.FIRST.index()],
                times[times.length - 1]);
    }

    double time(int i) {
        return times[i];
    }

    /** Mean interval of the samples (s). */
    double interval() {
        return (times[times.length - 1] - times[0]) / (times.length - 1);
    }

    /** The first mode alone, without the straight line. */
    double[] first(double[] parameters) {
        double[] out = new double[times.length];
        motion(parameters).accelerations(times, width, out);
        return out;
    }

    @Override
    public double[] values(double[] parameters) {
        double[] p = whole(parameters);
        double[] out = new double[times.length];
        motion(parameters).accelerations(times, width, out);
        for (int i = 0; i < times.length; i++) {
            double t = times[i] - times[0];
            out[i] += p[Place.OFFSET.index()] + p[Place.DRIFT.index()] * t + second(p, t);
        }
        return out;
    }

    private static double second(double[] p, double t) {
        double c = p[Place.SECOND_COSINE.index()];
        double s = p[Place.SECOND_SINE.index()];
        if (c == 0 && s == 0) {
            return 0;
        }
        double omega = Math.exp(p[Place.SECOND_LOG_OMEGA.index()]);
        double zeta = p[Place.SECOND_ZETA.index()];
        double d = omega * Math.sqrt(1 - zeta * zeta);
        return Math.exp(-zeta * omega * t) * (c * Math.cos(d * t) + s * Math.sin(d * t));
    }

    @Override
    public double unit(int k) {
        double size = Math.abs(base[Place.FIRST.index()]);
        double omega = Math.exp(base[Place.LOG_OMEGA.index()]);
        return switch (free.get(k)) {
            case LOG_OMEGA, ZETA, SECOND_LOG_OMEGA, SECOND_ZETA, SOFTNESS -> 1;
            case START -> 1 / omega;
            case FRICTION, FIRST, OFFSET, SECOND_COSINE, SECOND_SINE -> size;
            case DRIFT -> size * omega;
        };
    }

    @Override
    public double[] allowed(double[] parameters) {
        double[] allowed = parameters.clone();
        double first = base[Place.FIRST.index()];
        double omega = Math.exp(base[Place.LOG_OMEGA.index()]);
        for (int k = 0; k < allowed.length; k++) {
            Place place = free.get(k);
            double about = base[place.index()];
            allowed[k] = switch (place) {
                case LOG_OMEGA, SECOND_LOG_OMEGA -> within(allowed[k], about - WIDEST, about + WIDEST);
                case ZETA, SECOND_ZETA -> within(allowed[k], LEAST_DAMPING, MOST_DAMPING);
                case FRICTION -> within(allowed[k], -Math.abs(first), 2 * Math.abs(first));
                case FIRST ->
                    first > 0
                            ? within(allowed[k], 0.05 * first, 20 * first)
                            : within(allowed[k], 20 * first, 0.05 * first);
                case SOFTNESS -> within(allowed[k], 0, SOFTEST);
                case START -> within(allowed[k], about - LATEST / omega, about + LATEST / omega);
                case OFFSET, DRIFT, SECOND_COSINE, SECOND_SINE -> allowed[k];
            };
        }
        return allowed;
    }

    private static double within(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }
}
