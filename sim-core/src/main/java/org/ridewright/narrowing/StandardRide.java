package org.ridewright.narrowing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.comfort.Axis;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideRunner;
import org.ridewright.ride.Scenario;
import org.ridewright.ride.SpeedPlan;
import org.ridewright.road.Coherence;
import org.ridewright.road.NamedSpectrum;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Road;
import org.ridewright.road.RoughnessSpectrum;
import org.ridewright.road.Surface;
import org.ridewright.signal.Channel;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.LoadCase.Aboard;
import org.ridewright.vehicle.Tyre;
import org.ridewright.vehicle.Vehicle;

/**
 * What is asked where nothing else is: the peak over a plank, the weighted vertical r.m.s. on gravel, both at the first occupied seat (where
 * nobody can be aboard, the centre of mass, unweighted), and the bounce frequency. The load case is the first of those with the most people
 * aboard; plank, gravel and speed are choices of this project.
 */
public final class StandardRide implements Answer {
    private static final double PLANK_HEIGHT = 0.04;
    private static final double PLANK_LENGTH = 0.15;
    /** A plank is no higher than this share of the smallest wheel's diameter, so that it can be rolled over. */
    private static final double LEAST_WHEEL = 0.08;

    private static final double GRAVEL_LENGTH = 50;
    private static final double RIDDEN_WITH_HARD_TYRES = 10 / 3.6;
    private static final double RIDDEN_WITH_PNEUMATIC_TYRES = 30 / 3.6;
    private static final long SEED = 7;
    private static final double SAMPLING_RATE = 200;
    private static final String CENTRE = "centre of mass vertical acceleration";

    private final String loadCase;
    private final boolean seated;
    private final double speed;
    private final double height;

    /** Chosen to suit a vehicle; the same is then asked of that vehicle with other values. */
    public StandardRide(Vehicle vehicle) {
        LoadCase chosen = vehicle.loadCases().stream()
                .max(Comparator.comparingInt(StandardRide::people))
                .orElseThrow();
        loadCase = vehicle.loadCases().stream()
                .filter(load -> people(load) == people(chosen))
                .findFirst()
                .orElseThrow()
                .name();
        seated = people(chosen) > 0;
        boolean pneumatic = vehicle.axles().stream().allMatch(a -> a.wheel().tyre() == Tyre.PNEUMATIC);
        double usual = pneumatic ? RIDDEN_WITH_PNEUMATIC_TYRES : RIDDEN_WITH_HARD_TYRES;
        speed = Math.min(usual, vehicle.topSpeed().map(Measure::value).orElse(usual));
        double smallest = vehicle.axles().stream()
                .mapToDouble(a -> a.wheel().diameter().value())
                .min()
                .orElseThrow();
        height = Math.min(PLANK_HEIGHT, Math.rint(1000 * LEAST_WHEEL * smallest) / 1000);
    }

    private static int people(LoadCase load) {
        return (int) load.aboard().stream()
                .filter(Aboard.Person.class::isInstance)
                .count();
    }

    @Override
    public List<Figure> figures() {
        return List.of(
                new Figure("peak over the plank", "m/s²"),
                new Figure(seated ? "W_k r.m.s. on gravel" : "r.m.s. on gravel", "m/s²"),
                new Figure("bounce frequency", "Hz"));
    }

    @Override
    public String asked() {
        return String.format(
                Locale.ROOT,
                "Load case \u201c%s\u201d, %.0f km/h: greatest vertical acceleration %s over a plank %.0f mm high and %.0f mm long; %s over %.0f m"
                        + " of gravel; natural frequency of bounce with the springs sliding.",
                loadCase,
                3.6 * speed,
                seated ? "at the seat" : "at the centre of mass",
                1000 * height,
                1000 * PLANK_LENGTH,
                seated ? "vertical r.m.s. weighted by ISO 2631-1 there" : "r.m.s. there, unweighted",
                GRAVEL_LENGTH);
    }

    @Override
    public List<Double> of(Vehicle vehicle) {
        List<RideResult> results = RideRunner.run(scenario(vehicle), result -> {});
        VehicleModel model = results.get(0).model();
        return List.of(peak(results.get(0)), rms(results.get(1)), BounceFrequency.of(model));
    }

    private double peak(RideResult result) {
        if (seated) {
            return result.seats().get(0).peak();
        }
        RideResult.PointResult point = result.points().get(0);
        return Math.max(point.greatest().value(), -point.least().value());
    }

    private double rms(RideResult result) {
        if (seated) {
            return Optional.ofNullable(result.seats().get(0).metrics().get(Axis.Z))
                    .map(metrics -> metrics.rms())
                    .orElse(Double.NaN);
        }
        return result.trace(CENTRE).map(StandardRide::rms).orElse(Double.NaN);
    }

    private static double rms(Channel channel) {
        double sum = 0;
        for (int i = 0; i < channel.size(); i++) {
            sum += channel.sample(i) * channel.sample(i);
        }
        return Math.sqrt(sum / channel.size());
    }

    private Scenario scenario(Vehicle vehicle) {
        Scenario.Entrant entrant = new Scenario.Entrant(
                vehicle, "", List.of(loadCase), List.of(SpeedPlan.steady(Measure.of(speed, QuantityKind.SPEED))));
        return new Scenario(
                "",
                "",
                List.of(entrant),
                roads(),
                Optional.empty(),
                Optional.empty(),
                Measure.of(SAMPLING_RATE, QuantityKind.FREQUENCY),
                Scenario.Start.UNSTRESSED,
                false,
                List.of(),
                Optional.empty());
    }

    private List<Road> roads() {
        Obstacle.Lie lie = new Obstacle.Lie(
                length(4), Obstacle.Side.BOTH, Measure.of(0, QuantityKind.ANGLE), 1, Optional.empty());
        Obstacle plank =
                new Obstacle.Plank(lie, length(height), length(PLANK_LENGTH), new Obstacle.Shape.Rectangular());
        Surface.Stretch stretch = new Surface.Stretch(Optional.empty(), Optional.of(length(GRAVEL_LENGTH)));
        Surface gravel = new Surface.Spectral(
                stretch, NamedSpectrum.GRAVEL.over(RoughnessSpectrum.LOWEST, RoughnessSpectrum.HIGHEST), new Coherence.Isotropic(), SEED);
        List<Road> roads = new ArrayList<>();
        roads.add(new Road("plank", List.of(plank), Optional.empty()));
        roads.add(new Road("gravel", List.of(), List.of(gravel), Road.RUN_UP, Optional.empty()));
        return roads;
    }

    private static Measure length(double value) {
        return Measure.of(value, QuantityKind.LENGTH);
    }
}
