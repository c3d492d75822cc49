package org.ridewright.figure;

/**
 * A straight reference line across the plot, through two points: straight on the scales of the panel, so that a power law is one where both
 * are logarithmic. Its label stands to the right of the plot if the line leaves it there. The axes are not stretched to hold it.
 *
 * @param x1 first point (unit of the x axis)
 * @param y1 first point (unit of the y axis)
 * @param x2 second point (unit of the x axis), not x1
 * @param y2 second point (unit of the y axis)
 * @param label a few words; may be blank
 */
public record Guide(double x1, double y1, double x2, double y2, String label) {

    /**
     * Checks the points.
     *
     * @throws IllegalArgumentException if a number is not finite or the line is upright
     */
    public Guide {
        if (!Double.isFinite(x1) || !Double.isFinite(y1) || !Double.isFinite(x2) || !Double.isFinite(y2) || x1 == x2) {
            throw new IllegalArgumentException("guide '%s' needs two points of unlike x, got (%s, %s) and (%s, %s)"
                    .formatted(label, x1, y1, x2, y2));
        }
    }

    /** Height of the line, as a part of the plot's, at a part of its width. */
    double share(Scale x, Scale y, double at) {
        double from = x.share(x1);
        double along = (at - from) / (x.share(x2) - from);
        return y.share(y1) + along * (y.share(y2) - y.share(y1));
    }
}
