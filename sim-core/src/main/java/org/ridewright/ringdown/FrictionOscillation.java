package org.ridewright.ringdown;

import java.util.ArrayList;
import java.util.List;

/**
 * Acceleration of a mass on a spring that swings free against viscous damping and dry friction,
 *
 * <pre>
 *   ẍ + 2ζω ẋ + ω² x + s = 0         s = f sgn ẋ while sliding, |s| ≤ f
 * </pre>
 *
 * <p>written with y = ω²x, so that everything is an acceleration. Within a half cycle of velocity sign d it is a damped cosine about the
 * shifted centre y = −d f, that is x = ∓F/k with F/k = f/ω². Between turn j, at y = Y_j, and the next:
 *
 * <pre>
 *   A_j = |Y_j| − f            acceleration just after turn j
 *   |Y_{j+1}| = A_j e − f      e = exp(−πζ/√(1 − ζ²)), after π/ω_d
 *   A_{j+1} = A_j e − 2f       the acceleration jumps by 2f at each turn
 * </pre>
 *
 * <p>and it stays where it is at the first turn with A ≤ 0. Where the friction is that of a spring pack which gives by k_p before it
 * slides (q = k/k_p &gt; 0), the slider is locked after each turn until y has changed by 2fq: a swing at {@code ω√(1 + 1/q)} about {@code (Y − q f)/(1 + q)},
 * after which it slides on. There is then no jump, and it comes to rest swinging on the locked slider.
 *
 * <p>Source: linear decrement of Coulomb friction, as in Den Hartog, Mechanical Vibrations (from memory); the rest is the solution of the
 * linear equation piece by piece.
 */
final class FrictionOscillation {
    /** Half cycles after which nothing more is followed; far beyond any record. */
    private static final int MOST_PIECES = 600;

    private static final int MOST_NEWTON_STEPS = 30;

    /** Below this k/k_p the slider counts as rigid. */
    private static final double RIGID = 1e-4;

    private final double omega;
    private final double sigma;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Turn> turns = new ArrayList<>();
    private double standsFrom = Double.POSITIVE_INFINITY;

    /**
     * A turning point.
     *
     * @param time (s)
     * @param place y = ω²x there (m/s²), signed: {@code ∓(|A| + f)} where the acceleration jumps, {@code ∓(|A| − f)} where friction turns over
     *     gradually, since it still holds against the motion up to that turn
     * @param after acceleration just after it (m/s²), signed; 0 where the motion ends there
     */
    record Turn(double time, double place, double after) {}

    /**
     * One linear piece: {@code y = centre + e^(−σt)(u cos ω_d t + (w + σu)/ω_d sin ω_d t)}, t from {@code from}.
     *
     * @param rateSquared ω² of this piece
     */
    private record Piece(double from, double rateSquared, double centre, double u, double w, boolean afterJump) {}

    /**
     * The motion from its first turn on.
     *
     * @param omega ω (rad/s)
     * @param zeta ζ, between −1 and 1
     * @param friction f (m/s²); may be negative, so that an estimate near zero is free to scatter
     * @param softness q = k/k_p (1); 0 for a rigid slider
     * @param start time of the first turn (s)
     * @param first acceleration just after it (m/s²), signed
     * @param until time up to which it is followed (s)
     */
    FrictionOscillation(
            double omega, double zeta, double friction, double softness, double start, double first, double until) {
        this.omega = omega;
        this.sigma = zeta * omega;
        if (friction > 0 && softness > RIGID) {
            follow(friction, softness, start, first, until);
        } else {
            jump(friction, start, first, until);
        }
    }

    /** Half cycle by half cycle, by the recursion. */
    private void jump(double f, double start, double first, double until) {
        double omegaD = Math.sqrt(omega * omega - sigma * sigma);
        double half = Math.PI / omegaD;
        double e = Math.exp(-sigma * half);
        double size = Math.abs(first);
        double sign = Math.signum(first);
        double t = start;
        for (int j = 0; j < MOST_PIECES; j++) {
            if (size <= 0) {
                standsFrom = t;
                turns.add(new Turn(t, -sign * (size + f), 0));
                return;
            }
            // just after the turn a = −u, u the distance from the shifted centre
            pieces.add(new Piece(t, omega * omega, sign * -f, -sign * size, 0, j > 0));
            turns.add(new Turn(t, -sign * (size + f), sign * size));
            if (t > until) {
                return;
            }
            size = size * e - 2 * f;
            sign = -sign;
            t += half;
        }
    }

    /** Locked and sliding pieces in turn. */
    private void follow(double f, double q, double start, double first, double until) {
        double locked = omega * omega * (1 + 1 / q);
        double sign = Math.signum(first);
        // at the turn a = −Y − s with the slider still at its limit of the way up to it
        double size = Math.abs(first) - f;
        double t = start;
        for (int j = 0; j < MOST_PIECES; j++) {
            // now on the side where y = −sign·size, moving back; mirrored so that y falls from +size, slider at +f
            double centre = (size - q * f) / (1 + q);
            double swing = size - centre;
            double travel = 2 * f * q;
            double omegaL = Math.sqrt(locked - sigma * sigma);
            double farthest = swing * (1 + Math.exp(-sigma * Math.PI / omegaL));
            pieces.add(new Piece(t, locked, -sign * centre, -sign * swing, 0, false));
            turns.add(new Turn(t, -sign * size, sign * (size + f)));
            if (farthest <= travel || t > until) {
                return;
            }
            double slip = slipTime(swing, travel, omegaL, locked);
            double y = size - travel;
            double v = rate(swing, 0, locked, slip);
            // sliding down, about +f
            double u = y - f;
            pieces.add(new Piece(t + slip, omega * omega, -sign * f, -sign * u, -sign * v, false));
            double omegaD = Math.sqrt(omega * omega - sigma * sigma);
            double turn = Math.atan2(v * omegaD, sigma * v + omega * omega * u);
            double after = (turn > 0 ? turn : turn + Math.PI) / omegaD;
            double next = f + place(u, v, omega * omega, after);
            t += slip + after;
            size = -next;
            sign = -sign;
        }
    }

    /** When a swing from rest has come back by that travel. */
    private double slipTime(double swing, double travel, double omegaL, double locked) {
        double low = 0;
        double high = Math.PI / omegaL;
        double t = Math.acos(Math.max(-1, 1 - travel / swing)) / omegaL;
        for (int i = 0; i < MOST_NEWTON_STEPS; i++) {
            double miss = swing - place(swing, 0, locked, t) - travel;
            if (miss > 0) {
                high = t;
            } else {
                low = t;
            }
            double slope = -rate(swing, 0, locked, t);
            double step = slope > 0 ? miss / slope : 0;
            double better = slope > 0 && t - step > low && t - step < high ? t - step : (low + high) / 2;
            if (Math.abs(better - t) < 1e-13) {
                return better;
            }
            t = better;
        }
        return t;
    }

    private double place(double u, double w, double rateSquared, double t) {
        double d = Math.sqrt(rateSquared - sigma * sigma);
        return Math.exp(-sigma * t) * (u * Math.cos(d * t) + (w + sigma * u) / d * Math.sin(d * t));
    }

    private double rate(double u, double w, double rateSquared, double t) {
        double d = Math.sqrt(rateSquared - sigma * sigma);
        return Math.exp(-sigma * t) * (w * Math.cos(d * t) - (sigma * w + rateSquared * u) / d * Math.sin(d * t));
    }

    /** Turning points, the first at the start; the last has no motion after it if the motion ended. */
    List<Turn> turns() {
        return List.copyOf(turns);
    }

    /** Way from a turn to the next, times ω² (m/s²). */
    double swing(int turn) {
        return Math.abs(turns.get(turn + 1).place() - turns.get(turn).place());
    }

    /** When it stays for good (s); infinite where it does not within what was followed. */
    double standsFrom() {
        return standsFrom;
    }

    /**
     * Acceleration at rising instants; jumps are drawn out over ± a width. Before the start the first piece is continued back.
     *
     * @param width half the time over which a jump is drawn out (s), ≥ 0
     * @param out receives as many values as there are times (m/s²)
     */
    void accelerations(double[] times, double width, double[] out) {
        int at = 0;
        for (int i = 0; i < times.length; i++) {
            double t = times[i];
            while (at + 1 < pieces.size() && pieces.get(at + 1).from() <= t) {
                at++;
            }
            double value = t >= standsFrom ? 0 : of(pieces.get(at), t);
            double next = at + 1 < pieces.size() ? pieces.get(at + 1).from() : standsFrom;
            boolean jumpsNext = at + 1 < pieces.size() ? pieces.get(at + 1).afterJump() : true;
            if (t >= standsFrom) {
                double share = share(t - standsFrom, width);
                value = share < 1 ? (1 - share) * of(pieces.get(at), t) : 0;
            } else if (jumpsNext && next - t < width) {
                double share = share(t - next, width);
                double beyond = at + 1 < pieces.size() ? of(pieces.get(at + 1), t) : 0;
                value = (1 - share) * value + share * beyond;
            } else if (pieces.get(at).afterJump() && t - pieces.get(at).from() < width) {
                double share = share(t - pieces.get(at).from(), width);
                value = (1 - share) * of(pieces.get(at - 1), t) + share * value;
            }
            out[i] = value;
        }
    }

    private static double share(double past, double width) {
        return width > 0 ? Math.max(0, Math.min(1, 0.5 + 0.5 * past / width)) : past >= 0 ? 1 : 0;
    }

    private double of(Piece piece, double time) {
        double t = time - piece.from();
        double d = Math.sqrt(piece.rateSquared() - sigma * sigma);
        double decay = Math.exp(-sigma * t);
        double c = Math.cos(d * t);
        double s = Math.sin(d * t);
        double u = decay * (piece.u() * c + (piece.w() + sigma * piece.u()) / d * s);
        double w = decay * (piece.w() * c - (sigma * piece.w() + piece.rateSquared() * piece.u()) / d * s);
        return (-2 * sigma * w - piece.rateSquared() * u) / (omega * omega);
    }
}
