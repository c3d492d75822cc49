package org.ridewright.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.quantity.UnfitValueException;

class CalibratorTest {
    private static final int SEEDS = 200;
    private final BounceAndPitch vehicle = new BounceAndPitch();

    @Test
    void ninetyPercentIntervalsHoldTheTruthNineTimesInTen() {
        int[] held = new int[5];
        for (int seed = 0; seed < SEEDS; seed++) {
            Random chance = new Random(seed);
            double[] truth = vehicle.truth(chance);
            List<Datum> data = vehicle.measured(truth, BounceAndPitch.MEASURABLE, chance);
            Calibration found = Calibrator.calibrate(vehicle.unknowns(), data, vehicle);
            for (int j = 0; j < truth.length; j++) {
                double value = vehicle.unknowns().get(j).spread().at(truth[j]);
                held[j] += found.lower(j) <= value && value <= found.upper(j) ? 1 : 0;
            }
        }
        int sum = 0;
        for (int count : held) {
            assertThat(count / (double) SEEDS).isBetween(0.84, 0.96);
            sum += count;
        }
        assertThat(sum / (5.0 * SEEDS)).isBetween(0.84, 0.95);
    }

    @Test
    void predictiveIntervalsHoldWhatWasKeptBackNineTimesInTen() {
        int held = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            Random chance = new Random(1000 + seed);
            List<Datum> data =
                    new ArrayList<>(vehicle.measured(vehicle.truth(chance), BounceAndPitch.MEASURABLE, chance));
            data.set(1, data.get(1).kept());
            Calibration found = Calibrator.calibrate(vehicle.unknowns(), data, vehicle);
            held += found.keptBack().get(0).within() ? 1 : 0;
        }
        assertThat(held / (double) SEEDS).isBetween(0.84, 0.95);
    }

    @Test
    void exactDataGiveTheTruthBack() {
        double[] truth = {0.7, -0.5, 1.1, -0.8, 0.4};
        double[] exact = vehicle.predict(truth);
        List<Datum> data = new ArrayList<>();
        for (int i = 0; i < exact.length; i++) {
            data.add(Datum.of("datum " + i, "", exact[i], 1e-5 * exact[i]));
        }
        Calibration found = Calibrator.calibrate(vehicle.unknowns(), data, vehicle);
        for (int j = 0; j < truth.length; j++) {
            assertThat(found.posterior().z(j)).isCloseTo(truth[j], within(1e-3));
        }
        assertThat(found.atRest()).isTrue();
    }

    @Test
    void aFrequencyAloneKnowsOnlyTheRatioOfRateToMass() {
        Unknown rate = BounceAndPitch.unknown("springs.rate", 20_000, 6000, QuantityKind.RATE);
        Unknown mass = BounceAndPitch.unknown("body.mass", 200, 60, QuantityKind.MASS);
        ForwardModel frequency = z ->
                new double[] {Math.sqrt(rate.spread().at(z[0]) / mass.spread().at(z[1])) / (2 * Math.PI)};
        Calibration found =
                Calibrator.calibrate(List.of(rate, mass), List.of(Datum.of("bounce", "Hz", 1.7, 0.01)), frequency);
        assertThat(found.together()).hasSize(1);
        assertThat(found.together().get(0).words())
                .contains("cannot tell")
                .contains("springs.rate")
                .contains("body.mass")
                .contains("the ratio ");
        assertThat(found.posterior().correlation(0, 1)).isGreaterThan(0.95);
        // the ratio itself is known to twice 0.6 %
        double ratio = found.value(0) / found.value(1);
        assertThat(ratio).isCloseTo(Math.pow(2 * Math.PI * 1.7, 2), within(0.01 * ratio));
    }

    @Test
    void ofASumMoreOfOneLooksLikeMoreOfTheOtherAndOfADifferenceLikeLess() {
        assertThat(lengthsOfWhichOneSpanIsKnown(1))
                .contains("1.0 m more of the first looks like 1.0 m more of ")
                .doesNotContain("less of");
        assertThat(lengthsOfWhichOneSpanIsKnown(-1))
                .contains("1.0 m less of ")
                .doesNotContain("looks like 1.0 m more of");
    }

    private static String lengthsOfWhichOneSpanIsKnown(int sign) {
        Unknown x = BounceAndPitch.unknown("x", 10, 1, QuantityKind.LENGTH);
        Unknown y = BounceAndPitch.unknown("y", 10, 1, QuantityKind.LENGTH);
        ForwardModel span =
                z -> new double[] {x.spread().at(z[0]) + sign * y.spread().at(z[1])};
        Datum tape = Datum.of("span", "m", 10 + sign * 10, 0.01);
        return Calibrator.calibrate(List.of(x, y), List.of(tape), span)
                .together()
                .get(0)
                .words();
    }

    /** {@code y = x + h} with error σ, both known to 1 before, h held: the estimate takes {@code K = 1/(2 + σ²)} of the difference, with the error of h. */
    @Test
    void theErrorOfWhatIsHeldStandsInTheEstimate() {
        Unknown x = BounceAndPitch.unknown("x", 10, 1, QuantityKind.LENGTH);
        RealMatrix one = new Array2DRowRealMatrix(new double[] {1 / 0.1});
        RealMatrix alone = new Array2DRowRealMatrix(new double[] {1});
        Calibration found = Calibrator.calibrate(
                List.of(x),
                List.of(Datum.of("sum", "m", 10.3, 0.1)),
                z -> new double[] {x.spread().at(z[0])},
                1,
                one,
                alone);
        double gain = 1 / 2.01;
        assertThat(found.posterior().z(0)).isCloseTo(0.3 * gain, within(1e-6));
        assertThat(found.posterior().correlationWithHeld(0, 0)).isCloseTo(-gain / Math.sqrt(1 - gain), within(1e-6));
    }

    @Test
    void aMisreadScaleDisagreesWithTheRest() {
        Random chance = new Random(7);
        double[] truth = vehicle.truth(chance);
        List<Datum> data = new ArrayList<>(vehicle.measured(truth, BounceAndPitch.MEASURABLE, chance));
        Unknown mass = BounceAndPitch.unknown("body.mass", 180, 2, QuantityKind.MASS);
        truth[0] = 0;
        List<Unknown> unknowns = new ArrayList<>(vehicle.unknowns());
        unknowns.set(0, mass);
        ForwardModel known = z -> {
            double[] other = z.clone();
            other[0] *=
                    Math.log1p(2 / 180.0) / vehicle.unknowns().get(0).spread().deviation();
            return vehicle.predict(other);
        };
        double[] exact = known.predict(truth);
        for (int i = 0; i < exact.length; i++) {
            Datum datum = data.get(i);
            data.set(i, Datum.of(datum.label(), datum.unit(), exact[i] + (i == 3 ? 20 : 0), datum.uncertainty()));
        }
        Calibration found = Calibrator.calibrate(unknowns, data, known);
        assertThat(found.residuals().get(3).disagrees()).isTrue();
        assertThat(found.residuals().get(3).normalised()).isGreaterThan(3);
        assertThat(Math.abs(found.residuals().get(3).normalised()))
                .isGreaterThan(Math.abs(found.residuals().get(0).normalised()));
        assertThat(found.posterior().birge()).isGreaterThan(1);
    }

    @Test
    void aNormalisedResidualIsWhatTheRestOfTheDataMissItBy() {
        Random chance = new Random(11);
        List<Datum> data = vehicle.measured(vehicle.truth(chance), BounceAndPitch.MEASURABLE, chance);
        Calibration all = Calibrator.calibrate(vehicle.unknowns(), data, vehicle);
        for (int i = 0; i < data.size(); i++) {
            List<Datum> rest = new ArrayList<>(data);
            rest.set(i, data.get(i).kept());
            Calibration without = Calibrator.calibrate(vehicle.unknowns(), rest, vehicle);
            assertThat(all.residuals().get(i).normalised())
                    .isCloseTo(without.keptBack().get(0).normalised(), within(0.25));
        }
    }

    /** One reading and one tolerance: how far they are apart is one number, whichever of the two is asked. */
    @Test
    void anIntervalWidenedForABentModelMakesNoContradiction() {
        Unknown height = BounceAndPitch.unknown("height", 1, 0.1, QuantityKind.LENGTH);
        ForwardModel levelsOff = z -> new double[] {Math.tanh(3 * z[0])};
        Datum record = new Datum("level", "", 0.3, 1, false, "record");
        Calibration found = Calibrator.calibrate(List.of(height), List.of(record), levelsOff);
        assertThat(found.posterior().deviation(0)).isGreaterThan(1.2 / Math.sqrt(10));
        assertThat(found.residuals().get(0).normalised()).isCloseTo(0.3 / Math.sqrt(10), within(0.003));
        assertThat(found.move(0)).isCloseTo(0.3 / Math.sqrt(10), within(0.003));
    }

    @Test
    void dataThatDependOnNothingSoughtAreRefused() {
        Unknown unknown = BounceAndPitch.unknown("seats[0].cushion.rate", 40_000, 8000, QuantityKind.RATE);
        assertThatThrownBy(() -> Calibrator.calibrate(
                        List.of(unknown), List.of(Datum.of("front weight", "kg", 90, 2)), z -> new double[] {91}))
                .isInstanceOf(CalibrationException.class)
                .hasMessageContaining("tell nothing")
                .hasMessageContaining("seats[0].cushion.rate");
    }

    @Test
    void nothingToFitIsRefused() {
        Datum kept = Datum.of("front weight", "kg", 90, 2).kept();
        assertThatThrownBy(() -> Calibrator.calibrate(vehicle.unknowns(), List.of(kept), z -> new double[] {90}))
                .isInstanceOf(CalibrationException.class)
                .hasMessageContaining("kept back");
        assertThatThrownBy(() -> Calibrator.calibrate(List.of(), List.of(kept), z -> new double[] {90}))
                .isInstanceOf(CalibrationException.class)
                .hasMessageContaining("no value is sought");
    }

    @Test
    void vehiclesThatCannotBeAreGoneRound() {
        // below the starting value by more than one deviation there is no such vehicle
        Unknown rate = BounceAndPitch.unknown("rate", 20_000, 6000, QuantityKind.RATE);
        ForwardModel edge = z -> {
            if (z[0] < -1) {
                throw new UnfitValueException("too soft");
            }
            return new double[] {rate.spread().at(z[0])};
        };
        Calibration found = Calibrator.calibrate(List.of(rate), List.of(Datum.of("rate", "N/m", 17_000, 300)), edge);
        assertThat(found.value(0)).isCloseTo(17_000, within(50.0));
        assertThatThrownBy(
                        () -> Calibrator.calibrate(List.of(rate), List.of(Datum.of("rate", "N/m", 17_000, 300)), z -> {
                            throw new UnfitValueException("never");
                        }))
                .isInstanceOf(CalibrationException.class);
    }

    @Test
    void whereCountingMakesStepsEvolutionFindsTheWay() {
        // whole cycles only: no slope to follow
        Unknown friction = BounceAndPitch.unknown("friction", 100, 60, QuantityKind.FORCE);
        ForwardModel steps = z -> {
            double f = friction.spread().at(z[0]);
            return new double[] {Math.rint(800 / f), f + 3 * Math.sin(40 * z[0])};
        };
        List<Datum> data = List.of(Datum.of("cycles", "", 5, 0.5), Datum.of("rough reading", "N", 160, 2));
        Calibration found = Calibrator.calibrate(List.of(friction), data, steps);
        double best = Double.POSITIVE_INFINITY;
        FitProblem problem = new FitProblem(1, data, steps);
        for (double z = -4; z < 4; z += 0.0005) {
            best = Math.min(best, problem.objective(new double[] {z}));
        }
        assertThat(found.objective()).isCloseTo(best, within(0.1));
    }

    @Test
    void aValueWithoutToleranceIsTakenForKnownToAFactorOfTwo() {
        NamedValue value = new NamedValue(
                "axles[0].springs[0].rate", "14 kN/m", Optional.of(Measure.of(14_000, QuantityKind.RATE)));
        Unknown unknown = Unknown.of(value);
        assertThat(unknown.spread().at(1)).isCloseTo(28_000, within(1e-6));
        assertThat(unknown.spread().at(-1)).isCloseTo(7000, within(1e-6));
        assertThat(unknown.prior()).contains("factor of 2");
        assertThatThrownBy(() -> Unknown.of(new NamedValue("axles[0].wheels.tyre", "iron", Optional.empty())))
                .isInstanceOf(UnfitValueException.class)
                .hasMessageContaining("no quantity");
    }
}
