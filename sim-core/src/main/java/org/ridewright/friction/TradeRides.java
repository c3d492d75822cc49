package org.ridewright.friction;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.ride.Measured;
import org.ridewright.ride.SharedRoad;
import org.ridewright.ride.SteadyRide;
import org.ridewright.ride.SteadyRide.Felt;
import org.ridewright.ride.Wanted;
import org.ridewright.road.Road;

/** Rides one vehicle with each friction over one road at one speed; wheels follow the same each time. */
final class TradeRides {
    private final Road road;
    private final double speed;

    TradeRides(Road road, double speed) {
        this.road = road;
        this.speed = speed;
    }

    /**
     * What each ride showed, by criterion; a criterion of which such a road tells nothing is not there.
     *
     * @param models of one vehicle, by friction
     * @param done told of each ride
     */
    List<Map<Criterion, Double>> of(List<VehicleModel> models, Runnable done) {
        VehicleModel first = models.get(0);
        SharedRoad shared =
                new SharedRoad(TradeSetting.run(road, speed, first), first, road, TradeSetting.speed(speed));
        return models.stream()
                .map(model -> {
                    Map<Criterion, Double> seen = road.surfaces().isEmpty()
                            ? plank(model, shared.measure(model, EnumSet.of(Wanted.PEAKS, Wanted.SWINGS)))
                            : rough(model, shared.steady(model, TradeSetting.steadyFrom(speed, model)));
                    done.run();
                    return seen;
                })
                .toList();
    }

    private static Map<Criterion, Double> plank(VehicleModel model, Measured measured) {
        Map<Criterion, Double> seen = new EnumMap<>(Criterion.class);
        seen.put(Criterion.PLANK_PEAK, peak(measured));
        double cycles = swing(measured, "heave", Measured.Swing::cycles).orElse(Double.NaN);
        if (model.vehicle().layout().pitches()) {
            swing(measured, "pitch", Measured.Swing::after).ifPresent(p -> seen.put(Criterion.PITCH_AFTER, p));
            cycles = Math.max(
                    cycles, swing(measured, "pitch", Measured.Swing::cycles).orElse(Double.NaN));
        }
        seen.put(Criterion.CYCLES, cycles);
        swing(measured, "heave", Measured.Swing::leftHeld).ifPresent(h -> seen.put(Criterion.HEAVE_LEFT, h));
        swing(measured, "pitch", Measured.Swing::leftHeld).ifPresent(p -> seen.put(Criterion.PITCH_LEFT, p));
        return seen;
    }

    private static Map<Criterion, Double> rough(VehicleModel model, SteadyRide ride) {
        Map<Criterion, Double> seen = new EnumMap<>(Criterion.class);
        ride.weighted().stream().mapToDouble(Felt::rms).max().ifPresent(rms -> seen.put(Criterion.WEIGHTED, rms));
        // a spring whose friction is taken away altogether is never locked
        seen.put(
                Criterion.LOCKED,
                Leaves.of(model).stream()
                        .map(e -> model.equations().elements().get(e).name())
                        .mapToDouble(name -> ride.locked().get(name))
                        .average()
                        .orElse(0));
        return seen;
    }

    /** At the worst seat, or point where nobody is aboard. */
    private static double peak(Measured measured) {
        if (measured.ride().seats().isEmpty()) {
            return measured.ride().points().stream()
                    .mapToDouble(p -> Math.max(p.greatest().value(), -p.least().value()))
                    .max()
                    .orElse(Double.NaN);
        }
        return measured.ride().seats().stream().mapToDouble(s -> s.peak()).max().orElse(Double.NaN);
    }

    private static Optional<Double> swing(Measured measured, String motion, ToDoubleFunction<Measured.Swing> what) {
        return measured.swings().stream()
                .filter(s -> s.motion().equals(motion))
                .map(what::applyAsDouble)
                .findFirst();
    }
}
