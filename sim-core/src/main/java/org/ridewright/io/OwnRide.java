package org.ridewright.io;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ridewright.quantity.JointSpread;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.ride.Scenario;
import org.ridewright.ride.Scenario.Entrant;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.why.UsualRide;

/**
 * One vehicle in a scenario: all its roads and speeds, under one load.
 *
 * @param document of the scenario
 * @param entrant number of the vehicle in it; the first of its file
 * @param load name of the load case
 */
public record OwnRide(ScenarioDocument document, int entrant, String load) implements SwapDocument.Ride {
    /**
     * Finds a vehicle in a scenario.
     *
     * @param load wanted; absent: of those that it carries there, the heaviest with which somebody sits
     * @throws UnfitValueException if the scenario has no such vehicle, or does not carry the load
     */
    public static OwnRide of(Path scenarioFile, Path vehicleFile, Optional<String> load) {
        ScenarioDocument document = ScenarioDocument.read(scenarioFile);
        List<Entrant> entrants = document.asWritten().entrants();
        int entrant = IntStream.range(0, entrants.size())
                .filter(i -> same(scenarioFile.resolveSibling(entrants.get(i).file()), vehicleFile))
                .findFirst()
                .orElseThrow(() -> new UnfitValueException(scenarioFile.getFileName() + " has no vehicle "
                        + vehicleFile.getFileName() + "; it has "
                        + String.join(
                                ", ",
                                entrants.stream().map(Entrant::file).distinct().toList())));
        Entrant own = entrants.get(entrant);
        return new OwnRide(document, entrant, load(own.vehicle(), own.loadCases(), load));
    }

    /**
     * The load case that is ridden.
     *
     * @param carried names to choose from; all of the vehicle's where empty
     */
    public static String load(Vehicle vehicle, List<String> carried, Optional<String> wanted) {
        List<LoadCase> loads = vehicle.loadCases().stream()
                .filter(l -> carried.isEmpty() || carried.contains(l.name()))
                .toList();
        String name = wanted.orElseGet(() -> UsualRide.heaviest(loads).name());
        if (loads.stream().noneMatch(l -> l.name().equals(name))) {
            throw new UnfitValueException("there is no load '" + name + "' to ride with; there are "
                    + String.join(", ", loads.stream().map(LoadCase::name).toList()));
        }
        return name;
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.isSameFile(one, other);
        } catch (IOException missing) {
            return one.toAbsolutePath()
                    .normalize()
                    .equals(other.toAbsolutePath().normalize());
        }
    }

    /** How often the vehicle's file stands in the scenario; the first is ridden. */
    public int times() {
        List<Entrant> entrants = document.asWritten().entrants();
        return (int) entrants.stream()
                .filter(e -> e.file().equals(entrants.get(entrant).file()))
                .count();
    }

    @Override
    public JointSpread spread() {
        return document.ownSpread();
    }

    /** Other seats that the scenario gives the vehicle, put into the vehicle itself, where they can be exchanged. */
    @Override
    public Map<String, String> instead() {
        Map<String, String> instead = new LinkedHashMap<>();
        int seats = vehicle().seats().size();
        for (int s = 0; s < seats; s++) {
            String seat = "seats[" + s + "].";
            said("cushions").ifPresent(text -> {
                instead.put(seat + "stages", "");
                instead.put(seat + "cushion", text);
            });
            said("occupants").ifPresent(text -> instead.put(seat + "occupant", text));
        }
        return instead;
    }

    /** The vehicle that rides, as the scenario seats it. */
    public Vehicle vehicle() {
        return document.asWritten().entrants().get(entrant).vehicle();
    }

    private Optional<String> said(String key) {
        String path = ofEntrant(key);
        return document.values().stream()
                .filter(v -> v.path().equals(path))
                .map(NamedValue::written)
                .findFirst();
    }

    private String ofEntrant(String key) {
        return "vehicles[" + entrant + "]." + key;
    }

    @Override
    public Scenario of(int draw, Map<String, String> texts, Map<String, String> drawn) {
        Map<String, String> all = new LinkedHashMap<>(drawn);
        texts.forEach((path, text) -> all.put(ScenarioDocument.vehiclePath(entrant, path), text));
        for (String key : List.of("cushions", "occupants")) {
            if (said(key).isPresent()) {
                all.put(ofEntrant(key), "");
            }
        }
        Scenario whole = all.isEmpty() ? document.asWritten() : document.with(all);
        Entrant own = named(whole.entrants().get(entrant));
        return new Scenario(
                whole.name(),
                whole.about(),
                List.of(new Entrant(own.vehicle(), own.file(), List.of(load), own.speeds())),
                whole.roads(),
                whole.duration(),
                whole.distance(),
                whole.samplingRate(),
                whole.start(),
                whole.braked(),
                whole.points().isEmpty() ? UsualRide.standIn(own.vehicle(), load) : whole.points(),
                whole.ridingADay());
    }

    /** By the name that it has in the scenario, by which points to read off may ask for it. */
    private Entrant named(Entrant seated) {
        return new Entrant(
                seated.vehicle().seated(vehicle().name(), seated.vehicle().seats()),
                seated.file(),
                seated.loadCases(),
                seated.speeds());
    }
}
