package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.ride.Scenario.Entrant;
import org.ridewright.ride.Scenario.Point;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Road;
import org.ridewright.road.Surface;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.check.Fault;
import org.ridewright.vehicle.check.Faults;

/** Looks for what cannot be ridden: references to nothing, speeds, and obstacles that no wheel of the vehicles can roll over. */
public final class ScenarioCheck {
    private static final double LONGEST = 36_000;
    private static final double FARTHEST = 100_000;
    private static final double SHORTEST_RUN_UP = 0.1;
    private static final double LONGEST_RUN_UP = 1000;
    private static final double DAY = 86_400;
    private static final double MOST_SAMPLES = 100_000;

    private final Scenario scenario;
    private final Faults faults = new Faults();

    private ScenarioCheck(Scenario scenario) {
        this.scenario = scenario;
    }

    /** Everything wrong with the scenario; its vehicles by themselves are not judged again. */
    public static List<Fault> faults(Scenario scenario) {
        ScenarioCheck check = new ScenarioCheck(scenario);
        check.settings();
        check.entrants();
        check.roads();
        check.ends();
        check.points();
        return check.faults.found();
    }

    /** Everything wrong with roads that no vehicle is named for. */
    public static List<Fault> roadFaults(List<Road> roads) {
        ScenarioCheck check = new ScenarioCheck(new Scenario(
                "",
                "",
                List.of(),
                roads,
                Optional.empty(),
                Optional.empty(),
                Measure.of(1, QuantityKind.FREQUENCY),
                Scenario.Start.UNSTRESSED,
                false,
                List.of(),
                Optional.empty()));
        check.roads();
        return check.faults.found();
    }

    private void settings() {
        scenario.duration().ifPresent(duration -> {
            faults.positive("duration", duration);
            if (duration.value() > LONGEST) {
                faults.within("duration", duration, 0, LONGEST, "check the unit");
            }
        });
        scenario.distance().ifPresent(distance -> {
            faults.positive("distance", distance);
            if (distance.value() > FARTHEST) {
                faults.within("distance", distance, 0, FARTHEST, "check the unit");
            }
            if (scenario.duration().isPresent()) {
                faults.add(
                        "distance",
                        distance.written(),
                        "is given beside 'duration'",
                        "one of them",
                        "remove 'distance' or 'duration'");
            }
        });
        scenario.ridingADay().ifPresent(riding -> {
            faults.positive("riding a day", riding);
            if (riding.value() > DAY) {
                faults.within("riding a day", riding, 0, DAY, "check the unit");
            }
        });
        faults.positive("sampling rate", scenario.samplingRate());
        if (scenario.samplingRate().value() > MOST_SAMPLES) {
            faults.within("sampling rate", scenario.samplingRate(), 0, MOST_SAMPLES, "check the unit");
        }
    }

    private void entrants() {
        List<Entrant> entrants = scenario.entrants();
        if (entrants.isEmpty()) {
            faults.add("vehicles", "", "has no vehicle", "at least one", "write - {file: ..., speeds: ...} under it");
        }
        List<String> paths = IntStream.range(0, entrants.size())
                .mapToObj(i -> "vehicles[" + i + "].file")
                .toList();
        faults.distinct(entrants.stream().map(e -> e.vehicle().name()).toList(), paths, "vehicle");
        for (int i = 0; i < entrants.size(); i++) {
            entrant(entrants.get(i), "vehicles[" + i + "]");
        }
    }

    private void entrant(Entrant entrant, String path) {
        List<String> known =
                entrant.vehicle().loadCases().stream().map(LoadCase::name).toList();
        for (int i = 0; i < entrant.loadCases().size(); i++) {
            String name = entrant.loadCases().get(i);
            String at = path + ".load cases[" + i + "]";
            if (!known.isEmpty()) {
                faults.known(at, name, known, "load case");
            }
            if (entrant.loadCases().indexOf(name) < i) {
                faults.add(at, name, "is given twice", "each load case once", "remove one of them");
            }
        }
        if (entrant.speeds().isEmpty()) {
            faults.add(path + ".speeds", "", "has no speed", "at least one", "write a speed such as 8 km/h");
        }
        for (int i = 0; i < entrant.speeds().size(); i++) {
            SpeedPlan plan = entrant.speeds().get(i);
            String at = path + ".speeds[" + i + "]";
            new SpeedPlanCheck(plan, at, faults).run();
            scenario.distance().ifPresent(distance -> new SpeedPlanCheck(plan, at, faults).within(distance));
            entrant.speeds().subList(0, i).stream()
                    .filter(plan::isTheSameAs)
                    .findFirst()
                    .ifPresent(same -> faults.add(
                            at,
                            plan.written(),
                            "is the same as " + same.written() + " before it",
                            "each speed once",
                            "remove one of them"));
        }
    }

    private void roads() {
        List<Road> roads = scenario.roads();
        if (roads.isEmpty()) {
            faults.add("roads", "", "has no road", "at least one", "write - name: ... under it");
        }
        List<String> paths = IntStream.range(0, roads.size())
                .mapToObj(i -> "roads[" + i + "].name")
                .toList();
        faults.distinct(roads.stream().map(Road::name).toList(), paths, "road");
        for (int i = 0; i < roads.size(); i++) {
            Road road = roads.get(i);
            String path = "roads[" + i + "]";
            faults.positive(path + ".ground rate", road.groundRate());
            faults.notNegative(path + ".ground damping", road.groundDamping());
            road.groundDamping()
                    .filter(damping -> road.groundRate().isEmpty())
                    .ifPresent(damping -> faults.add(
                            path + ".ground damping",
                            damping.written(),
                            "stands without a ground rate, and unyielding ground has no damping",
                            "both, or neither",
                            "add 'ground rate: ...' to the road"));
            for (int j = 0; j < road.obstacles().size(); j++) {
                new ObstacleCheck(scenario.entrants(), road.obstacles().get(j), path + ".obstacles[" + j + "]", faults)
                        .run();
            }
            if (!(road.runUp().value() >= SHORTEST_RUN_UP) || road.runUp().value() > LONGEST_RUN_UP) {
                faults.within(
                        path + ".run-up",
                        road.runUp(),
                        SHORTEST_RUN_UP,
                        LONGEST_RUN_UP,
                        "give the length over which a random road grows from nothing");
            }
            for (int j = 0; j < road.surfaces().size(); j++) {
                new SurfaceCheck(scenario.entrants(), road, j, path + ".surfaces[" + j + "]", faults).run();
            }
            reached(road, path);
        }
    }

    /** A ride over a road that never ends has no last obstacle after which it could end by itself. */
    private void ends() {
        if (scenario.duration().isPresent() || scenario.distance().isPresent()) {
            return;
        }
        for (int i = 0; i < scenario.roads().size(); i++) {
            endless(scenario.roads().get(i), "roads[" + i + "]");
        }
    }

    private void endless(Road road, String path) {
        boolean endless = road.surfaces().stream()
                .anyMatch(surface -> !(surface instanceof Surface.Measured)
                        && surface.stretch().to().isEmpty());
        if (endless) {
            faults.add(
                    path + ".surfaces",
                    "",
                    "go on without end, so the run would too",
                    "'to: ...' in each surface, or 'distance: ...' or 'duration: ...' in the scenario",
                    "add for example distance: 300 m");
        }
    }

    /** A run of stated duration or distance that ends before the first obstacle tells nothing, unless there is a surface. */
    private void reached(Road road, String path) {
        if (road.obstacles().isEmpty() || !road.surfaces().isEmpty()) {
            return;
        }
        double first = road.obstacles().stream()
                .map(Obstacle::lie)
                .mapToDouble(lie -> lie.at().value())
                .min()
                .orElseThrow();
        scenario.distance()
                .filter(d -> d.value() > 0 && d.value() < first)
                .ifPresent(distance -> faults.add(
                        "distance",
                        distance.written(),
                        "ends before the first obstacle of " + path,
                        "a distance that takes every vehicle past it, or none, to let the program choose",
                        "remove distance",
                        path + ".obstacles"));
        if (scenario.duration().isPresent()) {
            inTime(scenario.duration().get(), first, path);
        }
    }

    private void inTime(Measure duration, double first, String path) {
        List<String> tooSlow = new ArrayList<>();
        for (Entrant entrant : scenario.entrants()) {
            entrant.speeds().stream()
                    .filter(plan -> plan.greatest() > 0 && plan.greatest() * duration.value() < first)
                    .forEach(plan -> tooSlow.add(plan.written()));
        }
        if (!tooSlow.isEmpty() && duration.value() > 0) {
            faults.add(
                    "duration",
                    duration.written(),
                    "ends before a vehicle at " + tooSlow.get(0) + " comes to the first obstacle of " + path,
                    "a duration that takes every vehicle past it, or none, to let the program choose",
                    "remove duration",
                    path + ".obstacles",
                    "vehicles");
        }
    }

    private void points() {
        List<String> vehicles =
                scenario.entrants().stream().map(e -> e.vehicle().name()).toList();
        List<Point> points = scenario.points();
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            String path = "read off[" + i + "]";
            if (point.vehicle().isPresent()
                    && !vehicles.contains(point.vehicle().get())) {
                fault(path + ".vehicle", point.vehicle().get(), vehicles);
            }
            for (int j = 0; j < i; j++) {
                if (meet(points.get(j), point)) {
                    faults.add(
                            path + ".point",
                            point.name(),
                            "is already the name of read off[" + j + "]",
                            "a name of its own for each point",
                            "write another name for one of them");
                }
            }
        }
    }

    /** Vehicles that could not be read have no name yet, so the judgement rests on all of them. */
    private void fault(String path, String name, List<String> vehicles) {
        Faults named = new Faults();
        named.known(path, name, vehicles, "vehicle");
        for (Fault fault : named.found()) {
            faults.add(path, name, fault.fault(), fault.expected(), fault.fix(), "vehicles");
        }
    }

    private static boolean meet(Point a, Point b) {
        boolean sameVehicle =
                a.vehicle().isEmpty() || b.vehicle().isEmpty() || a.vehicle().equals(b.vehicle());
        return sameVehicle && a.name().equals(b.name());
    }
}
