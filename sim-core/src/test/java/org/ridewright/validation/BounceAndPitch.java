package org.ridewright.validation;

import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.modal.Condition;
import org.ridewright.modal.Modes;
import org.ridewright.ride.Fleet;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.vehicle.Vehicle;

/**
 * A rigid body on two springs: z up at the centre of mass, θ positive nose down, l₁ to the front axle, l₂ to the rear,
 *
 * <pre>
 *   z̈ + D₁ z + D₂ θ = 0          D₁ = (k_f + k_r)/m     D₂ = (k_r l₂ − k_f l₁)/m
 *   θ̈ + D₃ θ + D₂/r² z = 0        D₃ = (k_f l₁² + k_r l₂²)/(m r²)
 *
 *   ω² = (D₁ + D₃)/2 ∓ √((D₁ − D₃)²/4 + D₂²/r²)        Z/θ = D₂/(ω² − D₁)
 * </pre>
 *
 * <p>Data: PB1 Wong, ex. 7.1 (from memory, answers not seen); PB2 Rao, Mechanical Vibrations, ex. 5.7 (from memory, its answers 5.8593
 * and 9.4341 rad/s, −2.6461 and 0.3061 m too); PB3 an exercise whose statement was seen, without author or answer. The digits
 * set beside ours are those of the formulas above, worked out apart from this project.
 *
 * <p>A body lifted by z₀ and let go moves in both modes: with ρ = Z/θ of each, {@code z = z₀ (ρ₁ cos ω₁t − ρ₂ cos ω₂t)/(ρ₁ − ρ₂)},
 * {@code θ = z₀ (cos ω₁t − cos ω₂t)/(ρ₁ − ρ₂)}.
 *
 * <p>The examples are those of the table; their frequencies and centres of motion are set beside the eigenvalues of a half vehicle as
 * {@link VehicleModel} assembles it, and beside motions that {@link RegimeSolver} advances. The vehicle stands on wheels of 10⁸ N/m and
 * 1 kg; its springs are so much stiffer than those of the example that wheel and spring in series have the example's rate.
 */
final class BounceAndPitch implements ReferenceProblem {
    private static final double WHEEL_RATE = 1e8;
    private static final double LIFT = 0.01;
    private static final ReferenceTable TABLE = ReferenceTable.read("ride_dynamics.csv");

    /** One example of the table. */
    private record Example(String id, Source source) {
        double given(String quantity) {
            return TABLE.value(id, quantity, "value");
        }
    }

    private static final List<Example> EXAMPLES = List.of(
            new Example("PB1", Source.closedForm("frequency equation; data of Wong, ex. 7.1 (from memory)")),
            new Example(
                    "PB2",
                    Source.closedForm(
                            "frequency equation; Rao, Mechanical Vibrations, ex. 5.7: data and four digits of the answers (from memory)")),
            new Example(
                    "PB3",
                    Source.closedForm(
                            "frequency equation; data of an exercise on a 1600 kg car, author unknown (statement seen)")));

    @Override
    public String title() {
        return "Bounce and pitch of two degrees of freedom";
    }

    @Override
    public String statement() {
        return "A body on a front and a rear spring, three examples: eigenvalues of the half vehicle as it is assembled "
                + "from its description, and motions as the solver advances them.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        for (Example example : EXAMPLES) {
            Source source = example.source();
            VehicleModel vehicle = halfVehicle(example);
            Modes modes = Modes.of(vehicle, Condition.SLIDING);
            for (int i = 0; i < 2; i++) {
                String mode = (i == 0 ? "slower" : "faster") + " mode";
                String number = String.valueOf(i + 1);
                rows.relative(
                        source,
                        example.id() + ": ω of the " + mode + ", half vehicle",
                        "rad/s",
                        example.given("omega_" + number),
                        modes.modes().get(i).omega(),
                        1e-6);
                double[] shape = modes.modes().get(i).shape();
                double centre = shape[vehicle.coordinates().heave()]
                        / shape[vehicle.coordinates().pitch()];
                rows.relative(
                        source,
                        example.id() + ": Z/θ of the " + mode + ", half vehicle",
                        "m",
                        example.given("centre_" + number),
                        centre,
                        1e-5);
                rows.relative(
                        source,
                        example.id() + ": ω of the " + mode + ", from 20 cycles of its motion",
                        "rad/s",
                        example.given("omega_" + number),
                        omegaOfMotion(example, example.given("centre_" + number)),
                        1e-6);
            }
        }
        addLifted(rows, EXAMPLES.get(1));
        return rows.list();
    }

    private void addLifted(Rows rows, Example example) {
        double d1 = (example.given("k_front_axle") + example.given("k_rear_axle")) / example.given("mass");
        double[] omega = new double[2];
        double[] rho = new double[2];
        double r2 = example.given("radius_of_gyration") * example.given("radius_of_gyration");
        double d2 = (example.given("k_rear_axle") * example.given("l_rear")
                        - example.given("k_front_axle") * example.given("l_front"))
                / example.given("mass");
        double d3 = (example.given("k_front_axle") * Math.pow(example.given("l_front"), 2)
                        + example.given("k_rear_axle") * Math.pow(example.given("l_rear"), 2))
                / (example.given("mass") * r2);
        for (int i = 0; i < 2; i++) {
            double root = Math.sqrt((d1 - d3) * (d1 - d3) / 4 + d2 * d2 / r2);
            double square = (d1 + d3) / 2 + (i == 0 ? -root : root);
            omega[i] = Math.sqrt(square);
            rho[i] = d2 / (square - d1);
        }
        double t = 5;
        double[] q =
                RegimeSolver.solve(problem(example, LIFT, 0, t), step -> {}).q();
        double c1 = Math.cos(omega[0] * t);
        double c2 = Math.cos(omega[1] * t);
        Source closed = Source.closedForm("sum of both modes");
        rows.relative(
                closed,
                "PB2: z, 5 s after being lifted by 10 mm",
                "m",
                LIFT * (rho[0] * c1 - rho[1] * c2) / (rho[0] - rho[1]),
                q[0],
                1e-10);
        rows.relative(
                closed,
                "PB2: θ, 5 s after being lifted by 10 mm",
                "rad",
                LIFT * (c1 - c2) / (rho[0] - rho[1]),
                q[1],
                1e-10);
    }

    /** Let go in the shape of a mode, the body passes its level every π/ω. */
    private static double omegaOfMotion(Example example, double centre) {
        Crossings level = new Crossings(Reading.displacement(0), Reading.displacement(0), LIFT * 1e-9);
        RegimeSolver.solve(problem(example, LIFT, LIFT / centre, 26), level);
        double first = level.events().get(0).time();
        return 40 * Math.PI / (level.events().get(40).time() - first);
    }

    private static Problem problem(Example example, double z, double theta, double duration) {
        double m = example.given("mass");
        double r = example.given("radius_of_gyration");
        Equations equations = new Equations(
                new double[] {m, 0, 0, m * r * r},
                new double[4],
                new double[2],
                List.of(
                        spring("front", example.given("l_front"), example.given("k_front_axle")),
                        spring("rear", -example.given("l_rear"), example.given("k_rear_axle"))),
                0);
        return new Problem(
                equations,
                List.<PiecewisePolynomial>of(),
                new double[] {z, theta},
                new double[2],
                new double[0],
                duration);
    }

    /** A spring this far ahead of the centre of mass: its upper end rises by {@code z − x θ}. */
    private static Element spring(String name, double ahead, double rate) {
        return new Element(name, Element.Kind.SPRING, new double[] {-1, ahead}, -1, ForceLaw.spring(rate));
    }

    private static VehicleModel halfVehicle(Example example) {
        double l1 = example.given("l_front");
        double l2 = example.given("l_rear");
        Vehicle vehicle = Fleet.described("""
                vehicle: half
                layout: half in pitch
                body:
                  mass: %s kg
                  centre of mass: {behind front axle: %s m, above ground: 0.5 m}
                  pitch radius of gyration: %s m
                  pitch axis: centre of mass
                axles:
                  - name: front
                    behind front axle: 0 m
                    unsprung mass: 1 kg
                    wheels: {diameter: 0.6 m, tyre: solid, contact rate: %s N/m, contact damping: 0 N s/m}
                    springs: [{name: spring, kind: coil, rate: %s N/m}]
                  - name: rear
                    behind front axle: %s m
                    unsprung mass: 1 kg
                    wheels: {diameter: 0.6 m, tyre: solid, contact rate: %s N/m, contact damping: 0 N s/m}
                    springs: [{name: spring, kind: coil, rate: %s N/m}]
                load cases: [{name: empty, aboard: []}]
                """.formatted(
                        example.given("mass"),
                        l1,
                        example.given("radius_of_gyration"),
                        WHEEL_RATE,
                        aboveWheel(example.given("k_front_axle")),
                        l1 + l2,
                        WHEEL_RATE,
                        aboveWheel(example.given("k_rear_axle"))));
        return VehicleModel.assemble(vehicle, vehicle.loadCases().get(0), Optional.empty(), false);
    }

    /** Rate that, in series with the wheel, makes the stated one (N/m). */
    private static double aboveWheel(double rate) {
        return 1 / (1 / rate - 1 / WHEEL_RATE);
    }
}
