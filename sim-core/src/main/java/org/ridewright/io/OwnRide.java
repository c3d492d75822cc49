package org.ridewright.io;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
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

    @Override
    public Scenario of(int draw, Map<String, String> texts) {
        Map<String, String> ofEntrant = new LinkedHashMap<>();
        texts.forEach((path, text) -> ofEntrant.put(ScenarioDocument.vehiclePath(entrant, path), text));
        Scenario whole = ofEntrant.isEmpty() ? document.asWritten() : document.with(ofEntrant);
        Entrant own = whole.entrants().get(entrant);
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
}
