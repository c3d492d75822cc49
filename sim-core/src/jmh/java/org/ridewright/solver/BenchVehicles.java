package org.ridewright.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;

/**
 * Vehicles of any size for benchmarks: a body on axles with leaf springs that rub, wheels that may leave the ground, seats. Coordinates:
 * heave, roll and pitch of the body, heave and roll of each axle, height of each seat. Invented figures.
 */
final class BenchVehicles {
    static final double GRAVITY = 9.80665;

    private static final double BODY_MASS = 600;
    private static final double INERTIA = 300;
    private static final double AXLE_MASS = 80;
    private static final double AXLE_INERTIA = 25;
    private static final double RIDER = 75;
    private static final double TRACK = 0.6;
    private static final double SPRING_BASE = 0.45;
    private static final double SPACING = 8e-3;

    private BenchVehicles() {}

    /** One wheel under a sprung mass. */
    static Equations quarter() {
        List<Element> elements = List.of(
                new Element("spring", Element.Kind.SPRING, new double[] {-1, 1}, -1, leaf()),
                new Element("wheel", Element.Kind.CONTACT, new double[] {0, -1}, 0, ForceLaw.contact(200_000, 300)));
        return equations(new double[] {BODY_MASS / 4, AXLE_MASS / 2}, new boolean[] {true, true}, elements, 1);
    }

    /** A body on two-wheeled axles with seats. */
    static Equations vehicle(int axles, int seats) {
        int n = 3 + 2 * axles + seats;
        double[] mass = new double[n];
        boolean[] weighs = new boolean[n];
        mass[0] = BODY_MASS;
        mass[1] = INERTIA;
        mass[2] = INERTIA;
        weighs[0] = true;
        List<Element> elements = new ArrayList<>();
        for (int a = 0; a < axles; a++) {
            int at = 3 + 2 * a;
            mass[at] = AXLE_MASS;
            mass[at + 1] = AXLE_INERTIA;
            weighs[at] = true;
            double x = axles == 1 ? 0 : 1 - 2.0 * a / (axles - 1);
            for (int side = -1; side <= 1; side += 2) {
                double[] spring = new double[n];
                spring[0] = -1;
                spring[1] = -side * SPRING_BASE;
                spring[2] = x;
                spring[at] = 1;
                spring[at + 1] = side * SPRING_BASE;
                elements.add(new Element("spring", Element.Kind.SPRING, spring, -1, leaf()));
                double[] wheel = new double[n];
                wheel[at] = -1;
                wheel[at + 1] = -side * TRACK;
                int input = 2 * a + (side + 1) / 2;
                elements.add(
                        new Element("wheel", Element.Kind.CONTACT, wheel, input, ForceLaw.contact(400_000, 600)));
            }
        }
        for (int i = 0; i < seats; i++) {
            int at = 3 + 2 * axles + i;
            mass[at] = RIDER;
            weighs[at] = true;
            double[] seat = new double[n];
            seat[0] = 1;
            seat[1] = i % 2 == 0 ? 0.3 : -0.3;
            seat[2] = -0.2 * (i - seats / 2);
            seat[at] = -1;
            elements.add(new Element("seat", Element.Kind.SEAT, seat, -1, ForceLaw.contact(40_000, 800)));
        }
        return equations(mass, weighs, elements, 2 * axles);
    }

    private static ForceLaw leaf() {
        return ForceLaw.spring(25_000).withDamping(200).withFriction(FrictionLaw.single(0.08, 20, 150_000));
    }

    private static Equations equations(double[] masses, boolean[] weighs, List<Element> elements, int inputs) {
        int n = masses.length;
        double[] mass = new double[n * n];
        double[] weight = new double[n];
        for (int i = 0; i < n; i++) {
            mass[i * n + i] = masses[i];
            weight[i] = weighs[i] ? masses[i] * GRAVITY : 0;
        }
        return new Equations(mass, new double[n * n], weight, elements, inputs);
    }

    /** Rough ground that is cubic between joints 8 ms apart, or straight between joints 1 ms apart; the vehicle is let down at first. */
    static Problem gravel(Equations equations, double duration, boolean cubic) {
        double spacing = cubic ? SPACING : SPACING / 8;
        int pieces = (int) Math.ceil(duration / spacing);
        List<PiecewisePolynomial> heights = new ArrayList<>();
        for (int i = 0; i < equations.inputs(); i++) {
            heights.add(track(new Random(i), pieces, spacing, cubic));
        }
        double[] zero = new double[equations.size()];
        int sliders = equations.elements().stream()
                .mapToInt(e -> e.law().friction().states())
                .sum();
        return new Problem(equations, heights, zero, zero, new double[sliders], duration);
    }

    private static PiecewisePolynomial track(Random random, int pieces, double spacing, boolean cubic) {
        double[] h = new double[pieces + 3];
        for (int i = 1; i < h.length; i++) {
            h[i] = (1 - 2 * spacing) * h[i - 1] + 8e-3 * Math.sqrt(spacing) * random.nextGaussian();
        }
        double[] joints = new double[pieces + 1];
        double[][] rows = new double[pieces][];
        for (int i = 0; i < pieces; i++) {
            joints[i] = i * spacing;
            double rise = (h[i + 2] - h[i + 1]) / spacing;
            double s0 = (h[i + 2] - h[i]) / (2 * spacing);
            double s1 = (h[Math.min(i + 3, h.length - 1)] - h[i + 1]) / (2 * spacing);
            rows[i] = cubic
                    ? new double[] {
                        h[i + 1], s0, (3 * rise - 2 * s0 - s1) / spacing, (s0 + s1 - 2 * rise) / (spacing * spacing)
                    }
                    : new double[] {h[i + 1], rise};
        }
        joints[pieces] = pieces * spacing;
        return new PiecewisePolynomial(joints, rows, h[pieces + 1]);
    }
}
