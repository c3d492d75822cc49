package org.ridewright.road;

import java.util.ArrayList;
import java.util.List;

/**
 * Stations one after another at distances that vary at random, {@code X_0 = begin}, {@code X_(k+1) = X_k + mean·(1 + σ ξ_k)} with normal
 * ξ_k; no distance is less than half the mean or more than one and a half. Every 256th is kept, so that any may be found again, to the
 * same bit, without walking the road from its beginning.
 */
final class Rows {
    private static final int KEPT_EVERY = 256;
    private static final double GREATEST_CHANGE = 0.5;

    private final double mean;
    private final double sigma;
    private final Noise noise;
    private final double end;
    private final List<Double> kept = new ArrayList<>();
    private long index;
    private double station;

    /** @param end no row begins beyond it (m); may be infinite */
    Rows(double begin, double end, double mean, double sigma, Noise noise) {
        this.mean = mean;
        this.sigma = sigma;
        this.noise = noise;
        this.end = end;
        this.station = begin;
        kept.add(begin);
    }

    /** Station X_k (m); k ≥ 0. */
    double at(long k) {
        if (k < index || k - index > KEPT_EVERY) {
            int from = (int) Math.min(k / KEPT_EVERY, kept.size() - 1);
            index = (long) from * KEPT_EVERY;
            station = kept.get(from);
        }
        while (index < k) {
            station += length(index);
            index++;
            if (index == (long) kept.size() * KEPT_EVERY) {
                kept.add(station);
            }
        }
        return station;
    }

    /** The last row that begins at x or before; 0 where none does. */
    long rowAt(double x) {
        double estimate = Math.max(0, (x - kept.get(0)) / mean);
        long k = Math.min(index, (long) estimate);
        while (k > 0 && at(k) > x) {
            k = Math.max(0, k - KEPT_EVERY);
        }
        while (at(k + 1) <= x) {
            k++;
        }
        return k;
    }

    /** The last station not beyond the end (m); +∞ where there is no end. */
    double last() {
        return end == Double.POSITIVE_INFINITY ? end : at(rowAt(end));
    }

    private double length(long k) {
        if (sigma == 0) {
            return mean;
        }
        double change = sigma * noise.normal(k);
        return mean * (1 + Math.max(-GREATEST_CHANGE, Math.min(GREATEST_CHANGE, change)));
    }
}
