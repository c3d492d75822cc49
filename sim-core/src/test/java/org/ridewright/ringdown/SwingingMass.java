package org.ridewright.ringdown;

/**
 * The ring-down of a mass against viscous damping and dry friction, half cycle by half cycle in displacement: from a place of rest x the
 * mass swings about the centre sgn(x) F/k to {@code centre − (x − centre) e}, and stays where |x| ≤ F/k.
 */
record SwingingMass(double frequency, double zeta, double frictionLength, double lift) {
    double omega() {
        return 2 * Math.PI * frequency;
    }

    /** F/m (m/s²). */
    double friction() {
        return frictionLength * omega() * omega();
    }

    /** Acceleration at t after the release (m/s²). */
    double acceleration(double t) {
        double w = omega();
        double wd = w * Math.sqrt(1 - zeta * zeta);
        double half = Math.PI / wd;
        double x = lift;
        double left = t;
        if (t < 0) {
            return 0;
        }
        while (left >= half && Math.abs(x) > frictionLength) {
            double centre = Math.signum(x) * frictionLength;
            x = centre - (x - centre) * Math.exp(-zeta * w * half);
            left -= half;
        }
        if (Math.abs(x) <= frictionLength) {
            return 0;
        }
        double u = x - Math.signum(x) * frictionLength;
        return -w * w * u * Math.exp(-zeta * w * left) * (Math.cos(wd * left) - zeta * w / wd * Math.sin(wd * left));
    }
}
