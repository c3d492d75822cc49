package org.ridewright.roughness;

/**
 * Mean of heights that straight lines join over a window that moves along them.
 *
 * <p>The window's ends lie {@code a = (m + f) Δ} from its centre, f the fraction of an edge. Whole edges count by the trapezium rule,
 * the two cut ones by the trapezium up to the cut.
 */
final class FootprintOverPolyline {
    /** The running sum is made anew after so many steps, before round-off can gather. */
    private static final int RENEWED = 4096;

    private FootprintOverPolyline() {}

    /** See {@link SampledWheel#path}; half length a in m. */
    static double[] path(double[] road, int margin, double spacing, double a) {
        int n = road.length - 2 * margin;
        double edges = a / spacing;
        int whole = (int) Math.floor(edges);
        double cut = edges - whole;
        double[] path = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            int from = i + margin - whole;
            int to = i + margin + whole;
            if (i % RENEWED == 0) {
                sum = 0;
                for (int k = from; k < to; k++) {
                    sum += (road[k] + road[k + 1]) / 2;
                }
            } else {
                sum += (road[to - 1] + road[to] - road[from - 1] - road[from]) / 2 * (whole > 0 ? 1 : 0);
            }
            double ends = part(road[from], road[from - 1], cut) + part(road[to], road[to + 1], cut);
            path[i] = (sum + ends) / (2 * edges);
        }
        return path;
    }

    /** Area of an edge from its inner end over the fraction f of its length. */
    private static double part(double inner, double outer, double f) {
        return f * (inner + f * (outer - inner) / 2);
    }
}
