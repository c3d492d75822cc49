package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.solver.Problem;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;
import org.ridewright.suspension.GasLaw;
import org.ridewright.suspension.Pieces;

/**
 * Bare equations of one to three coordinates that no vehicle need have: any law between any of them, thrown off from anywhere. Figures come
 * from a coarse grid, so that places, gaps and speeds often coincide exactly.
 */
final class GeneratedProblem {
    private static final int KNOBS = 120;
    private static final double SCALE = 0.01;

    private final Knobs knobs;
    private final int n;
    private final double weight;

    private GeneratedProblem(List<Double> settings) {
        knobs = Knobs.of(settings);
        n = 1 + knobs.choice(3);
        weight = 100 * 9.80665;
    }

    /**
     * @param degree highest power of the heights
     */
    static Arbitrary<Problem> any(int degree) {
        return Knobs.settings(KNOBS).map(s -> of(s, degree));
    }

    static Problem of(List<Double> settings, int degree) {
        return new GeneratedProblem(settings).build(degree);
    }

    private double grid(double from, double to) {
        return from + (to - from) * knobs.choice(9) / 8.0;
    }

    private Problem build(int degree) {
        double[] mass = new double[n * n];
        double[] gravity = new double[n];
        double[] stiffness = new double[n * n];
        for (int i = 0; i < n; i++) {
            mass[i * n + i] = i == 0 ? 100 : grid(5, 100);
            gravity[i] = knobs.chance(0.7) ? mass[i * n + i] * 9.80665 : 0;
        }
        if (n > 1 && knobs.chance(0.4)) {
            double coupling = grid(-0.4, 0.4) * Math.sqrt(mass[0] * mass[n + 1]);
            mass[1] = coupling;
            mass[n] = coupling;
        }
        if (knobs.chance(0.3)) {
            stiffness[0] = grid(-500, 500);
        }
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double[] down = new double[n];
            down[i] = -1;
            boolean grounded = i == n - 1 || knobs.chance(0.4);
            if (grounded) {
                elements.add(new Element("ground " + i, Element.Kind.CONTACT, down, knobs.choice(2), law(true)));
            }
            if (i < n - 1) {
                double[] between = new double[n];
                between[i] = -1;
                between[i + 1] = grid(0.5, 1);
                elements.add(new Element("between " + i, Element.Kind.SPRING, between, -1, law(false)));
            }
        }
        List<PiecewisePolynomial> heights = List.of(height(degree), height(degree));
        double[] q = new double[n];
        double[] v = new double[n];
        for (int i = 0; i < n; i++) {
            q[i] = grid(-2, 2) * SCALE;
            v[i] = grid(-0.4, 0.4);
        }
        int states =
                elements.stream().mapToInt(e -> e.law().friction().states()).sum();
        Equations equations = new Equations(mass, stiffness, gravity, elements, 2);
        return new Problem(equations, heights, q, v, new double[states], 0.9);
    }

    private ForceLaw law(boolean ground) {
        double rate = knobs.spread(2e4, ground ? 2e6 : 2e5);
        double damping = knobs.chance(0.6) ? grid(0, 0.4) * Math.sqrt(rate * 50) : 0;
        if (ground && knobs.chance(0.7)) {
            return ForceLaw.contact(rate, damping);
        }
        ForceLaw law = ForceLaw.spring(rate).withDamping(damping);
        List<Pieces.Piece> stages = new ArrayList<>();
        while (stages.size() < 3 && knobs.chance(0.45)) {
            stages.add(new Pieces.Piece(grid(-0.25, 2) * rate, grid(-2, 2) * SCALE, knobs.chance(0.5) ? 1 : -1));
        }
        int stops = stages.isEmpty() || knobs.chance(0.5) ? 0 : 1;
        law = law.withStages(Pieces.of(stages.subList(stops, stages.size())))
                .withStops(Pieces.of(stages.subList(0, stops)));
        if (knobs.chance(0.4)) {
            List<Pieces.Piece> bends = new ArrayList<>();
            bends.add(new Pieces.Piece(grid(-0.4, 2) * (damping + 100), 0, 1));
            if (knobs.chance(0.5)) {
                bends.add(
                        new Pieces.Piece(grid(-0.4, 1) * (damping + 100), grid(-0.4, 0.4), knobs.chance(0.5) ? 1 : -1));
            }
            law = law.withDamping(damping + 100).withSpeedStages(Pieces.of(bends));
        }
        if (knobs.chance(0.15)) {
            law = new ForceLaw(
                    0,
                    law.rate() / 2,
                    law.stages(),
                    law.stops(),
                    law.damping(),
                    law.speedStages(),
                    Optional.of(new GasLaw(0.1 * rate, 0.3, grid(1, 1.4))),
                    FrictionLaw.NONE,
                    false);
        }
        return law.withFriction(friction(4 * rate));
    }

    /** Limits of about the weight; locked rates far above the share of load times any rate. */
    private FrictionLaw friction(double steepest) {
        double mu = grid(0, 0.16);
        double constant = grid(0, 0.16) * weight;
        double locked = knobs.spread(2, 200) * steepest;
        return switch (knobs.choice(4)) {
            case 0 -> FrictionLaw.NONE;
            case 1 -> FrictionLaw.single(mu, constant, locked);
            case 2 ->
                new FrictionLaw(
                        mu,
                        constant,
                        new double[] {0.5, 0.3, 0.2},
                        new double[] {0.6 * locked, 0.25 * locked, 0.15 * locked},
                        0);
            default -> FrictionLaw.envelope(mu, constant, grid(1, 5) * 1e-3);
        };
    }

    /** Pieces that meet, most with a kink where they do, level at first and at last. */
    private PiecewisePolynomial height(int degree) {
        int pieces = 1 + knobs.choice(4);
        double[] joints = new double[pieces + 1];
        double[][] a = new double[pieces][];
        joints[0] = grid(0, 0.2);
        double level = 0;
        for (int i = 0; i < pieces; i++) {
            double length = grid(0.02, 0.2);
            joints[i + 1] = joints[i] + length;
            a[i] = new double[degree + 1];
            a[i][0] = level;
            double next = level;
            for (int k = 1; k <= degree; k++) {
                double part = knobs.chance(0.5) ? grid(-1, 1) * SCALE : 0;
                a[i][k] = part / Math.pow(length, k);
                next += part;
            }
            level = next;
        }
        return new PiecewisePolynomial(joints, a, level);
    }
}
