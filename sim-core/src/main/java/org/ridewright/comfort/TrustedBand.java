package org.ridewright.comfort;

import java.util.Locale;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Up to which frequency a record of one sampling rate can be trusted, and what may be missed.
 *
 * <p>The filters here are right to 0.02 % up to 0.42 of the sampling rate. Beyond 0.4 nothing is claimed: an instrument must have taken
 * it out before sampling, and what it did not take out is folded down and counted at a false frequency.
 *
 * @param sampleRate samples per second (Hz), &gt; 0
 */
public record TrustedBand(double sampleRate) {
    /** Trusted part of the sampling rate. */
    public static final double PART = 0.4;

    private static final int PANELS_A_DECADE = 8;

    /** Highest frequency that can be trusted (Hz). */
    public double upper() {
        return PART * sampleRate;
    }

    /**
     * Share of the weighted mean square that lies above {@link #upper} for an acceleration equally strong at all frequencies (1).
     * A ride on soft springs has less up there, an iron tyre on stones more.
     */
    public double missedShare(Weighting weighting) {
        double whole = square(weighting, 1e-3, 1e5);
        return upper() >= 1e5 ? 0 : square(weighting, Math.max(1e-3, upper()), 1e5) / whole;
    }

    /** For a report. */
    public String statement(Weighting weighting) {
        double missed = missedShare(weighting);
        String range = String.format(Locale.ROOT, "sampled at %.4g Hz: trusted up to %.3g Hz", sampleRate, upper());
        if (missed < 1e-3) {
            return range + ", above which " + weighting.symbol() + " lets nothing through that counts";
        }
        return String.format(
                Locale.ROOT,
                "%s; above it %s still counts motion at %.2g of its strength or less, and of an acceleration equally strong at all"
                        + " frequencies %.0f %% of the weighted mean square would be missed. Whatever was not filtered"
                        + " out before sampling is counted at a false frequency",
                range,
                weighting.symbol(),
                weighting.factor(upper()),
                100 * missed);
    }

    /** ∫ |H|² df, by Gauss's rule on panels of ln f. */
    private static double square(Weighting weighting, double from, double to) {
        int panels = Math.max(1, (int) Math.ceil(PANELS_A_DECADE * Math.log10(to / from)));
        double width = Math.log(to / from) / panels;
        double sum = 0;
        for (int p = 0; p < panels; p++) {
            double a = Math.log(from) + p * width;
            GaussIntegrator gauss = new GaussIntegratorFactory().legendre(8, a, a + width);
            sum += gauss.integrate(x -> {
                double f = Math.exp(x);
                double h = weighting.factor(f);
                return f * h * h;
            });
        }
        return sum;
    }
}
