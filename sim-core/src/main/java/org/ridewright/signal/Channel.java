package org.ridewright.signal;

import java.util.Arrays;
import java.util.Objects;

/**
 * One quantity sampled at equal intervals of time. Immutable.
 *
 * <p>Sample i belongs to the instant {@code start + i/sampleRate}.
 */
public final class Channel {
    private final String name;
    private final String unit;
    private final double sampleRate;
    private final double start;
    private final double[] samples;

    /**
     * @param name what was recorded, and where; for messages and reports
     * @param unit symbol of the samples' unit, such as m/s²
     * @param sampleRate samples per second (Hz), &gt; 0
     * @param start instant of the first sample (s)
     * @param samples at least one value, all finite; copied
     * @throws IllegalArgumentException if a bound above is broken
     */
    public Channel(String name, String unit, double sampleRate, double start, double[] samples) {
        this.name = Objects.requireNonNull(name, "name");
        this.unit = Objects.requireNonNull(unit, "unit");
        if (!(sampleRate > 0) || Double.isInfinite(sampleRate)) {
            throw new IllegalArgumentException(
                    "sampling rate must be > 0 Hz and finite, got " + sampleRate + " (channel " + name + ")");
        }
        if (!Double.isFinite(start)) {
            throw new IllegalArgumentException("start must be finite, got " + start + " s (channel " + name + ")");
        }
        if (samples.length == 0) {
            throw new IllegalArgumentException("need at least 1 sample, got 0 (channel " + name + ")");
        }
        this.sampleRate = sampleRate;
        this.start = start;
        this.samples = samples.clone();
        for (int i = 0; i < samples.length; i++) {
            if (!Double.isFinite(this.samples[i])) {
                throw new IllegalArgumentException("samples must be finite, got " + this.samples[i] + " " + unit
                        + " at " + time(i) + " s (channel " + name + ", sample " + i + ")");
            }
        }
    }

    /** The same instants with other values; {@code values} must be as many and finite. */
    public Channel with(String newName, String newUnit, double[] values) {
        if (values.length != samples.length) {
            throw new IllegalArgumentException(
                    "need " + samples.length + " samples, got " + values.length + " (channel " + newName + ")");
        }
        return new Channel(newName, newUnit, sampleRate, start, values);
    }

    public String name() {
        return name;
    }

    /** Symbol of the unit of the samples. */
    public String unit() {
        return unit;
    }

    /** Samples per second (Hz). */
    public double sampleRate() {
        return sampleRate;
    }

    /** Instant of the first sample (s). */
    public double start() {
        return start;
    }

    /** Instant of the last sample (s). */
    public double end() {
        return time(samples.length - 1);
    }

    /** Number of samples. */
    public int size() {
        return samples.length;
    }

    /** Instant of sample i (s). */
    public double time(int i) {
        return start + i / sampleRate;
    }

    /** Value of sample i. */
    public double sample(int i) {
        return samples[i];
    }

    /** All values; a copy. */
    public double[] samples() {
        return samples.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Channel c
                && name.equals(c.name)
                && unit.equals(c.unit)
                && sampleRate == c.sampleRate
                && start == c.start
                && Arrays.equals(samples, c.samples);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, unit, sampleRate, start, Arrays.hashCode(samples));
    }

    @Override
    public String toString() {
        return name + " (" + unit + "), " + samples.length + " samples at " + sampleRate + " Hz from " + start + " s";
    }
}
