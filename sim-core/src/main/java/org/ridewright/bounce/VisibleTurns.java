package org.ridewright.bounce;

import java.util.ArrayList;
import java.util.List;

/**
 * Picks from all turning points of a motion those that an onlooker sees: a turn is seen once the motion has come back from it by twice the least
 * visible motion. What ripples less than that is passed over; where a turn ripples, its first point is taken, unless the motion goes visibly
 * farther after all.
 */
final class VisibleTurns {
    /** Half cycles, of the mean length so far, that a swing may take; after that nobody counts on. */
    static final double PATIENCE = 2.5;

    private final double visible;
    private final List<TurningPoint> seen = new ArrayList<>();
    /** Where the swing under way turns, as far as is known; null before any swing is seen. */
    private TurningPoint turned;
    /** Farthest that the motion has come back from there. */
    private TurningPoint back;

    private VisibleTurns(double visible, TurningPoint first) {
        this.visible = visible;
        seen.add(first);
        back = first;
    }

    /**
     * The count of a motion.
     *
     * @param visible least motion to either side that is seen
     * @param counted least motion to either side that counts, ≥ visible; if even the first swing is less, all count that are seen
     * @param turns all turning points in order of time, the first the letting go
     * @param end of the record, where the motion need not turn
     */
    static Count count(
            Motion motion,
            double visible,
            double counted,
            List<TurningPoint> turns,
            TurningPoint end,
            double offset,
            Tremor left) {
        VisibleTurns picker = new VisibleTurns(visible, turns.get(0));
        boolean watched = true;
        for (int i = 1; i < turns.size() && watched; i++) {
            watched = picker.take(turns.get(i));
        }
        List<TurningPoint> seen = picker.seen;
        if (watched) {
            picker.creep(end);
        }
        if (picker.turned != null) {
            seen.add(picker.turned);
        }
        boolean anyCounts = seen.size() > 1 && distance(seen.get(0), seen.get(1)) >= 2 * counted;
        if (anyCounts) {
            for (int j = 1; j + 1 < seen.size(); j++) {
                if (distance(seen.get(j), seen.get(j + 1)) < 2 * counted) {
                    return new Count(motion, counted, seen.subList(0, j + 1), seen.get(j + 1), offset, left, seen);
                }
            }
        }
        return new Count(motion, anyCounts ? counted : visible, seen, picker.back, offset, left, seen);
    }

    /** Takes the next turning point; whether the onlooker is still there. */
    private boolean take(TurningPoint turn) {
        TurningPoint from = seen.get(seen.size() - 1);
        if (turned == null) {
            first(turn, from);
            return true;
        }
        if (isLate(turn, from)) {
            return false;
        }
        double farther = Math.signum(turned.value() - from.value()) * (turn.value() - turned.value());
        if (farther > visible) {
            turned = turn;
            back = turn;
        } else if (-farther >= 2 * visible) {
            seen.add(turned);
            turned = turn;
            back = turn;
        } else if (farther < 0 && -farther > distance(back, turned)) {
            back = turn;
        }
        return true;
    }

    /** Takes in where the record ends. */
    private void creep(TurningPoint end) {
        TurningPoint from = turned == null ? seen.get(0) : turned;
        if (distance(end, from) > distance(back, from)) {
            back = end;
        }
    }

    private void first(TurningPoint turn, TurningPoint from) {
        if (distance(turn, from) > distance(back, from)) {
            back = turn;
        }
        if (distance(turn, from) >= 2 * visible) {
            turned = turn;
        }
    }

    /** Whether a swing to that turn would take too long; the first may take its time. */
    private boolean isLate(TurningPoint turn, TurningPoint from) {
        if (seen.size() == 1) {
            return turn.time() - turned.time() > PATIENCE * (turned.time() - from.time());
        }
        double mean = (from.time() - seen.get(0).time()) / (seen.size() - 1);
        double since = turn.time() - turned.time();
        return turn.time() - from.time() > PATIENCE * mean && since > mean;
    }

    private static double distance(TurningPoint a, TurningPoint b) {
        return Math.abs(a.value() - b.value());
    }
}
