package org.ridewright.ride;

import java.util.List;
import org.ridewright.signal.PowerSpectrum;
import org.ridewright.signal.ThirdOctaveSpectrum;
import org.ridewright.signal.TransferFunction;
import org.ridewright.signal.WelchSpectra;

/**
 * Spectra along the way of vibration from the road to a place aboard.
 *
 * @param place the seat or named point
 * @param wheel name of the wheel nearest to it
 * @param links names of what was measured, from the road up: road, wheel, body, on a sprung seat the seat, and the head of a person whose model has one
 * @param speeds spectra of the vertical speeds of these, in the same order (m/s)
 * @param felt spectrum of the vertical speed on the seat, or of the body under a rigid one, of finer lines and fewer segments: bands average
 *     over lines ((m/s)²/Hz)
 */
public record RideSpectra(String place, String wheel, List<String> links, WelchSpectra speeds, PowerSpectrum felt) {
    public RideSpectra {
        links = List.copyOf(links);
    }

    /** Power spectral density of the vertical acceleration of a link ((m/s²)²/Hz). */
    public PowerSpectrum acceleration(int link) {
        return accelerated(speeds.power(link));
    }

    /** Vertical acceleration on the seat, or of the body under a rigid one, in the bands that are resolved (m/s²). */
    public ThirdOctaveSpectrum thirdOctaves(double from, double to) {
        return ThirdOctaveSpectrum.resolved(accelerated(felt), from, to).orElseThrow();
    }

    private static PowerSpectrum accelerated(PowerSpectrum speed) {
        return speed.filtered(f -> 2 * Math.PI * f);
    }

    /** Transmissibility and coherence from one link to another one further up. */
    public TransferFunction transfer(int from, int to) {
        return speeds.transfer(from, to);
    }
}
