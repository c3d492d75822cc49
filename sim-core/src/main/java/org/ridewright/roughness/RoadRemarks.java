package org.ridewright.roughness;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.ridewright.road.RoughnessClass;
import org.ridewright.roughness.SurveyedRoad.SurveyedTrack;

/** What a reader of a road's figures should know of their limits. */
public final class RoadRemarks {
    /** Distance of heights beyond which the standard for the index does not go (m), by its class 1. */
    private static final double WIDEST_FOR_INDEX = 0.25;

    /** Waviness outside of which a road is not well told by a class. */
    private static final double LEAST_WAVINESS = 1.5;

    private static final double GREATEST_WAVINESS = 2.5;

    /** Confidence below which a class is told as doubtful. */
    private static final double SURE = 0.8;

    /** Length below which an index depends on its start (m). */
    private static final double SHORT_FOR_INDEX = 100;

    private RoadRemarks() {}

    /** Whole sentences, the same one once for all tracks. */
    public static List<String> of(SurveyedRoad road) {
        Set<String> remarks = new LinkedHashSet<>(road.notes());
        for (SurveyedTrack track : road.tracks()) {
            add(remarks, track);
        }
        return List.copyOf(remarks);
    }

    private static void add(Set<String> remarks, SurveyedTrack track) {
        TrackRoughness found = track.roughness();
        if (found.fit().isEmpty()) {
            remarks.add(
                    "No class of roughness is given: that takes a road that is nowhere level and long enough, some 50 m, to show waves "
                            + "of 10 m.");
        } else {
            addClass(remarks, track.name(), found.fit().get());
        }
        if (!found.index().isKnown()) {
            remarks.add("No roughness index is given: that takes more than 11 m of road.");
        } else if (found.length() < SHORT_FOR_INDEX) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "The road looked at is %.0f m long: its roughness index is that of a single short piece, and depends on where it begins.",
                    found.length()));
        }
        if (found.spacing() > WIDEST_FOR_INDEX * (1 + 1e-9)) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "Heights lie %.2f m apart, further than the 0.25 m that the roughness index asks for: it comes out too low.",
                    found.spacing()));
        }
        if (found.wheels().isEmpty()) {
            remarks.add(
                    found.spacing() > TrackSurvey.WIDEST_FOR_WHEELS * (1 + 1e-9)
                            ? String.format(
                                    Locale.ROOT,
                                    "Heights lie %.0f mm apart: what a wheel does between them is not known. Wheels are shown for heights no "
                                            + "further apart than 50 mm.",
                                    1000 * found.spacing())
                            : "The road is too short to say what wheels make of it.");
        }
    }

    private static void addClass(Set<String> remarks, String track, StraightFit fit) {
        RoughnessClass roadClass = fit.roadClass();
        if (fit.confidence(roadClass) < SURE) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "The class of the %s is doubtful: %s with a confidence of %.0f %%.",
                    track,
                    roadClass,
                    100 * fit.confidence(roadClass)));
        }
        if (fit.waviness() < LEAST_WAVINESS || fit.waviness() > GREATEST_WAVINESS) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "The %s has a waviness of %.1f; classes are laid down for 2. Its %s waves are rougher than its class says.",
                    track,
                    fit.waviness(),
                    fit.waviness() < LEAST_WAVINESS ? "short" : "long"));
        }
        if (fit.from() > 2 * Band.FIT_FROM) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "The class rests on waves up to %.0f m; the standard takes waves up to 90 m, which need a road of half a kilometre.",
                    1 / fit.from()));
        }
        if (fit.to() < 0.9 * Band.FIT_TO) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "The class rests on waves of %.2f m and longer; the standard takes waves down to 0.35 m.",
                    1 / fit.to()));
        }
    }
}
