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
import org.ridewright.ride.Fleet;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;

class VehicleModelTest {
    static Stream<Vehicle> fleet() {
        return Fleet.all().stream();
    }

    private static VehicleModel model(Vehicle vehicle, LoadCase load) {
        return VehicleModel.assemble(vehicle, load, Optional.empty(), false);
    }

    @ParameterizedTest
    @MethodSource("fleet")
    void wheelAndHitchLoadsCarryTheWeightAndBothMoments(Vehicle vehicle) {
        for (LoadCase load : vehicle.loadCases()) {
            VehicleModel model = model(vehicle, load);
            double sum = 0;
            for (int e = 0; e < model.equations().elements().size(); e++) {
                Element.Kind kind = model.equations().elements().get(e).kind();
                if (kind == Element.Kind.CONTACT || kind == Element.Kind.HITCH) {
                    sum += model.rest().force()[e];
                }
            }
            double weight = model.totalMass() * VehicleModel.GRAVITY;
            assertThat(sum).isCloseTo(weight, within(1e-9 * weight));
        }
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

    /** Source: Automotive Chassis Engineering p. 209 (7.87 and 68.73 rad/s printed, rounded); exact from its quadratic. */
    @Test
    void aQuarterVehicleHasTheFrequenciesOfTheTextbook() {
        VehicleModel model = model(
                Fleet.described(Fleet.quarter(1500)),
                Fleet.described(Fleet.quarter(1500)).loadCases().get(0));
        double[] omegas = Modes.of(model).omegas();
        assertThat(omegas[0]).isCloseTo(7.878634, within(1e-6));
        assertThat(omegas[1]).isCloseTo(68.708623, within(1e-6));
    }

    /** Source: Rao, Mechanical Vibrations, example 5.7 (from memory: 5.8593 and 9.4341 rad/s). */
    @Test
    void aHalfVehicleBouncesAndPitchesAsInTheTextbook() {
        Vehicle vehicle = Fleet.described("""
                vehicle: half
                layout: half in pitch
                body:
                  mass: 1000 kg
                  centre of mass: {behind front axle: 1 m, above ground: 0.5 m}
                  pitch radius of gyration: 0.9 m
                  pitch axis: centre of mass
                axles:
                  - name: front
                    behind front axle: 0 m
                    unsprung mass: 0.001 kg
                    wheels: {diameter: 0.6 m, tyre: solid, contact rate: 100 MN/m, contact damping: 0 N s/m}
                    springs: [{name: spring, kind: coil, rate: 18 kN/m}]
                  - name: rear
                    behind front axle: 2.5 m
                    unsprung mass: 0.001 kg
                    wheels: {diameter: 0.6 m, tyre: solid, contact rate: 100 MN/m, contact damping: 0 N s/m}
                    springs: [{name: spring, kind: coil, rate: 22 kN/m}]
                load cases: [{name: empty, aboard: []}]
                """);
        double[] omegas = Modes.of(model(vehicle, vehicle.loadCases().get(0))).omegas();
        assertThat(omegas[0]).isCloseTo(5.859292, within(2e-3));
        assertThat(omegas[1]).isCloseTo(9.434089, within(2e-3));
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

    @Test
    void aVehicleTooHeavyForItsSpringsIsRefused() {
        String soft = Fleet.symmetrical("").replace("rate: 34 kN/m", "rate: 34 N/m");
        assertThatThrownBy(() -> Fleet.described(soft))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("axles[1].springs[0].rate: 34 N/m");
    }
}
