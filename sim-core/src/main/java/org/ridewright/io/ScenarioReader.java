package org.ridewright.io;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.ride.Scenario;
import org.ridewright.ride.Scenario.Entrant;
import org.ridewright.ride.Scenario.Point;
import org.ridewright.ride.Scenario.Start;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.Vehicle;

/** Reads the top of a scenario file. */
record ScenarioReader(EntrantReader entrants, ProfileReader profiles) {
    private static final String[] KEYS = {
        "scenario",
        "about",
        "vehicles",
        "road",
        "roads",
        "duration",
        "distance",
        "sampling rate",
        "start",
        "brakes",
        "read off",
        "riding a day"
    };
    private static final Words<Start> STARTS = Words.of("a start", Arrays.asList(Start.values()), Start::word);
    private static final Words<Boolean> BRAKES =
            Words.of("a state of the brakes", List.of(false, true), on -> on ? "on" : "off");
    private static final Measure SAMPLING_RATE = Measure.of(1000, QuantityKind.FREQUENCY);

    Scenario read(Node top, Reading reading) {
        Part scenario = Part.of(reading, top, "a scenario file", KEYS);
        List<Entrant> taking = entrants.read(scenario);
        return new Scenario(
                scenario.text("scenario", "its name"),
                scenario.textIfAny("about", "a text").orElse(""),
                taking,
                new RoadReader(new SurfaceReader(profiles)).read(scenario),
                scenario.measureIfAny("duration", QuantityKind.TIME),
                scenario.measureIfAny("distance", QuantityKind.LENGTH),
                scenario.measureOr("sampling rate", SAMPLING_RATE),
                scenario.wordIfAny("start", STARTS).orElse(Start.UNSTRESSED),
                scenario.wordIfAny("brakes", BRAKES).orElse(false),
                points(scenario, taking.stream().map(Entrant::vehicle).toList()),
                scenario.measureIfAny("riding a day", QuantityKind.TIME));
    }

    private static List<Point> points(Part scenario, List<Vehicle> vehicles) {
        return scenario.parts("read off", "a point to read off", "point", "vehicle", "at").stream()
                .map(part -> {
                    Optional<String> vehicle = part.textIfAny("vehicle", "the name of a vehicle");
                    PlaceReader places = new PlaceReader(layout(vehicle, vehicles));
                    return new Point(part.text("point", "a name"), vehicle, places.read(part, "at"));
                })
                .toList();
    }

    /** What a place must say: as much as the vehicle needs, or all vehicles together. */
    private static Layout layout(Optional<String> name, List<Vehicle> vehicles) {
        Set<Layout> layouts = vehicles.stream()
                .filter(vehicle -> name.isEmpty() || name.get().equals(vehicle.name()))
                .map(Vehicle::layout)
                .collect(Collectors.toSet());
        return layouts.size() == 1 ? layouts.iterator().next() : Layout.FULL;
    }
}
