package org.ridewright.roughness;

import org.ridewright.math.MatrixExponential;

/**
 * The reference quarter car of the International Roughness Index at 80 km/h, advanced exactly from height to height of a profile
 * whose slope is constant in between.
 *
 * <pre>
 *   z = (z_s′, z_s″, z_u′, z_u″): slopes of sprung and unsprung mass along the road, and their rates of change in time
 *   z_s‴ = −k₂ (z_s′ − z_u′) − c (z_s″ − z_u″)
 *   z_u‴ = [k₂ (z_s′ − z_u′) + c (z_s″ − z_u″) + k₁ (s − z_u′)] / µ
 *   z(i) = ST z(i−1) + PR s(i)      ST = e^(A T)     PR = ∫₀ᵀ e^(A τ) b dτ     T = Δ/v
 * </pre>
 *
 * <p>with s the slope of the road (1). ST and PR come from one exponential, {@code exp[(A b; 0 0) T]}, at any spacing Δ; the tables in
 * print are for 250 mm and a few other spacings.
 *
 * <p>Source: M. W. Sayers, T. D. Gillespie, W. D. O. Paterson, World Bank Technical Paper 46 (1986); ASTM E1926. Parameters per unit
 * of sprung mass.
 */
public final class GoldenCar {
    /** Speed v (m/s): 80 km/h. */
    static final double SPEED = 80 / 3.6;

    /** Damping of the suspension c (1/s). */
    static final double DAMPING = 6.0;

    /** Rate of the tyre k₁ (1/s²). */
    static final double TYRE_RATE = 653;

    /** Rate of the suspension k₂ (1/s²). */
    static final double SPRING_RATE = 63.3;

    /** Unsprung over sprung mass µ. */
    static final double MASS_RATIO = 0.15;

    private static final int STATES = 4;

    private final double[][] transition = new double[STATES][STATES];
    private final double[] input = new double[STATES];
    private double[] state = new double[STATES];
    private double[] next = new double[STATES];

    /** @param spacing of the profile Δ (m), > 0 */
    public GoldenCar(double spacing) {
        if (!(spacing > 0) || Double.isInfinite(spacing)) {
            throw new IllegalArgumentException("spacing of heights must be > 0 m, got " + spacing + " m");
        }
        double t = spacing / SPEED;
        double[][] exponential = MatrixExponential.of(new double[][] {
            {0, t, 0, 0, 0},
            {-SPRING_RATE * t, -DAMPING * t, SPRING_RATE * t, DAMPING * t, 0},
            {0, 0, 0, t, 0},
            {
                SPRING_RATE * t / MASS_RATIO,
                DAMPING * t / MASS_RATIO,
                -(TYRE_RATE + SPRING_RATE) * t / MASS_RATIO,
                -DAMPING * t / MASS_RATIO,
                TYRE_RATE * t / MASS_RATIO
            },
            {0, 0, 0, 0, 0}
        });
        for (int i = 0; i < STATES; i++) {
            System.arraycopy(exponential[i], 0, transition[i], 0, STATES);
            input[i] = exponential[i][STATES];
        }
    }

    /** Entry of ST, counted from 0. */
    public double transition(int row, int column) {
        return transition[row][column];
    }

    /** Entry of PR, counted from 0. */
    public double input(int row) {
        return input[row];
    }

    /** Both masses follow a road of that slope (1), as at the start of the standard. */
    public void settle(double slope) {
        state = new double[] {slope, 0, slope, 0};
    }

    /** One interval of that slope (1). */
    public void advance(double slope) {
        for (int i = 0; i < STATES; i++) {
            double sum = input[i] * slope;
            for (int k = 0; k < STATES; k++) {
                sum += transition[i][k] * state[k];
            }
            next[i] = sum;
        }
        double[] swap = state;
        state = next;
        next = swap;
    }

    /** {@code |z_s′ − z_u′|} (1): motion of the suspension for each metre of road. */
    public double rectifiedSlope() {
        return Math.abs(state[0] - state[2]);
    }
}
