package org.ridewright.road;

/**
 * Random numbers that are looked up, not drawn: each depends on the seed, a stream and a place in it alone, so that a road may be made
 * from anywhere, and is the same on every machine.
 *
 * <p>The bits are those of a counter put through the finishing steps of SplitMix64 (G. L. Steele, D. Lea and C. H. Flood 2014, constants
 * as in java.util.SplittableRandom); pairs become normal deviates by the rule of Box and Muller with StrictMath.
 */
final class Noise {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final double TO_UNIT = 0x1p-53;

    private final long key;

    /** @param stream tells apart what must not be alike under one seed */
    Noise(long seed, long stream) {
        key = mix(mix(seed + GOLDEN) ^ (stream * GOLDEN));
    }

    /** Evenly between 0 and 1, neither included. */
    double uniform(long place) {
        return ((bits(place) >>> 11) + 0.5) * TO_UNIT;
    }

    /** Standard normal. */
    double normal(long place) {
        long pair = place >> 1;
        double radius = radius(2 * pair);
        double angle = 2 * Math.PI * uniform(2 * pair + 1);
        return radius * ((place & 1) == 0 ? StrictMath.cos(angle) : StrictMath.sin(angle));
    }

    /** Standard normal deviates at places {@code first, first + 1, …}; {@code out} is overwritten. */
    void normals(long first, double[] out) {
        int i = 0;
        if ((first & 1) != 0 && out.length > 0) {
            out[i++] = normal(first);
        }
        for (; i + 1 < out.length; i += 2) {
            double radius = radius(first + i);
            double angle = 2 * Math.PI * uniform(first + i + 1);
            out[i] = radius * StrictMath.cos(angle);
            out[i + 1] = radius * StrictMath.sin(angle);
        }
        if (i < out.length) {
            out[i] = normal(first + i);
        }
    }

    private double radius(long place) {
        return Math.sqrt(-2 * StrictMath.log(uniform(place)));
    }

    private long bits(long place) {
        return mix(key + place * GOLDEN);
    }

    private static long mix(long bits) {
        long z = (bits ^ (bits >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
