package org.ridewright.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ridewright.bounce.BounceRemarks;
import org.ridewright.bounce.BounceTest;
import org.ridewright.bounce.LoadCaseBounces;
import org.ridewright.figure.FigureFiles;

/** The page of simulated bounce tests. One file that needs no other. */
public final class BouncePage {
    private BouncePage() {}

    /**
     * The page; every text of the user's is escaped.
     *
     * @param all at least one load case
     * @param braked whether the wheels were held still
     * @param figures drawn from {@link FigureGroup#ofBounces(List)}, found by file name
     */
    public static String render(List<LoadCaseBounces> all, boolean braked, List<FigureFiles> figures) {
        BounceTest test = all.get(0).results().get(0).test();
        Map<String, Object> model = new HashMap<>();
        model.put("name", "Bounce tests of " + all.get(0).model().vehicle().name());
        model.put("about", all.get(0).model().vehicle().about().strip());
        model.put("asked", asked(all, test));
        model.put("answers", BounceTables.answers(all));
        model.put("frequencies", BounceTables.frequencies(all));
        model.put("decays", BounceTables.decays(all));
        model.put("groups", Templates.groups(FigureGroup.ofBounces(all), figures));
        model.put("remarks", remarks(all));
        model.put("visible", Numbers.of(1000 * test.visible()));
        model.put("braked", braked);
        model.put("pitches", all.get(0).model().coordinates().pitch() >= 0);
        model.put("wheels", braked ? "wheels held" : "wheels rolling");
        model.put(
                "residual",
                String.format(
                        Locale.ROOT,
                        "%.0e",
                        all.stream()
                                .flatMap(b -> b.results().stream())
                                .mapToDouble(r -> r.energyResidual())
                                .max()
                                .orElse(0)));
        return Templates.render("bounce.ftlh", model);
    }

    private static String asked(List<LoadCaseBounces> all, BounceTest test) {
        List<String> loads = all.stream().map(b -> b.model().loadCase().name()).toList();
        return "How often the body swings, and for how long, when it is %s at front, rear and side and let go; load cases: %s."
                .formatted(told(test), String.join(", ", loads));
    }

    private static String told(BounceTest test) {
        String depth = Numbers.of(1000 * test.handling().depth()) + " mm";
        String force = Numbers.of(test.handling().mostForce()) + " N";
        if (test.handling().lifts()) {
            return "lifted by " + depth;
        } else if (Double.isInfinite(test.handling().depth())) {
            return "pressed down with " + force;
        }
        return "pressed down by " + depth
                + (Double.isInfinite(test.handling().mostForce()) ? "" : ", or as far as " + force + " go,");
    }

    private static List<Map<String, Object>> remarks(List<LoadCaseBounces> all) {
        List<Map<String, Object>> entries = new ArrayList<>();
        for (LoadCaseBounces bounces : all) {
            List<String> remarks = BounceRemarks.of(bounces).stream()
                    .map(RideFigures::upperFirst)
                    .map(remark -> remark + ".")
                    .toList();
            if (!remarks.isEmpty()) {
                entries.add(Map.of(
                        "load",
                        RideFigures.upperFirst(bounces.model().loadCase().name()),
                        "remarks",
                        remarks));
            }
        }
        return entries;
    }
}
