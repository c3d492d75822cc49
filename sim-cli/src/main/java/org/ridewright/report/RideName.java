package org.ridewright.report;

import java.text.Normalizer;
import java.util.Locale;
import org.ridewright.quantity.Measure;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.Scenario;

/**
 * What a ride test is called.
 *
 * @param speed in the words of the scenario
 */
record RideName(String vehicle, String load, String road, String speed) {
    private static final int LONGEST_PART = 40;

    static RideName of(Scenario scenario, RideResult result) {
        return new RideName(
                result.model().vehicle().name(),
                result.model().loadCase().name(),
                result.road().name(),
                speed(scenario, result));
    }

    /** The speed as the scenario writes it, or in m/s where it does not hold that speed. */
    private static String speed(Scenario scenario, RideResult result) {
        return scenario.entrants().stream()
                .filter(e -> e.file().equals(result.vehicleFile()))
                .flatMap(e -> e.speeds().stream())
                .filter(s -> s.value() == result.speed())
                .map(Measure::written)
                .map(RideName::bare)
                .findFirst()
                .orElse(Numbers.of(result.speed()) + " m/s");
    }

    /** Without tolerance and provenance. */
    private static String bare(String written) {
        return written.replaceAll("\\s*\\(.*\\)", "").replaceAll("\\s*±.*", "").strip();
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
        String shortened = plain.length() > LONGEST_PART ? plain.substring(0, LONGEST_PART) : plain;
        return shortened.isEmpty() ? "x" : shortened;
    }
}
