package org.ridewright.why;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.ride.Scenario;
import org.ridewright.ride.SpeedPlan;
import org.ridewright.road.Coherence;
import org.ridewright.road.NamedSpectrum;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Road;
import org.ridewright.road.RoughnessSpectrum;
import org.ridewright.road.Surface;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.LoadCase.Aboard;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Vehicle;

/**
 * The ride of those who state none: a plank and a stretch of gravel, at half the top speed. Its figures are choices of this program. Each draw
 * rides another stretch of the same gravel.
 *
 * @param load name of the load case
 * @param speed (m/s)
 */
public record UsualRide(String load, double speed) {
    /** Height of the plank (m). */
    public static final double HEIGHT = 0.03;
    /** Its length along the road (m). */
    public static final double LENGTH = 0.15;

    private static final double AT = 3;
    private static final double FASTEST = 8;
    private static final double WITHOUT_TOP_SPEED = 3;
    /** Time on the gravel at its full roughness (s). */
    private static final double GRAVEL_TIME = 4;
    /** Over which the gravel grows and fades (m); statistics leave both out. */
    private static final double RUN_UP = 3;
    /** What is ridden before and after the gravel (m). */
    private static final double SPARE = 1;

    private static final long SEED = 1000;

    /** The heaviest load with which somebody sits, or the heaviest; half the top speed, but no more than 8 m/s, or 3 m/s. */
    public static UsualRide of(Vehicle vehicle) {
        return new UsualRide(
                heaviest(vehicle.loadCases()).name(),
                vehicle.topSpeed()
                        .map(top -> Math.min(FASTEST, top.value() / 2))
                        .orElse(WITHOUT_TOP_SPEED));
    }

    /** The heaviest load with which somebody sits, or the heaviest. */
    public static LoadCase heaviest(List<LoadCase> loads) {
        return loads.stream()
                .max(Comparator.comparing((LoadCase l) -> l.aboard().stream().anyMatch(Aboard.Person.class::isInstance))
                        .thenComparing(l -> l.aboard().stream()
                                .mapToDouble(a -> a.mass().value())
                                .sum()))
                .orElseThrow();
    }

    /** Length of the gravel (m). */
    public double gravelLength() {
        return Math.ceil(RUN_UP * 2 + GRAVEL_TIME * speed);
    }

    /** Which of all stretches of gravel a draw rides. */
    public static long gravelSeed(int draw) {
        return SEED + draw + 1;
    }

    /** The scenario for a vehicle. */
    public Scenario scenario(Vehicle vehicle, String file, int draw) {
        SpeedPlan plan =
                SpeedPlan.steady(new Measure(QuantityKind.SPEED, speed, 0, Provenance.NOT_STATED, speedWords()));
        return new Scenario(
                "a plank and gravel",
                "",
                List.of(new Scenario.Entrant(vehicle, file, List.of(load), List.of(plan))),
                List.of(plank(), gravel(draw)),
                Optional.of(Measure.of(duration(vehicle), QuantityKind.TIME)),
                Optional.empty(),
                Measure.of(200, QuantityKind.FREQUENCY),
                Scenario.Start.UNSTRESSED,
                false,
                standIn(vehicle, load),
                Optional.empty());
    }

    /** Time for all axles to go over the gravel (s): the same of every vehicle, so that means over time can be compared. */
    private double duration(Vehicle vehicle) {
        double wheelbase = vehicle.axles()
                .get(vehicle.axles().size() - 1)
                .behindFrontAxle()
                .value();
        return (gravelLength() + wheelbase + 2 * SPARE) / speed;
    }

    /** The speed in km/h. */
    public String speedWords() {
        return Math.round(speed * 36) / 10.0 + " km/h";
    }

    private static Road plank() {
        Obstacle.Lie lie = new Obstacle.Lie(
                length(AT), Obstacle.Side.BOTH, Measure.of(0, QuantityKind.ANGLE), 1, Optional.empty());
        return new Road(
                "plank",
                List.of(new Obstacle.Plank(lie, length(HEIGHT), length(LENGTH), new Obstacle.Shape.Rectangular())),
                Optional.empty());
    }

    private Road gravel(int draw) {
        Surface.Stretch stretch = new Surface.Stretch(Optional.empty(), Optional.of(length(gravelLength())));
        RoughnessSpectrum spectrum = NamedSpectrum.GRAVEL.over(RoughnessSpectrum.LOWEST, RoughnessSpectrum.HIGHEST);
        return new Road(
                "gravel",
                List.of(),
                List.of(new Surface.Spectral(stretch, spectrum, new Coherence.Isotropic(), gravelSeed(draw))),
                length(RUN_UP),
                Optional.empty());
    }

    /** Where motion is read off if nobody sits: the middle of the wheelbase, 1 m up. */
    public static List<Scenario.Point> standIn(Vehicle vehicle, String load) {
        boolean sits = vehicle.loadCase(load).orElseThrow().aboard().stream().anyMatch(Aboard.Person.class::isInstance);
        double middle = vehicle.axles()
                        .get(vehicle.axles().size() - 1)
                        .behindFrontAxle()
                        .value()
                / 2;
        return sits
                ? List.of()
                : List.of(new Scenario.Point("middle of the wheelbase", Optional.empty(), Place.of(middle, 0, 1)));
    }

    private static Measure length(double metres) {
        return Measure.of(metres, QuantityKind.LENGTH);
    }
}
