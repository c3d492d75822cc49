package org.ridewright.figure;

import java.awt.Color;

/**
 * Line colours in steps of lightness, so that they stay apart in grey and for readers who see few hues: the order is from
 * dark to light, neighbours at least ten steps of CIE L* apart.
 */
public enum Tone {
    /** Near black. */
    INK(0x161616),
    /** Dark blue. */
    NAVY(0x12438C),
    /** Brick red. */
    RUST(0xB8461A),
    /** Blue-green. */
    TEAL(0x2A978F),
    /** Warm yellow. */
    AMBER(0xDFA52B);

    private final Color colour;

    Tone(int rgb) {
        colour = new Color(rgb);
    }

    /**
     * Printed colour.
     *
     * @return the sRGB colour
     */
    Color colour() {
        return colour;
    }

    /**
     * The colour thinned with white.
     *
     * @param share of the colour, 0 to 1
     * @return the sRGB colour
     */
    Color tint(double share) {
        return new Color(
                thinned(colour.getRed(), share), thinned(colour.getGreen(), share), thinned(colour.getBlue(), share));
    }

    private static int thinned(int part, double share) {
        return (int) Math.round(255 + (part - 255) * share);
    }
}
