package org.ridewright.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.io.InputException;
import org.ridewright.ride.Fleet;
import org.ridewright.vehicle.Hitch;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Vehicle;

class VehicleModelTest {
    static Stream<Vehicle> fleet() {
        return Fleet.all().stream();
    }

    private static VehicleModel model(Vehicle vehicle, LoadCase load) {
        return VehicleModel.assemble(vehicle, load, Optional.empty(), false);
    }

    /**
     * About front axle and centre line, from masses and places alone. What stands above its axis moves forward and to the right by its
     * height times the tilt: that much is taken from the gravity stiffness.
     */
    @ParameterizedTest
    @MethodSource("fleet")
    void wheelAndHitchLoadsCarryTheWeightAndBothMoments(Vehicle vehicle) {
        for (LoadCase load : vehicle.loadCases()) {
            VehicleModel model = model(vehicle, load);
            double[] carried = carried(model);
            double[] weighed = weighed(model);
            Coordinates at = model.coordinates();
            weighed[1] -= tiltMoment(model, at.pitch());
            weighed[2] += tiltMoment(model, at.roll());
            for (int i = 0; i < 3; i++) {
                assertThat(carried[i]).isCloseTo(weighed[i], within(1e-9 * weighed[0]));
            }
            assertThat(weighed[0]).isCloseTo(model.totalMass() * VehicleModel.GRAVITY, within(1e-9 * weighed[0]));
        }
    }

    /** Force, its moment forward and to the left (N, N·m), of wheels and hitches. */
    private static double[] carried(VehicleModel model) {
        double[] sum = new double[3];
        for (WheelPlace wheel : model.wheels()) {
            add(sum, model.rest().force()[wheel.element()], wheel.x(), wheel.y());
        }
        for (Hitch hitch : model.vehicle().hitches()) {
            for (int e = 0; e < model.equations().elements().size(); e++) {
                if (model.equations().elements().get(e).name().equals(hitch.name())) {
                    add(
                            sum,
                            model.rest().force()[e],
                            hitch.place().x(),
                            hitch.place().y());
                }
            }
        }
        return sum;
    }

    /** The same of everything that weighs, standing level. */
    private static double[] weighed(VehicleModel model) {
        double[] sum = new double[3];
        double g = VehicleModel.GRAVITY;
        Place body = model.centreOfMass();
        add(sum, g * model.sprungMass(), body.x(), body.y());
        for (Occupant occupant : VehicleModel.sprung(LoadedBody.of(model.vehicle(), model.loadCase()))) {
            Place seat = occupant.seat().place();
            add(sum, g * occupant.sprungMass(), seat.x(), seat.y());
        }
        model.vehicle().axles().forEach(axle -> add(sum, g * axle.unsprungMass().value(), axle.x(), 0));
        return sum;
    }

    private static void add(double[] sum, double force, double x, double y) {
        sum[0] += force;
        sum[1] += force * x;
        sum[2] += force * y;
    }

    private static double tiltMoment(VehicleModel model, int coordinate) {
        double sum = 0;
        for (int j = 0; j < model.coordinates().size() && coordinate >= 0; j++) {
            sum += model.equations().gravityStiffness(coordinate, j)
                    * model.rest().q()[j];
        }
        return sum;
    }

    /** A rigid heave, roll or pitch of the whole vehicle strains nothing but contacts and hitches. */
    @ParameterizedTest
    @MethodSource("fleet")
    void everyRowButContactsAndHitchesVanishesForARigidMotion(Vehicle vehicle) {
        VehicleModel model = model(vehicle, vehicle.loadCases().get(0));
        for (double[] rigid : rigidMotions(model)) {
            for (Element element : model.equations().elements()) {
                double c = 0;
                for (int i = 0; i < rigid.length; i++) {
                    c += element.row()[i] * rigid[i];
                }
                if (element.kind() != Element.Kind.CONTACT && element.kind() != Element.Kind.HITCH) {
                    assertThat(c).as(element.name()).isCloseTo(0, within(1e-12));
                }
            }
        }
    }

    /** Rise, roll and pitch as one piece, built from places alone. */
    private static List<double[]> rigidMotions(VehicleModel model) {
        Coordinates at = model.coordinates();
        List<double[]> motions = new ArrayList<>();
        double[][] planes = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        for (double[] plane : planes) {
            double[] q = new double[at.size()];
            double x = model.centreOfMass().x();
            double y = model.centreOfMass().y();
            q[at.heave()] = plane[0] + plane[1] * y - plane[2] * x;
            if (at.roll() >= 0) {
                q[at.roll()] = plane[1];
            }
            if (at.pitch() >= 0) {
                q[at.pitch()] = plane[2];
            }
            for (int a = 0; a < model.vehicle().axles().size(); a++) {
                var axle = model.vehicle().axles().get(a);
                int[] index = at.axle(a);
                double centre = plane[0] - plane[2] * axle.x();
                switch (Coordinates.kind(model.vehicle().layout(), axle)) {
                    case SINGLE -> q[index[0]] = centre;
                    case BEAM -> {
                        q[index[0]] = centre;
                        q[index[1]] = plane[1];
                    }
                    case INDEPENDENT -> {
                        double half = axle.track().orElseThrow().value() / 2;
                        q[index[0]] = centre + plane[1] * half;
                        q[index[1]] = centre - plane[1] * half;
                    }
                }
            }
            List<SeatPlace> sprung =
                    model.seats().stream().filter(s -> s.element() >= 0).toList();
            for (int o = 0; o < sprung.size(); o++) {
                for (int stage : at.occupant(o)) {
                    var place = sprung.get(o).seat().place();
                    q[stage] = plane[0] + plane[1] * place.y() - plane[2] * place.x();
                }
            }
            motions.add(q);
        }
        return motions;
    }

    /** Two sacks of 50 kg, 1 m ahead of and behind the centre, add 2·50·1² about y and nothing about x when they lie in line. */
    @Test
    void loadsAddTheirMomentsByTheParallelAxisTheorem() {
        String sacks = """
                  - name: sacks
                    aboard:
                      - {cargo: a, mass: 50 kg, at: {behind front axle: -0.1 m, above ground: 0.9 m}}
                      - {cargo: b, mass: 50 kg, at: {behind front axle: 1.9 m, above ground: 0.9 m}}
                """;
        Vehicle vehicle = Fleet.described(Fleet.symmetrical("")
                        .replace("roll axis: 0.6 m", "roll axis: centre of mass")
                        .replace("spring mount height: 0.6 m", "pitch axis: centre of mass")
                + sacks.indent(0));
        VehicleModel model = model(vehicle, vehicle.loadCase("sacks").orElseThrow());
        Coordinates at = model.coordinates();
        assertThat(model.equations().mass(at.heave(), at.heave())).isCloseTo(700, within(1e-9));
        assertThat(model.equations().mass(at.roll(), at.roll())).isCloseTo(120, within(1e-9));
        assertThat(model.equations().mass(at.pitch(), at.pitch())).isCloseTo(450, within(1e-9));
    }

    /** A free-rolling body gains h² m m_u/(m + m_u) about y, a braked one m h²; both gain −m g h in stiffness. */
    @Test
    void aRaisedCentreOfMassAddsToPitchInertiaAndTakesFromPitchStiffness() {
        Vehicle vehicle = Fleet.described(Fleet.symmetrical(""));
        LoadCase empty = new LoadCase("empty", List.of());
        VehicleModel rolling = VehicleModel.assemble(vehicle, empty, Optional.empty(), false);
        VehicleModel braked = VehicleModel.assemble(vehicle, empty, Optional.empty(), true);
        int pitch = rolling.coordinates().pitch();
        double h = 0.3;
        assertThat(rolling.equations().mass(pitch, pitch)).isCloseTo(350 + h * h * 600 * 200 / 800.0, within(1e-9));
        assertThat(braked.equations().mass(pitch, pitch)).isCloseTo(350 + 600 * h * h, within(1e-9));
        assertThat(rolling.equations().gravityStiffness(pitch, pitch))
                .isCloseTo(-600 * VehicleModel.GRAVITY * h, within(1e-9));
        assertThat(rolling.pitchAxisHeight()).isCloseTo(0.6 + h * 600 / 800, within(1e-12));
        int roll = rolling.coordinates().roll();
        assertThat(rolling.equations().mass(roll, roll)).isCloseTo(120 + 600 * h * h, within(1e-9));
    }

    @Test
    void aHelperMeasuredStandingBeginsItsGapBelowThatPosition() {
        Vehicle vehicle =
                Fleet.described(Fleet.symmetrical(", helper: {gap: 20 mm, rate: 10 kN/m, measured with: driver}"));
        VehicleModel model = model(vehicle, vehicle.loadCases().get(0));
        for (int e = 0; e < model.equations().elements().size(); e++) {
            Element element = model.equations().elements().get(e);
            if (element.kind() == Element.Kind.SPRING) {
                assertThat(element.law().stages().at(0) - model.rest().compression()[e])
                        .isCloseTo(0.02, within(1e-11));
            }
        }
    }

    /** Axle against axle with nothing to push on would lift the vehicle by itself: the sum changes in pitch. */
    @Test
    void anInterconnectionThatPushesAgainstNothingIsRefused() {
        String lifting = """
                connections:
                  - kind: interconnection
                    name: lever
                    rate: 10 kN/m
                    terms:
                      - {weight: 1, unsprung: {axle: front}}
                      - {weight: -1, unsprung: {axle: rear}}
                """;
        assertThatThrownBy(() -> Fleet.described(Fleet.symmetrical("") + lifting))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("connections[0]")
                .hasMessageContaining("lever")
                .hasMessageContaining("pitch");
    }

    /** As the body sinks, front and rear shorten together; their sum holds friction, their difference has no sense in which to. */
    @Test
    void onlyALinkageThatShortensAsTheVehicleSinksHoldsFrictionFromSettling() {
        String linkage = """
                connections:
                  - kind: interconnection
                    name: lever
                    rate: 10 kN/m
                    friction: {constant: 100 N}
                    terms:
                      - {weight: 1, corner: {axle: front}}
                      - {weight: %s, corner: {axle: rear}}
                """;
        for (double weight : new double[] {1, -1}) {
            Vehicle vehicle = Fleet.described(Fleet.symmetrical("") + linkage.formatted(weight));
            VehicleModel model = model(vehicle, vehicle.loadCases().get(0));
            assertThat(model.settled(1).rest().friction()).containsExactly(weight > 0 ? 100 : 0);
            assertThat(model.settled(-1).rest().friction()).containsExactly(weight > 0 ? -100 : 0);
        }
    }

    private static final String GAS =
            "kind: air, gas: {piston area: 150 cm2, volume: 4.9 l, load: 4.75 kN, exponent: 1.3}";

    /**
     * At its load this bellows has 12 times the rate of its free state; the slider that bears 90 % of the limit with a quarter of the locked
     * rate is stiff enough for the latter alone.
     */
    @Test
    void theSlidersOfAGasSpringAreJudgedByItsRateAtItsLoad() {
        String sliders = ", friction: {share of load: 20 %%, locked rate: %s times, "
                + "sliders: [{of limit: 90 %%, of locked rate: 25 %%}, {of limit: 10 %%, of locked rate: 75 %%}]}";
        assertThatThrownBy(() -> onGas(sliders.formatted("0.3")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("locked rate")
                .hasMessageContaining("front");
        Vehicle stiff = onGas(sliders.formatted("0.8"));
        assertThat(model(stiff, stiff.loadCases().get(0)).rest().friction()).hasSize(4);
    }

    /** Gas in front excuses the front springs from the bound on compression, and no others. */
    @Test
    void aCoilBesideGasIsStillRefusedWhereTheVehicleFallsThroughIt() {
        Vehicle sound = onGas("");
        assertThat(model(sound, sound.loadCases().get(0)).rest().force()).isNotEmpty();
        String broken = onGasYaml("").replace("rate: 34 kN/m", "rate: 1 kN/m");
        assertThatThrownBy(() -> Fleet.described(broken))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("rear springs")
                .hasMessageContaining("falls through");
    }

    private static String onGasYaml(String friction) {
        return Fleet.symmetrical("")
                .replace("kind: full-elliptic leaf, apart: 0.9 m, rate: 30 kN/m", "apart: 0.9 m, " + GAS + friction);
    }

    private static Vehicle onGas(String friction) {
        return Fleet.described(onGasYaml(friction));
    }

    @Test
    void aVehicleTooHeavyForItsSpringsIsRefused() {
        String soft = Fleet.symmetrical("").replace("rate: 34 kN/m", "rate: 34 N/m");
        assertThatThrownBy(() -> Fleet.described(soft))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("axles[1].springs[0].rate: 34 N/m");
    }
}
