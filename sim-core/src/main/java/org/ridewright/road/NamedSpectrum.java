package org.ridewright.road;

import java.util.Locale;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

/**
 * Spectra of kinds of ground as published, {@code G(n) = C n^−N} with n in cycle/m and C in m²·(cycle/m)^(N−1).
 *
 * <p>Those "from memory" were not seen in print while this was written: take them as a beginning, not as data. Of ranges the geometric
 * mean of the two ends is taken. The unpaved road is class C, as one measured one was found to be; others lie in classes up to E.
 */
public enum NamedSpectrum {
    SMOOTH_RUNWAY("smooth runway", 4.3e-11, 3.8, Origin.WONG),
    ROUGH_RUNWAY("rough runway", 8.1e-6, 2.1, Origin.WONG),
    SMOOTH_HIGHWAY("smooth highway", 4.8e-7, 2.1, Origin.WONG),
    GRAVEL("gravel", 4.4e-6, 2.1, Origin.WONG),
    PASTURE("pasture", 3e-4, 1.6, Origin.WONG),
    PLOUGHED_FIELD("ploughed field", 6.5e-4, 1.6, Origin.WONG),
    MOTORWAY("motorway", Math.sqrt(3e-8 * 5e-7), 2.5, Origin.KAMASH_ROBSON),
    PRINCIPAL_ROAD("principal road", Math.sqrt(3e-8 * 8e-6), 2.5, Origin.KAMASH_ROBSON),
    MINOR_ROAD("minor road", Math.sqrt(5e-7 * 3e-5), 2.5, Origin.KAMASH_ROBSON),
    UNPAVED("unpaved", 256e-6 * 1e-2, 2, Origin.BARBOSA);

    private enum Origin {
        WONG("J. Y. Wong, Theory of Ground Vehicles (from memory)"),
        KAMASH_ROBSON("Kamash and Robson 1978, geometric mean of the range"),
        BARBOSA("class C, as measured on one unpaved road, R. S. Barbosa 2011, J. Transp. Eng.");

        private final String words;

        Origin(String words) {
            this.words = words;
        }
    }

    private final String word;
    private final double coefficient;
    private final double exponent;
    private final Origin origin;

    NamedSpectrum(String word, double coefficient, double exponent, Origin origin) {
        this.word = word;
        this.coefficient = coefficient;
        this.exponent = exponent;
        this.origin = origin;
    }

    /** The word as written in files. */
    public String word() {
        return word;
    }

    /** C of {@code G(n) = C n^−N}. */
    public double coefficient() {
        return coefficient;
    }

    /** N of {@code G(n) = C n^−N}. */
    public double exponent() {
        return exponent;
    }

    /** Where the numbers come from. */
    public String origin() {
        return origin.words;
    }

    /** The spectrum over a band (cycle/m). */
    public RoughnessSpectrum over(Measure lowest, Measure highest) {
        double roughness = coefficient * StrictMath.pow(RoughnessSpectrum.REFERENCE, -exponent);
        String rule = String.format(Locale.ROOT, "'%s': %.3g m³ at 0.1 cycle/m, %s", word, roughness, origin.words);
        return new RoughnessSpectrum(
                Measure.estimated(roughness, QuantityKind.VOLUME, rule),
                exponent,
                Optional.empty(),
                lowest,
                highest,
                origin.words);
    }
}
