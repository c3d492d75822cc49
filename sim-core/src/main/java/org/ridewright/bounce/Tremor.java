package org.ridewright.bounce;

import java.util.List;

/**
 * What is left of a motion when it is no more counted: the tremor on springs that friction holds, during the first second of it, or else what moves
 * at the end of the record.
 *
 * @param halfWidth to either side (m or rad)
 * @param frequency by its turning points (Hz); 0 where there are fewer than three
 * @param visible whether an onlooker sees it
 * @param held whether friction, which let go at first, holds every spring
 */
public record Tremor(double halfWidth, double frequency, boolean visible, boolean held) {
    /** A swing less than this many times as wide as the tremor is one of the tremor. */
    static final double ALIKE = 1.5;

    private static final int FEWEST = 3;

    /** Of the turning points from one time to another. */
    static Tremor of(List<TurningPoint> turns, double from, double to, double leastVisible, boolean held) {
        List<TurningPoint> those = turns.stream()
                .filter(turn -> turn.time() >= from && turn.time() <= to)
                .toList();
        int n = those.size();
        double high = those.stream().mapToDouble(TurningPoint::value).max().orElse(0);
        double low = those.stream().mapToDouble(TurningPoint::value).min().orElse(0);
        double frequency = n < FEWEST
                ? 0
                : (n - 1) / 2.0 / (those.get(n - 1).time() - those.get(0).time());
        return new Tremor((high - low) / 2, frequency, (high - low) / 2 >= leastVisible, held);
    }
}
