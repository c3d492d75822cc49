package org.ridewright.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.ridewright.comfort.Position;
import org.ridewright.fieldwork.LogReference;
import org.ridewright.fieldwork.LogReference.Columns;
import org.ridewright.fieldwork.LogReference.Sensor;
import org.ridewright.measurement.LogAxis;
import org.ridewright.measurement.LogOptions;
import org.ridewright.measurement.LogOptions.Forward;
import org.ridewright.measurement.LogOptions.Gravity;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

/**
 * Reads {@code logs}, opens each, and takes up what is wrong with it.
 *
 * @param problems takes that up
 */
record LogReferenceReader(LoadingReader loadings, NamedFile files, Set<InputProblem> problems) {
    private static final String[] KEYS = {
        "file",
        "seat",
        "axle",
        "side",
        "place",
        "time",
        "x",
        "y",
        "z",
        "sensor",
        "unit",
        "time unit",
        "rate",
        "forward",
        "gravity",
        "from",
        "to",
        "gap",
        "start-up"
    };
    private static final Words<Forward> FORWARD = Words.of("an axis", List.of(Forward.values()), Forward::word);
    private static final Words<Gravity> GRAVITY =
            Words.of("a state of gravity", List.of(Gravity.values()), Gravity::word);

    List<LogReference> read(Part owner) {
        if (!owner.has("logs")) {
            owner.missing("logs", "a list such as [{file: bounce.csv, seat: driver's place}]");
        }
        List<LogReference> logs = new ArrayList<>();
        for (Node item : owner.itemsOrOne("logs", "a log after each dash")) {
            logs.add(log(Part.of(owner.reading(), item, "a log", KEYS)));
        }
        return logs;
    }

    private LogReference log(Part part) {
        Optional<Path> file = files.of(part, "file", "the name of a CSV file");
        LogReference log = new LogReference(
                part.textIfAny("file", "a name").orElse(""),
                file.orElse(Path.of("unread")),
                columns(part),
                options(part),
                sensor(part));
        if (file.isPresent()) {
            try {
                MeasurementsFile.recording(log);
            } catch (InputException broken) {
                problems.addAll(broken.problems());
            }
        }
        return log;
    }

    private static Columns columns(Part part) {
        Map<LogAxis, String> axes = new EnumMap<>(LogAxis.class);
        for (LogAxis axis : LogAxis.values()) {
            part.textIfAny(axis.word(), "name or number of a column").ifPresent(column -> axes.put(axis, column));
        }
        Optional<Measure> rate = part.measureIfAny("rate", QuantityKind.FREQUENCY);
        return new Columns(
                part.textIfAny("time", "name or number of a column"),
                axes,
                part.textIfAny("unit", "a unit of acceleration"),
                part.textIfAny("time unit", "a unit of time"),
                rate.isPresent() ? OptionalDouble.of(rate.get().value()) : OptionalDouble.empty(),
                part.textIfAny("sensor", "a word in the names of its columns"));
    }

    private static LogOptions options(Part part) {
        return new LogOptions(
                Position.SEAT,
                part.wordIfAny("forward", FORWARD).orElse(Forward.UNKNOWN),
                part.wordIfAny("gravity", GRAVITY).orElse(Gravity.FOUND),
                seconds(part, "from"),
                seconds(part, "to"),
                seconds(part, "gap"),
                seconds(part, "start-up"));
    }

    private static double seconds(Part part, String key) {
        return part.measureIfAny(key, QuantityKind.TIME).map(Measure::value).orElse(Double.NaN);
    }

    private Sensor sensor(Part part) {
        String where = part.oneOf("seat", "axle", "place").orElse("seat");
        if (!where.equals("axle") && part.has("side")) {
            part.conflict("side", "stands without 'axle'", "remove 'side', or name an axle");
        }
        return switch (where) {
            case "axle" -> new Sensor.OnAxle(FactReader.axle(part, "axle"), part.wordIfAny("side", FactReader.SIDES));
            case "place" -> new Sensor.OnBody(new PlaceReader(loadings.layout()).read(part, "place"));
            default -> new Sensor.OnSeat(part.has("seat") ? part.text("seat", "the name of a seat") : "");
        };
    }
}
