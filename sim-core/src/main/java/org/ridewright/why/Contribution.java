package org.ridewright.why;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.ridewright.uncertainty.Interval;

/**
 * One contribution, as a part of the number as it is now (0.2 is a fifth of it more).
 *
 * @param asWritten of the vehicle as its file has it
 * @param draws of each draw; empty where it was not worked out for draws
 */
public record Contribution(double asWritten, double[] draws) {
    /** Changes smaller than this are none (a part). */
    private static final double NOTHING = 5e-4;

    /** What can be said of its sign. */
    public enum Verdict {
        /** Below a twentieth of a per cent in nine of ten draws. */
        NOTHING,
        /** The interval lies below 0. */
        LOWERS,
        /** The interval lies above 0. */
        RAISES,
        /** The interval holds 0. */
        UNTOLD
    }

    public Contribution {
        draws = draws.clone();
    }

    @Override
    public double[] draws() {
        return draws.clone();
    }

    /** Whether there is an interval. */
    public boolean hasInterval() {
        return draws.length > 1 && Arrays.stream(draws).allMatch(Double::isFinite);
    }

    /** Where nine tenths of the draws lie. */
    public Interval interval() {
        return hasInterval() ? Interval.of(draws.clone()) : new Interval(Double.NaN, Double.NaN, Double.NaN);
    }

    /** What can be said of it; nothing where there is no interval. */
    public Verdict verdict() {
        Interval interval = interval();
        if (interval.low() > -NOTHING && interval.high() < NOTHING) {
            return Verdict.NOTHING;
        }
        return interval.high() < 0 ? Verdict.LOWERS : interval.low() > 0 ? Verdict.RAISES : Verdict.UNTOLD;
    }

    /** The share of draws in which it is larger than the other, whichever way either goes. */
    public double largerThan(Contribution other) {
        return IntStream.range(0, draws.length)
                        .filter(d -> Math.abs(draws[d]) > Math.abs(other.draws[d]))
                        .count()
                / (double) draws.length;
    }
}
