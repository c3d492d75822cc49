package org.ridewright.bounce;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Turning points in millimetres, of which 1 to either side is seen. */
class VisibleTurnsTest {
    private static List<Double> counted(double leastCounted, double... timesAndValues) {
        List<TurningPoint> turns = new ArrayList<>();
        for (int i = 0; i < timesAndValues.length; i += 2) {
            turns.add(new TurningPoint(timesAndValues[i], timesAndValues[i + 1]));
        }
        TurningPoint end = new TurningPoint(10, 0);
        return VisibleTurns.count(Motion.FRONT, 1, leastCounted, turns, end, 0, new Tremor(0, 0, false, false))
                .turningPoints()
                .stream()
                .map(TurningPoint::time)
                .toList();
    }

    @Test
    void ripplesOnTheWayArePassedOver() {
        assertThat(counted(1, 0, -20, 0.2, 3, 0.25, 2.5, 0.5, 18, 1, -15)).containsExactly(0.0, 0.5, 1.0);
    }

    @Test
    void aTurnThatRipplesIsItsFirstPoint() {
        assertThat(counted(1, 0, -20, 0.5, 18, 0.52, 17.5, 0.54, 18.3, 1, -15)).containsExactly(0.0, 0.5, 1.0);
    }

    @Test
    void aTurnFromWhichTheMotionGoesVisiblyFartherIsNone() {
        assertThat(counted(1, 0, -20, 0.4, 12, 0.42, 11.5, 0.6, 18, 1.1, -15)).containsExactly(0.0, 0.6, 1.1);
    }

    @Test
    void whatMovesAgainAfterALongPauseIsNotCounted() {
        assertThat(counted(1, 0, -20, 0.5, 18, 1, -15, 3, 4, 3.5, -4)).containsExactly(0.0, 0.5, 1.0);
    }

    @Test
    void smallSwingsAfterLargeOnesAreATremor() {
        assertThat(counted(3, 0, -20, 0.5, 18, 1, -4, 1.2, 1, 1.4, -4)).containsExactly(0.0, 0.5, 1.0);
    }

    @Test
    void whereEvenTheFirstSwingIsATremorItCounts() {
        assertThat(counted(3, 0, -3, 0.2, 2, 0.4, -3, 0.6, 2)).containsExactly(0.0, 0.2, 0.4, 0.6);
    }

    @Test
    void whatCreepsBackWithoutTurningHasNoCycle() {
        assertThat(counted(1, 0, -20)).containsExactly(0.0);
    }

    @Test
    void whatIsNeverSeenHasNoCycle() {
        assertThat(counted(1, 0, -3, 0.2, -1.5, 0.4, -2)).containsExactly(0.0);
    }
}
