package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import org.ridewright.dynamics.Coordinates;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.solver.Solution;
import org.ridewright.vehicle.Vehicle;

/** What must hold of every vehicle that stands still. */
class StandingPropertyTest {
    private static final double G = VehicleModel.GRAVITY;

    @Provide
    Arbitrary<GeneratedVehicle> vehicles() {
        return GeneratedVehicle.any();
    }

    private static Trial standing(Vehicle vehicle, int settled, double duration) {
        return Trial.of(vehicle, vehicle.loadCases().get(0), Trial.road(), 1, duration, settled);
    }

    private static double load(VehicleModel model, WheelPlace wheel) {
        return model.rest().force()[wheel.element()];
    }

    /**
     * Wheel loads carry the weight, its moment about the front axle and that about the centre line, reckoned from the description. Above
     * its axis by h a mass moves forward by h θ and to the right by h φ.
     */
    @Property(tries = 200, seed = "11", shrinking = ShrinkingMode.OFF)
    void wheelLoadsBalanceTheWeightAndBothMoments(
            @ForAll("vehicles") GeneratedVehicle vehicle, @ForAll @IntRange(min = -1, max = 1) int settled) {
        VehicleModel model = standing(vehicle.vehicle(), settled, 1).model();
        double weight = 0;
        double behind = 0;
        double left = 0;
        for (WheelPlace wheel : model.wheels()) {
            weight += load(model, wheel);
            behind -= load(model, wheel) * wheel.x();
            left += load(model, wheel) * wheel.y();
        }
        Coordinates at = model.coordinates();
        double pitch = model.rest().q()[at.pitch()];
        double roll = model.rest().q()[at.roll()];
        double twist = at.twist() < 0 ? 0 : model.rest().q()[at.twist()];
        double[][] masses = masses(vehicle, roll, twist);
        double total = 0;
        double momentBehind = 0;
        double momentLeft = 0;
        for (double[] m : masses) {
            total += m[0] * G;
            momentBehind += m[0] * G * (m[1] - m[3] * pitch);
            momentLeft += m[0] * G * (m[2] - m[3] * m[4]);
        }
        assertThat(weight).isCloseTo(total, within(1e-9 * total));
        assertThat(behind).isCloseTo(momentBehind, within(1e-9 * total));
        assertThat(left).isCloseTo(momentLeft, within(1e-9 * total));
    }

    /** Mass, behind the front axle, left of the centre line, above the axes, roll of the part: body, axles, rider. */
    private static double[][] masses(GeneratedVehicle v, double roll, double twist) {
        double apart = v.twist() == 2 ? 0.25 * v.wheelbase() : 0;
        double half = v.mass() / 2;
        double rider = v.seatMass() + (v.seatMass() > 0 && v.cushion() ? 5 : 0);
        return new double[][] {
            {half, v.centre() - apart, v.across(), v.above(), roll},
            {half, v.centre() + apart, v.across(), v.above(), roll + twist},
            {v.front().unsprung(), 0, 0, 0, 0},
            {v.rear().unsprung(), v.wheelbase(), 0, 0, 0},
            {rider, 0.4 * v.wheelbase(), v.seatAcross(), v.above() + 0.4, roll}
        };
    }

    /**
     * A load where straight springs and tyres, in series at each axle, have their centre neither rolls nor pitches the body and raises
     * every wheel, each by its axle's share.
     */
    @Property(tries = 100, seed = "12", shrinking = ShrinkingMode.OFF)
    void aLoadAtTheStiffnessCentreRaisesEveryWheel(@ForAll("vehicles") GeneratedVehicle any) {
        GeneratedVehicle plain = any.plain();
        GeneratedVehicle vehicle = plain.with(
                plain.front().spring().without(true, false).steel(),
                plain.rear().spring().without(true, false).steel());
        double front = stiffness(vehicle.front());
        double rear = stiffness(vehicle.rear());
        double centre = vehicle.wheelbase() * rear / (front + rear);
        double mass = vehicle.mass() / 10;
        Vehicle described = Fleet.described(vehicle.yaml(1)
                + String.format(
                        Locale.ROOT,
                        "  - {name: laden, aboard: [{cargo: load, mass: %.12g kg, at: {behind front axle: %.15g m, above ground: 0.5 m}}]}\n",
                        mass,
                        centre));
        VehicleModel empty = standing(described, 0, 1).model();
        VehicleModel laden = Trial.of(described, described.loadCase("laden").orElseThrow(), Trial.road(), 1, 1, 0)
                .model();
        for (int w = 0; w < 4; w++) {
            double share = (w < 2 ? front : rear) / (front + rear) / 2;
            double gain = load(laden, laden.wheels().get(w))
                    - load(empty, empty.wheels().get(w));
            assertThat(gain).isPositive().isCloseTo(share * mass * G, within(1e-8 * vehicle.mass() * G));
        }
        int pitch = empty.coordinates().pitch();
        assertThat(laden.rest().q()[pitch]).isCloseTo(empty.rest().q()[pitch], within(1e-12));
    }

    private static double stiffness(AxlePlan axle) {
        double springs = 2 * axle.spring().rate();
        double tyres = 2 * axle.contactRate();
        return springs * tyres / (springs + tyres);
    }

    /** However it settled, a standing vehicle stands, for minutes if need be, and nothing is spent. */
    @Property(tries = 60, seed = "13", shrinking = ShrinkingMode.OFF)
    void aStandingVehicleStaysAtRest(
            @ForAll("vehicles") GeneratedVehicle vehicle, @ForAll @IntRange(min = -1, max = 1) int settled) {
        Trial trial = standing(vehicle.vehicle(), settled, 300);
        double[] rest = trial.problem().q();
        double[] farthest = {0};
        Solution solution = trial.solve(step -> {
            for (int i = 0; i < rest.length; i++) {
                double[] q = new double[SampleRecorder.ROOM];
                step.addDisplacement(i, 1, q);
                farthest[0] = Math.max(farthest[0], Math.abs(LawScan.value(q, step.end()) - rest[i]));
            }
        });
        assertThat(farthest[0]).isLessThan(1e-11);
        assertThat(List.of(
                        solution.energy().dissipated(),
                        Math.abs(solution.energy().work())))
                .allMatch(joules -> joules < 1e-9);
    }
}
