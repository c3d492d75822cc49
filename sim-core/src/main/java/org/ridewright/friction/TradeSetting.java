package org.ridewright.friction;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

/** The roads and runs over which friction is traded off. */
final class TradeSetting {
    /** Of the plank (m). */
    static final double PLANK_HEIGHT = 0.025;

    static final double PLANK_LENGTH = 0.2;
    private static final double PLANK_AT = 2;
    /** Over which a random road grows from level ground (m). */
    private static final double RUN_UP = 2;
    /** Riding time on a random road after the run-up (s). */
    static final double RIDE = 5;

    private static final double SAMPLING_RATE = 200;

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
    static Scenario run(Road road, double speed) {
        Optional<Measure> duration = road.surfaces().isEmpty()
                ? Optional.empty()
                : Optional.of(Measure.of(RIDE + (Road.START + RUN_UP) / speed, QuantityKind.TIME));
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
                List.of(),
                Optional.empty());
    }

    static SpeedPlan speed(double metresPerSecond) {
        return SpeedPlan.steady(Measure.of(metresPerSecond, QuantityKind.SPEED));
    }

    private static Measure length(double metres) {
        return Measure.of(metres, QuantityKind.LENGTH);
    }
}
