package org.ridewright.math;

/** A sinusoid as polynomial pieces: Taylor series of the seventh degree about the left joints, which err by less than 1e-9 of the amplitude. */
public final class Sinusoid {
    /** Pieces to a cycle. */
    public static final int PIECES_PER_CYCLE = 48;

    private static final int TERMS = 8;

    private Sinusoid() {}

    /**
     * {@code mean + a sin ωt} from t = 0 on.
     *
     * @param duration that it covers at least (s)
     */
    public static PiecewisePolynomial steady(double mean, double amplitude, double omega, double duration) {
        return pieces(omega, duration, (i, t) -> {
            double[] c = sine(amplitude, omega, t);
            c[0] += mean;
            return c;
        });
    }

    /**
     * {@code a sin ωt}, over the first N periods times {@code ½(1 − cos(ωt/2N))}, so that it begins without a jerk.
     *
     * @param cycles N, ≥ 1
     * @param duration that it covers at least (s)
     */
    public static PiecewisePolynomial grown(double amplitude, double omega, int cycles, double duration) {
        return pieces(omega, duration, (i, t) -> {
            double[] whole = sine(amplitude, omega, t);
            if (i >= cycles * PIECES_PER_CYCLE) {
                return whole;
            }
            // the product of sine and cosine as two sines
            double[] quicker = sine(-amplitude / 4, (1 + 0.5 / cycles) * omega, t);
            double[] slower = sine(-amplitude / 4, (1 - 0.5 / cycles) * omega, t);
            double[] sum = new double[TERMS];
            for (int k = 0; k < TERMS; k++) {
                sum[k] = whole[k] / 2 + quicker[k] + slower[k];
            }
            return sum;
        });
    }

    private interface Taylor {
        double[] about(int piece, double t);
    }

    private static PiecewisePolynomial pieces(double omega, double duration, Taylor taylor) {
        double dt = 2 * Math.PI / omega / PIECES_PER_CYCLE;
        int pieces = (int) Math.ceil(duration / dt) + 1;
        double[] joints = new double[pieces + 1];
        double[][] a = new double[pieces][];
        for (int i = 0; i <= pieces; i++) {
            joints[i] = i * dt;
        }
        for (int i = 0; i < pieces; i++) {
            a[i] = taylor.about(i, joints[i]);
        }
        return new PiecewisePolynomial(joints, a, 0);
    }

    /** Taylor coefficients of {@code a sin ωt} about t. */
    private static double[] sine(double a, double omega, double t) {
        double[] c = new double[TERMS];
        double factor = a;
        for (int k = 0; k < TERMS; k++) {
            c[k] = factor * Math.sin(omega * t + k * Math.PI / 2);
            factor *= omega / (k + 1);
        }
        return c;
    }
}
