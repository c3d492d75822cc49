package org.ridewright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Draws fill the unit cube evenly, and each can be looked up by its number. */
class DrawsTest {
    /** A digital net in base 2 has one of its first 2^m points in each of 2^m equal strips of any coordinate, shifted or not. */
    @ParameterizedTest
    @ValueSource(ints = {16, 64, 256})
    void everyStripOfEveryCoordinateHoldsOneSobolPoint(int count) {
        Draws draws = new Draws(Draws.Kind.SOBOL, count, 12, 7);
        for (int d = 0; d < 12; d++) {
            Set<Integer> strips = new HashSet<>();
            for (int i = 0; i < count; i++) {
                strips.add((int) (draws.point(i)[d] * count));
            }
            assertThat(strips).as("coordinate %d", d).hasSize(count);
        }
    }

    /** The first two coordinates are a (0, m, 2)-net: any elementary box of area 2^−m holds one point. */
    @Test
    void everyElementaryBoxOfTheFirstTwoCoordinatesHoldsOneSobolPoint() {
        Draws draws = new Draws(Draws.Kind.SOBOL, 256, 2, 3);
        for (int m = 0; m <= 8; m++) {
            Set<Integer> boxes = new HashSet<>();
            for (int i = 0; i < 256; i++) {
                double[] p = draws.point(i);
                boxes.add((int) (p[0] * (1 << m)) * 1000 + (int) (p[1] * (1 << (8 - m))));
            }
            assertThat(boxes).hasSize(256);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7, 100, 1000})
    void everyStripOfEveryCoordinateHoldsOnePointOfALatinHypercube(int count) {
        Draws draws = new Draws(Draws.Kind.LATIN, count, 5, 11);
        for (int d = 0; d < 5; d++) {
            Set<Integer> strips = new HashSet<>();
            for (int i = 0; i < count; i++) {
                strips.add((int) (draws.point(i)[d] * count));
            }
            assertThat(strips).hasSize(count);
        }
    }

    @Test
    void coordinatesOfALatinHypercubeKnowNothingOfEachOther() {
        Draws draws = new Draws(Draws.Kind.LATIN, 2000, 2, 5);
        double sum = 0;
        for (int i = 0; i < 2000; i++) {
            double[] p = draws.point(i);
            sum += (p[0] - 0.5) * (p[1] - 0.5);
        }
        // standard error of a correlation of independent coordinates is 1/√n
        assertThat(12 * sum / 2000).isCloseTo(0, within(4 / Math.sqrt(2000)));
    }

    @ParameterizedTest
    @EnumSource(Draws.Kind.class)
    void aPointDoesNotDependOnWhichWereLookedUpBefore(Draws.Kind kind) {
        Draws forward = new Draws(kind, 300, 7, 1);
        Draws jumping = new Draws(kind, 300, 7, 1);
        for (int i = 0; i < 300; i++) {
            int other = (i * 77) % 300;
            double[] jumped = jumping.point(other);
            assertThat(new Draws(kind, 300, 7, 1).point(other)).isEqualTo(jumped);
            double[] inTurn = forward.point(i);
            assertThat(jumping.point(i)).isEqualTo(inTurn);
        }
    }

    @ParameterizedTest
    @EnumSource(Draws.Kind.class)
    void everyCoordinateIsStrictlyBetweenNoughtAndOne(Draws.Kind kind) {
        Draws draws = new Draws(kind, 5000, 40, 99);
        for (int i = 0; i < 5000; i++) {
            for (double share : draws.point(i)) {
                assertThat(Normal.quantile(share)).isFinite();
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Draws.Kind.class)
    void anotherSeedGivesOtherPoints(Draws.Kind kind) {
        assertThat(new Draws(kind, 10, 3, 1).point(4)).isNotEqualTo(new Draws(kind, 10, 3, 2).point(4));
    }
}
