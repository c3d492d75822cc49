package org.ridewright.report;

import java.text.Normalizer;
import java.util.Locale;
import org.ridewright.ride.RideResult;

/**
 * What a ride test is called.
 *
 * @param speed in the words of the scenario
 */
record RideName(String vehicle, String load, String road, String speed) {
    static RideName of(RideResult result) {
        return new RideName(
                result.model().vehicle().name(),
                result.model().loadCase().name(),
                result.road().name(),
                result.plan().title());
    }

    /** Vehicle and load. */
    String subject() {
        return vehicle + ", " + load;
    }

    /** Everything. */
    String words() {
        return vehicle + ", " + load + ", on " + road + " at " + speed;
    }

    /** Start of a file name. */
    String slug() {
        return String.join("-", slug(vehicle), slug(load), slug(road), slug(speed));
    }

    /** A word or more as part of a file name: small letters, digits and hyphens. */
    static String slug(String words) {
        String plain = Normalizer.normalize(words, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9.]+", "-")
                .replaceAll("^[-.]+|[-.]+$", "");
        return plain.isEmpty() ? "x" : FileNamePart.shortened(plain);
    }
}
