package org.ridewright.ringdown;

/** {@code e^(−ζωt)(c cos ω_d t + s sin ω_d t)}, its two parts by least squares. */
final class DampedWave {
    private DampedWave() {}

    /**
     * The best parts, and what they leave.
     *
     * @return c, s (unit of the values), and the sum of the squares left
     */
    static double[] best(double[] times, double[] values, boolean[] counted, double omega, double zeta) {
        double d = omega * Math.sqrt(1 - zeta * zeta);
        double cc = 0;
        double cs = 0;
        double ss = 0;
        double cv = 0;
        double sv = 0;
        double vv = 0;
        for (int i = 0; i < times.length; i++) {
            if (!counted[i]) {
                continue;
            }
            double t = times[i] - times[0];
            double decay = Math.exp(-zeta * omega * t);
            double c = decay * Math.cos(d * t);
            double s = decay * Math.sin(d * t);
            cc += c * c;
            cs += c * s;
            ss += s * s;
            cv += c * values[i];
            sv += s * values[i];
            vv += values[i] * values[i];
        }
        double determinant = cc * ss - cs * cs;
        if (!(determinant > 1e-9 * cc * ss)) {
            return new double[] {0, 0, vv};
        }
        double a = (ss * cv - cs * sv) / determinant;
        double b = (cc * sv - cs * cv) / determinant;
        return new double[] {a, b, vv - a * cv - b * sv};
    }
}
