package org.ridewright.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.ridewright.fieldwork.Heading;
import org.ridewright.fieldwork.LoadDeflection;
import org.ridewright.fieldwork.LoadDeflection.Loaded;
import org.ridewright.fieldwork.LoadDeflection.Row;
import org.ridewright.fieldwork.LoadLoop;
import org.ridewright.io.VehicleDocument;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.vehicle.Vehicle;

/** Loops of the phaeton's front springs, made by stepping their law through small deflections. */
class LoopEvidenceTest {
    private static final Path PHAETON = Path.of("..", "scenarios/vehicles/phaeton.yaml");
    private static final double TAPE = 0.0005;
    private static final double MOST = 1200;

    private final Trial truth = new Trial(VehicleDocument.read(PHAETON).asWritten());

    private LoopEvidence evidence(int rounds, double noise, long seed) {
        return LoopEvidence.of(fact(rounds, noise, seed));
    }

    private LoadDeflection fact(int rounds, double noise, long seed) {
        return new LoadDeflection(
                Heading.NONE, new Loaded.OneSpring("front", "front springs"), rows(rounds, noise, seed));
    }

    /** Up to 1.2 kN and down again, by steps of 120 N. */
    private List<Row> rows(int rounds, double noise, long seed) {
        ForceLaw law =
                SpringUnderLoad.of(truth.vehicle(), "front", "front springs").law();
        Random chance = new Random(seed);
        double deflection = 0;
        double friction = 0;
        double before = 0;
        List<Row> rows = new ArrayList<>();
        rows.add(row(0, noise * chance.nextGaussian()));
        for (int i = 1; i <= 20 * rounds; i++) {
            int place = i % 20;
            double load = MOST / 10 * (place <= 10 ? place : 20 - place);
            double direction = Math.signum(load - before);
            double step = 1e-6 * direction;
            while (direction * (law.elasticForce(deflection) + friction - load) < 0) {
                deflection += step;
                double limit = law.frictionLimit(deflection);
                friction = Math.max(
                        -limit, Math.min(limit, friction + law.friction().lockedRate() * step));
            }
            before = load;
            rows.add(row(load, deflection + noise * chance.nextGaussian()));
        }
        return rows;
    }

    private static Row row(double load, double deflection) {
        return new Row(
                Measure.of(load, QuantityKind.FORCE),
                new Measure(QuantityKind.LENGTH, deflection, TAPE, Provenance.MEASURED, ""));
    }

    private static double[] misses(LoopEvidence evidence, Trial trial) {
        double[] predicted = evidence.predict(trial, new double[0]);
        double[] misses = new double[predicted.length];
        for (int i = 0; i < misses.length; i++) {
            Datum datum = evidence.data().get(i);
            misses[i] = (predicted[i] - datum.observed()) / datum.uncertainty();
        }
        return misses;
    }

    @Test
    void theVehicleThatMadeTheLoopShowsItsFigures() {
        assertThat(truth.vehicle().axles().get(0).name()).isEqualTo("front");
        for (int rounds = 1; rounds <= 2; rounds++) {
            LoopEvidence evidence = evidence(rounds, 0, 1);
            assertThat(evidence.data()).hasSize(4);
            assertThat(misses(evidence, truth)).satisfies(misses -> {
                for (double miss : misses) {
                    assertThat(Math.abs(miss)).isLessThan(0.1);
                }
            });
        }
    }

    @Test
    void aSecondRoundTellsMoreOfTheSame() {
        List<Datum> one = evidence(1, 0, 1).data();
        List<Datum> two = evidence(2, 0, 1).data();
        for (int i = 0; i < one.size(); i++) {
            assertThat(two.get(i).observed()).isCloseTo(one.get(i).observed(), Percentage.withPercentage(1));
            assertThat(two.get(i).uncertainty()).isLessThan(0.85 * one.get(i).uncertainty());
        }
    }

    @Test
    void theRateIsKnownAsWellAsTheCheckSays() {
        LoadDeflection fact = fact(2, TAPE, 3);
        Datum rate = LoopEvidence.of(fact).data().get(0);
        LoadLoop loop = LoadLoop.of(fact.rows()).orElseThrow();

        assertThat(1000 * rate.observed()).isCloseTo(loop.rate().value(), Percentage.withPercentage(1e-6));
        assertThat(1000 * rate.uncertainty()).isCloseTo(loop.rate().tolerance(), Percentage.withPercentage(1e-6));
    }

    /** Sums of squares of four independent standard deviates: 4 on average, 0.23 the standard error of 150. */
    @Test
    void theDataMissTheTruthAsIndependentStandardDeviates() {
        int seeds = 150;
        double squares = 0;
        double products = 0;
        int told = 0;
        for (int seed = 0; seed < seeds; seed++) {
            double[] misses = misses(evidence(1, TAPE, seed), truth);
            for (double miss : misses) {
                squares += miss * miss;
                told++;
            }
            products += misses[0] * misses[1];
        }
        assertThat(told).isGreaterThan(3 * seeds);
        assertThat(squares / told).isBetween(0.75, 1.3);
        assertThat(Math.abs(products / seeds)).isLessThan(0.3);
    }

    @Test
    void aStifferSpringIsToldByTheFirstDatum() {
        Vehicle stiffer = VehicleDocument.read(PHAETON).with(Map.of("axles[front].springs[0].rate", "15 kN/m"));

        assertThat(misses(evidence(1, 0, 1), new Trial(stiffer))[0]).isGreaterThan(3);
    }
}
