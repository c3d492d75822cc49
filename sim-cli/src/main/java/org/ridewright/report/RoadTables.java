package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.roughness.RoughnessIndex;
import org.ridewright.roughness.SampledWheel;
import org.ridewright.roughness.StraightFit;
import org.ridewright.roughness.SurveyedRoad;
import org.ridewright.roughness.SurveyedRoad.SurveyedTrack;

/** Tables and sentences of a survey of roads. */
final class RoadTables {
    private static final String NONE = "–";
    private static final double MICRO = 1e6;
    private static final double MILLI = 1000;
    private static final double NINETY_FIVE = 1.96;
    /** Waviness of the lines between classes, and how far off it a road may be before its class says little (1). */
    private static final double CLASS_WAVINESS = 2;

    private static final double UNLIKE = 0.5;

    private RoadTables() {}

    static List<List<String>> tracks(List<SurveyedRoad> roads) {
        List<List<String>> rows = new ArrayList<>();
        for (SurveyedRoad road : roads) {
            for (SurveyedTrack track : road.tracks()) {
                rows.add(row(road, track));
            }
        }
        return rows;
    }

    private static List<String> row(SurveyedRoad road, SurveyedTrack track) {
        List<String> row = new ArrayList<>(
                List.of(road.name(), track.name(), Numbers.of(track.roughness().length(), 4)));
        Optional<StraightFit> fit = track.roughness().fit();
        row.add(fit.map(f -> f.roadClass().name()).orElse(NONE));
        row.add(fit.map(f -> Numbers.percent(f.confidence(f.roadClass()))).orElse(NONE));
        row.add(fit.map(f -> Numbers.of(MICRO * f.atReference())).orElse(NONE));
        row.add(fit.map(f -> Numbers.of(MICRO * f.lower()) + " to " + Numbers.of(MICRO * f.upper()))
                .orElse(NONE));
        row.add(fit.map(f -> Numbers.of(f.waviness())).orElse(NONE));
        row.add(fit.map(f -> Numbers.of(f.waviness() - NINETY_FIVE * f.wavinessError()) + " to "
                        + Numbers.of(f.waviness() + NINETY_FIVE * f.wavinessError()))
                .orElse(NONE));
        row.add(fit.map(f -> Numbers.of(f.from(), 2) + " to " + Numbers.of(f.to()))
                .orElse(NONE));
        row.add(Numbers.of(MILLI * track.roughness().index().value()));
        row.add(sections(track.roughness().index()));
        return row;
    }

    private static String sections(RoughnessIndex index) {
        List<Double> sections = index.sections();
        if (sections.size() < 2) {
            return NONE;
        }
        double least = sections.stream().min(Double::compare).orElseThrow();
        double greatest = sections.stream().max(Double::compare).orElseThrow();
        return Numbers.of(MILLI * least) + " to " + Numbers.of(MILLI * greatest);
    }

    /** Wheels of the first road that has any; all roads are surveyed with the same. */
    static List<String> wheelHeads(List<SurveyedRoad> roads) {
        List<String> heads = new ArrayList<>(List.of("Road"));
        roads.stream()
                .map(SurveyedRoad::wheels)
                .filter(w -> !w.isEmpty())
                .findFirst()
                .ifPresent(w -> w.stream().map(SampledWheel::label).forEach(heads::add));
        return heads;
    }

    static List<List<String>> wheels(List<SurveyedRoad> roads) {
        List<List<String>> rows = new ArrayList<>();
        for (SurveyedRoad road : roads) {
            List<String> row = new ArrayList<>(List.of(road.name()));
            for (int w = 0; w < road.wheels().size(); w++) {
                row.add(Numbers.percent(road.jolting(w)));
            }
            if (row.size() > 1) {
                rows.add(row);
            }
        }
        return rows;
    }

    /** What was found, a sentence or two for each road. */
    static List<String> answers(List<SurveyedRoad> roads) {
        List<String> answers = new ArrayList<>();
        for (SurveyedRoad road : roads) {
            List<String> tracks = road.tracks().stream().map(RoadTables::answer).toList();
            answers.add(
                    RideFigures.upperFirst(road.name()) + ": " + String.join("; ", tracks) + "." + wheelAnswer(road));
        }
        return answers;
    }

    private static String answer(SurveyedTrack track) {
        String roadClass = track.roughness().fit().map(RoadTables::classified).orElse("no class of roughness");
        String index = track.roughness().index().isKnown()
                ? "roughness index "
                        + Numbers.of(MILLI * track.roughness().index().value()) + " m/km"
                : "no roughness index";
        return track.name() + ", " + roadClass + ", " + index;
    }

    /** The class, how sure the estimate is of it, and whether a class is the right thing to ask for. */
    private static String classified(StraightFit fit) {
        double least = Math.abs(fit.waviness() - CLASS_WAVINESS) - NINETY_FIVE * fit.wavinessError();
        String sure = "class %s by its waves of some 10 m (%s sure)"
                .formatted(fit.roadClass(), Numbers.percent(fit.confidence(fit.roadClass())));
        return least > UNLIKE
                ? sure
                        + ", which tells little here, as short waves weigh %s than in any class (waviness %s, of classes 2)"
                                .formatted(
                                        fit.waviness() < CLASS_WAVINESS ? "more" : "less",
                                        Numbers.of(fit.waviness(), 2))
                : sure;
    }

    private static String wheelAnswer(SurveyedRoad road) {
        List<SampledWheel> wheels = road.wheels();
        int small = -1;
        int large = -1;
        for (int w = 0; w < wheels.size(); w++) {
            if (wheels.get(w) instanceof SampledWheel.Disc) {
                small = small < 0 ? w : small;
                large = w;
            }
        }
        if (large <= small) {
            return "";
        }
        return " A rigid wheel of %s m takes %s of the road's up-and-down speed to its axle, one of %s m takes %s."
                .formatted(
                        Numbers.of(((SampledWheel.Disc) wheels.get(small)).diameter(), 2),
                        Numbers.percent(road.jolting(small)),
                        Numbers.of(((SampledWheel.Disc) wheels.get(large)).diameter(), 2),
                        Numbers.percent(road.jolting(large)));
    }
}
