package org.ridewright.validation;

import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.modal.Condition;
import org.ridewright.modal.Modes;
import org.ridewright.ride.Fleet;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.vehicle.Vehicle;

/**
 * The undamped quarter car: {@code m_s m_u ω⁴ − (m_s (k_s + k_t) + m_u k_s) ω² + k_s k_t = 0}, and in a mode
 * {@code Z_u/Z_s = 1 − m_s ω²/k_s}.
 *
 * <p>The book rounds on its way (ride frequency from the ride rate, hop from the sum of the rates), so its figures hold to 0.3 %;
 * the exact roots of the same data stand beside them.
 */
final class QuarterCarModes implements ReferenceProblem {
    private static final ReferenceTable TABLE = ReferenceTable.read("ride_dynamics.csv");
    private static final Source BOOK = Source.book("Automotive Chassis Engineering p. 209");
    private static final Source EXACT = Source.closedForm("frequency equation, data of the book");

    @Override
    public String title() {
        return "Quarter car: ride and hop";
    }

    @Override
    public String statement() {
        return "317.5 kg on 22 N/mm, 45.4 kg on 192 N/mm, no damping; assembled from its description.";
    }

    @Override
    public List<Check> checks() {
        Vehicle vehicle = Fleet.described(Fleet.quarter(1500).replaceFirst("(?m)^ *dampers:.*\\R", ""));
        VehicleModel model = VehicleModel.assemble(vehicle, vehicle.loadCases().get(0), Optional.empty(), false);
        Modes modes = Modes.of(model, Condition.SLIDING);
        double[] omega = modes.omegas();
        double ratio = modes.modes().get(0).shape()[1] / modes.modes().get(0).shape()[0];
        Rows rows = new Rows(this)
                .relative(BOOK, "ω of the ride, eigenvalue", "rad/s", given("omega_1_book"), omega[0], 3e-3)
                .relative(EXACT, "ω of the ride, eigenvalue", "rad/s", given("omega_1"), omega[0], 1e-6)
                .relative(BOOK, "ω of the hop, eigenvalue", "rad/s", given("omega_2_book"), omega[1], 3e-3)
                .relative(EXACT, "ω of the hop, eigenvalue", "rad/s", given("omega_2"), omega[1], 1e-6)
                .relative(BOOK, "Z_u/Z_s of the ride", "1", given("mode1_zu_over_zs_book"), ratio, 3e-3)
                .relative(EXACT, "Z_u/Z_s of the ride", "1", given("mode1_zu_over_zs"), ratio, 1e-6);
        for (int i = 0; i < 2; i++) {
            String quantity = "ω of the " + (i == 0 ? "ride" : "hop") + ", from 20 cycles of its motion";
            double expected = given(i == 0 ? "omega_1" : "omega_2");
            rows.relative(
                    EXACT,
                    quantity,
                    "rad/s",
                    expected,
                    omegaOfMotion(model, modes.modes().get(i).shape(), expected),
                    1e-6);
        }
        return rows.list();
    }

    private static double given(String quantity) {
        return TABLE.value("QC1", quantity, "value");
    }

    /** Let go in the shape of a mode, 1 mm large, about the loaded position of rest. */
    private static double omegaOfMotion(VehicleModel model, double[] shape, double omega) {
        double largest = Math.max(Math.abs(shape[0]), Math.abs(shape[1]));
        double[] rest = model.rest().q();
        double[] q = new double[2];
        for (int i = 0; i < 2; i++) {
            q[i] = rest[i] + 1e-3 * shape[i] / largest;
        }
        Reading body = (step, out) -> {
            step.addDisplacement(0, 1, out);
            out[0] -= rest[0];
        };
        Crossings level = new Crossings(body, body, 1e-12);
        Problem problem = new Problem(
                model.equations(),
                List.of(PiecewisePolynomial.constant(0)),
                q,
                new double[2],
                new double[0],
                21 * 2 * Math.PI / omega);
        RegimeSolver.solve(problem, level);
        return 40
                * Math.PI
                / (level.events().get(40).time() - level.events().get(0).time());
    }
}
