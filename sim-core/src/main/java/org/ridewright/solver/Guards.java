package org.ridewright.solver;

import org.ridewright.math.FirstCrossing;

/**
 * Finds the first guard to be crossed on a step.
 *
 * <p>On a step every c and ċ stays within its leading coefficient and the sum of the sizes of the others; an element whose ranges hold
 * them cannot switch and is done with. Of the others each guard is written out as a polynomial in τ and its first crossing isolated.
 *
 * <p>A guard is raised by the round-off of the quantities that it is made of, so that one that is zero on entry (just locked, just
 * touching) stands above zero by that much, and whatever its first non-zero coefficient says decides: rising, it is not crossed;
 * falling, it is crossed when it is below zero by round-off.
 */
final class Guards {
    private final FlatLaws laws;
    private final GuardTable table;
    private final HeldLaws held;
    private final TaylorSeries series;
    private final FirstCrossing crossing;
    private final double[] polynomial;
    private final int[] suspects;
    private int suspectCount;
    private int crossed;
    private double crossedAt;

    Guards(FlatLaws laws, GuardTable table, HeldLaws held, TaylorSeries series, int most) {
        this.laws = laws;
        this.table = table;
        this.held = held;
        this.series = series;
        crossing = new FirstCrossing(most + 1);
        polynomial = new double[most + 2];
        suspects = new int[laws.ne];
    }

    /**
     * Looks for the first crossing on the series.
     *
     * @return the guard, or −1 if there is none
     */
    int search() {
        crossed = -1;
        crossedAt = 1;
        suspect();
        for (int i = 0; i < suspectCount; i++) {
            if (look(suspects[i])) {
                break;
            }
        }
        return crossed;
    }

    /** τ of the crossing found last: 0 if it is crossed already on entry, 1 if there is none. */
    double at() {
        return crossedAt;
    }

    /** Lists the elements for which the sizes of the coefficients do not rule out a crossing. */
    private void suspect() {
        int count = 0;
        double h = series.h();
        for (int e = 0; e < laws.ne; e++) {
            double c = series.c[e];
            double speed = series.speed[e];
            double speedReach = series.reach[e];
            double reach = h * (Math.abs(speed) + 0.5 * speedReach);
            boolean safe = c - reach > held.lowestCompression[e]
                    && c + reach < held.highestCompression[e]
                    && speed - speedReach > held.lowestSpeed[e]
                    && speed + speedReach < held.highestSpeed[e]
                    && held.mixedConstant[e]
                                    + held.mixedByCompression[e] * c
                                    + held.mixedBySpeed[e] * speed
                                    - Math.abs(held.mixedByCompression[e]) * reach
                                    - Math.abs(held.mixedBySpeed[e]) * speedReach
                            > 0;
            if (!safe) {
                suspects[count++] = e;
            }
        }
        suspectCount = count;
    }

    /** Looks at the guards of one element; tells whether one is crossed on entry. */
    private boolean look(int e) {
        int degree = series.order() + 1;
        for (int g = table.from[e]; g < table.from[e + 1]; g++) {
            if (!held.watched[g]) {
                continue;
            }
            expand(g, e, degree);
            if (polynomial[0] < 0) {
                crossed = g;
                crossedAt = 0;
                return true;
            }
            double at = crossing.find(polynomial, degree, crossedAt);
            if (!Double.isNaN(at)) {
                crossed = g;
                crossedAt = at;
            }
        }
        return false;
    }

    private void expand(int g, int e, int degree) {
        double byC = held.guardByCompression[g];
        double byV = held.guardBySpeed[g];
        int at = e;
        for (int k = 0; k <= degree; k++) {
            polynomial[k] = byC * series.c[at] + byV * series.speed[at];
            at += laws.ne;
        }
        double byElastic = held.guardByElastic[g];
        if (byElastic != 0) {
            for (int k = 0; k <= degree; k++) {
                polynomial[k] += byElastic * series.elastic(e, k);
            }
        }
        polynomial[0] += held.guardConstant[g] + held.guardSlack[g];
    }
}
