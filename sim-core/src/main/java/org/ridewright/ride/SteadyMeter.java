package org.ridewright.ride;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.AxisMeter;
import org.ridewright.comfort.Position;
import org.ridewright.comfort.StartUp;
import org.ridewright.comfort.Window;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/**
 * Measures a stretch of a ride: weighted vertical vibration at seats, at points where nobody is aboard, and how long friction holds. A point is
 * weighted by W_k, as a floor or a hard seat there would be.
 */
final class SteadyMeter implements StepListener {
    /** As of every ride (Hz). */
    private static final double RATE = 2000;

    private final VehicleModel model;
    private final Window window;
    private final List<String> places = new ArrayList<>();
    private final AxisMeter[] meters;
    private final EvenSampler sampler;
    private final double[] locked;

    SteadyMeter(VehicleModel model, List<Scenario.Point> points, Window window, double duration) {
        this.model = model;
        this.window = window;
        ReadOffs readOffs = new ReadOffs(model);
        List<ReadOff> vertical = new ArrayList<>();
        for (SeatPlace seat : model.seats()) {
            places.add(seat.name());
            vertical.add(readOffs.seat(seat).get(2));
        }
        if (places.isEmpty()) {
            for (Scenario.Point point : points) {
                places.add(point.name());
                vertical.add(readOffs.point(point.name(), point.place()).get(2));
            }
        }
        meters = new AxisMeter[vertical.size()];
        for (int i = 0; i < meters.length; i++) {
            meters[i] = new AxisMeter(Position.SEAT, Axis.Z, window, RATE, 0, StartUp.AT_REST, false);
        }
        sampler = new EvenSampler(vertical, RATE, duration, this::accept);
        locked = new double[model.equations().elements().size()];
    }

    private void accept(double[] values) {
        for (int i = 0; i < meters.length; i++) {
            meters[i].accept(values[i]);
        }
    }

    @Override
    public void step(Step step) {
        sampler.step(step);
        double inside = Math.min(step.start() + step.duration(), window.to()) - Math.max(step.start(), window.from());
        if (inside > 0) {
            for (int e = 0; e < locked.length; e++) {
                locked[e] += step.isLocked(e) ? inside : 0;
            }
        }
    }

    SteadyRide result() {
        List<SteadyRide.Felt> felt = new ArrayList<>();
        for (int i = 0; i < meters.length; i++) {
            felt.add(new SteadyRide.Felt(
                    places.get(i), meters[i].result().metrics().rms()));
        }
        Map<String, Double> shares = new HashMap<>();
        for (int e = 0; e < locked.length; e++) {
            Element element = model.equations().elements().get(e);
            if (element.law().friction().states() > 0) {
                shares.put(element.name(), locked[e] / window.length());
            }
        }
        return new SteadyRide(felt, shares);
    }
}
