package org.ridewright.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.figure.FigureFiles;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.Scenario;
import org.ridewright.uncertainty.UncertainRide;
import org.ridewright.uncertainty.UncertainRides;

/** The page of a run: question, answer, comparison, figures, and everything it rests on. One file that needs no other. */
public final class HtmlReport {
    private static final String TEMPLATE = "report.ftlh";

    private HtmlReport() {}

    /**
     * The page; every text of the user's is escaped.
     *
     * @param results at least one
     * @param figures drawn from {@link FigureGroup#of}, found by file name; one that is missing is left out
     * @throws IllegalArgumentException if there is no result
     */
    public static String render(Scenario scenario, List<RideResult> results, List<FigureFiles> figures) {
        return render(scenario, results, FigureGroup.of(scenario, results), figures, new HashMap<>());
    }

    /** The same with the intervals and bands that the inputs' tolerances give. */
    public static String render(Scenario scenario, UncertainRides.Outcome outcome, List<FigureFiles> figures) {
        List<RideResult> results =
                outcome.rides().stream().map(UncertainRide::ride).toList();
        Map<String, Object> certainty = new HashMap<>();
        certainty.put("intervals", Headline.rows(outcome.rides()));
        certainty.put("intervalHeads", Headline.HEADS);
        certainty.put(
                "draws", outcome.rides().isEmpty() ? 0 : outcome.rides().get(0).draws());
        certainty.put("drawnValues", outcome.uncertainValues());
        certainty.put("replaced", outcome.replaced());
        return render(scenario, results, FigureGroup.of(scenario, outcome), figures, certainty);
    }

    private static String render(
            Scenario scenario,
            List<RideResult> results,
            List<FigureGroup> groups,
            List<FigureFiles> figures,
            Map<String, Object> more) {
        if (results.isEmpty()) {
            throw new IllegalArgumentException("a report needs ≥ 1 ride test, got 0");
        }
        Map<String, Object> model = new HashMap<>(BasisTables.of(scenario, results));
        model.putAll(more);
        model.put("name", scenario.name());
        model.put("about", scenario.about().strip());
        model.put("asked", asked(scenario, results));
        model.put("answers", Answer.sentences(scenario, results));
        model.put("comparison", ComparisonTable.rows(results));
        model.put("kinds", RiderTables.kinds(results));
        model.put("riders", RiderTables.riders(scenario, results));
        model.put("exposureCaution", RiderTables.caution(scenario).orElse(""));
        model.put("limits", ModelLimits.of(scenario, results));
        model.put("groups", Templates.groups(groups, figures));
        return Templates.render(TEMPLATE, model);
    }

    private static String asked(Scenario scenario, List<RideResult> results) {
        return "%s: %s over %s. At the start the springs had settled with %s; the wheels were %s."
                .formatted(
                        counted(results.size(), "ride test"),
                        counted(scenario.entrants().size(), "vehicle"),
                        counted(scenario.roads().size(), "road"),
                        switch (scenario.start()) {
                            case UNSTRESSED -> "no friction held";
                            case FROM_ABOVE -> "the body sinking to its place";
                            case FROM_BELOW -> "the body rising to its place";
                        },
                        scenario.braked() ? "held by the brake" : "rolling freely");
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
