package org.ridewright.study;

/**
 * Ways through the unit cube on which one coordinate after another makes one jump, in an order of chance: k + 1 points each.
 *
 * <p>A coordinate takes one of p levels at the middles of equal strips, {@code (l + ½)/p}, since what is spread normally has no ends; it jumps by p/2
 * of them, half of the range, up or down, so that every level is taken equally often.
 *
 * <p>Source: Morris, Technometrics 33 (1991), 161–174.
 */
public final class MorrisDesign implements Design {
    private final int k;
    private final int trajectories;
    private final int levels;
    private final long seed;

    /**
     * @param k number of coordinates
     * @param levels even, at least 2
     */
    public MorrisDesign(int k, int trajectories, int levels, long seed) {
        if (levels % 2 != 0 || levels < 2) {
            throw new IllegalArgumentException("levels must be even and ≥ 2, got " + levels);
        }
        this.k = k;
        this.trajectories = trajectories;
        this.levels = levels;
        this.seed = seed;
    }

    @Override
    public long size() {
        return (long) trajectories * (k + 1);
    }

    /** Which coordinate jumps on step {@code step} of a trajectory, from 0. */
    public int jumping(long trajectory, int step) {
        return order(trajectory)[step];
    }

    private int[] order(long trajectory) {
        int[] order = new int[k];
        for (int i = 0; i < k; i++) {
            int j = Mix.below(i + 1, seed, trajectory, i, 3);
            order[i] = order[j];
            order[j] = i;
        }
        return order;
    }

    /** Length of a jump, in shares of the range. */
    public double jump() {
        return 0.5;
    }

    /** Whether a coordinate jumps up on a trajectory. */
    public boolean up(long trajectory, int coordinate) {
        return (Mix.bits(seed, trajectory, coordinate, 4) & 1) == 0;
    }

    @Override
    public double[] point(long i) {
        long trajectory = i / (k + 1);
        int step = (int) (i % (k + 1));
        double[] point = new double[k];
        boolean[] jumped = new boolean[k];
        int[] order = order(trajectory);
        for (int s = 0; s < step; s++) {
            jumped[order[s]] = true;
        }
        for (int d = 0; d < k; d++) {
            int low = Mix.below(levels / 2, seed, trajectory, d, 5);
            boolean high = up(trajectory, d) == jumped[d];
            point[d] = (low + (high ? levels / 2 : 0) + 0.5) / levels;
        }
        return point;
    }
}
