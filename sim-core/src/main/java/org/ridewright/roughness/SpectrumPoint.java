package org.ridewright.roughness;

/**
 * Spectrum of a road over one smoothing band.
 *
 * @param wavenumber middle of the band (cycle/m)
 * @param height Gd (m³)
 * @param degreesOfFreedom ν of the estimate
 */
public record SpectrumPoint(double wavenumber, double height, double degreesOfFreedom) {
    /** {@code Gd(n)·(n/n₀)²} (m³): Gd(n₀) of the road of waviness 2 that has this density here. */
    public double atReference() {
        double ratio = wavenumber / RoadClass.REFERENCE;
        return height * ratio * ratio;
    }
}
