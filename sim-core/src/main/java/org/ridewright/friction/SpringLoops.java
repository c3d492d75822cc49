package org.ridewright.friction;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.modal.EquivalentFriction;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.Pieces;

/**
 * Loops of one spring about its place of rest under one load.
 *
 * @param spring name
 * @param loadCase under which it stands
 * @param load at rest (N)
 * @param travel compression at rest (m)
 * @param limit S at rest (N)
 * @param loops a few amplitudes, for a drawing
 * @param points many amplitudes, rising
 */
public record SpringLoops(
        String spring,
        String loadCase,
        double load,
        double travel,
        double limit,
        List<Loop> loops,
        List<LoopPoint> points) {
    /** Amplitudes of the drawn loops (m). */
    private static final double[] DRAWN = {0.002, 0.005, 0.010, 0.020, 0.040};

    private static final double LEAST = 2e-4;
    private static final double GREATEST = 0.04;
    private static final int POINTS = 24;
    /** Part of the way to where a stage begins, or the spring hangs free, that a loop may go. */
    private static final double CLEAR = 0.9;

    public SpringLoops {
        loops = List.copyOf(loops);
        points = List.copyOf(points);
    }

    /** Of every spring that rubs; of a left and a right one, the first. */
    public static List<SpringLoops> of(VehicleModel model) {
        List<SpringLoops> all = new ArrayList<>();
        Set<String> pairs = new HashSet<>();
        for (int e : Leaves.of(model)) {
            String name = model.equations().elements().get(e).name();
            if (pairs.add(name.replaceFirst(" (left|right)$", ""))) {
                all.add(of(model, e));
            }
        }
        return List.copyOf(all);
    }

    private static SpringLoops of(VehicleModel model, int e) {
        Element element = model.equations().elements().get(e);
        ForceLaw law = element.law();
        double c = model.rest().compression()[e];
        double most = most(law, c);
        List<Loop> loops = new ArrayList<>();
        for (double amplitude : DRAWN) {
            if (amplitude <= most) {
                loops.add(Loop.of(law, c, amplitude));
            }
        }
        if (loops.isEmpty()) {
            loops.add(Loop.of(law, c, most));
        }
        List<LoopPoint> points = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            points.add(point(law, c, Math.min(LEAST, most / 10), most, i / (POINTS - 1.0)));
        }
        return new SpringLoops(
                element.name(),
                model.loadCase().name(),
                Leaves.load(model, e),
                c,
                Leaves.limit(model, e),
                loops,
                points);
    }

    private static LoopPoint point(ForceLaw law, double c, double least, double most, double share) {
        double amplitude = least * Math.pow(most / least, share);
        Loop loop = Loop.of(law, c, amplitude);
        EquivalentFriction balanced = EquivalentFriction.of(law.friction(), law.frictionLimit(c), amplitude);
        return new LoopPoint(
                amplitude,
                loop.area(),
                loop.range() / (2 * amplitude),
                loop.inStep(),
                Math.PI * amplitude * amplitude * balanced.loss(),
                law.elasticRate(c) + balanced.rate());
    }

    /** The greatest amplitude that stays on the piece of the law on which the spring stands, and in compression. */
    private static double most(ForceLaw law, double c) {
        double most = GREATEST;
        Pieces stages = law.allStages();
        for (int i = 0; i < stages.count(); i++) {
            double way = Math.abs(stages.at(i) - c);
            most = way > 0 ? Math.min(most, CLEAR * way) : most;
        }
        double force = law.elasticForce(c);
        return force > 0 ? Math.min(most, CLEAR * force / law.elasticRate(c)) : most;
    }
}
