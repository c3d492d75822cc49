package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.ride.Scenario;
import org.ridewright.road.Obstacle;
import org.ridewright.vehicle.Attachment;
import org.ridewright.vehicle.AxisHeight;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.Connection;
import org.ridewright.vehicle.Damping;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.Friction;
import org.ridewright.vehicle.GappedStage;
import org.ridewright.vehicle.Hitch;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.PathKind;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.SpringKind;
import org.ridewright.vehicle.Tyre;
import org.ridewright.vehicle.Vehicle;

/** Files that use every key are read whole, each value into its place. */
class WholeFilesTest {
    private static final Vehicle WAGONETTE = VehicleFile.read(SampleFiles.at("whole/every-key.yaml"));

    @TempDir
    Path folder;

    private static void holds(Measure measure, double si) {
        assertThat(measure.value()).as(measure.written()).isCloseTo(si, within(1e-9 * Math.max(1, Math.abs(si))));
    }

    private static void stands(Place place, double x, double y, double z) {
        assertThat(new double[] {place.x(), place.y(), place.z()})
                .containsExactly(new double[] {x, y, z}, within(1e-9));
    }

    @Test
    void theTopOfAVehicleIsRead() {
        assertThat(WAGONETTE.name()).isEqualTo("Market wagonette");
        assertThat(WAGONETTE.about()).startsWith("A three-axle carriage");
        assertThat(WAGONETTE.layout()).isEqualTo(Layout.FULL);
        holds(WAGONETTE.topSpeed().orElseThrow(), 16 / 3.6);
        assertThat(WAGONETTE.axles()).extracting(Axle::kind).containsExactly(AxleKind.values());
        assertThat(WAGONETTE.loadCases()).extracting(LoadCase::name).containsExactly("empty", "laden");
    }

    @Test
    void theBodyIsReadWithTolerancesAndSources() {
        var body = WAGONETTE.body();
        var scales = body.weighbridge().orElseThrow();
        holds(scales.axleLoads().get(1), 12 * 112 * 0.45359237);
        assertThat(scales.axleLoads().get(2).tolerance()).isCloseTo(5, within(1e-9));
        assertThat(scales.axleLoads().get(2).provenance()).isEqualTo(Provenance.WEIGHED);
        holds(scales.hitchLoad(), 20);
        Measure roll = body.rollInertia().orElseThrow();
        assertThat(roll.tolerance()).isCloseTo(16, within(1e-9));
        assertThat(roll.provenance()).isEqualTo(Provenance.ESTIMATED);
        holds(body.pitchRadius().orElseThrow(), 0.9);
        holds(body.productOfInertia(), -4);
        assertThat(body.rollAxis()).isInstanceOf(AxisHeight.AtHeight.class);
        holds(((AxisHeight.AtHeight) body.pitchAxis()).aboveGround(), 28 * 0.0254);
        holds(body.rearBody().orElseThrow().twistRate(), 12_000);
    }

    @Test
    void rightAndAheadAreTheOtherWayFromLeftAndBehind() {
        holds(WAGONETTE.body().centreLeftOfCentre(), -0.01);
        stands(WAGONETTE.body().rearBody().orElseThrow().centre(), -2, 0.005, 1.1);
        stands(WAGONETTE.hitches().get(0).place(), 0.5, 0, 0.8);
        stands(WAGONETTE.seats().get(0).place(), -0.2, 0.2, 1.6);
        stands(WAGONETTE.seats().get(0).feet().orElseThrow(), 0.3, 0.2, 1.1);
    }

    @Test
    void wheelsAreRead() {
        var iron = WAGONETTE.axles().get(0).wheel();
        holds(iron.diameter(), 0.9144);
        assertThat(iron.tyre()).isEqualTo(Tyre.IRON);
        holds(iron.contactRate().orElseThrow(), 3e6);
        holds(((Damping.Coefficient) iron.contactDamping()).value(), 900);
        var pneumatic = WAGONETTE.axles().get(1).wheel();
        assertThat(pneumatic.path()).isEqualTo(PathKind.DISC_AND_FOOTPRINT);
        holds(((Damping.Ratio) pneumatic.contactDamping()).value(), 0.05);
        var solid = WAGONETTE.axles().get(2).wheel();
        assertThat(solid.path()).isEqualTo(PathKind.DISC);
        holds(((Damping.Restitution) solid.contactDamping()).value(), 0.7);
    }

    @Test
    void unsprungMassOfEachSideIsHalfTheAxles() {
        Measure both = WAGONETTE.axles().get(1).unsprungMass();
        holds(both, 80);
        assertThat(both.tolerance()).isCloseTo(2, within(1e-9));
    }

    @Test
    void springsAreRead() {
        Spring front = WAGONETTE.axles().get(0).springs().get(0);
        assertThat(front.kind()).isEqualTo(SpringKind.FULL_ELLIPTIC);
        assertThat(front.attachment().position()).isEqualTo(Attachment.Position.PAIR);
        Measure rate = ((Elasticity.Rate) front.elasticity()).rate();
        holds(rate, 48_000);
        assertThat(rate.tolerance()).isCloseTo(2400, within(1e-6));
        assertThat(rate.provenance()).isEqualTo(Provenance.MEASURED);
        assertThat(front.stages())
                .extracting(GappedStage::kind)
                .containsExactly(GappedStage.Kind.HELPER, GappedStage.Kind.BUMP_STOP, GappedStage.Kind.DROOP_STOP);
        assertThat(front.stages().get(1).measuredAt()).contains("laden");
        assertThat(front.friction().sliders())
                .containsExactly(new Friction.SliderShare(0.5, 0.8), new Friction.SliderShare(0.5, 0.2));
        Elasticity.CoilWire wire =
                (Elasticity.CoilWire) WAGONETTE.axles().get(1).springs().get(0).elasticity();
        assertThat(wire.workingCoils()).isEqualTo(7.5);
        assertThat(WAGONETTE.axles().get(1).springs().get(1).kind()).isEqualTo(SpringKind.TORSION_BAR);
        Spring air = WAGONETTE.axles().get(2).springs().get(0);
        holds(((Elasticity.GasColumn) air.elasticity()).area(), 0.006);
        assertThat(WAGONETTE.axles().get(2).springs().get(1).stages()).hasSize(2);
    }

    @Test
    void halfTheLoopHeightLessItsConstantPartIsAShareOfTheLoad() {
        Friction friction = WAGONETTE.axles().get(0).springs().get(1).friction();
        holds(friction.shareOfLoad(), (300.0 - 20) / 4000);
        holds(friction.constant(), 20);
        assertThat(friction.lockedRate()).isInstanceOf(Friction.LockedRate.MultipleOfRate.class);
        holds(friction.envelopeLength().orElseThrow(), 0.002);
    }

    @Test
    void connectionsHitchesAndSeatsAreRead() {
        assertThat(WAGONETTE.connections())
                .extracting(Object::getClass)
                .extracting(Class::getSimpleName)
                .containsExactly("UndercarriageTwist", "SideSpring", "Interconnection");
        assertThat(((Connection.Interconnection) WAGONETTE.connections().get(2)).terms())
                .hasSize(3);
        Hitch.Motion gait = WAGONETTE.hitches().get(0).motion();
        holds(((Hitch.Motion.Sinusoid) gait).frequency(), 1.8);
        Seat bench = WAGONETTE.seats().get(1);
        holds(bench.stages().get(0).shareOfPerson(), 0.1);
        holds(bench.stages().get(1).shareOfPerson(), 0.9);
        holds(bench.shareOnSeat(), 0.75);
        holds(WAGONETTE.loadCases().get(1).aboard().get(0).mass(), (12 * 14 + 4) * 0.45359237);
    }

    @Test
    void aFileOfTheLeastKeysGetsItsDefaults() {
        Vehicle wheel = VehicleFile.read(SampleFiles.at("whole/wheel.yaml"));

        Axle axle = wheel.axles().get(0);
        assertThat(axle.kind()).isEqualTo(AxleKind.SINGLE);
        assertThat(axle.springs().get(0).attachment().position()).isEqualTo(Attachment.Position.CENTRE);
        assertThat(axle.wheel().path()).isEqualTo(PathKind.FOOTPRINT);
        holds(axle.wheel().footprintLength().orElseThrow(), 0.18);
        assertThat(axle.wheel().contactDamping()).isInstanceOf(Damping.NotGiven.class);
        assertThat(axle.springs().get(0).friction().present()).isFalse();
        assertThat(wheel.loadCases()).containsExactly(new LoadCase("empty", List.of()));
    }

    @Test
    void aScenarioIsRead() {
        Scenario scenario = ScenarioFile.read(SampleFiles.at("whole/every-key-scenario.yaml"));

        assertThat(scenario.entrants()).hasSize(2);
        holds(scenario.entrants().get(1).speeds().get(0).legs().get(0).speed(), 8 / 3.6);
        assertThat(scenario.braked()).isTrue();
        assertThat(scenario.start()).isEqualTo(Scenario.Start.FROM_ABOVE);
        holds(scenario.samplingRate(), 500);
        var kerb = scenario.roads().get(0);
        holds(kerb.groundRate().orElseThrow(), 20e6);
        Obstacle.Lie lie = kerb.obstacles().get(0).lie();
        assertThat(lie.count()).isEqualTo(3);
        assertThat(lie.side()).isEqualTo(Obstacle.Side.LEFT);
        holds(lie.skew(), Math.toRadians(10));
        holds(((Obstacle.Step) kerb.obstacles().get(3)).height(), -0.03);
        assertThat(scenario.roads().get(2).surfaces()).hasSize(13);
        holds(scenario.roads().get(2).runUp(), 5);
        assertThat(scenario.roads().get(3).obstacles()).isEmpty();
        stands(scenario.points().get(0).place(), -2.6, -0.2, 1);
        assertThat(scenario.points().get(1).vehicle()).isEqualTo(Optional.empty());
    }

    @Test
    void jsonSaysTheSameAsYaml() {
        assertThat(VehicleFile.read(SampleFiles.at("whole/every-key.json"))).isEqualTo(WAGONETTE);
        Scenario yaml = ScenarioFile.read(SampleFiles.at("whole/every-key-scenario.yaml"));
        Scenario json = ScenarioFile.read(SampleFiles.at("whole/every-key-scenario.json"));
        assertThat(json).usingRecursiveComparison().ignoringFields("entrants").isEqualTo(yaml);
        assertThat(vehicles(json)).isEqualTo(vehicles(yaml));
    }

    private static List<Vehicle> vehicles(Scenario scenario) {
        return scenario.entrants().stream().map(Scenario.Entrant::vehicle).toList();
    }

    @Test
    void theKindOfAFileIsToldByItsFirstKey() {
        assertThat(FileKind.of(SampleFiles.at("whole/wheel.yaml"))).isEqualTo(FileKind.VEHICLE);
        assertThat(FileKind.of(SampleFiles.at("whole/every-key-scenario.json"))).isEqualTo(FileKind.SCENARIO);
    }

    @Test
    void lettersOfAnyCaseAnotherLineEndAndAMarkOfTheEncodingChangeNothing() throws IOException {
        String text = SampleFiles.text(SampleFiles.at("whole/wheel.yaml"));
        Vehicle plain = VehicleFile.read(SampleFiles.at("whole/wheel.yaml"));

        assertThat(asFile(text, t -> t.replace("\n", "\r\n"))).isEqualTo(plain);
        assertThat(asFile(text, t -> "\uFEFF" + t)).isEqualTo(plain);
        assertThat(asFile(text, t -> t.replace("pneumatic", "Pneumatic"))).isEqualTo(plain);
    }

    private Vehicle asFile(String text, Function<String, String> change) throws IOException {
        Path file = folder.resolve("changed.yaml");
        Files.writeString(file, change.apply(text));
        return VehicleFile.read(file);
    }

    @Test
    void aPartMarkedOnceCanBeUsedTwice() throws IOException {
        Path file = folder.resolve("marked.yaml");
        Files.writeString(file, """
                vehicle: Wagon
                layout: half in pitch
                body: {mass: 300 kg, centre of mass: {behind front axle: 1 m, above ground: 1 m}}
                axles:
                  - name: front
                    unsprung mass: 30 kg
                    wheel: &wheel {diameter: 0.6 m, tyre: solid}
                    springs: [{kind: coil, rate: 20 N/mm}]
                  - name: rear
                    behind front axle: 2 m
                    unsprung mass: 30 kg
                    wheel: *wheel
                    springs: [{kind: coil, rate: 20 N/mm}]
                """);

        List<Axle> axles = VehicleFile.read(file).axles();

        assertThat(axles.get(1).wheel()).isEqualTo(axles.get(0).wheel());
    }
}
