package org.ridewright.io;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ridewright.fieldwork.Heading;
import org.ridewright.fieldwork.MeasuredRide;
import org.ridewright.fieldwork.MeasuredRide.Horse;
import org.ridewright.fieldwork.RidersWords;
import org.ridewright.fieldwork.RoadReference;
import org.ridewright.fieldwork.UsualTolerance;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Road;

/** Reads {@code ride} and {@code words}. */
record RideFactReader(LoadingReader loadings, LogReferenceReader logs, NamedFile files, Set<InputProblem> problems) {
    static final List<String> RIDE = Stream.concat(
                    LoadingReader.KEYS.stream(), Stream.of("scenario", "road", "speed", "logs", "horse"))
            .toList();
    static final List<String> WORDS = Stream.concat(
                    LoadingReader.KEYS.stream(), Stream.of("said", "seat", "scenario", "road", "speed"))
            .toList();

    MeasuredRide ride(Part part) {
        return new MeasuredRide(
                FactReader.heading(part),
                loadings.read(part),
                road(part),
                UsualTolerance.ofSpeed(part.measure("speed", QuantityKind.SPEED)),
                logs.read(part),
                horse(part));
    }

    private static Horse horse(Part part) {
        Optional<Part> group = part.part("horse", "a horse", "step frequency", "unfit");
        if (group.isEmpty()) {
            return new Horse.None();
        }
        Part horse = group.get();
        Optional<String> given = horse.oneOf("step frequency", "unfit");
        if (given.equals(Optional.of("unfit"))) {
            return new Horse.Unfit(horse.text("unfit", "the reason why the log cannot be fitted"));
        }
        Optional<Measure> steps = horse.measureIfAny("step frequency", QuantityKind.FREQUENCY);
        return steps.isPresent() ? new Horse.Steps(UsualTolerance.ofSteps(steps.get())) : new Horse.None();
    }

    RidersWords words(Part part) {
        Heading heading = FactReader.heading(part);
        String said = part.text("said", "the rider's words");
        Optional<RidersWords.Run> run = Optional.empty();
        if (part.has("scenario") || part.has("road") || part.has("speed")) {
            run = Optional.of(
                    new RidersWords.Run(road(part), UsualTolerance.ofSpeed(part.measure("speed", QuantityKind.SPEED))));
        }
        return new RidersWords(heading, said, loadings.read(part), part.text("seat", "the name of a seat"), run);
    }

    /** The road, which the file must have. */
    private RoadReference road(Part part) {
        Optional<Path> file = files.of(part, "scenario", "the name of a scenario or road file");
        String written = part.textIfAny("scenario", "a name").orElse("");
        String name = part.textIfAny("road", "the name of a road").orElse("");
        if (file.isEmpty()) {
            return new RoadReference(written, Path.of("unread"), name);
        }
        try {
            List<Road> roads = RideRoads.of(file.get());
            if (RideRoads.named(roads, name).isEmpty()) {
                refuse(part, name, roads.stream().map(Road::name).toList());
            }
        } catch (InputException broken) {
            problems.addAll(broken.problems());
        }
        return new RoadReference(written, file.get(), name);
    }

    private static void refuse(Part part, String name, List<String> names) {
        String expected = Words.listed(names);
        part.node("road")
                .ifPresentOrElse(
                        node -> part.reading()
                                .problem(
                                        node,
                                        name,
                                        "is not the name of a road of that file",
                                        expected,
                                        Hints.nearest(name, names)),
                        () -> part.missing("road", "one of the roads of that file: " + expected));
    }
}
