package org.ridewright.ride;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.MotionSickness;
import org.ridewright.comfort.PersonVibration;
import org.ridewright.comfort.Position;
import org.ridewright.comfort.SeatEffectiveness;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.comfort.VibrationTotal;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.road.Road;
import org.ridewright.signal.Channel;
import org.ridewright.solver.EnergyBalance;
import org.ridewright.solver.Solution;

/**
 * What one ride test gave: one vehicle, load case, road and speed.
 *
 * @param vehicleFile name of the vehicle's file
 * @param model the vehicle under its load
 * @param plan of speeds
 * @param duration of the run (s)
 * @param traces sampled read-offs at the scenario's rate; of a run longer than 40 s the stretch around its greatest acceleration
 * @param wheelPaths of each wheel of the model, against the wheel's station (m)
 * @param axles when each axle met and left the obstacles; empty on a road without any
 * @param window over which metrics are taken
 * @param seats metrics at each occupied seat
 * @param points extremes at each named point
 * @param springs of every spring, damper, bar and cushion
 * @param wheels of every wheel
 * @param draught greatest horizontal force against the motion (N)
 * @param speedGained by surge, at its extreme (m/s), negative where speed is lost; absent where the vehicle travels steadily
 * @param missed at each seat, or point where nobody is aboard, without surge or sway; empty where both are there or nothing was compared
 * @param energy where the energy went
 * @param spectra from the road to each seat, or to each point where nobody is aboard; none of a short run
 * @param remarks where the model is near its limits, in words
 */
public record RideResult(
        String vehicleFile,
        VehicleModel model,
        Road road,
        SpeedPlan plan,
        double duration,
        List<Channel> traces,
        List<PiecewisePolynomial> wheelPaths,
        List<AxleTimes> axles,
        Span window,
        List<SeatResult> seats,
        List<PointResult> points,
        List<ElementResult> springs,
        List<WheelResult> wheels,
        Peak draught,
        Optional<Peak> speedGained,
        List<Missed> missed,
        EnergyBalance energy,
        Solution.Statistics statistics,
        List<RideSpectra> spectra,
        List<String> remarks) {
    public RideResult {
        spectra = List.copyOf(spectra);
        missed = List.copyOf(missed);
        traces = List.copyOf(traces);
        wheelPaths = List.copyOf(wheelPaths);
        axles = List.copyOf(axles);
        seats = List.copyOf(seats);
        points = List.copyOf(points);
        springs = List.copyOf(springs);
        wheels = List.copyOf(wheels);
        remarks = List.copyOf(remarks);
    }

    /** Greatest speed of the plan (m/s). */
    public double speed() {
        return plan.greatest();
    }

    /** The trace of that name. */
    public Optional<Channel> trace(String name) {
        return traces.stream().filter(t -> t.name().equals(name)).findFirst();
    }

    /** A stretch of time (s). */
    public record Span(double from, double to) {}

    /** A value and when it occurred (s). */
    public record Peak(double value, double at) {}

    /** When an axle first met and last left the obstacles (s). */
    public record AxleTimes(String axle, double meets, double leaves) {}

    /**
     * At one seat.
     *
     * @param greatest extreme of the unweighted vertical acceleration upward (m/s²)
     * @param least extreme of the same downward (m/s²)
     * @param felt what ISO 2631-1 and BS 6841 say; absent of a run shorter than 1 s
     * @param effectiveness what a sprung seat does for its rider; absent of a rigid one
     * @param sickness motion sickness dose of the ride itself; absent of a run shorter than 1 minute
     * @param timeOff during which the rider was off the seat (s)
     */
    public record SeatResult(
            String seat,
            String person,
            Peak greatest,
            Peak least,
            Optional<PersonVibration> felt,
            Optional<SeatEffectiveness> effectiveness,
            Optional<MotionSickness> sickness,
            double timeOff) {
        /** ISO 2631-1 at a position, by axis. */
        public Map<Axis, VibrationMetrics> metrics(Position position) {
            return felt.map(person -> person.metrics(position)).orElse(Map.of());
        }

        /** ISO 2631-1 at the seat, by axis. */
        public Map<Axis, VibrationMetrics> metrics() {
            return metrics(Position.SEAT);
        }

        /** Point vibration total value over x, y and z at a position (m/s²); not a number where nothing was measured. */
        public double total(Position position) {
            Map<Axis, Double> rms = new EnumMap<>(Axis.class);
            metrics(position).forEach((axis, m) -> {
                if (axis == Axis.X || axis == Axis.Y || axis == Axis.Z) {
                    rms.put(axis, m.rms());
                }
            });
            return rms.isEmpty() ? Double.NaN : VibrationTotal.ofPoint(position, rms);
        }

        /** Greatest vertical acceleration, up or down (m/s²). */
        public double peak() {
            return Math.max(greatest.value(), -least.value());
        }
    }

    /**
     * Accelerations at a named point (m/s²).
     *
     * @param greatest extreme of the vertical one upward
     * @param least extreme of the same downward
     * @param forward extreme fore and aft, as an accelerometer reads it, positive forward
     * @param leftward extreme sideways, likewise
     */
    public record PointResult(String point, Peak greatest, Peak least, Peak forward, Peak leftward) {}

    /**
     * Of a spring, damper, bar or cushion; travel from rest, positive in compression.
     *
     * @param atRest compression from the free state, standing still (m or rad)
     * @param forceAtRest (N or N·m)
     * @param compression greatest travel from rest (m or rad)
     * @param extension greatest travel from rest the other way, as a positive number (m or rad)
     * @param greatestForce (N or N·m)
     * @param leastForce (N or N·m)
     * @param dissipated energy turned to heat (J)
     * @param lockedShare share of time during which its friction is locked; 1 where it has none
     */
    public record ElementResult(
            String element,
            String kind,
            double atRest,
            double forceAtRest,
            double compression,
            double extension,
            double greatestForce,
            double leastForce,
            double dissipated,
            double lockedShare) {}

    /**
     * Of a wheel.
     *
     * @param loadAtRest (N)
     * @param least smallest load (N)
     * @param greatest greatest load (N)
     * @param timeOff during which it was off the ground (s)
     */
    public record WheelResult(String wheel, double loadAtRest, Peak least, Peak greatest, double timeOff) {}
}
