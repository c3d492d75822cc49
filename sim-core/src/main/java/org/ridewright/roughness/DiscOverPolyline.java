package org.ridewright.roughness;

/**
 * Rolls a disc over heights that straight lines join.
 *
 * <p>The disc touches either a corner of the line or, where the slope σ of an edge is that of the rim, the edge itself, b = −Rσ/√(1+σ²)
 * behind its centre. Of two corners the one further on gains on the other as the wheel moves on, since the slope of a rim grows
 * along it; so the corner touched never goes back, and the search goes on from the last one. An edge is touched while the centre
 * moves by no more than the edge is long.
 */
final class DiscOverPolyline {
    private DiscOverPolyline() {}

    /** See {@link SampledWheel#path}; R in m. */
    static double[] path(double[] road, int margin, double spacing, double R) {
        int n = road.length - 2 * margin;
        int half = (int) Math.floor(R / spacing * (1 + 1e-12));
        double[] rim = new double[half + 1];
        for (int j = 0; j <= half; j++) {
            double b = Math.min(R, j * spacing);
            rim[j] = Math.sqrt(R * R - b * b) - R;
        }
        double[] path = new double[n];
        int touched = 0;
        for (int i = 0; i < n; i++) {
            int centre = i + margin;
            int first = Math.max(touched, centre - half);
            double highest = Double.NEGATIVE_INFINITY;
            for (int k = first; k <= centre + half; k++) {
                double height = road[k] + rim[Math.abs(k - centre)];
                // the furthest of equals, so that it never has to go back
                if (height >= highest) {
                    highest = height;
                    touched = k;
                }
            }
            path[i] = highest;
        }
        touchEdges(road, margin, spacing, R, path);
        return path;
    }

    private static void touchEdges(double[] road, int margin, double spacing, double R, double[] path) {
        for (int k = 0; k + 1 < road.length; k++) {
            double slope = (road[k + 1] - road[k]) / spacing;
            double secant = Math.sqrt(1 + slope * slope);
            // the centre stands that far beyond the point touched
            double ahead = -R * slope / secant / spacing;
            int i = (int) Math.ceil(k + ahead);
            if (i <= k + 1 + ahead && i >= margin && i - margin < path.length) {
                double height = road[k] + slope * spacing * (i - ahead - k) + R / secant - R;
                path[i - margin] = Math.max(path[i - margin], height);
            }
        }
    }
}
