package org.ridewright.wheel;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.math.HermiteFit;
import org.ridewright.math.PieceCollector;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.road.RoadProfile;

/**
 * Rolls a rigid disc over a road: upper envelope of its chains of touches, then polynomial pieces.
 *
 * <p>Chains are taken from left to right. The envelope so far is a stack of spans, each a chain from a station on. A new chain gains
 * on the envelope all along (see the package description). If it is still below where the shorter of the two ends, it is never touched,
 * unless the envelope ends first. Otherwise it overtakes once: spans that lie wholly after that are dropped, and the station is
 * found on the last remaining one by Newton's rule inside a bracket, to round-off.
 */
final class RollingDisc {
    private static final double SAME_HEIGHT = 1e-9;
    private static final int MOST_STEPS = 200;

    private final double R;
    private final List<Span> envelope = new ArrayList<>();

    /** A chain on the envelope from a station on; {@code fall} where the wheel would drop onto it. */
    private record Span(TouchChain chain, double from, boolean fall) {}

    private RollingDisc(double radius) {
        this.R = radius;
    }

    /**
     * Path of the centre of a disc of radius R.
     *
     * @throws IllegalArgumentException if an upright face is as high as the radius, or higher, so that the path would jump
     */
    static PiecewisePolynomial path(RoadProfile road, double radius, int degree, double tolerance) {
        RollingDisc disc = new RollingDisc(radius);
        for (TouchChain chain : new ChainBuilder(road, radius).build()) {
            disc.take(chain);
        }
        disc.refuseFalls();
        return disc.fit(degree, tolerance, road);
    }

    private void take(TouchChain chain) {
        if (envelope.isEmpty()) {
            envelope.add(new Span(chain, chain.from(), false));
            return;
        }
        double envelopeEnd = last().chain.to();
        double hi = Math.max(chain.from(), Math.min(chain.to(), envelopeEnd));
        if (chain.value(hi) <= heightAt(hi)) {
            if (chain.to() > envelopeEnd) {
                envelope.add(new Span(chain, envelopeEnd, true));
            }
            return;
        }
        while (envelope.size() > 1 && isOvertakenBeforeItBegins(last(), chain, hi)) {
            hi = Math.min(hi, last().from);
            envelope.remove(envelope.size() - 1);
        }
        TouchChain below = last().chain;
        double lo = Math.max(last().from, chain.from());
        if (chain.value(lo) >= below.value(lo)) {
            refuseClimb(chain, lo, below);
            envelope.add(new Span(chain, lo, false));
            return;
        }
        envelope.add(new Span(chain, crossing(below, chain, lo, hi), false));
    }

    private static boolean isOvertakenBeforeItBegins(Span span, TouchChain chain, double hi) {
        return span.from >= hi || (span.from >= chain.from() && chain.value(span.from) >= span.chain.value(span.from));
    }

    private Span last() {
        return envelope.get(envelope.size() - 1);
    }

    private double heightAt(double X) {
        int i = envelope.size() - 1;
        while (i > 0 && envelope.get(i).from > X) {
            i--;
        }
        return envelope.get(i).chain.value(X);
    }

    /** Where {@code upper − lower}, which rises from below 0 at lo to above 0 at hi, is 0. */
    private static double crossing(TouchChain lower, TouchChain upper, double lo, double hi) {
        double a = Double.isInfinite(lo) ? upper.from() : lo;
        double b = hi;
        double X = a + (b - a) / 2;
        for (int i = 0; i < MOST_STEPS; i++) {
            double gain = upper.value(X) - lower.value(X);
            if (gain > 0) {
                b = X;
            } else {
                a = X;
            }
            double next = X - gain / (upper.slope(X) - lower.slope(X));
            if (!(next > a && next < b)) {
                next = a + (b - a) / 2;
            }
            double change = Math.abs(next - X);
            X = next;
            if (change <= Math.ulp(X) || b - a <= 2 * Math.ulp(X)) {
                break;
            }
        }
        return X;
    }

    private void refuseClimb(TouchChain chain, double X, TouchChain below) {
        if (!chain.beginsOnFace() || X > chain.from()) {
            return;
        }
        double rise = chain.value(X) + R - below.value(X);
        throw new IllegalArgumentException("upright face at station " + chain.face() + " m must rise < " + R
                + " m, the radius of the wheel, got " + rise + " m: the wheel cannot climb it");
    }

    private void refuseFalls() {
        for (int i = 1; i < envelope.size(); i++) {
            Span span = envelope.get(i);
            if (span.fall) {
                double fall = envelope.get(i - 1).chain.value(span.from) - span.chain.value(span.from);
                if (fall > SAME_HEIGHT) {
                    throw new IllegalArgumentException("upright face at station " + (span.from - R)
                            + " m must fall < " + R + " m, the radius of the wheel, got " + (fall + R)
                            + " m: the wheel drops off it");
                }
            }
        }
    }

    private PiecewisePolynomial fit(int degree, double tolerance, RoadProfile road) {
        List<Touch> touches = new ArrayList<>();
        List<Double> starts = new ArrayList<>();
        for (int i = 0; i < envelope.size(); i++) {
            Span span = envelope.get(i);
            double end = i + 1 < envelope.size() ? envelope.get(i + 1).from : Double.POSITIVE_INFINITY;
            int first = Double.isInfinite(span.from) ? 0 : span.chain.touchAt(span.from);
            for (int k = first; k < span.chain.size() && span.chain.touch(k).from() < end; k++) {
                touches.add(span.chain.touch(k));
                starts.add(k == first ? span.from : span.chain.touch(k).from());
            }
        }
        PieceCollector out = new PieceCollector();
        int n = touches.size();
        for (int i = 1; i < n - 1; i++) {
            double from = starts.get(i);
            double to = starts.get(i + 1);
            if (to - from <= PieceCollector.SHORTEST * Math.max(1, Math.abs(to))) {
                continue;
            }
            Touch touch = touches.get(i);
            if (touch instanceof Touch.OnStraight straight) {
                out.add(from, to, straight.value(from), straight.incline());
            } else {
                double atFrom = isLevel(touches.get(i - 1)) ? touches.get(i - 1).value(from) : touch.value(from);
                double atTo = isLevel(touches.get(i + 1)) ? touches.get(i + 1).value(to) : touch.value(to);
                new HermiteFit(touch, degree, tolerance, out).fit(from, to, atFrom, atTo);
            }
        }
        return out.build(road.heightBefore(), road.heightAfter());
    }

    /** A level's height is exact; a curve takes it over at their joint. */
    private static boolean isLevel(Touch touch) {
        return touch instanceof Touch.OnStraight straight && straight.incline() == 0;
    }
}
