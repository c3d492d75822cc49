package org.ridewright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is told of answers draw by draw. */
class TriesTest {
    private static final int DRAWS = 400;
    private static final double[] AXIS = {1, 2, 3, 4, 5};
    private static final List<String> LABELS = List.of("cart", "empty", "gravel", "8 km/h");

    private final Random chance = new Random(7);

    private static Tries tries(RideMeasure measure, int draws) {
        Study study = new Study(
                "levels",
                "",
                List.of(),
                List.of(new Question(measure, Optional.empty())),
                new Method.Sweep(List.of()),
                "");
        return new Tries(study, List.of("a", "b", "c", "d", "e"), AXIS, List.of(LABELS), draws);
    }

    /** @param shape of the answer along the levels; each draw shifts all levels by the same amount, and each by a little of its own */
    private Tries shaped(RideMeasure measure, double own, IntToDoubleFunction shape) {
        Tries tries = tries(measure, DRAWS);
        for (int d = 0; d < DRAWS; d++) {
            double common = 10 + 3 * chance.nextGaussian();
            for (int level = 0; level < AXIS.length; level++) {
                tries.put(level, 0, 0, d, common + shape.applyAsDouble(level) + own * chance.nextGaussian());
            }
        }
        return tries;
    }

    @Test
    void whatAllLevelsShareCancelsInTheirDifference() {
        Tries tries = shaped(RideMeasure.SEAT_RMS, 0.01, level -> 0.5 * level);

        assertThat(tries.value(1, 0, 0).high() - tries.value(1, 0, 0).low()).isGreaterThan(5);
        Estimate difference = tries.difference(0, 1, 0, 0);
        assertThat(difference.value()).isEqualTo(0.5, within(0.01));
        assertThat(difference.high() - difference.low()).isLessThan(0.1);
    }

    @Test
    void theBestOfAValleyIsItsFloorWithTheNeighboursThatCannotBeToldApart() {
        Tries.Band clear = shaped(RideMeasure.SEAT_RMS, 0.01, level -> (level - 2) * (level - 2))
                .best(0, 0);
        assertThat(clear).isEqualTo(new Tries.Band(2, 2, 2));

        Tries.Band blurred = shaped(RideMeasure.SEAT_RMS, 1.0, level -> (level - 2) * (level - 2))
                .best(0, 0);
        assertThat(blurred.low()).isEqualTo(1);
        assertThat(blurred.high()).isEqualTo(3);
    }

    @Test
    void ofAFlatAnswerNoLevelIsToldApart() {
        Tries.Band band = shaped(RideMeasure.SEAT_RMS, 1.0, level -> 0).best(0, 0);

        assertThat(band.low()).isZero();
        assertThat(band.high()).isEqualTo(4);
    }

    @Test
    void whereLessIsWorseTheGreatestIsBest() {
        assertThat(shaped(RideMeasure.LEAST_LOAD, 0.01, level -> level)
                        .best(0, 0)
                        .best())
                .isEqualTo(4);
        assertThat(shaped(RideMeasure.SEAT_RMS, 0.01, level -> level).best(0, 0).best())
                .isZero();
    }

    @Test
    void aBoundIsPassedBetweenLevelsInProportion() {
        Tries tries = tries(RideMeasure.SEAT_RMS, 2);
        for (int level = 0; level < AXIS.length; level++) {
            tries.put(level, 0, 0, 0, level);
            tries.put(level, 0, 0, 1, 0.1 * level);
        }

        Tries.Passing passing = tries.first(true, 1.5, 0, 0);
        assertThat(passing.at().low()).isEqualTo(2.5, within(1e-12));
        assertThat(passing.never()).isEqualTo(0.5);
        assertThat(passing.at().high()).isNaN();
    }

    @Test
    void whatIsNilUpToALevelLeavesItBetweenThatAndTheNext() {
        Tries tries = tries(RideMeasure.TIME_OFF_GROUND, 0);
        IntStream.range(0, AXIS.length).forEach(level -> tries.put(level, 0, 0, 0, level < 3 ? 0 : 0.2));

        Tries.Passing passing = tries.first(true, 0, 0, 0);
        assertThat(passing.at().value()).isEqualTo(3);
        assertThat(passing.after().value()).as("it leaves nil somewhere before").isEqualTo(4);
    }

    @Test
    void whatGrowsThroughABoundIsPassedAtOnePlace() {
        Tries tries = tries(RideMeasure.SEAT_RMS, 0);
        IntStream.range(0, AXIS.length).forEach(level -> tries.put(level, 0, 0, 0, level));

        Tries.Passing passing = tries.first(true, 1.5, 0, 0);
        assertThat(passing.after().value()).isEqualTo(passing.at().value()).isEqualTo(2.5);
    }

    @Test
    void drawsThatCouldNotBeRiddenToTheBoundAreCounted() {
        Tries tries = tries(RideMeasure.SEAT_RMS, 4);
        for (int d = 0; d < 4; d++) {
            for (int level = 0; level < AXIS.length; level++) {
                tries.put(level, 0, 0, d, d == 0 && level == 1 ? Double.NaN : level);
            }
        }

        assertThat(tries.first(true, 1.5, 0, 0).left()).isEqualTo(0.25);
        assertThat(tries.first(true, -1, 0, 0).left()).as("passed before").isZero();
    }

    @Test
    void aDrawThatCouldNotBeRiddenCountsForNothing() {
        Tries tries = shaped(RideMeasure.SEAT_RMS, 0.01, level -> 0.5 * level);
        Estimate before = tries.difference(0, 1, 0, 0);
        tries.put(0, 0, 0, 0, Double.NaN);

        assertThat(tries.difference(0, 1, 0, 0).value()).isEqualTo(before.value(), within(0.01));
    }

    @Test
    void aRideTestIsFoundByWhatTellsItFromTheOthers() {
        Tries tries = tries(RideMeasure.SEAT_RMS, 0);

        assertThat(tries.test(List.of("gravel"))).hasValue(0);
        assertThat(tries.test(List.of())).hasValue(0);
        assertThat(tries.test(List.of("setts"))).isEmpty();
    }
}
