package org.ridewright.io;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ridewright.quantity.UnfitValueException;

/** Short names of values for figures, from their paths: what the file calls the innermost thing that has a name, and the keys below it. */
final class ValueLabel {
    private static final Pattern ITEM = Pattern.compile("\\[[^\\]]*]");
    private static final Pattern VEHICLE = Pattern.compile("^vehicles\\[[^\\]]*]\\.vehicle\\.");

    private ValueLabel() {}

    /** {@code vehicles[0].vehicle.axles[1].springs[0].rate} becomes {@code hind springs, rate}. */
    static String of(ScenarioDocument document, String path) {
        Matcher items = ITEM.matcher(path);
        String named = "";
        int end = 0;
        List<String> titles = new ArrayList<>();
        while (items.find()) {
            String item = path.substring(0, items.end());
            Optional<String> name = name(document, item);
            if (name.isPresent()) {
                named = name.get();
                end = items.end();
                titles.add(named);
            }
        }
        Matcher vehicle = VEHICLE.matcher(path);
        int from = vehicle.find() ? Math.max(end, vehicle.end()) : end;
        String keys =
                path.substring(from).replaceFirst("^\\.", "").replace("[0]", "").replace(".", " ");
        boolean several = document.vehicles().size() > 1 && path.startsWith("vehicles[");
        String of = several ? vehicle(document, path) : "";
        String whole = named.isEmpty() ? keys : keys.isEmpty() ? named : named + ", " + keys;
        return of.isEmpty() ? whole : of + ": " + whole;
    }

    private static String vehicle(ScenarioDocument document, String path) {
        Matcher number = Pattern.compile("^vehicles\\[(\\d+)]").matcher(path);
        return number.find()
                        && Integer.parseInt(number.group(1))
                                < document.vehicles().size()
                ? document.vehicles()
                        .get(Integer.parseInt(number.group(1)))
                        .asWritten()
                        .name()
                : "";
    }

    private static Optional<String> name(ScenarioDocument document, String item) {
        if (item.matches("vehicles\\[[^\\]]*]") || item.contains("*")) {
            return Optional.empty();
        }
        for (String key : List.of("name", "person", "cargo", "point")) {
            try {
                String name = document.value(item + "." + key).written();
                boolean axle = item.matches(".*axles\\[[^\\]]*]");
                return Optional.of(axle ? name + " axle" : name);
            } catch (UnfitValueException unnamed) {
                continue;
            }
        }
        return Optional.empty();
    }
}
