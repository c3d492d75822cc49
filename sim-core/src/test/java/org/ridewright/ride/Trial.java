package org.ridewright.ride;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Road;
import org.ridewright.signal.Channel;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Solution;
import org.ridewright.solver.StepListener;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;

/** One vehicle, load case, road and speed as a bare problem, without the metrics of a ride test. */
record Trial(VehicleModel model, Problem problem) {
    /** From rest, friction holding nothing. */
    static Trial of(Vehicle vehicle, Road road, double speed, double runOut) {
        return of(vehicle, vehicle.loadCases().get(0), road, speed, runOut, 0);
    }

    /**
     * @param runOut time after the last wheel has left the last obstacle, or of the whole run on a level road (s)
     * @param settled +1 from above, −1 from below, 0 without friction held
     */
    static Trial of(Vehicle vehicle, LoadCase load, Road road, double speed, double runOut, int settled) {
        VehicleModel model =
                VehicleModel.assemble(vehicle, load, road.groundRate(), false).settled(settled);
        Heights heights = new Heights(model, road, new Travel(SpeedPlan.steady(Measure.of(speed, QuantityKind.SPEED))));
        double duration = Heights.lastContact(heights.axleTimes()).orElse(0.0) + runOut;
        return new Trial(
                model,
                new Problem(
                        model.equations(),
                        heights.all(duration),
                        model.rest().q(),
                        new double[model.equations().size()],
                        model.rest().friction(),
                        duration));
    }

    static Road road(Obstacle... obstacles) {
        return new Road("test", List.of(obstacles), Optional.empty());
    }

    Solution solve(StepListener listener) {
        return RegimeSolver.solve(problem, listener);
    }

    /** Rises, rolls and pitches from rest, their speeds and accelerations, by {@link ReadOffs#coordinates()}. */
    List<Channel> motion(double rate) {
        SampleRecorder recorder = new SampleRecorder(new ReadOffs(model).coordinates(), rate, problem.duration());
        solve(recorder);
        return recorder.channels();
    }

    /** The same problem with other heights. */
    Trial withHeights(List<PiecewisePolynomial> heights) {
        return new Trial(
                model,
                new Problem(
                        problem.equations(),
                        heights,
                        problem.q(),
                        problem.v(),
                        problem.friction(),
                        problem.duration()));
    }

    /** The same problem started with the first coordinate a little higher. */
    Trial nudged(double rise) {
        double[] q = problem.q().clone();
        q[0] += rise;
        return new Trial(
                model,
                new Problem(
                        problem.equations(),
                        problem.heights(),
                        q,
                        problem.v(),
                        problem.friction(),
                        problem.duration()));
    }

    /** The same with a joint more in every height at each whole multiple of {@code every}, where the solver must stop. */
    Trial cut(double every) {
        return withHeights(problem.heights().stream()
                .map(h -> cut(h.block(0), every, problem.duration()))
                .toList());
    }

    private static PiecewisePolynomial cut(PiecewisePolynomial height, double every, double duration) {
        TreeSet<Double> joints = new TreeSet<>();
        for (int i = 0; i <= height.pieces(); i++) {
            joints.add(height.joint(i));
        }
        for (int i = 0; i * every < duration + every; i++) {
            joints.add(i * every);
        }
        double[] at = joints.stream().mapToDouble(t -> t).toArray();
        double[][] a = new double[at.length - 1][height.degree() + 1];
        for (int i = 0; i < a.length; i++) {
            height.expand(height.pieceAt((at[i] + at[i + 1]) / 2), at[i], a[i]);
        }
        return new PiecewisePolynomial(at, a, height.valueAfter());
    }
}
