package org.ridewright.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ridewright.fieldwork.Fact;
import org.ridewright.fieldwork.Measurements;
import org.ridewright.fieldwork.Measurements.Subject;
import org.ridewright.fieldwork.Unknowns;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.Vehicle;

/** Reads the top of a measurements file, with the files that it names, and keeps what is wrong with those. */
final class MeasurementsReader {
    private static final String[] KEYS = {"measurements", "about", "vehicle", "unknowns", "facts"};
    private static final String EVERYTHING = "everything estimated";
    private static final String PATHS =
            "a list of values of the vehicle file such as axles[front].springs[0].rate, or " + EVERYTHING;

    private final NamedFile files;
    private final Set<InputProblem> problems = new LinkedHashSet<>();

    /** @param folder from which the names of files are reckoned */
    MeasurementsReader(Path folder) {
        this.files = new NamedFile(folder);
    }

    /** What is wrong with the files that were named. */
    List<InputProblem> problems() {
        return List.copyOf(problems);
    }

    Measurements read(Node top, Reading reading) {
        Part part = Part.of(reading, top, "a measurements file", KEYS);
        String name = part.text("measurements", "its name");
        Optional<Subject> subject = subject(part);
        Optional<Vehicle> vehicle = subject.map(Subject::vehicle);
        boolean unread = part.has("vehicle") && subject.isEmpty();
        return new Measurements(
                name,
                part.textIfAny("about", "a text").orElse(""),
                subject,
                unknowns(part),
                facts(part, vehicle, unread));
    }

    private Optional<Subject> subject(Part part) {
        if (!part.has("vehicle")) {
            return Optional.empty();
        }
        return files.of(part, "vehicle", "the name of a vehicle file").flatMap(path -> {
            try {
                VehicleDocument document = VehicleDocument.read(path);
                refuseUnknownPaths(part, document);
                return Optional.of(new Subject(path, document.asWritten()));
            } catch (InputException broken) {
                problems.addAll(broken.problems());
                return Optional.empty();
            }
        });
    }

    private static Unknowns unknowns(Part part) {
        Optional<Node> node = part.node("unknowns");
        if (node.isEmpty()) {
            return new Unknowns.NotStated();
        }
        if (node.get() instanceof Node.Scalar scalar && Hints.same(scalar.text(), EVERYTHING)) {
            return new Unknowns.EverythingEstimated();
        }
        return new Unknowns.Listed(part.texts("unknowns", PATHS));
    }

    /** Each unknown must be a value of the vehicle file that can be measured. */
    private static void refuseUnknownPaths(Part part, VehicleDocument document) {
        if (unknowns(part) instanceof Unknowns.Listed) {
            for (Node item : part.itemsOrOne("unknowns", PATHS)) {
                if (item instanceof Node.Scalar scalar) {
                    refuseUnknownPath(part.reading(), scalar, document);
                }
            }
        }
    }

    private static void refuseUnknownPath(Reading reading, Node.Scalar scalar, VehicleDocument document) {
        try {
            if (document.value(scalar.text()).measure().isEmpty()) {
                reading.problem(
                        scalar,
                        scalar.text(),
                        "is no value that a measurement could find",
                        "a number with a unit in the vehicle file",
                        "remove it");
            }
        } catch (UnfitValueException refused) {
            reading.problem(
                    scalar,
                    scalar.text(),
                    refused.getMessage().replace("'" + scalar.text() + "' ", ""),
                    "a path such as axles[0].springs[0].rate",
                    "correct the path; what is not in the vehicle file must be written there first");
        }
    }

    private List<Fact> facts(Part part, Optional<Vehicle> vehicle, boolean unread) {
        if (!part.has("facts")) {
            part.missing("facts", "a list such as [{weights: {with: empty, scales: [...]}}]");
        }
        FactReader reader = new FactReader(
                new LoadingReader(vehicle.map(Vehicle::layout).orElse(unread ? Layout.QUARTER : Layout.FULL)),
                vehicle,
                unread,
                files,
                problems);
        List<Fact> facts = new ArrayList<>();
        for (Part item : part.parts("facts", "a fact", FactReader.KINDS)) {
            facts.add(reader.read(item));
        }
        return facts;
    }
}
