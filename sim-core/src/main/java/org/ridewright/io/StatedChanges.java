package org.ridewright.io;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.ridewright.quantity.UnfitValueException;

/**
 * Sorts the changes of a study by what tolerances are to be drawn from: those that bring tolerances of their own, other vehicle files and values with
 * a tolerance, are written into the scenario before anything is drawn; the others are put over what is drawn.
 *
 * @param within written in, by path
 * @param over put over it, by path; vehicles by their number
 * @param unread paths of changes that bring tolerances which cannot be drawn: whole groups, and values that the file does not have
 */
record StatedChanges(Map<String, String> within, Map<String, String> over, List<String> unread) {
    private static final Pattern TOLERANCE = Pattern.compile("±|\\+\\s*/?\\s*-");
    private static final Pattern VEHICLE_FILE = Pattern.compile("vehicles\\[[^\\]]*]\\.file");
    private static final Pattern VEHICLES = Pattern.compile("vehicles(\\[[^\\]]*])?");

    /** @param texts changes by path, of which the later prevails where two mean one value */
    static StatedChanges of(ScenarioDocument document, Map<String, String> texts) {
        Map<String, String> within = new LinkedHashMap<>();
        Map<String, String> over = new LinkedHashMap<>();
        List<String> unread = new ArrayList<>();
        texts.forEach((path, text) -> {
            List<String> places = places(document, path);
            boolean uncertain = TOLERANCE.matcher(text).find();
            if (VEHICLE_FILE.matcher(path.strip()).matches()
                    || uncertain && !isGroup(text) && isInFile(document, places)) {
                spare(document, over, places);
                within.put(path, text);
            } else {
                if (uncertain || VEHICLES.matcher(path.strip()).matches()) {
                    unread.add(path);
                }
                over.put(document.numbered(path), text);
            }
        });
        return new StatedChanges(within, over, unread);
    }

    /** Whether a value's words bring a tolerance. */
    static boolean isUncertain(String text) {
        return TOLERANCE.matcher(text).find();
    }

    private static boolean isGroup(String text) {
        return text.strip().startsWith("{") || text.strip().startsWith("[");
    }

    private static List<String> places(ScenarioDocument document, String path) {
        try {
            return document.meant(path);
        } catch (UnfitValueException elsewhere) {
            return List.of();
        }
    }

    private static boolean isInFile(ScenarioDocument document, List<String> places) {
        try {
            places.forEach(document::value);
            return !places.isEmpty();
        } catch (UnfitValueException notYet) {
            return false;
        }
    }

    /** Takes places out of earlier changes, which a later one overrules there. */
    private static void spare(ScenarioDocument document, Map<String, String> over, List<String> places) {
        Map<String, String> earlier = new LinkedHashMap<>(over);
        over.clear();
        earlier.forEach((path, text) -> {
            Set<String> own = new LinkedHashSet<>(places(document, path));
            if (own.stream().noneMatch(places::contains)) {
                over.put(path, text);
                return;
            }
            own.removeAll(places);
            own.forEach(place -> over.put(place, text));
        });
    }
}
