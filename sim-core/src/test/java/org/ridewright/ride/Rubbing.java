package org.ridewright.ride;

import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;

/**
 * Dry friction along a given path of compression, without regimes: over a stretch in one direction a slider ends at {@code s + k_p Δc}
 * or at its limit there, whichever is nearer to zero slip, which is exact however often it slid in between; the envelope
 * {@code ds/d|c| = (±S − s)/β} has its closed solution for a limit that is straight in c. Stretches end at every turn of the path.
 */
final class Rubbing {
    private final ForceLaw law;
    private final FrictionLaw friction;
    private final double[] shares;
    private final double[] rates;
    private final double[] s;
    private double at;
    private double tauBefore;
    private double bend;

    Rubbing(ForceLaw law, double[] start) {
        this.law = law;
        friction = law.friction();
        shares = friction.limitShares();
        rates = friction.lockedRates();
        s = start.clone();
    }

    /** A new step begins at compression c. */
    void begin(double c) {
        at = c;
        tauBefore = 0;
    }

    /** Follows the polynomial c from the last place to τ and tells the sum of the friction states. */
    double advance(double[] c, double tau) {
        double turn = turn(c, tauBefore, tau);
        if (!Double.isNaN(turn)) {
            stretch(LawScan.value(c, turn));
        }
        stretch(LawScan.value(c, tau));
        tauBefore = tau;
        double sum = 0;
        for (double x : s) {
            sum += x;
        }
        return sum;
    }

    /** Round-off and, of the envelope under a limit that bends, what the straight stretches leave out (N). */
    double slack(double c) {
        double limit = friction.limit(law.leafForce(c));
        return friction.isEnvelope() ? 1e-6 * limit + bend : 1e-10 * limit;
    }

    private static double rate(double[] c, double tau) {
        double sum = 0;
        for (int k = c.length - 1; k > 0; k--) {
            sum = sum * tau + k * c[k];
        }
        return sum;
    }

    /** Where the path turns between two places, by halving; NaN if its ends run the same way. */
    private static double turn(double[] c, double from, double to) {
        double sign = Math.signum(rate(c, from));
        if (sign * Math.signum(rate(c, to)) >= 0) {
            return Double.NaN;
        }
        double low = from;
        double high = to;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (Math.signum(rate(c, middle)) == sign) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private void stretch(double to) {
        double from = at;
        at = to;
        if (to == from) {
            return;
        }
        double after = friction.limit(law.leafForce(to));
        if (friction.isEnvelope()) {
            double before = friction.limit(law.leafForce(from));
            envelope(Math.signum(to - from), Math.abs(to - from), before, after);
            double middle = friction.limit(law.leafForce((from + to) / 2));
            bend = Math.max(bend, Math.abs(middle - (before + after) / 2));
            return;
        }
        for (int j = 0; j < s.length; j++) {
            double limit = shares[j] * after;
            s[j] = Math.max(-limit, Math.min(limit, s[j] + rates[j] * (to - from)));
        }
    }

    private void envelope(double sense, double way, double before, double after) {
        double beta = friction.envelopeLength();
        double slope = (after - before) / way;
        double lag = sense * slope * beta;
        s[0] = sense * after - lag + (s[0] - sense * before + lag) * Math.exp(-way / beta);
    }
}
