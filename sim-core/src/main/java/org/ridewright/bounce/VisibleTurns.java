package org.ridewright.bounce;

import java.util.ArrayList;
import java.util.List;

/**
 * Picks from all turning points of a motion those that an onlooker sees: a turn is seen once the motion has come back from it by twice the least
 * visible motion. What ripples less than that is passed over, and of a turn with ripples the farthest point is taken.
 */
final class VisibleTurns {
    /** Half cycles, of the mean length so far, without anything to be seen, after which nobody counts on. */
    static final double PATIENCE = 1.75;

    private final double least;
    private final List<TurningPoint> seen = new ArrayList<>();
    /** Farthest point of the swing under way; null before any swing is seen. */
    private TurningPoint farthest;
    /** Farthest that the motion has come back from {@link #farthest}. */
    private TurningPoint back;

    private VisibleTurns(double least) {
        this.least = least;
    }

    /**
     * @param turns all turning points in order of time, the first the letting go, the last the end of the record
     * @param visible least motion to either side that is seen
     */
    static Count count(Motion motion, double visible, List<TurningPoint> turns, double offset, Tremor left) {
        VisibleTurns picker = new VisibleTurns(2 * visible);
        picker.seen.add(turns.get(0));
        picker.back = turns.get(0);
        for (TurningPoint turn : turns.subList(1, turns.size())) {
            if (picker.take(turn)) {
                break;
            }
        }
        if (picker.farthest != null) {
            picker.seen.add(picker.farthest);
        }
        return new Count(motion, visible, picker.seen, picker.back, offset, left);
    }

    /** Whether the onlooker has given up before this one. */
    private boolean take(TurningPoint turn) {
        TurningPoint from = seen.get(seen.size() - 1);
        if (farthest == null) {
            if (distance(turn, from) > distance(back, from)) {
                back = turn;
            }
            if (distance(turn, from) >= least) {
                farthest = turn;
                back = turn;
            }
            return false;
        }
        double sense = Math.signum(farthest.value() - from.value());
        if (sense * (turn.value() - farthest.value()) > 0) {
            boolean late = isLate(turn);
            if (!late) {
                farthest = turn;
                back = turn;
            }
            return late;
        }
        if (distance(turn, farthest) > distance(back, farthest)) {
            if (isLate(turn)) {
                return true;
            }
            back = turn;
        }
        if (distance(turn, farthest) >= least) {
            seen.add(farthest);
            farthest = turn;
            back = turn;
        }
        return false;
    }

    private boolean isLate(TurningPoint turn) {
        double mean = (farthest.time() - seen.get(0).time()) / seen.size();
        return turn.time() - farthest.time() > PATIENCE * mean;
    }

    private static double distance(TurningPoint a, TurningPoint b) {
        return Math.abs(a.value() - b.value());
    }
}
