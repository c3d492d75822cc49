package org.ridewright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.roughness.RoadRemarks;
import org.ridewright.roughness.SampledWheel;
import org.ridewright.roughness.StraightFit;
import org.ridewright.roughness.SurveyedRoad;
import org.ridewright.roughness.SurveyedRoad.SurveyedTrack;

/** What a survey of roads prints: one line for each track, then what reaches the axle of each wheel. */
final class RoadTable {
    private static final List<String> HEADS =
            List.of("", "", "length", "class", "confidence", "Gd(n0)", "95 %", "waviness", "IRI");
    private static final List<String> UNITS = List.of("road", "track", "m", "", "%", "1e-6 m³", "1e-6 m³", "", "m/km");
    private static final int WORD_COLUMNS = 2;
    private static final List<String> NOTES = List.of(
            "class: ISO 8608, from A (very good) to H, by the straight line of waviness 2; Gd(n0): its height at 0.1 cycle/m.",
            "IRI: International Roughness Index, 0 for a perfectly even road.");
    private static final double MICRO = 1e6;
    private static final double MILLI = 1000;
    private static final double PERCENT = 100;

    private RoadTable() {}

    static List<String> lines(List<SurveyedRoad> roads) {
        TextTable table = new TextTable(WORD_COLUMNS);
        table.row(HEADS);
        table.row(UNITS);
        for (SurveyedRoad road : roads) {
            for (SurveyedTrack track : road.tracks()) {
                table.row(row(road, track));
            }
        }
        List<String> lines = new ArrayList<>(table.lines());
        lines.add("");
        lines.addAll(NOTES);
        addWheels(lines, roads);
        addRemarks(lines, roads);
        lines.add("");
        return lines;
    }

    private static List<String> row(SurveyedRoad road, SurveyedTrack track) {
        Optional<StraightFit> fit = track.roughness().fit();
        return List.of(
                road.name(),
                track.name(),
                Wording.number(track.roughness().length(), 0),
                fit.map(f -> f.roadClass().name()).orElse("–"),
                fit.map(f -> Wording.number(PERCENT * f.confidence(f.roadClass()), 0))
                        .orElse("–"),
                fit.map(f -> Wording.number(MICRO * f.atReference(), 0)).orElse("–"),
                fit.map(f -> Wording.number(MICRO * f.lower(), 0) + "–" + Wording.number(MICRO * f.upper(), 0))
                        .orElse("–"),
                fit.map(f -> Wording.number(f.waviness(), 2)).orElse("–"),
                Wording.number(MILLI * track.roughness().index().value(), 2));
    }

    private static void addWheels(List<String> lines, List<SurveyedRoad> roads) {
        List<SurveyedRoad> told =
                roads.stream().filter(r -> !r.wheels().isEmpty()).toList();
        if (told.isEmpty()) {
            return;
        }
        TextTable table = new TextTable(1);
        List<String> heads = new ArrayList<>(List.of("road"));
        told.get(0).wheels().stream().map(SampledWheel::label).forEach(heads::add);
        table.row(heads);
        for (SurveyedRoad road : told) {
            List<String> row = new ArrayList<>(List.of(road.name()));
            for (int w = 0; w < road.wheels().size(); w++) {
                row.add(Wording.number(PERCENT * road.jolting(w), 0) + " %");
            }
            table.row(row);
        }
        lines.add("");
        lines.add("Up-and-down speed of the axle, share of that of a wheel without size:");
        lines.addAll(table.lines());
    }

    private static void addRemarks(List<String> lines, List<SurveyedRoad> roads) {
        Map<String, List<String>> roadsOf = new LinkedHashMap<>();
        for (SurveyedRoad road : roads) {
            for (String remark : RoadRemarks.of(road)) {
                roadsOf.computeIfAbsent(remark, k -> new ArrayList<>()).add(road.name());
            }
        }
        if (!roadsOf.isEmpty()) {
            lines.add("");
            lines.add("To keep in mind:");
        }
        roadsOf.forEach((remark, names) -> {
            String which = names.size() < roads.size() ? String.join(", ", names) + ": " : "";
            ShortRemarks.wrap(which + remark, lines);
        });
    }
}
