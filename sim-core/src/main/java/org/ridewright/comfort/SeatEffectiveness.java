package org.ridewright.comfort;

import java.util.function.DoubleUnaryOperator;
import org.ridewright.signal.PowerSpectrum;

/**
 * What a seat does for the one who sits on it: vertical vibration on the seat over that on the floor beneath, both weighted as on a seat
 * (Wk). A rigid seat has 100 %; less is a gain.
 *
 * <p>The floor's measures are those of {@link Position#SEAT}, not of the feet.
 *
 * <p>Source: ISO 10326-1 (from memory); meaning: van Niekerk et al., Journal of Sound and Vibration 260 (2003) 867.
 *
 * @param floor measures of the floor under the seat, weighted by Wk
 * @param seat measures on the seat, weighted by Wk, over the same window
 */
public record SeatEffectiveness(VibrationMetrics floor, VibrationMetrics seat) {
    /** @throws IllegalArgumentException if the two windows differ */
    public SeatEffectiveness {
        if (!floor.window().equals(seat.window())) {
            throw new IllegalArgumentException(
                    "floor and seat need one window, got " + floor.window() + " and " + seat.window());
        }
    }

    /** SEAT, {@code 100 a_w(seat)/a_w(floor)} (%). */
    public double byRms() {
        return 100 * seat.rms() / floor.rms();
    }

    /** {@code 100 VDV(seat)/VDV(floor)} (%), for motion with shocks. */
    public double byVdv() {
        return 100 * seat.vdv() / floor.vdv();
    }

    /** Whether either end has a crest factor above 9, so that {@link #byVdv} is the one to state. */
    public boolean hasShocks() {
        return floor.crestFactorExceeded() || seat.crestFactorExceeded();
    }

    /** The same from spectra, {@code 100 {∫ G_ss W² df / ∫ G_ff W² df}^½} (%). */
    public static double ofSpectra(PowerSpectrum floor, PowerSpectrum seat, Weighting weighting) {
        return 100 * weighting.rms(seat) / weighting.rms(floor);
    }

    /** What a seat of this transmissibility |T(f)| would do on a floor that moves so, {@code G_ss = |T|² G_ff} (%). */
    public static double expected(PowerSpectrum floor, DoubleUnaryOperator transmissibility, Weighting weighting) {
        return ofSpectra(floor, floor.filtered(transmissibility), weighting);
    }
}
