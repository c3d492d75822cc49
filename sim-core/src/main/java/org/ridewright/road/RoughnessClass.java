package org.ridewright.road;

/**
 * Roughness classes of roads, each four times the one before.
 *
 * <p>Source: ISO 8608:2016, annex C, geometric means.
 */
public enum RoughnessClass {
    A(16e-6),
    B(64e-6),
    C(256e-6),
    D(1024e-6),
    E(4096e-6),
    F(16384e-6),
    G(65536e-6),
    H(262144e-6);

    private final double geometricMean;

    RoughnessClass(double geometricMean) {
        this.geometricMean = geometricMean;
    }

    /** Geometric mean of the class's displacement spectrum at {@link RoughnessSpectrum#REFERENCE} (m³). */
    public double geometricMean() {
        return geometricMean;
    }
}
