package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.measurement.LogOptions;
import org.ridewright.measurement.Piece;
import org.ridewright.measurement.RecordedRide;
import org.ridewright.measurement.Recording;
import org.ridewright.signal.AnalogueFilter;
import org.ridewright.signal.Butterworth;
import org.ridewright.signal.Channel;

/**
 * The stretch of a log that a simulated ride is held against: vertical acceleration below {@link #BAND}, at a rate that loses none of it.
 *
 * @param times of the samples, from the beginning of the log (s)
 * @param values (m/s²)
 * @param start instant of the log at which the simulated ride began, by the best agreement before the fit (s)
 * @param agreement correlation with the simulated ride there, −1 to 1
 */
record AlignedLog(double[] times, double[] values, double start, double agreement) {
    /** Heave, pitch and what a seat makes of them lie below; above it logs hold what a phone's lodging and a horse's hooves add (Hz). */
    static final double BAND = 8;
    /** Samples per second of what is compared (Hz). */
    static final double RATE = 32;
    /** Of the simulated ride (Hz). */
    static final double RATE_OF_RIDE = 128;

    private static final AnalogueFilter LOW_PASS = new AnalogueFilter(1, Butterworth.lowPass(4, BAND));
    /** Steps in which the best place is looked for (s). */
    private static final double SEARCH = 0.01;

    /** Below the band; the same filter for log and ride, so that both are as late. */
    static Channel filtered(Channel channel) {
        return LOW_PASS.at(channel.sampleRate()).apply(channel);
    }

    /**
     * The stretch of a recording that agrees best with a ride.
     *
     * @param ride vertical acceleration of the simulated ride, filtered
     * @param from first instant of the ride that counts (s)
     * @param to last one (s)
     * @throws CalibrationException if no unbroken stretch of the log is as long
     */
    static AlignedLog of(Recording recording, LogOptions options, Channel ride, double from, double to, String label) {
        LogOptions wholeLog = new LogOptions(
                options.position(),
                options.forward(),
                options.gravity(),
                options.from(),
                options.to(),
                options.gapBound(),
                0);
        List<Piece> pieces = RecordedRide.of(recording, wholeLog).pieces();
        AlignedLog best = null;
        for (Piece piece : pieces) {
            Channel log = filtered(piece.vertical());
            double first = Math.max(log.start(), piece.window().from());
            double last = Math.min(log.end(), piece.window().to());
            for (double begin = first; begin + (to - from) <= last; begin += SEARCH) {
                AlignedLog here = at(log, ride, begin - from, from, to);
                if (best == null || here.agreement > best.agreement) {
                    best = here;
                }
            }
        }
        if (best == null) {
            throw new CalibrationException(String.format(
                    java.util.Locale.ROOT,
                    "%s: the ride lasts %.1f s from shortly before the obstacle until it has died away, and no unbroken stretch of the "
                            + "log is as long; record from before the obstacle on, or mark it 'unfit'",
                    label,
                    to - from));
        }
        return best;
    }

    private static AlignedLog at(Channel log, Channel ride, double start, double from, double to) {
        int count = (int) Math.floor((to - from) * RATE) + 1;
        double[] times = new double[count];
        double[] values = new double[count];
        double[] ridden = new double[count];
        for (int i = 0; i < count; i++) {
            times[i] = start + from + i / RATE;
            values[i] = value(log, times[i]);
            ridden[i] = value(ride, times[i] - start);
        }
        return new AlignedLog(times, values, start, correlation(values, ridden));
    }

    /** Ride at the log's instants, had it begun at an instant of the log (s). */
    double[] ridden(Channel ride, double began) {
        double[] ridden = new double[times.length];
        for (int i = 0; i < ridden.length; i++) {
            ridden[i] = value(ride, times[i] - began);
        }
        return ridden;
    }

    /** By a cubic through four samples; outside the channel the nearest sample. */
    static double value(Channel channel, double time) {
        double at = (time - channel.start()) * channel.sampleRate();
        int i = (int) Math.floor(at);
        double s = at - i;
        double a = sample(channel, i - 1);
        double b = sample(channel, i);
        double c = sample(channel, i + 1);
        double d = sample(channel, i + 2);
        return b + s / 2 * (c - a + s * (2 * a - 5 * b + 4 * c - d + s * (3 * (b - c) + d - a)));
    }

    private static double sample(Channel channel, int i) {
        return channel.sample(Math.max(0, Math.min(channel.size() - 1, i)));
    }

    private static double correlation(double[] a, double[] b) {
        double meanA = mean(a);
        double meanB = mean(b);
        double ab = 0;
        double aa = 0;
        double bb = 0;
        for (int i = 0; i < a.length; i++) {
            ab += (a[i] - meanA) * (b[i] - meanB);
            aa += (a[i] - meanA) * (a[i] - meanA);
            bb += (b[i] - meanB) * (b[i] - meanB);
        }
        return aa > 0 && bb > 0 ? ab / Math.sqrt(aa * bb) : 0;
    }

    private static double mean(double[] x) {
        return java.util.Arrays.stream(x).average().orElse(0);
    }

    /**
     * What the circumstances add without being simulated: a constant, and a horse's steps at their frequency and its double.
     *
     * @param stepFrequency (Hz); NaN without a horse
     * @return one row to each shape, one column to each sample
     */
    List<double[]> additions(double stepFrequency) {
        List<double[]> shapes = new ArrayList<>();
        double[] constant = new double[times.length];
        java.util.Arrays.fill(constant, 1);
        shapes.add(constant);
        for (int harmonic = 1; harmonic <= 2 && !Double.isNaN(stepFrequency); harmonic++) {
            double[] sine = new double[times.length];
            double[] cosine = new double[times.length];
            for (int i = 0; i < times.length; i++) {
                double phase = 2 * Math.PI * harmonic * stepFrequency * (times[i] - times[0]);
                sine[i] = Math.sin(phase);
                cosine[i] = Math.cos(phase);
            }
            shapes.add(sine);
            shapes.add(cosine);
        }
        return shapes;
    }
}
