package org.ridewright.ride;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.AxisMeter;
import org.ridewright.comfort.AxisVibration;
import org.ridewright.comfort.Position;
import org.ridewright.comfort.Window;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** Measures what riders feel while the run goes on: each position and axis of each occupied seat, by ISO 2631-1. */
final class FeltMeters implements StepListener {
    /** Whatever the rate of the traces (Hz). */
    static final double RATE = 2000;

    private final List<Felt> felt = new ArrayList<>();
    private final AxisMeter[] meters;
    private final EvenSampler sampler;

    private record Felt(int seat, Position position, Axis axis, ReadOff readOff) {}

    FeltMeters(VehicleModel model, ReadOffs readOffs, Window window, double duration) {
        for (int i = 0; i < model.seats().size(); i++) {
            SeatPlace seat = model.seats().get(i);
            add(i, Position.SEAT, readOffs.seat(seat));
            add(i, Position.FEET, readOffs.feet(seat));
            addTurns(i, readOffs);
        }
        meters = felt.stream()
                .map(f -> new AxisMeter(f.position(), f.axis(), window, RATE))
                .toArray(AxisMeter[]::new);
        sampler = new EvenSampler(felt.stream().map(Felt::readOff).toList(), RATE, duration, this::accept);
    }

    private void add(int seat, Position position, List<ReadOff> xyz) {
        felt.add(new Felt(seat, position, Axis.X, xyz.get(0)));
        felt.add(new Felt(seat, position, Axis.Y, xyz.get(1)));
        felt.add(new Felt(seat, position, Axis.Z, xyz.get(2)));
    }

    private void addTurns(int seat, ReadOffs readOffs) {
        readOffs.rollAcceleration().ifPresent(r -> felt.add(new Felt(seat, Position.SEAT, Axis.ROLL, r)));
        readOffs.pitchAcceleration().ifPresent(r -> felt.add(new Felt(seat, Position.SEAT, Axis.PITCH, r)));
    }

    private void accept(double[] values) {
        for (int i = 0; i < meters.length; i++) {
            meters[i].accept(values[i]);
        }
    }

    @Override
    public void step(Step step) {
        sampler.step(step);
    }

    /** What was measured at a seat. */
    Map<Position, Map<Axis, AxisVibration>> at(int seat) {
        Map<Position, Map<Axis, AxisVibration>> result = new EnumMap<>(Position.class);
        for (int i = 0; i < meters.length; i++) {
            Felt f = felt.get(i);
            if (f.seat() == seat) {
                result.computeIfAbsent(f.position(), p -> new EnumMap<>(Axis.class))
                        .put(f.axis(), meters[i].result());
            }
        }
        return result;
    }
}
