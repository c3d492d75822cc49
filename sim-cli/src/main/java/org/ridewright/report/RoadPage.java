package org.ridewright.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.figure.FigureFiles;
import org.ridewright.roughness.RoadRemarks;
import org.ridewright.roughness.SurveyedRoad;

/** The page of a survey of roads. One file that needs no other. */
public final class RoadPage {
    private RoadPage() {}

    /**
     * The page; every text of the user's is escaped.
     *
     * @param name of the scenario, road or survey
     * @param about in the author's words; may be empty
     * @param roads at least one
     * @param figures drawn from {@link FigureGroup#of(List)}, found by file name
     * @throws IllegalArgumentException if there is no road
     */
    public static String render(String name, String about, List<SurveyedRoad> roads, List<FigureFiles> figures) {
        if (roads.isEmpty()) {
            throw new IllegalArgumentException("a page needs ≥ 1 road, got 0");
        }
        Map<String, Object> model = new HashMap<>();
        model.put("name", RideFigures.upperFirst(name));
        model.put("about", about.strip());
        model.put("asked", asked(roads));
        model.put("answers", RoadTables.answers(roads));
        model.put("tracks", RoadTables.tracks(roads));
        model.put("wheelHeads", RoadTables.wheelHeads(roads));
        model.put("wheels", RoadTables.wheels(roads));
        model.put("spacing", spacing(roads));
        model.put("groups", Templates.groups(FigureGroup.of(roads), figures));
        model.put("remarks", remarks(roads));
        return Templates.render("road.ftlh", model);
    }

    private static String asked(List<SurveyedRoad> roads) {
        List<String> names = roads.stream().map(SurveyedRoad::name).toList();
        List<String> sources =
                roads.stream().map(SurveyedRoad::source).distinct().toList();
        return "How rough %s, and what wheels make of %s: %s, %s."
                .formatted(
                        roads.size() == 1 ? "this road is" : "these roads are",
                        roads.size() == 1 ? "it" : "them",
                        String.join(", ", names),
                        String.join(", ", sources));
    }

    private static String spacing(List<SurveyedRoad> roads) {
        return String.join(
                ", ",
                roads.stream()
                        .map(r ->
                                Numbers.of(1000 * r.tracks().get(0).roughness().spacing()) + " mm")
                        .distinct()
                        .toList());
    }

    private static List<Map<String, Object>> remarks(List<SurveyedRoad> roads) {
        List<Map<String, Object>> all = new ArrayList<>();
        for (SurveyedRoad road : roads) {
            List<String> remarks = RoadRemarks.of(road);
            if (!remarks.isEmpty()) {
                all.add(Map.of("road", RideFigures.upperFirst(road.name()), "remarks", remarks));
            }
        }
        return all;
    }
}
