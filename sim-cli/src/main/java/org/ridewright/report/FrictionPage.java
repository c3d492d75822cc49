package org.ridewright.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.figure.Figure;
import org.ridewright.figure.FigureFiles;
import org.ridewright.friction.FrictionLab;
import org.ridewright.friction.TradeOff;

/** The page of the friction laboratory. One file that needs no other. */
public final class FrictionPage {
    private FrictionPage() {}

    /** Every figure, in the order of the page. */
    public static List<FigureGroup> groups(FrictionLab lab) {
        return List.of(
                new FigureGroup("Where friction is best", TradeFigures.of(lab)),
                new FigureGroup("Loops", LoopFigures.of(lab)),
                new FigureGroup("Ring-down", RingDownFigures.of(lab)),
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
        page.put("answers", FrictionWords.answers(lab));
        TradeWords trade = new TradeWords(lab);
        page.put("place", lab.tradeOff().place());
        page.put("speeds", TradeWords.speeds(lab.tradeOff()));
        page.put("ride", Numbers.brief(TradeOff.RIDE));
        page.put("reading", trade.reading());
        page.put("worth", lab.tradeOff().draws() > 1 ? trade.worth() : "");
        page.put("bandHeads", FrictionWords.BAND_HEADS);
        page.put("bandRows", FrictionWords.bandRows(lab));
        page.put("loopHeads", FrictionWords.LOOP_HEADS);
        page.put("loopRows", FrictionWords.loopRows(lab));
        page.put("groups", Templates.groups(groups, drawn));
        return Templates.render("friction.ftlh", page);
    }
}
