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
    public static final double NOTHING = 0.01;

    /** What can be said of its sign. */
    public enum Verdict {
        /** Within one per cent of nothing in nine of ten draws. */
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

    /**
     * Where nine tenths of draws lie: not of these, but of all further ones, which of few draws is a wider interval. With 19 draws it is from the
     * least to the largest; with fewer it falls short.
     *
     * <p>Source: Hyndman and Fan 1996, definition 6 of sample quantiles: of n draws the r-th smallest has {@code r/(n+1)} of all further ones below
     * it in the mean, whatever their distribution.
     */
    public Interval interval() {
        if (!hasInterval()) {
            return new Interval(Double.NaN, Double.NaN, Double.NaN);
        }
        return Interval.of(draws.clone());
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
