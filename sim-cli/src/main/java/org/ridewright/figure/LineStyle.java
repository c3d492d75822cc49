package org.ridewright.figure;

/** How a line is broken; lengths are chosen to stay apart at printed size. */
public enum LineStyle {
    /** Unbroken. */
    SOLID,
    /** Even dashes. */
    DASH,
    /** Dots. */
    DOT,
    /** Dash, dot. */
    DASH_DOT,
    /** Long dashes, short gaps. */
    LONG_DASH;

    /**
     * Dash lengths.
     *
     * @return lengths drawn and left out in turn (pt), new array; empty for an unbroken line
     */
    float[] dashes() {
        return switch (this) {
            case SOLID -> new float[0];
            case DASH -> new float[] {3.6f, 1.8f};
            case DOT -> new float[] {1f, 1.4f};
            case DASH_DOT -> new float[] {4.6f, 1.5f, 1f, 1.5f};
            case LONG_DASH -> new float[] {8.4f, 2f};
        };
    }
}
