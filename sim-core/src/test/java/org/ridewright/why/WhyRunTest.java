package org.ridewright.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.io.OwnRide;
import org.ridewright.io.SwapDocument;
import org.ridewright.io.VehicleDocument;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.ride.Scenario;
import org.ridewright.road.MeasuredProfile;
import org.ridewright.study.Question;
import org.ridewright.study.RideMeasure;
import org.ridewright.study.Runs;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.MountHeights;
import org.ridewright.vehicle.Tyre;
import org.ridewright.vehicle.Vehicle;

/** On a plank, which takes milliseconds; two or three draws. */
class WhyRunTest {
    private static final Path PHAETON = Path.of("../scenarios/vehicles/phaeton.yaml");
    private static final List<Question> ASKED = List.of(
            new Question(RideMeasure.SEAT_RMS, Optional.empty()), new Question(RideMeasure.PEAK, Optional.empty()));

    private static SwapDocument rides(Path file, List<Swap> swaps) {
        VehicleDocument document = VehicleDocument.read(file);
        UsualRide ride = new UsualRide("two aboard", 3);
        return new SwapDocument(
                document,
                swaps,
                (draw, texts, none) -> onlyPlank(
                        ride.scenario(texts.isEmpty() ? document.asWritten() : document.with(texts), "", draw)));
    }

    private static Scenario onlyPlank(Scenario all) {
        return new Scenario(
                all.name(),
                all.about(),
                all.entrants(),
                all.roads().subList(0, 1),
                all.duration(),
                all.distance(),
                all.samplingRate(),
                all.start(),
                all.braked(),
                all.points(),
                all.ridingADay());
    }

    private static WhyFindings found(Path file, Swap... swaps) {
        return WhyRun.run(
                rides(file, List.of(swaps)), ASKED, 2, true, Runs.Progress.SILENT, KeptRides.none(), () -> false);
    }

    @Test
    void aSwapForItselfContributesNothingWhateverElseIsSwapped() {
        WhyFindings findings = found(
                PHAETON,
                Swap.parse("rate: axles[*].springs[*].rate = × 1"),
                Swap.parse("friction: axles[*].springs[*].friction.share of load = × 0.5"));
        for (int q = 0; q < 2; q++) {
            assertThat(findings.alone(0, q, 0).draws()).containsOnly(0);
            assertThat(findings.interaction(0, q, 0, 1).draws()).containsOnly(0);
            assertThat(findings.share(0, q, 0).draws()).containsOnly(0);
            assertThat(findings.alone(0, q, 0).verdict()).isEqualTo(Contribution.Verdict.NOTHING);
            assertThat(findings.alone(0, q, 1).draws()).doesNotContain(0);
        }
    }

    @Test
    void aFrameThatTwistsMattersNothingOnAPlankUnderBothWheelsOfAVehicleAlikeOnBothSides(@TempDir Path folder)
            throws Exception {
        Path alike = folder.resolve("alike.yaml");
        Files.writeString(
                alike,
                Files.readString(PHAETON)
                        .replaceAll("(right|left) of centre: 0.25 m ± 10 mm", "left of centre: 0 m ± 0 mm"));
        WhyFindings findings = found(
                alike,
                Swap.parse("twist: connections[0].rate = × 10"),
                Swap.parse("friction: axles[*].springs[*].friction.share of load = × 0.5"));
        for (double part : findings.alone(0, 0, 0).draws()) {
            assertThat(part).isEqualTo(0, within(1e-9));
        }
    }

    @Test
    void theMirrorImageOfAVehicleIsMovedAsMuchByEachSwap(@TempDir Path folder) throws Exception {
        Path mirrored = folder.resolve("mirrored.yaml");
        Files.writeString(
                mirrored,
                Files.readString(PHAETON)
                        .replace("right of centre", "RIGHT")
                        .replace("left of centre", "right of centre")
                        .replace("RIGHT", "left of centre"));
        Swap friction = Swap.parse("friction: axles[*].springs[*].friction.share of load = × 0.5");
        Swap twist = Swap.parse("twist: connections[0].rate = × 10");
        WhyFindings one = found(PHAETON, friction, twist);
        WhyFindings other = found(mirrored, friction, twist);
        for (int i = 0; i < 2; i++) {
            assertThat(other.alone(0, 0, i).asWritten())
                    .isEqualTo(one.alone(0, 0, i).asWritten(), within(1e-6));
        }
    }

    @Test
    void sharesOfRealRidesAddUpInEveryDraw() {
        WhyFindings findings = found(
                PHAETON,
                Swap.parse("friction: axles[*].springs[*].friction.share of load = × 0.5"),
                Swap.parse("wheels: axles[*].wheels.diameter = × 0.8"),
                Swap.parse("cushions: seats[*].cushion = gone hard"));
        for (int d = 0; d < 2; d++) {
            double sum = 0;
            for (int i = 0; i < 3; i++) {
                sum += findings.share(0, 0, i).draws()[d];
            }
            assertThat(sum).isEqualTo(findings.together(0, 0).draws()[d], within(1e-12));
        }
    }

    @Test
    void aFactorMultipliesTheValueThatIsDrawn() {
        SwapDocument rides = rides(PHAETON, List.of(Swap.parse("rate: axles[0].springs[0].rate = × 2")));
        double[] w = new double[rides.uncertainValues()];
        Arrays.fill(w, 0.7);
        assertThat(rate(rides.ride(0, w, 1)) / rate(rides.ride(0, w, 0))).isEqualTo(2, within(1e-12));
        assertThat(rate(rides.ride(0, w, 0))).isGreaterThan(1.02 * rate(rides.ride(-1, w, 0)));
    }

    private static double rate(Scenario scenario) {
        var spring = vehicle(scenario).axles().get(0).springs().get(0);
        return ((Elasticity.Rate) spring.elasticity()).rate().value();
    }

    private static Vehicle vehicle(Scenario scenario) {
        return scenario.entrants().get(0).vehicle();
    }

    @Test
    void anAlternativeThatStatesAToleranceIsDrawnWithinIt() {
        SwapDocument without = rides(PHAETON, List.of(Swap.parse("tyres: axles[*].wheels.contact rate = 0.2 MN/m")));
        SwapDocument with =
                rides(PHAETON, List.of(Swap.parse("tyres: axles[*].wheels.contact rate = 0.2 MN/m ± 20 %")));
        assertThat(with.uncertainValues()).isEqualTo(without.uncertainValues() + 1);
        double[] w = new double[with.uncertainValues()];
        w[with.uncertainValues() - 1] = 1;
        // one kind of tyre is not known, not two tyres
        assertThat(contactRates(with.ride(0, w, 1)))
                .allSatisfy(r -> assertThat(r).isEqualTo(240e3, within(1e-6)));
        assertThat(contactRates(with.ride(-1, w, 1))).containsOnly(200e3);
    }

    private static List<Double> contactRates(Scenario scenario) {
        return vehicle(scenario).axles().stream()
                .map(a -> a.wheel().contactRate().orElseThrow().value())
                .toList();
    }

    @Test
    void ratesThatDifferByAxleWithinTheSameToleranceAreDrawnByOneFactor() {
        SwapDocument rides = rides(
                PHAETON,
                List.of(
                        Swap.parse(
                                "tyres: axles[0].wheels.contact rate = 0.2 MN/m ± 20 %;"
                                        + " axles[1].wheels.contact rate = 0.3 MN/m ± 20 %; axles[*].wheels.contact damping ratio = 0.1 ± 50 %")));
        double[] w = new double[rides.uncertainValues()];
        w[rides.uncertainValues() - 2] = -0.8;
        List<Double> drawn = contactRates(rides.ride(0, w, 1));
        assertThat(drawn.get(0)).isLessThan(180e3);
        assertThat(drawn.get(1) / drawn.get(0)).isEqualTo(1.5, within(1e-12));
    }

    /** The body of a vehicle whose file leaves the mounts to be reckoned from the wheels is not let down by smaller ones. */
    @Test
    void smallerWheelsDoTheSameWhetherTheHeightOfTheMountsIsStatedOrLeftOut(@TempDir Path folder) throws Exception {
        String text = Files.readString(PHAETON);
        String without = text.replaceAll(" *mount height:.*\\R", "");
        Path left = Files.writeString(folder.resolve("left.yaml"), without);
        String[] springs = without.split("springs:", -1);
        assertThat(springs).hasSize(3);
        Path stated = Files.writeString(
                folder.resolve("stated.yaml"),
                springs[0] + "springs:" + with(springs[1], "0.55 m") + "springs:" + with(springs[2], "0.65 m"));
        double[] parts = new double[2];
        for (int i = 0; i < 2; i++) {
            VehicleDocument document = VehicleDocument.read(i == 0 ? left : stated);
            Swap wheels = UsualSwaps.of(document.asWritten(), document.values(), "two aboard").swaps().stream()
                    .filter(s -> s.name().equals("wheel size"))
                    .findFirst()
                    .orElseThrow();
            WhyFindings findings = found(i == 0 ? left : stated, wheels);
            parts[i] = findings.alone(0, 0, 0).asWritten();
            SwapDocument rides = rides(i == 0 ? left : stated, List.of(wheels));
            double[] w = new double[rides.uncertainValues()];
            Arrays.fill(w, 1);
            for (int d = -1; d <= 0; d++) {
                assertThat(mounts(rides.ride(d, w, 1))).isEqualTo(mounts(rides.ride(d, w, 0)));
            }
        }
        assertThat(parts[0]).isEqualTo(parts[1], within(1e-9));
        assertThat(Math.abs(parts[0])).isGreaterThan(0.05);
    }

    private static String with(String springs, String height) {
        return springs.replaceFirst("( +)kind:", "$1mount height: " + height + "\n$1kind:");
    }

    private static List<Double> mounts(Scenario scenario) {
        return vehicle(scenario).axles().stream()
                .map(a -> MountHeights.at(a).value())
                .toList();
    }

    @Test
    void ironTyresBecomePneumaticOnes() {
        VehicleDocument document = VehicleDocument.read(PHAETON);
        List<Swap> usual = UsualSwaps.of(document.asWritten(), document.values(), "two aboard")
                .swaps();
        int tyres = usual.stream().map(Swap::name).toList().indexOf("tyres");
        SwapDocument rides = rides(PHAETON, usual);
        Scenario swapped = rides.ride(-1, new double[rides.uncertainValues()], 1 << tyres);
        assertThat(vehicle(swapped).axles()).allMatch(a -> a.wheel().tyre() == Tyre.PNEUMATIC);
    }

    @Test
    void twoSwapsOfOneThingCannotBeToldApart() {
        assertThatThrownBy(() -> rides(
                        PHAETON,
                        List.of(
                                Swap.parse("one: axles[0].wheels.diameter = × 0.8"),
                                Swap.parse("two: axles[*].wheels.diameter = × 0.9"))))
                .isInstanceOf(UnfitValueException.class)
                .hasMessageContaining("'one' and 'two' both change axles[0].wheels.diameter");
    }

    @Test
    void aSwapOfWhatTheVehicleHasNotIsRefusedByItsName() {
        assertThatThrownBy(() -> rides(PHAETON, List.of(Swap.parse("dampers: axles[0].dampers[0].bump = × 0.5"))))
                .isInstanceOf(UnfitValueException.class)
                .hasMessageContaining("the swap 'dampers' cannot be made");
    }

    @Test
    void aVehicleRidesItsOwnScenarioUnderOneLoad() {
        OwnRide ride = OwnRide.of(
                Path.of("../scenarios/gate.yaml"), Path.of("../scenarios/vehicles/dray.yaml"), Optional.empty());
        assertThat(ride.load()).isEqualTo("laden");
        assertThatThrownBy(() -> OwnRide.of(Path.of("../scenarios/gate.yaml"), PHAETON, Optional.empty()))
                .isInstanceOf(UnfitValueException.class)
                .hasMessageContaining("has no vehicle phaeton.yaml")
                .hasMessageContaining("vehicles/dray.yaml");
    }

    private static final String QUARTER = """
            vehicle: Quarter
            layout: quarter
            body: {mass: 300 kg}
            axles:
              - unsprung mass: 40 kg
                wheels: {diameter: 0.6 m, tyre: pneumatic, path: disc, contact rate: 180 kN/m, contact damping: 300 N s/m}
                springs: [{name: coil, kind: coil, rate: 20 kN/m ± 8 %}]
                dampers: [{name: strut, bump: 1200 N s/m, rebound: 1200 N s/m}]
            load cases: [{name: two aboard, aboard: []}]
            """;

    private static final Swap HEAVIER = Swap.parse("masses: body.mass = × 2; axles[0].unsprung mass = × 2");
    private static final Swap STIFFER = Swap.parse(
            "rates: axles[0].wheels.contact rate = × 2; axles[0].wheels.contact damping = × 2; "
                    + "axles[0].springs[0].rate = × 2; axles[0].dampers[0].bump = × 2; axles[0].dampers[0].rebound = × 2");

    /** All masses and all forces twice as large: {@code M q̈ = f} is the same equation, lifting off included. */
    @Test
    void twiceTheMassOnTwiceTheRatesRidesAsBeforeThoughEachAloneDoesNot(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("quarter.yaml"), QUARTER);
        WhyFindings findings = found(file, HEAVIER, STIFFER);
        for (int q = 0; q < findings.questions().size(); q++) {
            double masses = findings.alone(0, q, 0).asWritten();
            double rates = findings.alone(0, q, 1).asWritten();
            assertThat(Math.abs(masses)).isGreaterThan(0.05);
            assertThat(findings.together(0, q).asWritten()).isEqualTo(0, within(1e-6));
            assertThat(findings.interaction(0, q, 0, 1).asWritten()).isEqualTo(-masses - rates, within(1e-6));
            assertThat(findings.share(0, q, 0).asWritten())
                    .isEqualTo(-findings.share(0, q, 1).asWritten(), within(1e-6));
        }
    }

    /** The effects of small changes add up: what two do together beyond their sum is of second order. */
    @Test
    void exchangesAFifthAsLargeInteractATwentyFifthAsMuch(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("quarter.yaml"), QUARTER);
        double[] sizes = {0.02, 0.004};
        double[] alone = new double[2];
        double[] interaction = new double[2];
        for (int i = 0; i < 2; i++) {
            WhyFindings findings = found(
                    file,
                    Swap.parse("rate: axles[0].springs[0].rate = × " + (1 + sizes[i])),
                    Swap.parse("damping: axles[0].dampers[0].bump = × " + (1 + sizes[i])));
            alone[i] = findings.alone(0, 0, 0).asWritten();
            interaction[i] = findings.interaction(0, 0, 0, 1).asWritten();
        }
        assertThat(alone[1] / alone[0]).isEqualTo(0.2, within(0.01));
        assertThat(interaction[1] / interaction[0]).isEqualTo(0.04, within(0.004));
    }

    @Test
    void anExchangeOfWhatIsNotRiddenIsToldAsVoid(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(
                folder.resolve("quarter.yaml"),
                QUARTER.replace("aboard: []}]", "aboard: []}, {name: laden, aboard: [{cargo: sand, mass: 90 kg}]}]"));
        WhyFindings findings = found(file, HEAVIER, Swap.parse("sand: load cases[1].aboard[0].mass = × 2"));
        assertThat(findings.isVoid(0)).isFalse();
        assertThat(findings.isVoid(1)).isTrue();
    }

    @Test
    void whoIsInterruptedGoesOnFromWhatWasRiddenToTheSameNumbers(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("quarter.yaml"), QUARTER);
        Path journal = folder.resolve("runs").resolve("whole.journal");
        SwapDocument rides = rides(file, List.of(HEAVIER, STIFFER));
        AtomicLong ridden = new AtomicLong();
        try (KeptRides kept = KeptRides.open(journal, "why", "this program")) {
            assertThatThrownBy(() -> WhyRun.run(
                            rides, ASKED, 4, true, (done, of) -> ridden.set(done), kept, () -> ridden.get() >= 7))
                    .isInstanceOf(WhyRun.Stopped.class);
        }
        int before = Files.readAllLines(journal).size();
        assertThat(before).isBetween(8, 12);
        WhyFindings resumed;
        try (KeptRides kept = KeptRides.open(journal, "why", "this program")) {
            resumed = WhyRun.run(rides, ASKED, 4, true, Runs.Progress.SILENT, kept, () -> false);
        }
        // a head, and 5 vehicles in 4 choices each once
        assertThat(Files.readAllLines(journal).size()).isEqualTo(1 + 5 * 4);
        WhyFindings whole = WhyRun.run(rides, ASKED, 4, true, Runs.Progress.SILENT, KeptRides.none(), () -> false);
        assertThat(resumed.alone(0, 0, 1).draws())
                .isEqualTo(whole.alone(0, 0, 1).draws());
        assertThat(resumed.share(0, 0, 1).draws())
                .isEqualTo(whole.share(0, 0, 1).draws());
        try (KeptRides kept = KeptRides.open(journal, "why", "another program")) {
            WhyRun.run(rides, ASKED, 4, true, Runs.Progress.SILENT, kept, () -> false);
        }
        assertThat(Files.readAllLines(journal).size()).isEqualTo(1 + 2 * 5 * 4);
    }

    @Test
    void profilesThatDifferInOneHeightAreToldApart() {
        double[] stations = {0, 0.5, 1};
        MeasuredProfile one = new MeasuredProfile("lane", stations, List.of(new double[] {0, 0.01, 0}));
        MeasuredProfile other = new MeasuredProfile("lane", stations, List.of(new double[] {0, 0.03, 0}));
        assertThat(one.toString()).isNotEqualTo(other.toString());
        assertThat(one).isNotEqualTo(other).doesNotHaveSameHashCodeAs(other);
    }
}
