package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.fieldwork.BounceCount;
import org.ridewright.fieldwork.BounceKind;
import org.ridewright.fieldwork.BounceLog;
import org.ridewright.fieldwork.Fact;
import org.ridewright.fieldwork.Finding;
import org.ridewright.fieldwork.Findings;
import org.ridewright.fieldwork.Heights;
import org.ridewright.fieldwork.LoadDeflection;
import org.ridewright.fieldwork.LogReference.Sensor;
import org.ridewright.fieldwork.MeasuredRide;
import org.ridewright.fieldwork.Measurements;
import org.ridewright.fieldwork.RidersWords;
import org.ridewright.fieldwork.Unknowns;
import org.ridewright.fieldwork.Weights;
import org.ridewright.measurement.LogOptions.Gravity;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.LoadCase;

/** What measurements files say arrives in the records, and what they leave out is the usual. */
class MeasurementsFileTest {
    private static final Path YARD = Path.of("..", "scenarios", "measurements", "phaeton-yard.yaml");

    @TempDir
    private Path folder;

    @Test
    void theExampleHoldsWhatItsModelWasMadeOf() {
        // hidden values of the model that made the example, which its file does not tell
        Measurements yard = MeasurementsFile.read(YARD);
        List<Finding> findings = Findings.of(yard);

        holds(findings, "mass of all", 329.4);
        holds(findings, "centre of mass of all, behind front axle", 0.8947);
        holds(findings, "centre of mass of all, above ground", 0.8218);
        holds(findings, "spin inertia of the rear wheel", 8.5);
        holds(findings, "roll inertia of the front axle", 22);
        holds(findings, "rate", 18_200);
        holds(findings, "friction, half the loop's height, in its middle", 59.1);
        holds(findings, "friction, share of load", 0.075);
        holds(findings, "locked rate", 36_400);
        holds(findings, "rate of the front axle's springs together, two aboard", 26_200);
        holds(findings, "rate of the rear axle's springs together, two aboard", 36_400);
    }

    private static void holds(List<Finding> findings, String what, double truth) {
        Measure value = findings.stream()
                .filter(finding -> finding.what().equals(what))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing found of " + what))
                .value();
        assertThat(Math.abs(value.value() - truth)).as(what).isLessThan(2 * value.tolerance());
    }

    @Test
    void everyKindOfFactIsRead() throws IOException {
        Measurements all = MeasurementsFile.read(everyFact());

        assertThat(all.facts().stream().map(Fact::key).collect(Collectors.toSet()))
                .isEqualTo(Set.of(FactReader.KINDS));
        assertThat(all.unknowns()).isEqualTo(new Unknowns.EverythingEstimated());
        assertThat(all.facts()).allSatisfy(fact -> assertThat(fact.label()).isNotEmpty());
        assertThat(all.facts().stream().flatMap(fact -> fact.readings().stream()))
                .hasSizeGreaterThan(30)
                .allSatisfy(reading -> assertThat(reading.tolerance()).isPositive());
    }

    @Test
    void whatIsStatedIsKeptAndWhatIsLeftOutIsUsual() throws IOException {
        Measurements all = MeasurementsFile.read(everyFact());
        List<BounceCount> counts = all.all(BounceCount.class);

        assertThat(counts.get(0).cycles().tolerance()).isEqualTo(0.25);
        assertThat(counts.get(0).time().tolerance()).isEqualTo(0.2);
        assertThat(counts.get(0).keepBack()).isTrue();
        assertThat(counts.get(1).cycles().tolerance()).isEqualTo(0.5);
        assertThat(counts.get(1).time().tolerance()).isCloseTo(0.1, offset(1e-12));
        assertThat(counts.get(1).test()).isEqualTo(BounceKind.SIDE);
        assertThat(counts.get(1).heading().name()).isEqualTo("rocked by two");
        Weights weights = all.all(Weights.class).get(0);
        assertThat(weights.scales().get(0).shown().tolerance()).isCloseTo(0.005 * 500, offset(1e-9));
        assertThat(weights.scales().get(1).shown().tolerance()).isEqualTo(2);
    }

    @Test
    void rowsAreReadWhicheverWayRound() throws IOException {
        List<LoadDeflection> loops = MeasurementsFile.read(everyFact()).all(LoadDeflection.class);

        assertThat(loops).hasSize(2);
        for (LoadDeflection loop : loops) {
            assertThat(loop.rows().get(3).load().value()).isCloseTo(300 * 9.80665, Percentage.withPercentage(1e-9));
            assertThat(loop.rows().get(3).deflection().value()).isCloseTo(0.036, offset(1e-12));
        }
    }

    @Test
    void whatCameAboardIsAddedToTheLoadCase() throws IOException {
        Measurements all = MeasurementsFile.read(everyFact());
        Heights heights = all.all(Heights.class).get(0);

        LoadCase load = heights.steps().get(1).load().on(all.vehicle().orElseThrow());

        assertThat(load.aboard()).hasSize(2);
        assertThat(load.aboard().get(1).mass().value()).isEqualTo(200);
        assertThat(heights.steps().get(1).settled(Heights.Settled.FROM_BELOW)).isPresent();
    }

    @Test
    void logsAndRoadsThatAreNamedCanBeOpened() throws IOException {
        Measurements all = MeasurementsFile.read(everyFact());
        MeasuredRide ride = all.all(MeasuredRide.class).get(0);
        BounceLog bounce = all.all(BounceLog.class).get(0);

        assertThat(MeasurementsFile.recording(ride.logs().get(0)).size()).isGreaterThan(1000);
        assertThat(MeasurementsFile.road(ride.road()).name()).isEqualTo("yard");
        assertThat(ride.logs().get(0).sensor()).isEqualTo(new Sensor.OnSeat("driver's place"));
        assertThat(ride.horse())
                .isInstanceOfSatisfying(
                        MeasuredRide.Horse.Steps.class,
                        steps -> assertThat(steps.stepFrequency().value()).isEqualTo(1.6));
        assertThat(all.all(MeasuredRide.class).get(1).isFit()).isFalse();
        assertThat(bounce.logs().get(0).options().to()).isEqualTo(20);
        assertThat(bounce.logs().get(0).options().gravity()).isEqualTo(Gravity.INCLUDED);
        assertThat(bounce.logs().get(1).sensor()).isInstanceOf(Sensor.OnAxle.class);
    }

    @Test
    void ridersWordsAreKeptAsTheyWereSaid() throws IOException {
        RidersWords words =
                MeasurementsFile.read(everyFact()).all(RidersWords.class).get(0);

        assertThat(words.said()).isEqualTo("jolted hard, then swam");
        assertThat(words.run().orElseThrow().speed().value()).isCloseTo(2.5, offset(1e-12));
    }

    @Test
    void factsCanStandWithoutAVehicle() throws IOException {
        Path file = folder.resolve("bare.yaml");
        Files.writeString(file, """
                measurements: A count
                facts:
                  - bounce: {test: front, with: anything, cycles: 10, in: 5 s}
                """);

        Measurements bare = MeasurementsFile.read(file);

        assertThat(bare.vehicle()).isEqualTo(Optional.empty());
        assertThat(Findings.of(bare).get(0).value().value()).isEqualTo(2);
    }

    @Test
    void aMeasurementsFileIsNoVehicle() {
        assertThat(FileKind.of(YARD)).isEqualTo(FileKind.MEASUREMENTS);
        assertThat(catchThrowable(() -> VehicleFile.read(YARD)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("this is a measurements file");
        assertThat(catchThrowable(() -> ScenarioFile.read(YARD)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("this is a measurements file");
    }

    /** The sample with every key, beside copies of the files that it names. */
    private Path everyFact() throws IOException {
        return MeasurementsSample.in(folder, SampleFiles.text(SampleFiles.at("measurements/every-fact.yaml")));
    }
}
