package org.ridewright.road;

import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

/**
 * One-sided power spectral density of the height along a track, {@code G(n) = G(n₀) (n/n₀)^−w}, n₀ = 0.1 cycle/m; with a bend at n_b the
 * waviness is another beyond it, and the two lines meet there.
 *
 * <p>Source of the form: ISO 8608:2016; of the bend: Dodds and Robson 1973 (from memory).
 *
 * @param roughness G(n₀) (m³), > 0; on the line of the long waves where there is a bend beyond n₀, on that of the short waves where it lies
 *     before
 * @param waviness w up to the bend, or throughout; from 1 to 4
 * @param bend absent: one slope throughout
 * @param lowest wavenumber of the band (cycle/m), > 0
 * @param highest wavenumber of the band (cycle/m), at least twice the lowest
 * @param origin where the numbers come from; empty where the file gives them
 */
public record RoughnessSpectrum(
        Measure roughness, double waviness, Optional<Bend> bend, Measure lowest, Measure highest, String origin) {
    /** Wavenumber n₀ at which roads are compared (cycle/m). */
    public static final double REFERENCE = 0.1;

    /** Lower end of the band where none is stated: waves of 91 m. */
    public static final Measure LOWEST =
            Measure.estimated(0.011, QuantityKind.WAVENUMBER, "lowest wavenumber: 0.011 cycle/m, as roads are fitted");

    /** Upper end of the band where none is stated: waves of 0.1 m. */
    public static final Measure HIGHEST =
            Measure.estimated(10, QuantityKind.WAVENUMBER, "highest wavenumber: 10 cycle/m, top of ISO 8608's range");

    /**
     * Where the slope changes.
     *
     * @param at wavenumber (cycle/m), > 0
     * @param waviness beyond it; from 1 to 4
     */
    public record Bend(Measure at, double waviness) {}

    /** A spectrum of one slope over the usual band. */
    public static RoughnessSpectrum of(double roughness, double waviness) {
        return new RoughnessSpectrum(
                Measure.of(roughness, QuantityKind.VOLUME), waviness, Optional.empty(), LOWEST, HIGHEST, "");
    }

    /** Waviness at wavenumber n. */
    public double waviness(double n) {
        return bend.filter(b -> n > b.at().value()).map(Bend::waviness).orElse(waviness);
    }

    /** G(n) of the lines (m³), the band's ends left out of account. */
    public double density(double n) {
        double value = roughness.value() * StrictMath.pow(n / REFERENCE, -waviness(n));
        if (bend.isPresent()) {
            double at = bend.get().at().value();
            // lines that cross at the bend: the one that holds n₀ is as stated, the other is moved to meet it
            value *= StrictMath.pow(at / REFERENCE, waviness(n) - waviness(REFERENCE));
        }
        return value;
    }
}
