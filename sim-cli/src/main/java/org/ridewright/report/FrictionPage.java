package org.ridewright.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.figure.Figure;
import org.ridewright.figure.FigureFiles;
import org.ridewright.friction.FrictionLab;
import org.ridewright.friction.TradeOff;

/** The page of the friction laboratory. One file that needs no other. */
public final class FrictionPage {
    private static final String BEST = "Where friction is best";
    private static final String LOOPS = "Loops";
    private static final String LET_GO = "Let go";
    private static final String AS_GOOD =
            "As good: within 5 % of the least value of the same draw, half of the least difference of vibration that seated people notice (a tenth, from memory); of cycles, within half a cycle, the step in which they are counted.";

    private FrictionPage() {}

    /** Every figure, in the order of the page. */
    public static List<FigureGroup> groups(FrictionLab lab) {
        return List.of(
                new FigureGroup(BEST, TradeFigures.of(lab)),
                new FigureGroup(LOOPS, LoopFigures.of(lab)),
                new FigureGroup(LET_GO, RingDownFigures.of(lab)),
                new FigureGroup("Sinusoidal road", ForcedFigures.of(lab)));
    }

    /** All figures of all groups. */
    public static List<Figure> figures(List<FigureGroup> groups) {
        return groups.stream().flatMap(g -> g.figures().stream()).toList();
    }

    /**
     * The page; every text of the user's is escaped.
     *
     * @param groups of figures
     * @param drawn the same, drawn
     */
    public static String render(FrictionLab lab, List<FigureGroup> groups, List<FigureFiles> drawn) {
        Map<String, Object> page = new HashMap<>();
        page.put("name", lab.model().vehicle().name());
        page.put("about", lab.model().vehicle().about().strip());
        page.put("load", lab.model().loadCase().name());
        page.put("oiled", Numbers.of(FrictionLab.GREASINGS.get(0).factor(), 1));
        page.put("rusted", Numbers.of(FrictionLab.GREASINGS.get(2).factor(), 2));
        page.put("draws", lab.tradeOff().draws());
        page.put("uncertain", lab.tradeOff().uncertain());
        page.put(
                "answers", FrictionWords.summary(lab).stream().map(Unbroken::of).toList());
        List<Map<String, Object>> parts = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            parts.add(part(lab, FrictionWords.sections(lab).get(i), groups.get(i), drawn));
        }
        page.put("parts", parts);
        TradeWords trade = new TradeWords(lab);
        page.put("place", lab.tradeOff().place());
        page.put("speeds", TradeWords.speeds(lab.tradeOff()));
        page.put("ride", Numbers.brief(TradeOff.RIDE));
        page.put("reading", trade.reading());
        page.put("worth", lab.tradeOff().draws() > 1 ? trade.worth() : "");
        return Templates.render("friction.ftlh", page);
    }

    private static Map<String, Object> part(
            FrictionLab lab, Section section, FigureGroup group, List<FigureFiles> drawn) {
        Map<String, Object> part = new HashMap<>();
        part.put("heading", section.heading());
        part.put("paragraphs", section.paragraphs().stream().map(Unbroken::of).toList());
        part.put("figures", Templates.figures(group, drawn));
        switch (group.heading()) {
            case BEST -> table(part, FrictionWords.BAND_HEADS, FrictionWords.bandRows(lab), AS_GOOD);
            case LOOPS -> table(part, FrictionWords.LOOP_HEADS, FrictionWords.loopRows(lab), "");
            case LET_GO ->
                table(
                        part,
                        FrictionWords.ringDownHeads(),
                        FrictionWords.ringDownRows(lab),
                        FrictionWords.ringDownNotes(lab));
            default -> table(part, List.of(), List.of(), "");
        }
        return part;
    }

    private static void table(Map<String, Object> part, List<String> heads, List<List<String>> rows, String note) {
        part.put("heads", heads);
        part.put(
                "rows",
                rows.stream()
                        .map(row -> row.stream().map(Unbroken::of).toList())
                        .toList());
        part.put("note", rows.isEmpty() ? "" : Unbroken.of(note));
    }
}
