package org.ridewright.bounce;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.math.PolynomialRange;
import org.ridewright.solver.EnergyBalance;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Solution;
import org.ridewright.solver.Step;

/**
 * What follows the letting go, by stretches of {@link #STRETCH} until during one of them nothing moves visibly, or the body only trembles
 * on springs that friction holds.
 *
 * <p>Mutable, one per run.
 */
final class RingDown {
    /** Longer than any half cycle of a vehicle on springs (s). */
    private static final double STRETCH = 2.5;
    /** After this long nobody counts on (s). */
    private static final double LONGEST = 20;
    /** How wide the tremor is shows within this time (s). */
    private static final double TREMOR = 1;

    /** Floor of the energy with which a residual is compared (J). */
    private static final double LEAST_ENERGY = 1e-3;

    private final Equations equations;
    private final List<PiecewisePolynomial> heights;
    private final double tolerance;
    private final List<BodyReading> readings;
    private final List<TurnFinder> finders = new ArrayList<>();
    private final LockWatch locks;
    private final Optional<TraceSampler> sampler;
    private final double[] work = new double[BodyReading.ROOM];
    private State state;
    private double time;
    private double dissipated;
    private double residual;
    private double wheelOff;

    /** Coordinates, speeds and friction at one moment. */
    record State(double[] q, double[] v, double[] friction) {}

    /** What was seen of it. */
    record Outcome(Map<Motion, Count> counts, double lockedSince, double duration, double residual, double wheelOff) {}

    RingDown(
            Equations equations,
            List<PiecewisePolynomial> heights,
            double tolerance,
            List<BodyReading> readings,
            State released,
            Optional<TraceSampler> sampler) {
        this.equations = equations;
        this.heights = heights;
        this.tolerance = tolerance;
        this.readings = readings;
        this.sampler = sampler;
        state = released;
        locks = new LockWatch(equations);
        readings.forEach(reading -> finders.add(new TurnFinder(reading, released.q())));
    }

    Outcome run() {
        List<PolynomialRange> ranges;
        double heldSince;
        do {
            ranges = stretch();
            heldSince = locks.slid() ? locks.since() : Double.NaN;
        } while (time < LONGEST - STRETCH / 2 && isSeen(ranges) && !(time - heldSince > STRETCH));
        Map<Motion, Count> counts = new EnumMap<>(Motion.class);
        for (int r = 0; r < readings.size(); r++) {
            counts.put(readings.get(r).motion(), count(r, ranges.get(r), heldSince));
        }
        return new Outcome(
                Collections.unmodifiableMap(counts),
                locks.since(),
                time,
                Math.abs(residual) / Math.max(LEAST_ENERGY, dissipated),
                wheelOff);
    }

    private Count count(int r, PolynomialRange last, double heldSince) {
        BodyReading reading = readings.get(r);
        List<TurningPoint> turns = finders.get(r).turns();
        TurningPoint end = new TurningPoint(time, reading.at(state.q()));
        double offset = (last.greatest() + last.least()) / 2;
        boolean held = !Double.isNaN(heldSince);
        Tremor left = held
                ? Tremor.of(turns, heldSince, heldSince + TREMOR, reading.visible(), true)
                : Tremor.of(turns, time - STRETCH, time, reading.visible(), false);
        double least = Math.max(reading.visible(), held ? Tremor.ALIKE * left.halfWidth() : 0);
        return VisibleTurns.count(reading.motion(), reading.visible(), least, turns, end, offset, left);
    }

    private boolean isSeen(List<PolynomialRange> ranges) {
        boolean seen = false;
        for (int r = 0; r < readings.size(); r++) {
            seen |= ranges.get(r).greatest() - ranges.get(r).least()
                    >= 2 * readings.get(r).visible();
        }
        return seen;
    }

    private List<PolynomialRange> stretch() {
        List<PolynomialRange> ranges = readings.stream()
                .map(r -> new PolynomialRange(BodyReading.ROOM))
                .toList();
        finders.forEach(finder -> finder.beginAt(time));
        locks.beginAt(time);
        sampler.ifPresent(s -> s.beginAt(time));
        Problem problem = new Problem(equations, heights, state.q(), state.v(), state.friction(), STRETCH);
        Solution solution = RegimeSolver.solve(problem, tolerance, step -> take(step, ranges));
        EnergyBalance energy = solution.energy();
        dissipated += energy.dissipated();
        residual += energy.residual();
        state = new State(solution.q(), solution.v(), solution.friction());
        time += STRETCH;
        return ranges;
    }

    private void take(Step step, List<PolynomialRange> ranges) {
        for (int r = 0; r < readings.size(); r++) {
            finders.get(r).step(step);
            int degree = readings.get(r).value(step, work);
            ranges.get(r).include(work, degree, step.end(), step.start(), step.h());
        }
        locks.step(step);
        for (int e = 0; e < equations.elements().size(); e++) {
            if (equations.elements().get(e).kind() == Element.Kind.CONTACT && step.isOff(e)) {
                wheelOff += step.duration();
                break;
            }
        }
        sampler.ifPresent(s -> s.step(step));
    }
}
