package org.ridewright.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.io.SwapDocument;
import org.ridewright.io.VehicleDocument;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.vehicle.AxisHeight;
import org.ridewright.vehicle.MountHeights;
import org.ridewright.vehicle.Tyre;
import org.ridewright.vehicle.Vehicle;

class UsualSwapsTest {
    private static UsualSwaps of(String vehicle, String load) {
        VehicleDocument document = VehicleDocument.read(Path.of("../scenarios/vehicles/" + vehicle + ".yaml"));
        return UsualSwaps.of(document.asWritten(), document.values(), load);
    }

    private static List<String> names(UsualSwaps swaps) {
        return swaps.swaps().stream().map(Swap::name).toList();
    }

    @Test
    void aDrayHasEverythingButDampers() {
        UsualSwaps dray = of("dray", "laden");
        assertThat(names(dray))
                .containsExactly("friction", "wheel size", "tyres", "frame twist", "cushions", "place of the load");
        assertThat(dray.skipped()).extracting(Skipped::name).containsExactly("dampers");
    }

    @Test
    void aSaloonDoesNotTwistAndALoneDriverIsNoLoadThatCouldLieElsewhere() {
        UsualSwaps saloon = of("saloon", "driver");
        assertThat(names(saloon)).containsExactly("friction", "wheel size", "tyres", "cushions", "dampers");
        assertThat(saloon.skipped())
                .extracting(Skipped::name)
                .containsExactlyInAnyOrder("frame twist", "place of the load");
    }

    @Test
    void whereNobodySitsThereIsNoCushionToExchange() {
        UsualSwaps trailer = of("trailer", "laden");
        assertThat(trailer.skipped()).contains(new Skipped("cushions", "nobody sits on it"));
        assertThat(names(trailer)).contains("friction", "place of the load");
    }

    @Test
    void aUsersOwnAlternativeTakesThePlaceOfTheUsualOne() {
        Swap own =
                Swap.parse("friction: axles[*].springs[*].friction.constant = 0 N; axles[0].springs[0].rate = × 1.1");
        UsualSwaps swaps = of("dray", "laden").with(List.of(own), List.of("cushions"));
        assertThat(swaps.swaps().get(0)).isEqualTo(own);
        assertThat(own.changes())
                .containsExactly(
                        new Change("axles[*].springs[*].friction.constant", "0 N"),
                        new Change("axles[0].springs[0].rate", "× 1.1"));
        assertThat(names(swaps)).doesNotContain("cushions");
    }

    @Test
    void whatIsNoSwapOrNoIngredientIsRefusedWithWhatToWrite() {
        assertThatThrownBy(() -> Swap.parse("friction × 0.3"))
                .isInstanceOf(UnfitValueException.class)
                .hasMessageContaining("NAME: PATH = VALUE");
        assertThatThrownBy(() -> of("dray", "laden").with(List.of(), List.of("paint")))
                .isInstanceOf(UnfitValueException.class)
                .hasMessageContaining("place of the load");
    }

    @ParameterizedTest
    @ValueSource(strings = {"dray", "lorry", "phaeton", "saloon", "trailer", "van"})
    void everyUsualExchangeOfEveryVehicleMakesAnotherVehicleThatCanBe(String vehicle) {
        Path file = Path.of("../scenarios/vehicles/" + vehicle + ".yaml");
        VehicleDocument document = VehicleDocument.read(file);
        UsualRide ride = UsualRide.of(document.asWritten());
        List<Swap> swaps = of(vehicle, ride.load()).swaps();
        SwapDocument rides = new SwapDocument(
                document, swaps, (draw, texts, none) -> ride.scenario(document.with(texts), vehicle, draw));
        double[] w = new double[rides.uncertainValues()];
        for (int i = 0; i < swaps.size(); i++) {
            assertThat(rides.ride(-1, w, 1 << i)).as(swaps.get(i).name()).isNotEqualTo(rides.ride(-1, w, 0));
        }
        assertThat(swaps).hasSizeGreaterThanOrEqualTo(5);
    }

    @Test
    void dampersThatAreTablesWearAsOthersDo() {
        Swap dampers = named(of("van", "laden"), "dampers");
        assertThat(dampers.changes())
                .contains(new Change("axles[1].dampers[0].table[6][1]", "× 0.3"))
                .noneMatch(c -> c.path().endsWith("[0]"))
                // 0 N stays 0 N
                .noneMatch(c -> c.path().endsWith("table[3][1]"));
    }

    private static Swap named(UsualSwaps swaps, String name) {
        return swaps.swaps().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void wheelsOfAUsersOwnSizeHoldWhatTheFileReckonsFromTheirDiameter(@TempDir Path folder) throws Exception {
        String text = Files.readString(Path.of("../scenarios/vehicles/trailer.yaml"));
        VehicleDocument document = VehicleDocument.read(
                Files.writeString(folder.resolve("trailer.yaml"), text.replaceAll(" *footprint: .*\\R", "")));
        WheelDefaults defaults = new WheelDefaults(document.asWritten(), document.values());
        Swap larger = defaults.held(Swap.parse("wheel size: axles[*].wheels.diameter = 0.7 m"));
        SwapDocument rides = new SwapDocument(
                document,
                List.of(larger),
                (draw, texts, none) -> new UsualRide("laden", 3).scenario(document.with(texts), "", draw));
        double[] w = new double[rides.uncertainValues()];
        Vehicle now = rides.ride(-1, w, 0).entrants().get(0).vehicle();
        Vehicle swapped = rides.ride(-1, w, 1).entrants().get(0).vehicle();
        for (int a = 0; a < now.axles().size(); a++) {
            assertThat(swapped.axles().get(a).wheel().diameter().value()).isEqualTo(0.7);
            // nothing but the beam between them holds the body, at the height of the axles
            assertThat(MountHeights.rollAxisAt(swapped.axles().get(a)).value())
                    .isEqualTo(MountHeights.at(now.axles().get(a)).value(), within(1e-12));
            assertThat(swapped.axles().get(a).wheel().footprintLength().map(Measure::value))
                    .isEqualTo(now.axles().get(a).wheel().footprintLength().map(Measure::value));
        }
        AxisHeight.AtHeight pitch = (AxisHeight.AtHeight) swapped.body().pitchAxis();
        assertThat(pitch.aboveGround().value()).isEqualTo(0.31, within(1e-12));
        Swap lifted = Swap.parse(
                "wheel size: axles[*].wheels.diameter = 0.9 m; axles[*].springs[0].mount height = 0.6 m; axles[*].wheels.footprint = 0.2 m");
        assertThat(defaults.held(lifted)).isEqualTo(lifted);
        // what a swap says of other things, or of one axle, leaves the rest held
        int held = larger.changes().size() - 1;
        assertThat(defaults.held(Swap.parse(
                                "wheel size: axles[*].wheels.diameter = 0.7 m; axles[*].springs[*].rate = × 1.1"))
                        .changes())
                .hasSize(2 + held);
        String first = document.asWritten().axles().get(0).name();
        assertThat(defaults.held(Swap.parse("wheel size: axles[*].wheels.diameter = 0.7 m; axles[" + first
                                + "].wheels.footprint = 0.2 m"))
                        .changes())
                .hasSize(2 + held - 1);
    }

    /** Half of 775 kg, and 50 kg of its own, on each wheel. */
    private static final String CART = """
            vehicle: Cart
            layout: half in pitch
            body: {mass: 700 kg, centre of mass: {behind front axle: 1 m, above ground: 1 m}}
            axles:
              - name: fore
                unsprung mass: 50 kg
                wheels: &wheel {diameter: 0.9 m, tyre: iron, contact damping: 4 kN s/m}
                springs: [{kind: half-elliptic leaf, rate: 60 kN/m}]
              - name: hind
                behind front axle: 2 m
                unsprung mass: 50 kg
                wheels: *wheel
                springs: [{kind: half-elliptic leaf, rate: 60 kN/m}]
            seats:
              - name: left
                at: {behind front axle: 1 m, above ground: 1.5 m}
                cushion: &cushion {rate: 30 kN/m, damping ratio: 0.2}
              - {name: right, at: {behind front axle: 1 m, above ground: 1.5 m}, cushion: *cushion}
              - name: stool
                at: {behind front axle: 1 m, above ground: 1.5 m}
                stages: [{rate: 50 kN/m, damping ratio: 0.1, mass: 5 kg}, {rate: 30 kN/m, damping ratio: 0.2}]
            load cases: [{name: one, aboard: [{person: driver, mass: 75 kg, seat: left}]}]
            """;

    @Test
    void whatAFileMarksOnceAndUsesAgainIsExchangedEverywhere(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("cart.yaml"), CART);
        VehicleDocument document = VehicleDocument.read(file);
        UsualSwaps swaps = UsualSwaps.of(document.asWritten(), document.values(), "one");
        assertThat(swaps.skipped()).extracting(Skipped::name).contains("friction");
        SwapDocument rides = new SwapDocument(
                document,
                List.of(named(swaps, "tyres"), named(swaps, "cushions"), named(swaps, "wheel size")),
                (draw, texts, none) -> new UsualRide("one", 3).scenario(document.with(texts), "", draw));
        Vehicle all = rides.ride(-1, new double[rides.uncertainValues()], 7)
                .entrants()
                .get(0)
                .vehicle();
        assertThat(all.axles()).allSatisfy(axle -> {
            assertThat(axle.wheel().tyre()).isEqualTo(Tyre.PNEUMATIC);
            assertThat(axle.wheel().contactRate().orElseThrow().value())
                    .isEqualTo(437.5 * 9.80665 / 0.025, within(3000.0));
            assertThat(axle.wheel().diameter().value()).isEqualTo(0.63, within(1e-12));
        });
        assertThat(all.seats()).allSatisfy(seat -> {
            assertThat(seat.stages()).hasSize(1);
            assertThat(seat.stages().get(0).rate().value()).isEqualTo(200e3);
        });
    }

    @Test
    void aTextFileHoldsSwapsWithWordsOfTheirOwn() {
        List<Swap> swaps = Swap.parse(
                "mine.txt",
                List.of("# mine", "", "friction (half of it): axles[*].springs[*].friction.share of load = x 0.5"));
        assertThat(swaps)
                .containsExactly(new Swap(
                        "friction",
                        "half of it",
                        List.of(new Change("axles[*].springs[*].friction.share of load", "x 0.5"))));
        assertThatThrownBy(() -> Swap.parse("mine.txt", List.of("", "friction")))
                .isInstanceOf(UnfitValueException.class)
                .hasMessageStartingWith("mine.txt:2: 'friction' is no swap");
    }
}
