package org.ridewright.ride;

import java.util.List;
import org.ridewright.signal.PowerSpectrum;
import org.ridewright.signal.TransferFunction;
import org.ridewright.signal.WelchSpectra;

/**
 * Spectra along the way of vibration from the road to a place aboard.
 *
 * @param place the seat or named point
 * @param links names of what was measured, from the road up: road, wheel, body, on a sprung seat the seat, and the head of a person whose model has one
 * @param speeds spectra of the vertical speeds of these, in the same order (m/s)
 */
public record RideSpectra(String place, List<String> links, WelchSpectra speeds) {
    public RideSpectra {
        links = List.copyOf(links);
    }

    /** Power spectral density of the vertical acceleration of a link ((m/s²)²/Hz). */
    public PowerSpectrum acceleration(int link) {
        return speeds.power(link).filtered(f -> 2 * Math.PI * f);
    }

    /** Transmissibility and coherence from one link to another one further up. */
    public TransferFunction transfer(int from, int to) {
        return speeds.transfer(from, to);
    }
}
