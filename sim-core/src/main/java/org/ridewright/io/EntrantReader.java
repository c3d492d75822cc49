package org.ridewright.io;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.ride.Scenario.Entrant;
import org.ridewright.vehicle.AxisHeight;
import org.ridewright.vehicle.FurtherMotions;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.SprungBody;
import org.ridewright.vehicle.Vehicle;

/** Reads {@code vehicles} of a scenario, with the files that describe them, and keeps what is wrong with those. */
final class EntrantReader {
    /** Where the vehicles come from. */
    interface Source {
        /**
         * The vehicle of entrant {@code index}, counted from 0.
         *
         * @throws InputException if the file describes none
         */
        Vehicle vehicle(int index, Path file);
    }

    private final Path folder;
    private final Source source;
    private final Set<InputProblem> problems = new LinkedHashSet<>();

    /** @param folder from which the names of vehicle files are reckoned */
    EntrantReader(Path folder, Source source) {
        this.folder = folder;
        this.source = source;
    }

    /** What is wrong with the vehicle files. */
    List<InputProblem> problems() {
        return List.copyOf(problems);
    }

    List<Entrant> read(Part scenario) {
        if (!scenario.has("vehicles")) {
            scenario.missing("vehicles", "a list such as [{file: dray.yaml, speeds: [5 km/h]}]");
        }
        List<Entrant> entrants = new ArrayList<>();
        for (Part part : scenario.parts(
                "vehicles", "a vehicle of a scenario", "file", "load cases", "speeds", "cushions", "occupants")) {
            entrants.add(entrant(part, entrants.size()));
        }
        return entrants;
    }

    private Entrant entrant(Part part, int index) {
        String file = part.text("file", "the name of a vehicle file, reckoned from the folder of the scenario");
        Optional<Vehicle> vehicle =
                file.isEmpty() ? Optional.empty() : vehicle(part, file, index).map(v -> OtherSeats.of(v, part));
        if (vehicle.isEmpty()) {
            part.reading().spoil(part.path("file"));
        }
        return new Entrant(
                vehicle.orElseGet(() -> unread(file)),
                file,
                part.texts("load cases", "the name of a load case"),
                SpeedPlanReader.read(part));
    }

    private Optional<Vehicle> vehicle(Part part, String file, int index) {
        Path path;
        try {
            path = folder.resolve(file);
        } catch (InvalidPathException impossible) {
            refuse(part, file, "cannot be the name of a file", "write the name as the folder shows it");
            return Optional.empty();
        }
        if (Files.isDirectory(path)) {
            refuse(part, file, "is a folder", "name a vehicle file in it");
            return Optional.empty();
        }
        if (!Files.exists(path)) {
            String fix = TreeFile.nearestFile(path)
                    .map(near -> "write "
                            + Path.of(file).resolveSibling(near).toString().replace('\\', '/'))
                    .orElse("check the name; it is reckoned from the folder of the scenario");
            refuse(part, file, "is not there", fix);
            return Optional.empty();
        }
        try {
            return Optional.of(source.vehicle(index, path));
        } catch (InputException broken) {
            problems.addAll(broken.problems());
            return Optional.empty();
        }
    }

    private static void refuse(Part part, String file, String fault, String fix) {
        part.node("file")
                .ifPresent(node -> part.reading().problem(node, file, fault, "the name of a vehicle file", fix));
    }

    /** Keeps the place of a vehicle that could not be read. */
    private static Vehicle unread(String file) {
        SprungBody body = new SprungBody(
                Optional.empty(),
                Optional.empty(),
                Measure.of(0, QuantityKind.LENGTH),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Measure.of(0, QuantityKind.INERTIA),
                Optional.empty(),
                new AxisHeight.AtAxles(),
                new AxisHeight.AtAxles(),
                Optional.empty());
        return new Vehicle(
                file,
                "",
                Layout.QUARTER,
                Optional.empty(),
                body,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new FurtherMotions(List.of(), List.of(), Optional.empty(), Optional.empty(), Optional.empty()));
    }
}
