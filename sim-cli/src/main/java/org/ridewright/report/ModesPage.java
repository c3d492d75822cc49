package org.ridewright.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.figure.Figure;
import org.ridewright.figure.FigureFiles;
import org.ridewright.modal.Condition;
import org.ridewright.modal.ModalAnalysis;

/** The page of a vehicle's modes. One file that needs no other. */
public final class ModesPage {
    private ModesPage() {}

    /** Every figure, in the order of the page. */
    public static List<FigureGroup> groups(List<ModalAnalysis> all) {
        return all.stream()
                .map(a -> new FigureGroup(
                        RideFigures.upperFirst(a.model().loadCase().name()), ModesFigures.of(a)))
                .toList();
    }

    /**
     * The page; every text of the user's is escaped.
     *
     * @param all one for each load case, at least one
     * @param groups of figures
     * @param drawn the same, drawn
     */
    public static String render(List<ModalAnalysis> all, List<FigureGroup> groups, List<FigureFiles> drawn) {
        ModalAnalysis first = all.get(0);
        Map<String, Object> page = new HashMap<>();
        page.put("name", first.model().vehicle().name());
        page.put("about", first.model().vehicle().about().strip());
        page.put("speed", ModesFigures.speed(first));
        page.put("answers", ModesTables.answers(all));
        page.put("heads", ModesTables.HEADS);
        page.put("tables", tables(all));
        boolean rolls = all.stream().anyMatch(ModalAnalysis::rolls);
        page.put("rolling", rolls ? "Its wheels roll freely: no brake holds them." : "");
        page.put("rubs", all.stream().anyMatch(ModalAnalysis::rubs));
        page.put("groups", Templates.groups(groups, drawn));
        return Templates.render("modes.ftlh", page);
    }

    private static List<Map<String, Object>> tables(List<ModalAnalysis> all) {
        List<Map<String, Object>> tables = new ArrayList<>();
        for (ModalAnalysis each : all) {
            for (Condition condition : Condition.values()) {
                if (condition == Condition.SLIDING || each.rubs()) {
                    String heading =
                            RideFigures.upperFirst(each.model().loadCase().name())
                                    + (each.rubs() ? ", springs " + condition.word() : "")
                                    + (each.rolls() ? ", wheels rolling freely" : "");
                    tables.add(Map.of("heading", heading, "rows", ModesTables.rows(each, condition)));
                }
            }
        }
        return tables;
    }

    /** All figures of all groups. */
    public static List<Figure> figures(List<FigureGroup> groups) {
        return groups.stream().flatMap(g -> g.figures().stream()).toList();
    }
}
