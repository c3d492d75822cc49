package org.ridewright.friction;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.ride.Scenario;
import org.ridewright.ride.SpeedPlan;
import org.ridewright.road.Coherence;
import org.ridewright.road.NamedSpectrum;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Road;
import org.ridewright.road.RoughnessClass;
import org.ridewright.road.RoughnessSpectrum;
import org.ridewright.road.Surface;
import org.ridewright.vehicle.LoadCase.Aboard;

/** The roads and runs over which friction is traded off. */
final class TradeSetting {
    /** Of the plank (m). */
    static final double PLANK_HEIGHT = 0.025;

    static final double PLANK_LENGTH = 0.2;
    private static final double PLANK_AT = 2;
    /** Over which a random road grows from level ground (m). */
    private static final double RUN_UP = 2;
    /** Riding time on a random road once every wheel is past the run-up (s), in which the ride is measured. */
    static final double RIDE = TradeOff.RIDE;

    private static final double SAMPLING_RATE = 200;
    /** Behind the measured stretch, for filters (s). */
    private static final double LOOK_AHEAD = 0.02;

    private TradeSetting() {}

    static Road plank() {
        Obstacle.Lie lie = new Obstacle.Lie(
                length(PLANK_AT), Obstacle.Side.BOTH, Measure.of(0, QuantityKind.ANGLE), 1, Optional.empty());
        Obstacle plank =
                new Obstacle.Plank(lie, length(PLANK_HEIGHT), length(PLANK_LENGTH), new Obstacle.Shape.Rectangular());
        return new Road("plank", List.of(plank), Optional.empty());
    }

    static Road gravel(long seed) {
        return random("gravel", NamedSpectrum.GRAVEL.over(RoughnessSpectrum.LOWEST, RoughnessSpectrum.HIGHEST), seed);
    }

    static Road ofClass(RoughnessClass roughness, long seed) {
        return random("class " + roughness.name(), RoughnessSpectrum.of(roughness.geometricMean(), 2), seed);
    }

    private static Road random(String name, RoughnessSpectrum spectrum, long seed) {
        List<Surface> surfaces =
                List.of(new Surface.Spectral(Surface.Stretch.ALL, spectrum, new Coherence.Isotropic(), seed));
        return new Road(name, List.of(), surfaces, length(RUN_UP), Optional.empty());
    }

    /** Until what the plank has stirred up is at rest; on an endless road as far as the run-up and {@link #RIDE} take. */
    static Scenario run(Road road, double speed, VehicleModel model) {
        Optional<Measure> duration = road.surfaces().isEmpty()
                ? Optional.empty()
                : Optional.of(Measure.of(steadyFrom(speed, model) + RIDE + LOOK_AHEAD, QuantityKind.TIME));
        return new Scenario(
                road.name(),
                "",
                new ArrayList<>(),
                List.of(road),
                duration,
                Optional.empty(),
                Measure.of(SAMPLING_RATE, QuantityKind.FREQUENCY),
                Scenario.Start.UNSTRESSED,
                false,
                points(model),
                Optional.empty());
    }

    /** When the last wheel has passed the run-up of a random road (s). */
    static double steadyFrom(double speed, VehicleModel model) {
        double behind = model.wheels().stream().mapToDouble(WheelPlace::x).min().orElse(0);
        return (Road.START + RUN_UP - Math.min(0, behind)) / speed;
    }

    /** Where nobody is aboard, the cargo; with none, the centre of mass, which every ride has unless it is told of points. */
    private static List<Scenario.Point> points(VehicleModel model) {
        List<Scenario.Point> points = new ArrayList<>();
        if (model.seats().isEmpty()) {
            for (Aboard each : model.loadCase().aboard()) {
                if (each instanceof Aboard.Cargo cargo) {
                    points.add(new Scenario.Point(cargo.name(), Optional.empty(), cargo.place()));
                }
            }
        }
        return points;
    }

    /** Where the ride is felt, in words. */
    static String place(VehicleModel model) {
        if (model.seats().size() == 1) {
            return "the seat";
        }
        if (!model.seats().isEmpty()) {
            return "the worst seat";
        }
        List<Scenario.Point> points = points(model);
        return switch (points.size()) {
            case 0 -> "the centre of mass";
            case 1 -> "the load (" + points.get(0).name() + ")";
            default -> "the worst place of the load";
        };
    }

    static SpeedPlan speed(double metresPerSecond) {
        return SpeedPlan.steady(Measure.of(metresPerSecond, QuantityKind.SPEED));
    }

    private static Measure length(double metres) {
        return Measure.of(metres, QuantityKind.LENGTH);
    }
}
