package org.ridewright.io;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.ridewright.fieldwork.Fact;
import org.ridewright.fieldwork.Heading;
import org.ridewright.fieldwork.Side;
import org.ridewright.vehicle.Vehicle;

/**
 * Reads {@code facts}: a list of groups with one key each, the kind of fact.
 *
 * @param loadings reads what was aboard
 * @param vehicle that was measured, if it is known
 * @param unread whether a vehicle was named that could not be read
 * @param files finds logs and roads
 * @param problems takes up what is wrong with those
 */
record FactReader(
        LoadingReader loadings,
        Optional<Vehicle> vehicle,
        boolean unread,
        NamedFile files,
        Set<InputProblem> problems) {
    static final String[] KINDS = {
        "weights",
        "lifted axle",
        "swing",
        "load deflection",
        "heights",
        "camber",
        "bounce",
        "bounce log",
        "ride",
        "words"
    };
    static final Words<Side> SIDES = Words.of("a side", List.of(Side.values()), Side::word);

    private static final List<String> HEADING = List.of("name", "note", "keep back");
    private static final Words<Boolean> YES_OR_NO =
            new Words<>("a yes or no", Map.of("true", true, "yes", true, "false", false, "no", false));

    Fact read(Part item) {
        Optional<String> kind = OnlyKey.of(item, KINDS);
        if (kind.isEmpty()) {
            item.reading().spoil(item.path());
            item.reading().spoil(item.path(KINDS[0]));
        }
        return switch (kind.orElse(KINDS[0])) {
            case "lifted axle" ->
                new ScalesReader(loadings).liftedAxle(group(item, "lifted axle", ScalesReader.LIFTED));
            case "swing" -> SwingReader.read(group(item, "swing", SwingReader.KEYS));
            case "load deflection" ->
                SpringFactReader.loadDeflection(group(item, "load deflection", SpringFactReader.LOAD_DEFLECTION));
            case "heights" ->
                new HeightsReader(loadings, vehicle, unread).read(group(item, "heights", HeightsReader.KEYS));
            case "camber" -> new SpringFactReader(loadings).camber(group(item, "camber", SpringFactReader.CAMBER));
            case "bounce" -> new BounceReader(loadings, logs()).count(group(item, "bounce", BounceReader.COUNT));
            case "bounce log" -> new BounceReader(loadings, logs()).log(group(item, "bounce log", BounceReader.LOG));
            case "ride" ->
                new RideFactReader(loadings, logs(), files, problems).ride(group(item, "ride", RideFactReader.RIDE));
            case "words" ->
                new RideFactReader(loadings, logs(), files, problems).words(group(item, "words", RideFactReader.WORDS));
            default -> new ScalesReader(loadings).weights(group(item, "weights", ScalesReader.WEIGHTS));
        };
    }

    private LogReferenceReader logs() {
        return new LogReferenceReader(loadings, files, problems);
    }

    private static Part group(Part item, String kind, List<String> keys) {
        String called =
                switch (kind) {
                    case "weights" -> "weights";
                    case "heights" -> "heights";
                    case "words" -> "a rider's words";
                    case "load deflection" -> "a load and deflection";
                    default -> "a " + kind;
                };
        return item.partOrMissing(
                kind, called, Stream.concat(keys.stream(), HEADING.stream()).toArray(String[]::new));
    }

    /** What every fact may carry. */
    static Heading heading(Part part) {
        return new Heading(
                part.textIfAny("name", "a name").orElse(""),
                part.textIfAny("note", "a text").orElse(""),
                part.wordIfAny("keep back", YES_OR_NO).orElse(false));
    }

    /** The name of an axle. */
    static String axle(Part part, String key) {
        return part.text(key, "the name of an axle");
    }
}
