package org.ridewright.validation;

import java.util.List;
import java.util.Optional;
import org.hipparchus.complex.Complex;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.modal.Condition;
import org.ridewright.modal.FrequencyResponse;
import org.ridewright.modal.LinearModel;
import org.ridewright.modal.RoadInput;
import org.ridewright.ride.Fleet;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.vehicle.Vehicle;

/**
 * Steady motion of a linear vehicle over a sinusoidal road. Quarter vehicle with {@code s = iω}:
 *
 * <pre>
 *   Z_s/U = k_t (k_s + s c)/Δ      Δ = (m_s s² + c s + k_s)(m_u s² + c s + k_s + k_t) − (c s + k_s)²
 * </pre>
 *
 * <p>Of a vehicle that is the same fore and aft, on a road of n waves per metre, the wheels of both axles move the body up by their mean and in pitch by their
 * difference: nothing is left of bounce at {@code n = (j + ½)/wheelbase} and nothing of pitch at {@code n = j/wheelbase}.
 */
final class RoadToBody implements ReferenceProblem {
    private static final double DAMPING = 1500;
    private static final double WHEELBASE = 2.4;
    private static final double SPEED = 12;
    private static final double AMPLITUDE = 1e-3;
    private static final Source CLOSED = Source.closedForm("quarter vehicle, transfer function");
    private static final Source FILTER = Source.closedForm("wheelbase filter");

    @Override
    public String title() {
        return "Frequency response from the road";
    }

    @Override
    public String statement() {
        return "The quarter car of problem 4 with 1500 N·s/m, and a half vehicle that is the same fore and aft, 2.4 m between axles, at 12 m/s.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        VehicleModel quarter = model(Fleet.described(Fleet.quarter(DAMPING)));
        for (double f : new double[] {0.5, 1.25, 4, 10.9, 20}) {
            Complex expected = closed(2 * Math.PI * f);
            Complex found = response(quarter, f, Double.POSITIVE_INFINITY)[0];
            rows.relative(CLOSED, "Z_s/U at " + f + " Hz", "1", expected.norm(), found.norm(), 1e-9);
            rows.absolute(
                    CLOSED, "phase of Z_s/U at " + f + " Hz", "rad", expected.getArgument(), found.getArgument(), 1e-9);
        }
        rows.relative(
                CLOSED,
                "Z_s/U at 4 Hz, from the motion after 20 s",
                "1",
                closed(8 * Math.PI).norm(),
                ridden(quarter, 4),
                1e-7);
        VehicleModel half = model(Fleet.described(even()));
        for (int j = 0; j < 3; j++) {
            double bounce = (j + 0.5) / WHEELBASE * SPEED;
            double pitch = (j + 1) / WHEELBASE * SPEED;
            rows.absolute(
                    FILTER,
                    "bounce over the road at n = " + (j + 0.5) + "/wheelbase",
                    "1",
                    0,
                    response(half, bounce, SPEED)[0].norm(),
                    1e-12);
            rows.absolute(
                    FILTER,
                    "pitch over the road at n = " + (j + 1) + "/wheelbase",
                    "rad/m",
                    0,
                    response(half, pitch, SPEED)[1].norm(),
                    1e-12);
        }
        return rows.list();
    }

    private static Complex closed(double omega) {
        Complex s = new Complex(0, omega);
        Complex spring = s.multiply(DAMPING).add(22e3);
        Complex body = s.multiply(s).multiply(317.5).add(spring);
        Complex wheel = s.multiply(s).multiply(45.4).add(spring).add(192e3);
        return spring.multiply(192e3).divide(body.multiply(wheel).subtract(spring.multiply(spring)));
    }

    private static Complex[] response(VehicleModel model, double f, double speed) {
        LinearModel linear = LinearModel.of(model, Condition.SLIDING);
        return new FrequencyResponse(model, linear, RoadInput.both(speed)).at(f);
    }

    /** Amplitude of the body over that of the road, of the vehicle ridden from rest until the start is forgotten. */
    private static double ridden(VehicleModel model, double f) {
        double omega = 2 * Math.PI * f;
        PiecewisePolynomial road = Drives.cosine(AMPLITUDE, omega, -Math.PI / 2, 20);
        double[] at = new double[2];
        for (int i = 0; i < 2; i++) {
            // a quarter cycle apart: the two coordinates of the turning arrow
            double end = 19 + i / (4 * f);
            at[i] = RegimeSolver.solve(
                                    new Problem(
                                            model.equations(),
                                            List.of(road),
                                            model.rest().q().clone(),
                                            new double[2],
                                            new double[0],
                                            end),
                                    step -> {})
                            .q()[0]
                    - model.rest().q()[0];
        }
        return Math.hypot(at[0], at[1]) / AMPLITUDE;
    }

    private static VehicleModel model(Vehicle vehicle) {
        return VehicleModel.assemble(vehicle, vehicle.loadCases().get(0), Optional.empty(), false);
    }

    private static String even() {
        String axle = """
                  - name: %s
                    behind front axle: %s m
                    unsprung mass: 40 kg
                    wheels: {diameter: 0.6 m, tyre: pneumatic, path: disc, contact rate: 190 kN/m, contact damping: 100 N s/m}
                    springs: [{name: spring, kind: coil, rate: 20 kN/m}]
                    dampers: [{name: damper, bump: 1200 N s/m, rebound: 1200 N s/m}]
                """;
        return """
                vehicle: even
                layout: half in pitch
                body:
                  mass: 600 kg
                  centre of mass: {behind front axle: %s m, above ground: 0.5 m}
                  pitch radius of gyration: 1.1 m
                  pitch axis: centre of mass
                axles:
                """.formatted(WHEELBASE / 2)
                + axle.formatted("front", 0)
                + axle.formatted("rear", WHEELBASE)
                + "load cases: [{name: empty, aboard: []}]\n";
    }
}
