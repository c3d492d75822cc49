package org.ridewright.roughness;

import org.ridewright.road.RoughnessSpectrum;

/**
 * Spectrum of a road over one smoothing band.
 *
 * @param height Gd at the middle of the band (m³)
 * @param degreesOfFreedom ν of the estimate
 */
public record SpectrumPoint(Band band, double height, double degreesOfFreedom) {
    /** Middle of the band (cycle/m). */
    public double wavenumber() {
        return band.centre();
    }

    /** {@code Gd(n)·(n/n₀)²} (m³): Gd(n₀) of the road of waviness 2 that has this density here. */
    public double atReference() {
        double ratio = wavenumber() / RoughnessSpectrum.REFERENCE;
        return height * ratio * ratio;
    }
}
