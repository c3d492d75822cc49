package org.ridewright.why;

/**
 * What k swaps do to one number of one ride, {@code y(S)} known for some choices S; everything is NaN that rests on a choice that is not.
 *
 * <ul>
 *   <li>alone: {@code Δᵢ = y({i}) − y(∅)}
 *   <li>interaction: {@code Iᵢⱼ = y({i,j}) − y({i}) − y({j}) + y(∅)}, by how much two together do more than the sum of each alone
 *   <li>share: {@code φᵢ = Σ_S |S|! (k−|S|−1)!/k! · [y(S∪{i}) − y(S)]} over the choices S without i: the mean of what i does over all
 *       orders in which the swaps could be made. The shares add up to {@code y(all) − y(∅)}.
 * </ul>
 *
 * <p>Source: Shapley 1953, A value for n-person games, for the shares.
 */
final class Effects {
    private final int k;
    private final double[] y;

    /**
     * @param k number of swaps
     * @param y by choice, 2^k values, NaN where not known; not modified
     */
    Effects(int k, double[] y) {
        this.k = k;
        this.y = y;
    }

    double base() {
        return y[0];
    }

    double alone(int i) {
        return y[1 << i] - y[0];
    }

    double interaction(int i, int j) {
        return y[1 << i | 1 << j] - y[1 << i] - y[1 << j] + y[0];
    }

    double together() {
        return y[(1 << k) - 1] - y[0];
    }

    double share(int i) {
        double sum = 0;
        for (int s = 0; s < 1 << k; s++) {
            if ((s & 1 << i) == 0) {
                sum += weight(Integer.bitCount(s)) * (y[s | 1 << i] - y[s]);
            }
        }
        return sum;
    }

    /** {@code n! (k−n−1)!/k!}: share of the orders in which just these n come before. */
    private double weight(int n) {
        double chosen = 1;
        for (int m = 1; m <= n; m++) {
            chosen *= (double) (k - m) / m;
        }
        return 1 / (k * chosen);
    }
}
