package org.ridewright.comfort;

/**
 * Everything about one axis at one point of a ride, from samples of its acceleration that come one by one; memory for about a
 * second of samples, however long the ride. The window must be known beforehand.
 *
 * <pre>
 *   AxisMeter meter = new AxisMeter(Position.SEAT, Axis.Z, new Window(3, 2000), 2000);
 *   meter.accept(a);            // once for each sample, from 0 s on
 *   AxisVibration z = meter.result();
 * </pre>
 *
 * <p>The numbers are, bit for bit, those that {@link VibrationMetrics#of} gives for the whole channel. Samples should go on
 * for {@value org.ridewright.signal.FilterStream#DELAY} beyond the window, because the filters look so far ahead; where they do not, the
 * last value counts as staying.
 */
public final class AxisMeter {
    private final Position position;
    private final Axis axis;
    private final Sampling sampling;
    private final Window window;
    private final WeightedMeter weighted;
    private final FilterFeed weighting;
    private final WeightedMeter british;
    private final FilterFeed britishWeighting;
    private final LevelMeter whole;
    /** Null where kinds of motion are not asked for. */
    private final BandMeter bands;

    private final JerkMeter jerk;
    private AxisVibration result;

    /**
     * For a run that starts from rest at 0 s.
     *
     * @param position with a weighting for the axis
     * @param window over which all is measured, at least 1 s long, not before 0 s
     * @param sampleRate samples per second (Hz), &gt; 0
     * @throws IllegalArgumentException if a bound above is broken
     */
    public AxisMeter(Position position, Axis axis, Window window, double sampleRate) {
        this(position, axis, window, sampleRate, 0, StartUp.AT_REST, true);
    }

    /**
     * @param start instant of the first sample (s), not after the window begins
     * @param startUp what the signal was before
     * @throws IllegalArgumentException as above
     */
    public AxisMeter(Position position, Axis axis, Window window, double sampleRate, double start, StartUp startUp) {
        this(position, axis, window, sampleRate, start, startUp, true);
    }

    /**
     * @param kinds whether bands and jerk are worked out too, which is three quarters of the work; otherwise these are not numbers
     * @throws IllegalArgumentException as above
     */
    public AxisMeter(
            Position position,
            Axis axis,
            Window window,
            double sampleRate,
            double start,
            StartUp startUp,
            boolean kinds) {
        this.position = position;
        this.axis = axis;
        this.window = window;
        sampling = new Sampling(start, sampleRate);
        Weighting own = position.weighting(axis);
        weighted = new WeightedMeter(sampling, window);
        weighting = new FilterFeed(own.filter().at(sampleRate), startUp, weighted::accept);
        if (own.british() == own) {
            british = null;
            britishWeighting = null;
        } else {
            british = new WeightedMeter(sampling, window);
            britishWeighting = new FilterFeed(own.british().filter().at(sampleRate), startUp, british::accept);
        }
        whole = new LevelMeter(sampling, window);
        bands = kinds ? new BandMeter(sampling, window, startUp) : null;
        jerk = kinds ? new JerkMeter(sampling, window, startUp) : null;
    }

    /**
     * Takes the next sample (m/s² or rad/s²), finite.
     *
     * @throws IllegalStateException after {@link #result}
     */
    public void accept(double sample) {
        if (result != null) {
            throw new IllegalStateException("the result was taken before");
        }
        if (!Double.isFinite(sample)) {
            throw new IllegalArgumentException(
                    "samples must be finite, got " + sample + " (position " + position + ", axis " + axis + ")");
        }
        weighting.accept(sample);
        if (britishWeighting != null) {
            britishWeighting.accept(sample);
        }
        whole.accept(sample);
        if (bands != null) {
            bands.accept(sample);
            jerk.accept(sample);
        }
    }

    /**
     * What was measured; ends the taking of samples.
     *
     * @throws IllegalStateException if the samples do not reach the end of the window
     */
    public AxisVibration result() {
        if (result == null) {
            weighting.finish();
            Level all = whole.level();
            VibrationMetrics metrics = weighted.metrics(all.peak());
            VibrationMetrics other = metrics;
            if (britishWeighting != null) {
                britishWeighting.finish();
                other = british.metrics(all.peak());
            }
            result = new AxisVibration(
                    position,
                    axis,
                    metrics,
                    other,
                    bands == null ? MotionBands.notDivided(all) : bands.bands(all),
                    jerk == null ? Jerk.NOT_MEASURED : jerk.jerk(),
                    new TrustedBand(sampling.rate()),
                    window.from() - sampling.start());
        }
        return result;
    }
}
