package org.ridewright.bounce;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.signal.Channel;
import org.ridewright.solver.RegimeSolver;

/**
 * One bounce test: the vehicle stands on level ground, its hitches still; a place of the body is pressed down or lifted, and let go.
 *
 * <p>Whether the wheels are held by the brake is in the model. The vehicle begins at rest with unstressed friction.
 *
 * <p>Cost: 5 to 30 ms for a stated force, 20 to 100 ms for a stated depth, whose force is searched for (vehicles of 7 to 11 coordinates, one core of a busy
 * machine, program warm). The result is a smooth function of the vehicle's figures as long as the number of counted half cycles stays; {@link
 * Count#smoothFrequency} and {@link Count#smoothCycles} stay continuous where one more comes to be seen. Where friction comes to hold a swing earlier, they may step.
 *
 * @param kind where it is pressed and what is counted
 * @param visible least motion of the body to either side that is seen (m), > 0; of an angle, at the wheels
 * @param tolerance of the solver
 */
public record BounceTest(BounceKind kind, Handling handling, double visible, double tolerance) {
    /** Motion to either side that an onlooker sees against a mark (m). Source: common practice. */
    public static final double USUALLY_VISIBLE = 1e-3;

    /** @throws IllegalArgumentException if nothing is too small to be seen */
    public BounceTest {
        if (!(visible > 0)) {
            throw new IllegalArgumentException("the least visible motion must be > 0, got " + visible + " m");
        }
    }

    /** With the usual eyesight and accuracy. */
    public BounceTest(BounceKind kind, Handling handling) {
        this(kind, handling, USUALLY_VISIBLE, RegimeSolver.TOLERANCE);
    }

    /** @throws RideException as {@link #run(VehicleModel, double)} does */
    public BounceResult run(VehicleModel model) {
        return run(model, Optional.empty());
    }

    /**
     * Does the test and keeps the traces.
     *
     * @param samplingRate of the traces (Hz)
     * @throws RideException if the vehicle cannot be tested so, or the depth cannot be reached
     */
    public BounceResult run(VehicleModel model, double samplingRate) {
        return run(model, Optional.of(samplingRate));
    }

    private BounceResult run(VehicleModel model, Optional<Double> samplingRate) {
        if (!kind.suits(model.vehicle())) {
            throw new RideException("'" + model.vehicle().name() + "' cannot be bounced in " + kind.word()
                    + ": it has not the axles or sides for it");
        }
        BodyPlaces places = new BodyPlaces(model);
        List<BodyReading> readings = places.readings(visible);
        List<PiecewisePolynomial> heights = levelGround(model);
        Optional<TraceSampler> sampler =
                samplingRate.map(rate -> new TraceSampler(readings, rate, -(Handling.RAMP + Handling.HOLD)));
        Pressing.Outcome pressed =
                new Pressing(model, heights, tolerance, places.pressed(kind, handling.sense())).run(handling, sampler);
        RingDown.Outcome rung =
                new RingDown(model.equations(), heights, tolerance, readings, pressed.state(), sampler).run();
        List<Channel> traces = sampler.map(TraceSampler::channels).orElse(List.of());
        return new BounceResult(
                this,
                model,
                pressed.force(),
                pressed.depth(),
                rung.counts(),
                Double.isNaN(rung.lockedSince()) ? OptionalDouble.empty() : OptionalDouble.of(rung.lockedSince()),
                rung.duration(),
                Math.max(pressed.residual(), rung.residual()),
                rung.wheelOff(),
                traces);
    }

    /** Every input at nought but the travelling speed, by which slopes are divided: there are none. */
    private static List<PiecewisePolynomial> levelGround(VehicleModel model) {
        int inputs = model.equations().inputs();
        List<PiecewisePolynomial> heights =
                new ArrayList<>(Collections.nCopies(inputs, PiecewisePolynomial.constant(0)));
        int speed = model.equations().pushes().speed();
        if (speed >= 0) {
            heights.set(speed, PiecewisePolynomial.constant(1));
        }
        return heights;
    }
}
