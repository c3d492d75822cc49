package org.ridewright.study;

/**
 * Two samples A and B of the unit cube, and for each coordinate i the sample AB_i, which is A with that coordinate from B. Point by point:
 * A, B, AB_1, …, AB_k.
 *
 * <p>Source: Saltelli, Annoni and others, Computer Physics Communications 181 (2010), 259–270, from memory.
 */
public final class SaltelliDesign implements Design {
    private final int k;
    private final int draws;
    private final Draws points;
    private long known = -1;
    private double[] both = new double[0];

    public SaltelliDesign(int k, int draws, long seed) {
        this.k = k;
        this.draws = draws;
        points = new Draws(Draws.Kind.SOBOL, draws, 2 * k, seed);
    }

    @Override
    public long size() {
        return (long) draws * (k + 2);
    }

    @Override
    public double[] point(long i) {
        long draw = i / (k + 2);
        int which = (int) (i % (k + 2));
        if (draw != known) {
            both = points.point(draw);
            known = draw;
        }
        double[] point = new double[k];
        for (int d = 0; d < k; d++) {
            point[d] = which == 1 || which == d + 2 ? both[k + d] : both[d];
        }
        return point;
    }
}
