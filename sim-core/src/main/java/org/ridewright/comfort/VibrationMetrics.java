package org.ridewright.comfort;

import org.ridewright.signal.Channel;

/**
 * What ISO 2631-1 says of one axis at one point over one window. Units with m for an axis in translation, rad in rotation.
 *
 * <p>Integrals by the trapezoid rule on the samples. Peaks are those of the samples; between two samples of a sine of
 * frequency f the curve may rise above them by the factor 1/cos(πf/fs), 1.2 % at fs/20.
 *
 * @param window over which all values hold
 * @param rms a_w, root mean square of the weighted acceleration (m/s²)
 * @param mtvv MTVV, maximum transient vibration value: largest running r.m.s. of 1 s inside the window (m/s²)
 * @param vdv VDV, fourth power vibration dose value (m/s^1.75)
 * @param peak largest |a_w(t)| (m/s²)
 * @param unweightedPeak largest |a(t)| before weighting (m/s²)
 */
public record VibrationMetrics(Window window, double rms, double mtvv, double vdv, double peak, double unweightedPeak) {
    /** Above this crest factor a_w alone may not do. ISO 2631-1:1997, 6.2.1. */
    public static final double CREST_FACTOR_LIMIT = 9;

    /** Above this MTVV/a_w the further values matter. ISO 2631-1:1997, 6.3.3. */
    public static final double MTVV_RATIO_LIMIT = 1.5;

    /** Above this VDV/(a_w T^¼) the further values matter. ISO 2631-1:1997, 6.3.3. */
    public static final double VDV_RATIO_LIMIT = 1.75;

    /** eVDV/(a_w T^¼). ISO 2631-1:1997, annex B. */
    public static final double ESTIMATED_VDV_FACTOR = 1.4;

    /**
     * Weighted peak that half of alert people just feel, with Wk (m/s²); the middle half of them between 0.01 and 0.02. ISO 2631-1:1997,
     * annex C.3 (from memory).
     */
    public static final double PERCEPTION_THRESHOLD = 0.015;

    /**
     * Weights the whole channel, then takes the metrics over the window.
     *
     * @param acceleration not weighted, unit that of the axis; should begin at rest or well before the window, see
     *     {@link Weighting#apply}
     * @throws IllegalArgumentException if the unit is another, the position has no weighting for the axis, the window is
     *     not covered by the channel, or the window is shorter than 1 s
     */
    public static VibrationMetrics of(Channel acceleration, Position position, Axis axis, Window window) {
        if (!acceleration.unit().equals(axis.unit())) {
            throw new IllegalArgumentException("unit must be " + axis.unit() + " for axis " + axis + ", got "
                    + acceleration.unit() + " (channel " + acceleration.name() + ")");
        }
        Channel weighted = position.weighting(axis).apply(acceleration);
        return of(acceleration, weighted, window);
    }

    /**
     * Takes the metrics of a channel weighted before.
     *
     * @param acceleration not weighted
     * @param weighted of the same instants
     * @throws IllegalArgumentException if the window is not covered by both channels, or shorter than 1 s
     */
    public static VibrationMetrics of(Channel acceleration, Channel weighted, Window window) {
        window.requireWithin(acceleration);
        window.requireWithin(weighted);
        WeightedMeter meter = new WeightedMeter(sampling(weighted), window);
        for (int i = 0; i < weighted.size(); i++) {
            meter.accept(weighted.sample(i));
        }
        PeakHold unweighted = new PeakHold(sampling(acceleration), window);
        for (int i = 0; i < acceleration.size(); i++) {
            unweighted.accept(acceleration.sample(i));
        }
        return meter.metrics(unweighted.largest());
    }

    private static Sampling sampling(Channel channel) {
        return new Sampling(channel.start(), channel.sampleRate());
    }

    /** Peak over r.m.s. of the weighted acceleration (1); NaN where nothing moved. */
    public double crestFactor() {
        return peak / rms;
    }

    /** 1.4 a_w T^¼ (m/s^1.75), an estimate of VDV good where the crest factor is low. */
    public double estimatedVdv() {
        return ESTIMATED_VDV_FACTOR * rms * fourthRootOfLength();
    }

    /** Root mean quad {1/T ∫ a_w⁴ dt}^¼ (m/s²), the steady level that has the dose VDV. */
    public double rmq() {
        return vdv / fourthRootOfLength();
    }

    /** MTVV/a_w (1); NaN where nothing moved. */
    public double mtvvRatio() {
        return mtvv / rms;
    }

    /** VDV/(a_w T^¼) (1); NaN where nothing moved. */
    public double vdvRatio() {
        return vdv / (rms * fourthRootOfLength());
    }

    /** Whether the weighted peak is below {@link #PERCEPTION_THRESHOLD}: fewer than half of alert people would feel it. */
    public boolean isHardlyFelt() {
        return peak < PERCEPTION_THRESHOLD;
    }

    /** Whether the crest factor is above 9. */
    public boolean crestFactorExceeded() {
        return crestFactor() > CREST_FACTOR_LIMIT;
    }

    /** Whether MTVV/a_w is above 1.5: MTVV is then to be stated beside a_w. */
    public boolean mtvvRatioExceeded() {
        return mtvvRatio() > MTVV_RATIO_LIMIT;
    }

    /** Whether VDV/(a_w T^¼) is above 1.75: VDV is then to be stated beside a_w. */
    public boolean vdvRatioExceeded() {
        return vdvRatio() > VDV_RATIO_LIMIT;
    }

    private double fourthRootOfLength() {
        return Math.sqrt(Math.sqrt(window.length()));
    }
}
