package org.ridewright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sensitivity on functions of which it is known. */
class SensitivityTest {
    private static final double A = 7;
    private static final double B = 0.1;

    /** Ishigami and Homma (1990): x from −π to π; the third value acts through the first alone. */
    private static double ishigami(double[] share) {
        double[] x = new double[3];
        for (int i = 0; i < 3; i++) {
            x[i] = Math.PI * (2 * share[i] - 1);
        }
        return Math.sin(x[0]) + A * Math.pow(Math.sin(x[1]), 2) + B * Math.pow(x[2], 4) * Math.sin(x[0]);
    }

    private static IndexSums indices(int draws) {
        return indices(draws, 4);
    }

    private static IndexSums indices(int draws, long seed) {
        SaltelliDesign design = new SaltelliDesign(3, draws, seed);
        IndexSums sums = new IndexSums(3, seed);
        double[] f = new double[5];
        for (long i = 0; i < design.size(); i++) {
            f[(int) (i % 5)] = ishigami(design.point(i));
            if (i % 5 == 4) {
                sums.add(i / 5, f);
            }
        }
        return sums;
    }

    /** Closed form: V = a²/8 + bπ⁴/5 + b²π⁸/18 + ½; V₁ = ½(1 + bπ⁴/5)², V₂ = a²/8, V₁₃ = 8b²π⁸/225 (Ishigami and Homma 1990; Saltelli and others 2008). */
    private static double[] known() {
        double p4 = Math.pow(Math.PI, 4);
        double v = A * A / 8 + B * p4 / 5 + B * B * p4 * p4 / 18 + 0.5;
        double v1 = 0.5 * (1 + B * p4 / 5) * (1 + B * p4 / 5);
        double v2 = A * A / 8;
        double v13 = 8 * B * B * p4 * p4 / 225;
        return new double[] {v1 / v, v2 / v, 0, (v1 + v13) / v, v2 / v, v13 / v, v};
    }

    @ParameterizedTest
    @CsvSource({"256, 0.05", "4096, 0.01"})
    void ishigamisIndicesAreFoundAndTheIntervalsHoldThem(int draws, double tolerance) {
        IndexSums sums = indices(draws);
        double[] known = known();

        for (int i = 0; i < 3; i++) {
            assertThat(sums.first(i).value()).as("first %d", i).isCloseTo(known[i], within(tolerance));
            assertThat(sums.total(i).value()).as("total %d", i).isCloseTo(known[3 + i], within(tolerance));
            assertThat(known[i])
                    .as("first %d", i)
                    .isBetween(sums.first(i).low(), sums.first(i).high());
            assertThat(known[3 + i])
                    .as("total %d", i)
                    .isBetween(sums.total(i).low(), sums.total(i).high());
        }
        assertThat(sums.deviation().value()).isCloseTo(Math.sqrt(known[6]), within(10 * tolerance));
    }

    /** 30 seeds, 5 indices each that are not nil; the points are spread more evenly than the resampling assumes, so that intervals are rather too wide. */
    @Test
    void intervalsHoldTheKnownIndicesInNineTenthsOfAllSeeds() {
        double[] known = known();
        int held = 0;
        int all = 0;
        for (int seed = 1; seed <= 30; seed++) {
            IndexSums sums = indices(256, seed);
            for (int i = 0; i < 3; i++) {
                Estimate[] found = {sums.first(i), sums.total(i)};
                for (int j = 0; j < 2; j++) {
                    boolean nil = known[3 * j + i] == 0;
                    all += nil ? 0 : 1;
                    held += !nil && found[j].low() <= known[3 * j + i] && known[3 * j + i] <= found[j].high() ? 1 : 0;
                }
            }
        }

        assertThat(all).isEqualTo(150);
        assertThat(held / (double) all).isBetween(0.85, 1.0);
    }

    @Test
    void intervalsNarrowWithTheRootOfTheDraws() {
        Estimate few = indices(256).total(0);
        Estimate many = indices(4096).total(0);

        assertThat((few.high() - few.low()) / (many.high() - many.low())).isBetween(2.5, 6.0);
    }

    private static IndexSums withoutEvery(int nth) {
        IndexSums sums = new IndexSums(1, 1);
        for (int i = 0; i < 500; i++) {
            double a = Mix.uniform(i, 1);
            double b = Mix.uniform(i, 2);
            sums.add(i, i % nth == 0 ? new double[] {a, Double.NaN, b} : new double[] {a, b, b});
        }
        return sums;
    }

    @Test
    void aFunctionLeftOutWhereItHasNoValueGivesTheIndicesOfTheRest() {
        IndexSums sums = withoutEvery(10);

        assertThat(sums.used()).isEqualTo(450);
        assertThat(sums.left()).isEqualTo(50);
        assertThat(sums.total(0).value()).isCloseTo(1, within(0.1));
    }

    @Test
    void ofAFunctionThatLacksMoreThanATenthNothingIsTold() {
        IndexSums sums = withoutEvery(9);
        EffectSums effects = effects(2, x -> x[0] > 0.7 ? Double.NaN : x[0], 20);

        assertThat(sums.isTold()).isFalse();
        assertThat(sums.total(0).value()).isNaN();
        assertThat(sums.first(0).value()).isNaN();
        assertThat(sums.deviation().value()).isNaN();
        assertThat(effects.isTold()).isFalse();
        assertThat(effects.size(0).value()).isNaN();
    }

    private static EffectSums effects(int k, ToDoubleFunction<double[]> f, int trajectories) {
        MorrisDesign design = new MorrisDesign(k, trajectories, 4, 9);
        EffectSums sums = new EffectSums(k, design, 9);
        double[] values = new double[k + 1];
        for (long i = 0; i < design.size(); i++) {
            int step = (int) (i % (k + 1));
            values[step] = f.applyAsDouble(design.point(i));
            if (step == k) {
                sums.add(i / (k + 1), values);
            }
        }
        return sums;
    }

    @Test
    void theEffectsOfAPlaneAreItsSlopes() {
        EffectSums sums = effects(4, x -> 3 * x[0] - 2 * x[1] + 0 * x[2] + 0.5 * x[3], 10);
        double[] slopes = {3, -2, 0, 0.5};

        for (int d = 0; d < 4; d++) {
            assertThat(sums.mean(d).value()).isCloseTo(slopes[d], within(1e-12));
            assertThat(sums.size(d).value()).isCloseTo(Math.abs(slopes[d]), within(1e-12));
            assertThat(sums.deviation(d).value()).isCloseTo(0, within(1e-6));
        }
    }

    /** f = (x₀ − ½) x₁: the mean effect of x₁ is nil, its size is not; both act through each other. */
    @Test
    void aValueThatActsThroughAnotherHasASpreadOfEffectsButNoMeanOne() {
        EffectSums sums = effects(3, x -> (x[0] - 0.5) * x[1], 400);

        assertThat(sums.mean(1).value()).isCloseTo(0, within(0.05));
        assertThat(sums.size(1).value()).isCloseTo(0.25, within(0.03));
        assertThat(sums.deviation(1).value()).isGreaterThan(0.2);
        assertThat(sums.size(2).value()).isZero();
    }

    /** f = x₀ x₁: the effect of x₁ is x₀; over 4 jumps the deviation about their mean has 3 degrees of freedom. */
    @Test
    void theSpreadOfEffectsIsThatOfASample() {
        int trajectories = 4;
        MorrisDesign design = new MorrisDesign(2, trajectories, 4, 9);
        double[] effects = new double[trajectories];
        for (int t = 0; t < trajectories; t++) {
            for (int step = 0; step < 2; step++) {
                double[] before = design.point(3L * t + step);
                double[] after = design.point(3L * t + step + 1);
                if (design.jumping(t, step) == 1) {
                    effects[t] = (after[0] * after[1] - before[0] * before[1]) / (after[1] - before[1]);
                }
            }
        }
        double mean = Arrays.stream(effects).average().orElseThrow();
        double squares =
                Arrays.stream(effects).map(e -> (e - mean) * (e - mean)).sum();

        assertThat(effects(2, x -> x[0] * x[1], trajectories).deviation(1).value())
                .isCloseTo(Math.sqrt(squares / (trajectories - 1)), within(1e-12));
    }

    @Test
    void everyTrajectoryMovesEachValueOnceByHalfItsRange() {
        MorrisDesign design = new MorrisDesign(5, 30, 6, 2);
        for (int trajectory = 0; trajectory < 30; trajectory++) {
            boolean[] moved = new boolean[5];
            for (int step = 0; step < 5; step++) {
                double[] before = design.point(6L * trajectory + step);
                double[] after = design.point(6L * trajectory + step + 1);
                int jumping = design.jumping(trajectory, step);
                for (int d = 0; d < 5; d++) {
                    double jump = d != jumping ? 0 : design.up(trajectory, d) ? 0.5 : -0.5;
                    assertThat(after[d] - before[d]).isCloseTo(jump, within(1e-12));
                }
                assertThat(moved[jumping]).isFalse();
                moved[jumping] = true;
            }
        }
    }
}
