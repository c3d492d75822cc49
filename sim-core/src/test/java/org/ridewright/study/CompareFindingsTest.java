package org.ridewright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** With draws the best is what the draws say, however the files as written happen to come out. */
class CompareFindingsTest {
    private static final int DRAWS = 40;
    private static final List<String> LABELS = List.of("dray", "laden", "gravel", "8 km/h");

    /** Two things, the second's answer of a draw by that of the first. */
    private static CompareFindings compared(RideMeasure measure, double one, double other, DoubleUnaryOperator second) {
        Uncertain nothing = new Uncertain(List.of());
        Study study = new Study(
                "two",
                "",
                List.of(
                        new Variant("one", new NoScenario(), Map.of()),
                        new Variant("other", new NoScenario(), Map.of())),
                List.of(new Question(measure, Optional.empty())),
                new Method.Compare(
                        Method.By.VARIANTS, DRAWS, Draws.Kind.SOBOL, 1, List.of(nothing, nothing), List.of()),
                "");
        CompareFindings findings = (CompareFindings) Findings.of(study);
        take(findings, 0, one);
        take(findings, 1, other);
        for (int d = 0; d < DRAWS; d++) {
            double x = 10 + Mix.uniform(d, 3);
            take(findings, 2 + 2L * d, x);
            take(findings, 3 + 2L * d, second.applyAsDouble(x));
        }
        return findings;
    }

    private static void take(Findings findings, long run, double answer) {
        Outcome outcome = new Outcome(List.of(new Outcome.Line(LABELS, List.of(answer), "")), "");
        findings.take(new Trial(run, (int) (run % 2), "draw", Map.of(), List.of("")), outcome);
    }

    @Test
    void theBestIsThatOfTheMedianAndNotOfTheFilesAsWritten() {
        CompareFindings findings = compared(RideMeasure.SEAT_RMS, 1, 2, x -> x - 0.5);

        assertThat(findings.best(0, 0)).isEqualTo(1);
        assertThat(findings.bestAsWritten(0, 0)).isZero();
        assertThat(findings.difference(0, 0, 0).quantile(0.5)).isEqualTo(0.5, within(1e-12));
        assertThat(findings.difference(1, 0, 0).count()).isZero();
        assertThat(findings.isWorse(0, 0, 0)).isTrue();
    }

    @Test
    void whereLessIsWorseADifferenceDownwardsIsTheWorseSide() {
        CompareFindings findings = compared(RideMeasure.LEAST_LOAD, 1, 2, x -> x + 0.5);

        assertThat(findings.best(0, 0)).isEqualTo(1);
        assertThat(findings.difference(0, 0, 0).high()).isEqualTo(-0.5, within(1e-12));
        assertThat(findings.isWorse(0, 0, 0)).isTrue();
        assertThat(findings.isWorse(1, 0, 0)).as("the best itself").isFalse();
    }

    /** The other thing answers in the easy half of the draws alone, a little worse than the one. */
    @Test
    void drawsThatOneThingCouldNotRideDoNotJudgeTheOther() {
        CompareFindings findings = compared(RideMeasure.SEAT_RMS, 1, 2, x -> x < 10.4 ? x + 0.01 : Double.NaN);

        assertThat(findings.spread(1, 0, 0).quantile(0.5))
                .as("its own median is lower")
                .isLessThan(findings.spread(0, 0, 0).quantile(0.5));
        assertThat(findings.best(0, 0)).isZero();
        assertThat(findings.difference(1, 0, 0).count()).isPositive();
    }

    @Test
    void differencesOfEitherSignAreNotToldApart() {
        int[] n = {0};
        CompareFindings findings = compared(RideMeasure.SEAT_RMS, 1, 2, x -> x + (n[0]++ % 2 == 0 ? 0.3 : -0.2));

        int other = 1 - findings.best(0, 0);
        assertThat(findings.isWorse(other, 0, 0)).isFalse();
    }

    @Test
    void differencesOfRoundOffAreNone() {
        CompareFindings findings = compared(RideMeasure.SEAT_RMS, 3.13, 3.13 + 3e-14, x -> x * (1 + 1e-14));

        assertThat(findings.best(0, 0)).as("neither is better").isEqualTo(-1);
        assertThat(findings.isSame(0, 0)).isTrue();
        assertThat(findings.isTied(0, 0)).isFalse();
        assertThat(compared(RideMeasure.SEAT_RMS, 3.13, 3.13, x -> x * (1 + 1e-6))
                        .best(0, 0))
                .as("a millionth is a difference")
                .isZero();
    }

    @Test
    void drawsThatNotAllThingsCouldRideAreNotCountedAsUsed() {
        CompareFindings findings = compared(RideMeasure.SEAT_RMS, 1, 2, x -> x < 10.4 ? x + 0.01 : Double.NaN);

        assertThat(findings.used(0, 0))
                .isEqualTo(findings.spread(1, 0, 0).count())
                .isLessThan(DRAWS);
    }
}
