package org.ridewright.wheel;

import org.ridewright.road.Section;

/**
 * Touching any smooth section: the road's parallel curve. The point touched is found from {@code X = x − R sin α(x)}, whose
 * right-hand side rises with x wherever the road is flatter than the wheel, by Newton's rule inside a shrinking bracket. The
 * height is taken as {@code r(x) + √(R² − (x − X)²) − R}, which is stationary in x, so that an error of x enters squared.
 */
final class TouchOnCurve implements Touch {
    private static final int SCAN = 32;
    private static final int MOST_STEPS = 200;

    private final Section section;
    private final double a;
    private final double b;
    private final double R;
    private final double from;
    private final double to;

    private TouchOnCurve(Section section, double a, double b, double R) {
        this.section = section;
        this.a = a;
        this.b = b;
        this.R = R;
        this.from = centreOver(section, a, R);
        this.to = centreOver(section, b, R);
    }

    /**
     * Adds the parts of a section from station a to b that a disc can touch, chains broken in between and where it cannot
     * touch an end.
     */
    static void split(Section section, double a, double b, double R, ChainBuilder out) {
        if (section.hollowest(a, b) * R < 1) {
            out.add(new TouchOnCurve(section, a, b, R));
            return;
        }
        double start = Double.NaN;
        double last = a;
        boolean touched = isTouchable(section, a, R);
        if (touched) {
            start = a;
        } else {
            out.endChain();
        }
        for (int i = 1; i <= SCAN; i++) {
            double x = i == SCAN ? b : a + (b - a) * i / SCAN;
            boolean now = isTouchable(section, x, R);
            if (now != touched) {
                double change = change(section, last, x, touched, R);
                if (now) {
                    start = change;
                } else {
                    out.add(new TouchOnCurve(section, start, change, R));
                    out.endChain();
                }
            }
            touched = now;
            last = x;
        }
        if (touched) {
            out.add(new TouchOnCurve(section, start, b, R));
        }
    }

    /** {@code κ < 1/R}, written without division so that upright ends of arcs count as touchable. */
    private static boolean isTouchable(Section section, double x, double R) {
        double second = section.secondDerivative(x);
        if (second <= 0) {
            return true;
        }
        double slope = section.slope(x);
        double p = 1 + slope * slope;
        return second * R < p * Math.sqrt(p);
    }

    /** Where touchable changes between x1 and x2, to round-off. */
    private static double change(Section section, double x1, double x2, boolean atFirst, double R) {
        double lo = x1;
        double hi = x2;
        for (int i = 0; i < MOST_STEPS; i++) {
            double middle = lo + (hi - lo) / 2;
            if (middle <= lo || middle >= hi) {
                break;
            }
            if (isTouchable(section, middle, R) == atFirst) {
                lo = middle;
            } else {
                hi = middle;
            }
        }
        return atFirst ? lo : hi;
    }

    private static double centreOver(Section section, double x, double R) {
        return x - R * Math.sin(Math.atan(section.slope(x)));
    }

    @Override
    public double from() {
        return from;
    }

    @Override
    public double to() {
        return to;
    }

    @Override
    public double value(double X) {
        double x = touched(X);
        double s = Math.abs(x - X);
        return section.height(x) - R + Math.sqrt(Math.max(0, (R - s) * (R + s)));
    }

    @Override
    public double slope(double X) {
        return section.slope(touched(X));
    }

    /** {@code r″(x) / (1 − R κ(x))}, from {@code du/dX = r′(x)} and {@code dX/dx = 1 − R κ}. */
    @Override
    public double curvature(double X) {
        double x = touched(X);
        double slope = section.slope(x);
        double p = 1 + slope * slope;
        double second = section.secondDerivative(x);
        return second / (1 - R * second / (p * Math.sqrt(p)));
    }

    /** Station of the point touched when the centre is at X. */
    private double touched(double X) {
        if (X <= from) {
            return a;
        }
        if (X >= to) {
            return b;
        }
        double lo = a;
        double hi = b;
        double x = a + (b - a) * (X - from) / (to - from);
        for (int i = 0; i < MOST_STEPS; i++) {
            double slope = section.slope(x);
            double p = 1 + slope * slope;
            double hypot = Math.sqrt(p);
            double miss = x - R * (slope / hypot) - X;
            if (miss > 0) {
                hi = x;
            } else {
                lo = x;
            }
            double next = x - miss / (1 - R * section.secondDerivative(x) / (p * hypot));
            if (!(next > lo && next < hi)) {
                next = lo + (hi - lo) / 2;
            }
            double change = Math.abs(next - x);
            x = next;
            if (change <= 2 * Math.ulp(Math.abs(x)) || hi - lo <= 2 * Math.ulp(Math.abs(x))) {
                break;
            }
        }
        return x;
    }
}
