package org.ridewright.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.io.ScenarioDocument;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.Scenario;

/** Tolerances of the inputs become intervals of the answers. */
class UncertainRidesTest {
    /** A linear wheel that stays on the ground: what it does is in proportion to the road. */
    private static final String WHEEL = """
            vehicle: Linear wheel %s
            layout: quarter
            body: {mass: %s}
            axles:
              - unsprung mass: 40 kg
                wheels: {diameter: 0.6 m, tyre: pneumatic, path: point, contact rate: 180 kN/m, contact damping: 0 N s/m}
                springs: [{kind: coil, rate: 20 kN/m}]
                dampers: [{damping: 1.2 kN s/m}]
            """;

    @TempDir
    private Path folder;

    private UncertainRides.Outcome rides(String mass, String height, int draws) throws IOException {
        Files.writeString(folder.resolve("wheel.yaml"), WHEEL.formatted("", mass));
        Path file = Files.writeString(folder.resolve("hump.yaml"), """
                scenario: Hump
                vehicles: [{file: wheel.yaml, speeds: 5 m/s}, {file: other.yaml, speeds: 5 m/s}]
                road: {obstacles: [hump: {at: 3 m, height: %s, length: 3 m}]}
                sampling rate: 200 Hz
                """.formatted(height));
        Files.writeString(folder.resolve("other.yaml"), WHEEL.formatted("again", mass));
        return UncertainRides.run(ScenarioDocument.read(file), draws, UncertainRidesTest::numbers, ride -> {});
    }

    private static Map<String, Double> numbers(RideResult ride) {
        return Map.of(
                "peak",
                ride.points().get(0).greatest().value(),
                "mass",
                ride.model().sprungMass());
    }

    @Test
    void ofALinearVehicleTheAnswerSpreadsAsTheRoadDoes() throws IOException {
        UncertainRide ride = rides("300 kg", "20 mm ± 2 mm", 400).rides().get(0);
        double peak = ride.ride().points().get(0).greatest().value();
        Interval interval = ride.numbers().get("peak");

        // normal quantile of 0.95, NIST/SEMATECH e-handbook of statistical methods, table of the cumulative normal
        // distribution
        double half = 1.645 * 0.1 * peak;
        assertThat(interval.median()).isCloseTo(peak, within(0.01 * peak));
        assertThat(interval.high() - peak).isCloseTo(half, within(0.04 * half));
        assertThat(peak - interval.low()).isCloseTo(half, within(0.04 * half));
    }

    @Test
    void massesSpreadByFactorsSoThatNoneIsNegative() throws IOException {
        Interval mass =
                rides("300 kg ± 150 kg", "20 mm", 400).rides().get(0).numbers().get("mass");

        assertThat(mass.median()).isCloseTo(300, within(6.0));
        assertThat(mass.high() / mass.median()).isCloseTo(Math.pow(1.5, 1.645), within(0.05));
        assertThat(mass.median() / mass.low()).isCloseTo(Math.pow(1.5, 1.645), within(0.05));
    }

    @Test
    void whatIsKnownExactlyHasNoSpread() throws IOException {
        UncertainRides.Outcome outcome = rides("300 kg", "20 mm", 20);

        assertThat(outcome.uncertainValues()).isZero();
        Interval peak = outcome.rides().get(0).numbers().get("peak");
        assertThat(peak.high()).isEqualTo(peak.low());
    }

    @Test
    void theBandsHoldTheRideAsWrittenAndNineTenthsOfTheDraws() throws IOException {
        UncertainRide ride = rides("300 kg", "20 mm ± 2 mm", 200).rides().get(0);
        TraceBand band = ride.bands().stream()
                .filter(b -> b.low().name().equals("body heave, 5 %"))
                .findFirst()
                .orElseThrow();
        double[] written = ride.ride().trace("body heave").orElseThrow().samples();

        for (int i = 0; i < band.low().size(); i++) {
            double half = 1.645 * 0.1 * Math.abs(written[i]);
            assertThat(band.high().sample(i) - written[i]).isCloseTo(half, within(0.07 * half + 1e-7));
            assertThat(written[i] - band.low().sample(i)).isCloseTo(half, within(0.07 * half + 1e-7));
        }
    }

    @Test
    void everyRunOfTheProgramDrawsTheSame() throws IOException {
        assertThat(rides("300 kg ± 20 kg", "20 mm ± 2 mm", 30).rides().get(1).numbers())
                .isEqualTo(rides("300 kg ± 20 kg", "20 mm ± 2 mm", 30)
                        .rides()
                        .get(1)
                        .numbers());
    }

    @Test
    void allRideTestsShareTheRoadThatWasDrawn() throws IOException {
        List<UncertainRide> rides = rides("300 kg", "20 mm ± 2 mm", 50).rides();

        assertThat(rides.get(0).numbers().get("peak"))
                .isEqualTo(rides.get(1).numbers().get("peak"));
    }

    @Test
    void aRideThatTipsIsLeftOutOfItsTestAndCounted() throws IOException {
        Path phaeton = Path.of("..", "scenarios", "vehicles", "phaeton.yaml").toAbsolutePath();
        Path file = Files.writeString(folder.resolve("kerb.yaml"), """
                scenario: Kerb
                vehicles: [{file: %s, load cases: [empty], speeds: 2 m/s}]
                road: {obstacles: [plank: {at: 3 m, height: 30 mm, length: 3 m, side: left}]}
                read off: [{point: floor, at: {behind front axle: 0.8 m, above ground: 0.9 m}}]
                """.formatted(phaeton));
        ScenarioDocument document = ScenarioDocument.read(file);
        DrawnScenarios tipping = new DrawnScenarios() {
            @Override
            public int uncertainValues() {
                return 1;
            }

            @Override
            public Scenario drawn(double[] w) {
                // a third of the draws meets a kerb that tips the carriage
                return document.with(Map.of("road.obstacles[0].plank.height", w[0] > 0.43 ? "500 mm" : "30 mm"));
            }
        };

        UncertainRides.Outcome outcome = UncertainRides.run(tipping, 30, UncertainRidesTest::numbers, ride -> {});

        assertThat(outcome.rides().get(0).draws()).isBetween(18, 22);
        assertThat(outcome.rides().get(0).numbers()).containsKey("peak");
    }

    @Test
    void tolerancesOfWhichMostVehiclesCannotBeAreRefused() throws IOException {
        Files.writeString(
                folder.resolve("wheel.yaml"), WHEEL.formatted("", "300 kg").replace("0.6 m", "0.6 m ± 300 m"));
        Path file = Files.writeString(folder.resolve("hump.yaml"), """
                scenario: Hump
                vehicles: [{file: wheel.yaml, speeds: 5 m/s}]
                road: {obstacles: [hump: {at: 3 m, height: 20 mm, length: 3 m}]}
                """);
        ScenarioDocument document = ScenarioDocument.read(file);

        assertThatThrownBy(() -> UncertainRides.run(document, 50, UncertainRidesTest::numbers, ride -> {}))
                .isInstanceOf(UnfitValueException.class)
                .hasMessageContaining("make the tolerances narrower")
                .hasMessageContaining("diameter");
    }
}
