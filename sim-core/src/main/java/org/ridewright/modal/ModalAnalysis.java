package org.ridewright.modal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hipparchus.complex.Complex;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.modal.HarmonicBalance.Steady;
import org.ridewright.modal.RoadInput.Tracks;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Vehicle;

/**
 * All that is told of a vehicle's small motions under one load, standing on firm ground.
 *
 * @param settings with which it was made
 * @param responses of seats, then of the body: its centre of mass and above each axle
 * @param swings of bounce, pitch and roll, as far as modes are chiefly that and something rubs
 */
public record ModalAnalysis(
        VehicleModel model,
        Settings settings,
        Modes sliding,
        Modes locked,
        List<PlaceResponse> responses,
        List<SwingCurve> swings) {
    private static final int FREQUENCIES = 461;
    private static final double LOWEST = 0.3;
    private static final double HIGHEST = 30;
    private static final int TRAVELS = 121;
    private static final double LEAST_TRAVEL = 1e-4;
    private static final double GREATEST_TRAVEL = 0.1;

    public ModalAnalysis {
        responses = List.copyOf(responses);
        swings = List.copyOf(swings);
    }

    /**
     * What may be chosen.
     *
     * @param speed of travel (m/s), > 0
     * @param amplitudes of the road for harmonic balance (m), each > 0
     */
    public record Settings(double speed, List<Double> amplitudes) {
        public Settings {
            amplitudes = List.copyOf(amplitudes);
        }
    }

    private record Read(String name, boolean seat, double[] row) {}

    /**
     * Analyses one load case.
     *
     * @throws org.ridewright.dynamics.RideException if the vehicle cannot stand as described
     */
    public static ModalAnalysis of(Vehicle vehicle, LoadCase load, Settings settings) {
        VehicleModel model = VehicleModel.assemble(vehicle, load, Optional.empty(), false);
        return new ModalAnalysis(
                model,
                settings,
                Modes.of(model, Condition.SLIDING),
                Modes.of(model, Condition.LOCKED),
                responses(model, settings),
                swings(model));
    }

    /** Modes in one condition. */
    public Modes modes(Condition condition) {
        return condition == Condition.SLIDING ? sliding : locked;
    }

    /** Whether it matters that the wheels roll freely, which they do here: a vehicle that pitches takes its axles along where a brake holds them. */
    public boolean rolls() {
        return model.coordinates().pitch() >= 0;
    }

    /** Whether some spring or joint rubs. */
    public boolean rubs() {
        return !new FrictionElements(sliding.linear()).none();
    }

    /** Frequencies of all responses, rising (Hz), new. */
    public static double[] frequencies() {
        return spread(LOWEST, HIGHEST, FREQUENCIES);
    }

    private static double[] spread(double from, double to, int count) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = from * Math.pow(to / from, i / (count - 1.0));
        }
        return values;
    }

    private static List<PlaceResponse> responses(VehicleModel model, Settings settings) {
        List<Read> reads = reads(model);
        List<List<ResponseCurve>> curves = new ArrayList<>();
        reads.forEach(r -> curves.add(new ArrayList<>()));
        for (RoadInput input : inputs(model, settings.speed())) {
            for (Condition condition : Condition.values()) {
                FrequencyResponse response = new FrequencyResponse(model, LinearModel.of(model, condition), input);
                List<Complex[]> motions =
                        Arrays.stream(frequencies()).mapToObj(response::at).toList();
                add(
                        curves,
                        reads,
                        motions,
                        values -> new ResponseCurve(input, Optional.of(condition), Double.NaN, values, values.length));
            }
        }
        RoadInput both = RoadInput.both(settings.speed());
        boolean rubs = !new FrictionElements(LinearModel.of(model, Condition.SLIDING)).none();
        for (double amplitude : rubs ? settings.amplitudes() : List.<Double>of()) {
            List<Steady> steady = new HarmonicBalance(model, both, amplitude).at(frequencies());
            int leaves = (int) steady.stream().takeWhile(s -> !s.liftsOff()).count();
            List<Complex[]> motions = steady.stream()
                    .map(s -> s.settled() ? s.coordinates() : none(s.coordinates().length))
                    .toList();
            add(curves, reads, motions, values -> new ResponseCurve(both, Optional.empty(), amplitude, values, leaves));
        }
        List<PlaceResponse> responses = new ArrayList<>();
        for (int r = 0; r < reads.size(); r++) {
            responses.add(new PlaceResponse(reads.get(r).name(), reads.get(r).seat(), curves.get(r)));
        }
        return responses;
    }

    private static void add(
            List<List<ResponseCurve>> curves,
            List<Read> reads,
            List<Complex[]> motions,
            Function<Complex[], ResponseCurve> curve) {
        for (int r = 0; r < reads.size(); r++) {
            double[] row = reads.get(r).row();
            curves.get(r)
                    .add(curve.apply(motions.stream()
                            .map(q -> FrequencyResponse.of(row, q))
                            .toArray(Complex[]::new)));
        }
    }

    private static Complex[] none(int length) {
        Complex[] none = new Complex[length];
        Arrays.fill(none, Complex.NaN);
        return none;
    }

    private static List<RoadInput> inputs(VehicleModel model, double speed) {
        List<RoadInput> inputs = new ArrayList<>();
        inputs.add(RoadInput.both(speed));
        inputs.add(RoadInput.both(Double.POSITIVE_INFINITY));
        if (model.vehicle().layout().rolls()) {
            inputs.add(RoadInput.side(Tracks.LEFT, speed));
            inputs.add(RoadInput.side(Tracks.RIGHT, speed));
        }
        int axles = model.vehicle().axles().size();
        for (int a = 0; a < axles && axles > 1; a++) {
            inputs.add(RoadInput.axle(a));
        }
        return inputs;
    }

    private static List<Read> reads(VehicleModel model) {
        List<Read> reads = new ArrayList<>();
        for (SeatPlace seat : model.seats()) {
            reads.add(new Read(seat.name(), true, seat.rise()));
        }
        reads.add(new Read(
                "body at its centre of mass",
                false,
                model.motionAt(model.centreOfMass()).rise()));
        for (Axle axle : model.vehicle().axles()) {
            if (model.coordinates().pitch() >= 0) {
                Place above = Place.of(-axle.x(), 0, 0);
                reads.add(new Read(
                        "body above " + axle.title(),
                        false,
                        model.motionAt(above).rise()));
            }
        }
        return reads;
    }

    private static List<SwingCurve> swings(VehicleModel model) {
        if (new FrictionElements(LinearModel.of(model, Condition.SLIDING)).none()) {
            return List.of();
        }
        double[] travels = spread(GREATEST_TRAVEL, LEAST_TRAVEL, TRAVELS);
        Modes sliding = Modes.of(model, Condition.SLIDING);
        List<SwingCurve> curves = new ArrayList<>();
        Stream.of(Motion.BOUNCE, Motion.PITCH, Motion.ROLL)
                .flatMap(motion -> sliding.chief(motion).stream())
                .distinct()
                .forEach(mode -> Swing.of(model, mode, travels).ifPresent(found -> {
                    List<Swing> rising = new ArrayList<>(found);
                    Collections.reverse(rising);
                    curves.add(new SwingCurve(mode.name(), rising));
                }));
        return curves;
    }
}
