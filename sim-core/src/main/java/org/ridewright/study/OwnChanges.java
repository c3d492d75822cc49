package org.ridewright.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ridewright.quantity.Adjustable;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.ride.Scenario;

/** Which of the changes of a run concern one vehicle of its scenario alone. */
final class OwnChanges {
    private static final Pattern OF_VEHICLE = Pattern.compile("vehicles\\[([^\\]]*)]\\.vehicle\\..+");

    private final Adjustable<Scenario> document;
    /** With counted items, as far as that can be. */
    private final Map<String, String> texts = new LinkedHashMap<>();

    /** @param changes by path, those that prevail last */
    OwnChanges(Adjustable<Scenario> document, Map<String, String> changes) {
        this.document = document;
        changes.forEach((path, text) -> {
            for (String place : places(path)) {
                texts.remove(place);
                texts.put(place, text);
            }
        });
    }

    private List<String> places(String path) {
        if (!OF_VEHICLE.matcher(path.strip()).matches()) {
            return List.of(path);
        }
        try {
            return document.meant(path);
        } catch (UnfitValueException notYetThere) {
            return List.of(path);
        }
    }

    /** Those of the scenario itself and of vehicle {@code index}. */
    Map<String, String> of(int index) {
        Map<String, String> own = new LinkedHashMap<>();
        texts.forEach((path, text) -> {
            Matcher ofVehicle = OF_VEHICLE.matcher(path.strip());
            if (!ofVehicle.matches()
                    || !ofVehicle.group(1).matches("\\d+")
                    || ofVehicle.group(1).equals(Integer.toString(index))) {
                own.put(path, text);
            }
        });
        return own;
    }

    /** The scenario before the run changes it. */
    Scenario written(Map<String, String> ofVariant) {
        return ofVariant.isEmpty() ? document.asWritten() : document.with(ofVariant);
    }
}
