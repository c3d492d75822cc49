package org.ridewright.road;

/**
 * Roughness classes of roads, each four times the one before; the limits between them lie at half and twice their geometric means.
 *
 * <p>Source: ISO 8608:2016, annex C: geometric means; limits from memory (they fit the pattern).
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

    /** Lower limit of the class at {@link RoughnessSpectrum#REFERENCE} (m³); 0 for the smoothest. */
    public double lower() {
        return this == A ? 0 : geometricMean / 2;
    }

    /** Upper limit of the class at {@link RoughnessSpectrum#REFERENCE} (m³); infinite for the roughest. */
    public double upper() {
        return this == H ? Double.POSITIVE_INFINITY : geometricMean * 2;
    }

    /** The class that holds a displacement spectrum at {@link RoughnessSpectrum#REFERENCE} (m³). */
    public static RoughnessClass of(double atReference) {
        for (RoughnessClass each : values()) {
            if (atReference < each.upper()) {
                return each;
            }
        }
        return H;
    }
}
