package org.ridewright.roughness;

/**
 * Classes of road roughness by the displacement spectrum at n₀ = 0.1 cycle/m, waviness 2. Each is four times the one before; its limits
 * lie at half and twice its geometric mean.
 *
 * <p>Source: ISO 8608:2016, annex C; geometric means as seen in copies, limits from memory (they fit the pattern).
 */
public enum RoadClass {
    A(16e-6),
    B(64e-6),
    C(256e-6),
    D(1024e-6),
    E(4096e-6),
    F(16384e-6),
    G(65536e-6),
    H(262144e-6);

    /** Wavenumber n₀ at which roads are compared (cycle/m). */
    public static final double REFERENCE = 0.1;

    private final double geometricMean;

    RoadClass(double geometricMean) {
        this.geometricMean = geometricMean;
    }

    /** Geometric mean of Gd(n₀) (m³). */
    public double geometricMean() {
        return geometricMean;
    }

    /** Lower limit of Gd(n₀) (m³); 0 for the smoothest. */
    public double lower() {
        return this == A ? 0 : geometricMean / 2;
    }

    /** Upper limit of Gd(n₀) (m³); infinite for the roughest. */
    public double upper() {
        return this == H ? Double.POSITIVE_INFINITY : geometricMean * 2;
    }

    /** Displacement spectrum of the geometric mean at wavenumber n (cycle/m), m³. */
    public double spectrum(double n) {
        return geometricMean * (REFERENCE / n) * (REFERENCE / n);
    }

    /** The class that holds a Gd(n₀) (m³). */
    public static RoadClass of(double atReference) {
        for (RoadClass each : values()) {
            if (atReference < each.upper()) {
                return each;
            }
        }
        return H;
    }
}
