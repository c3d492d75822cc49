package org.ridewright.narrowing;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.ride.RideBench;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.Scenario;
import org.ridewright.ride.SpeedPlan;
import org.ridewright.ride.Wanted;
import org.ridewright.road.Coherence;
import org.ridewright.road.MeasuredProfile;
import org.ridewright.road.NamedSpectrum;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Road;
import org.ridewright.road.RoadTracks;
import org.ridewright.road.RoughnessSpectrum;
import org.ridewright.road.Surface;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.LoadCase.Aboard;
import org.ridewright.vehicle.Tyre;
import org.ridewright.vehicle.Vehicle;

/**
 * What is asked where nothing else is: the peak over a plank, the weighted vertical r.m.s. on gravel, both at the first occupied seat (where
 * nobody is aboard, both peaks at the centre of mass), and the bounce frequency. The load case is the first with somebody
 * aboard; plank, gravel and speed are choices of this project.
 */
public final class StandardRide implements Answer {
    private static final double PLANK_HEIGHT = 0.04;
    private static final double PLANK_LENGTH = 0.15;
    /** A plank is no higher than this share of the smallest wheel's diameter, so that it can be rolled over. */
    private static final double LEAST_WHEEL = 0.08;

    private static final double GRAVEL_LENGTH = 12;
    /** Distance of the surveyed heights (m). */
    private static final double SURVEY = 0.04;

    private static final double HALF_TRACK = 0.7;
    private static final Measure RUN_UP = length(4);
    private static final double RIDDEN_WITH_HARD_TYRES = 10 / 3.6;
    private static final double RIDDEN_WITH_PNEUMATIC_TYRES = 30 / 3.6;
    private static final long SEED = 7;
    private static final double SAMPLING_RATE = 200;

    private final String loadCase;
    private final boolean seated;
    private final double speed;
    private final double height;
    private final Surface gravel = gravel();

    /** Chosen to suit a vehicle; the same is then asked of that vehicle with other values. */
    public StandardRide(Vehicle vehicle) {
        Optional<LoadCase> occupied =
                vehicle.loadCases().stream().filter(load -> people(load) > 0).findFirst();
        loadCase = occupied.orElse(vehicle.loadCases().get(0)).name();
        seated = occupied.isPresent();
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
        return (int)
                load.aboard().stream().filter(Aboard.Person.class::isInstance).count();
    }

    @Override
    public List<Figure> figures() {
        return List.of(
                new Figure("peak over the plank", "m/s²"),
                new Figure(seated ? "weighted r.m.s. on gravel" : "peak on gravel", "m/s²"),
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
                seated ? "vertical r.m.s. there, weighted by ISO 2631-1" : "the same",
                GRAVEL_LENGTH);
    }

    @Override
    public List<Double> of(Vehicle vehicle) {
        Scenario scenario = scenario(vehicle);
        List<RideBench.Test> tests = RideBench.tests(scenario);
        RideBench bench = new RideBench();
        RideResult plank =
                bench.measure(scenario, tests.get(0), Set.of(Wanted.PEAKS)).ride();
        Set<Wanted> wanted = Set.of(seated ? Wanted.SEAT : Wanted.PEAKS);
        RideResult gravel = bench.measure(scenario, tests.get(1), wanted).ride();
        return List.of(peak(plank), seated ? rms(gravel) : peak(gravel), BounceFrequency.of(plank.model()));
    }

    private double peak(RideResult result) {
        if (seated) {
            return result.seats().get(0).peak();
        }
        RideResult.PointResult point = result.points().get(0);
        return Math.max(point.greatest().value(), -point.least().value());
    }

    private static double rms(RideResult result) {
        return Optional.ofNullable(result.seats().get(0).metrics().get(Axis.Z))
                .map(VibrationMetrics::rms)
                .orElse(Double.NaN);
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
        Obstacle.Lie lie =
                new Obstacle.Lie(length(4), Obstacle.Side.BOTH, Measure.of(0, QuantityKind.ANGLE), 1, Optional.empty());
        Obstacle plank =
                new Obstacle.Plank(lie, length(height), length(PLANK_LENGTH), new Obstacle.Shape.Rectangular());
        return List.of(
                new Road("plank", List.of(plank), Optional.empty()),
                new Road("gravel", List.of(), List.of(gravel), RUN_UP, Optional.empty()));
    }

    /** Two tracks of gravel, surveyed once, so that every vehicle meets the same bumps whatever its track. */
    private static Surface gravel() {
        Surface.Stretch stretch =
                new Surface.Stretch(Optional.empty(), Optional.of(length(Road.START + GRAVEL_LENGTH)));
        Surface random = new Surface.Spectral(
                stretch,
                NamedSpectrum.GRAVEL.over(RoughnessSpectrum.LOWEST, RoughnessSpectrum.HIGHEST),
                new Coherence.Isotropic(),
                SEED);
        Road road = new Road("gravel", List.of(), List.of(random), RUN_UP, Optional.empty());
        double[] stations = new double[(int) Math.rint(GRAVEL_LENGTH / SURVEY)];
        Arrays.setAll(stations, i -> Road.START + i * SURVEY);
        List<double[]> heights = RoadTracks.of(road, HALF_TRACK, -HALF_TRACK).stream()
                .map(track -> track.window(stations[0], stations[stations.length - 1]))
                .map(profile -> Arrays.stream(stations).map(profile::height).toArray())
                .toList();
        return new Surface.Measured(
                Surface.Stretch.ALL,
                new MeasuredProfile("gravel", stations, heights),
                new Surface.Measured.AsMeasured(),
                false,
                Optional.empty());
    }

    private static Measure length(double value) {
        return Measure.of(value, QuantityKind.LENGTH);
    }
}
