package org.ridewright.bounce;

import java.util.List;

/**
 * What is left of a motion at the end of the record.
 *
 * @param halfWidth to either side (m or rad)
 * @param frequency by its turning points (Hz); 0 where fewer than three are left
 * @param visible whether an onlooker sees it
 */
public record Tremor(double halfWidth, double frequency, boolean visible) {
    private static final int FEWEST = 3;

    /** Of turning points from a time on, the end of the record left out. */
    static Tremor of(List<TurningPoint> turns, double from, double halfWidth, boolean visible) {
        List<TurningPoint> late = turns.subList(0, turns.size() - 1).stream()
                .filter(turn -> turn.time() >= from)
                .toList();
        int n = late.size();
        double frequency = n < FEWEST
                ? 0
                : (n - 1) / 2.0 / (late.get(n - 1).time() - late.get(0).time());
        return new Tremor(halfWidth, frequency, visible);
    }
}
