package org.ridewright.report;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ridewright.figure.Figure;
import org.ridewright.figure.FigureFiles;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.Scenario;

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
        if (results.isEmpty()) {
            throw new IllegalArgumentException("a report needs ≥ 1 ride test, got 0");
        }
        Map<String, Object> model = new HashMap<>(BasisTables.of(scenario, results));
        model.put("name", scenario.name());
        model.put("about", scenario.about().strip());
        model.put("asked", asked(scenario, results));
        model.put("answers", Answer.sentences(scenario, results));
        model.put("comparison", ComparisonTable.rows(results));
        model.put("kinds", RiderTables.kinds(results));
        model.put("riders", RiderTables.riders(scenario, results));
        model.put("exposureCaution", RiderTables.caution(scenario).orElse(""));
        model.put("groups", groups(scenario, results, figures));
        StringWriter out = new StringWriter();
        try {
            template().process(model, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (TemplateException e) {
            throw new IllegalStateException("the page could not be made: " + e.getMessage(), e);
        }
        return out.toString();
    }

    private static Template template() throws IOException {
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setClassForTemplateLoading(HtmlReport.class, "");
        configuration.setDefaultEncoding("UTF-8");
        configuration.setLocale(Locale.ROOT);
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        return configuration.getTemplate(TEMPLATE);
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

    private static List<Map<String, Object>> groups(
            Scenario scenario, List<RideResult> results, List<FigureFiles> files) {
        Map<String, String> drawings = new HashMap<>();
        files.forEach(f -> drawings.put(f.fileName(), f.svg()));
        List<Map<String, Object>> groups = new ArrayList<>();
        for (FigureGroup group : FigureGroup.of(scenario, results)) {
            List<Map<String, String>> figures = new ArrayList<>();
            for (Figure figure : group.figures()) {
                if (drawings.containsKey(figure.fileName())) {
                    figures.add(Map.of(
                            "svg",
                            drawings.get(figure.fileName()),
                            "caption",
                            figure.caption(),
                            "file",
                            figure.fileName()));
                }
            }
            if (!figures.isEmpty()) {
                groups.add(Map.of("heading", group.heading(), "figures", figures));
            }
        }
        return groups;
    }
}
