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
                return Optional.of(new Subject(path, VehicleFile.read(path)));
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

    private List<Fact> facts(Part part, Optional<Vehicle> vehicle, boolean unread) {
        if (!part.has("facts")) {
            part.missing("facts", "a list such as [{weights: {with: empty, scales: [...]}}]");
        }
        FactReader reader = new FactReader(
                new LoadingReader(vehicle.map(Vehicle::layout).orElse(unread ? Layout.QUARTER : Layout.FULL)),
                vehicle,
                files,
                problems);
        List<Fact> facts = new ArrayList<>();
        for (Part item : part.parts("facts", "a fact", FactReader.KINDS)) {
            facts.add(reader.read(item));
        }
        return facts;
    }
}
