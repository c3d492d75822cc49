package org.ridewright.fieldwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.ridewright.fieldwork.LoadDeflection.Row;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;

/** Loops of springs whose law is known, made by stepping that law through small deflections and not by the solution that is fitted. */
class LoadLoopTest {
    private static final double RATE = 18_200;
    private static final double SHARE = 0.075;
    private static final double CONSTANT = 15;
    private static final double LOCKED = 36_400;
    private static final double TAPE = 0.0005;

    @Test
    void aPerfectLoopGivesBackItsSpring() {
        LoadLoop loop = LoadLoop.of(rows(LOCKED, 100, 0, new Random(1))).orElseThrow();

        assertThat(loop.rate().value()).isCloseTo(RATE, Percentage.withPercentage(0.1));
        assertThat(loop.shareOfLoad().value()).isCloseTo(SHARE, offset(0.001));
        assertThat(loop.constant().value()).isCloseTo(CONSTANT, offset(0.5));
        assertThat(loop.lockedRate().orElseThrow().value()).isCloseTo(LOCKED, Percentage.withPercentage(1));
        assertThat(loop.halfHeight().value())
                .isCloseTo(CONSTANT + SHARE * loop.middle().value(), offset(0.5));
    }

    @Test
    void nineIntervalsOfTenHoldTheTruth() {
        int rates = 0;
        int shares = 0;
        int halves = 0;
        int seeds = 200;
        for (int seed = 0; seed < seeds; seed++) {
            LoadLoop loop =
                    LoadLoop.of(rows(LOCKED, 120, TAPE, new Random(seed))).orElseThrow();
            rates += holds(loop.rate(), RATE) ? 1 : 0;
            shares += holds(loop.shareOfLoad(), SHARE) ? 1 : 0;
            halves += holds(loop.halfHeight(), CONSTANT + SHARE * loop.middle().value()) ? 1 : 0;
        }
        assertThat(rates).isBetween(168, 190);
        assertThat(shares).isBetween(168, 190);
        assertThat(halves).isBetween(168, 190);
    }

    @Test
    void aReversalWithoutRowsInItTellsNoLockedRate() {
        // 5 kN/mm: over before the first row after the reversal
        LoadLoop loop = LoadLoop.of(rows(5e6, 120, TAPE, new Random(3))).orElseThrow();

        assertThat(loop.lockedRate()).isEmpty();
        assertThat(Math.abs(loop.rate().value() - RATE))
                .isLessThan(3 * loop.rate().tolerance());
    }

    @Test
    void whatTheScalesAreWrongByGoesIntoTheRateAsAWhole() {
        List<Row> rows = rows(LOCKED, 120, 0, new Random(1));
        List<Row> doubtful = rows.stream()
                .map(row -> new Row(within(row.load(), 0.02 * row.load().value()), row.deflection()))
                .toList();

        double trusted = LoadLoop.of(rows).orElseThrow().rate().tolerance();
        double doubted = LoadLoop.of(doubtful).orElseThrow().rate().tolerance();

        assertThat(doubted * doubted - trusted * trusted)
                .isCloseTo(Math.pow(0.02 * RATE, 2), Percentage.withPercentage(1));
    }

    @Test
    void loadingAloneMakesNoLoop() {
        List<Row> rows = rows(LOCKED, 120, 0, new Random(1)).subList(0, 8);

        assertThat(LoadLoop.of(rows)).isEmpty();
    }

    @Test
    void deflectionAgainstTheLoadMakesNoLoop() {
        List<Row> against = rows(LOCKED, 120, 0, new Random(1)).stream()
                .map(row -> new Row(row.load(), Measure.of(-row.deflection().value(), QuantityKind.LENGTH)))
                .map(row -> new Row(row.load(), within(row.deflection(), TAPE)))
                .toList();

        assertThat(LoadLoop.of(against)).isEmpty();
    }

    /**
     * {@code F = K δ + h}, {@code dh/dδ = (sgn(δ̇) F_c − h)/β}, between ± X: area {@code 4 F_c (X − β tanh(X/β))}, 30 400 N mm of K = 100 N/mm, F_c = 400 N, β = 1 mm, X =
     * 20 mm. Source: SAE 800905 in its step-free form, from memory; area worked out in closed form.
     */
    @Test
    void aRoundOfTheExponentialEnvelopeTakesUpItsArea() {
        double k = 100e3;
        double limit = 400;
        double beta = 1e-3;
        double most = 20e-3;
        double h = -limit * Math.tanh(most / beta);
        List<Row> rows = new ArrayList<>();
        int steps = 400;
        double step = 2 * most / steps;
        for (int sign = 1; sign >= -1; sign -= 2) {
            for (int i = 0; i < steps; i++) {
                double at = sign * (-most + i * step);
                rows.add(row(k * at + h, at));
                h = sign * limit + (h - sign * limit) * Math.exp(-step / beta);
            }
        }

        assertThat(LoadLoop.area(rows)).isCloseTo(30.4, Percentage.withPercentage(1));
    }

    /** One slider between ± X: a parallelogram, {@code 4 S (X − S/k_p)}. */
    @Test
    void aRoundOfOneSliderTakesUpItsParallelogram() {
        double s = 400;
        double kp = 200e3;
        double x = 20e-3;
        double turn = 2 * s / kp;
        List<Row> rows = List.of(
                row(-20e3 * 0.1 - s, -x),
                row(100e3 * (-x + turn) + s, -x + turn),
                row(100e3 * x + s, x),
                row(100e3 * (x - turn) - s, x - turn));

        assertThat(LoadLoop.area(rows)).isCloseTo(4 * s * (x - s / kp), Percentage.withPercentage(1e-6));
    }

    /** Loads up, down and up again, each row held for the deflection at which the spring carries it. */
    private static List<Row> rows(double locked, double most, double noise, Random chance) {
        List<Row> rows = new ArrayList<>();
        double deflection = 0;
        double friction = 0;
        double step = 1e-6;
        rows.add(read(0, 0, noise, chance));
        List<Double> masses = new ArrayList<>();
        for (double m = most / 10; m <= most + 1e-9; m += most / 10) {
            masses.add(m);
        }
        for (double m = most - most / 10; m >= -1e-9; m -= most / 10) {
            masses.add(m);
        }
        for (double m = most / 5; m <= most + 1e-9; m += most / 5) {
            masses.add(m);
        }
        double before = 0;
        for (double mass : masses) {
            double load = mass * 9.80665;
            double direction = Math.signum(load - before);
            while (direction * (RATE * deflection + friction - load) < 0) {
                deflection += direction * step;
                double limit = CONSTANT + SHARE * Math.max(0, RATE * deflection);
                friction = Math.max(-limit, Math.min(limit, friction + direction * locked * step));
            }
            before = load;
            rows.add(read(load, deflection, noise, chance));
        }
        return rows;
    }

    private static Row read(double load, double deflection, double noise, Random chance) {
        return row(load, deflection + 0.012 + noise * chance.nextGaussian());
    }

    private static Row row(double load, double deflection) {
        return new Row(
                Measure.of(load, QuantityKind.FORCE),
                new Measure(QuantityKind.LENGTH, deflection, TAPE, Provenance.MEASURED, ""));
    }

    private static Measure within(Measure measure, double tolerance) {
        return new Measure(measure.kind(), measure.value(), tolerance, measure.provenance(), measure.written());
    }

    private static boolean holds(Measure measure, double truth) {
        return Math.abs(measure.value() - truth) <= 1.645 * measure.tolerance();
    }
}
