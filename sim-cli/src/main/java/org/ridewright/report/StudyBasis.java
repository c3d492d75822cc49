package org.ridewright.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.ridewright.study.Method;
import org.ridewright.study.RideMeasure;
import org.ridewright.study.Study;
import org.ridewright.study.Variant;

/**
 * What a study rests on, in words. Nothing of it depends on where, when or in how many parts it was ridden.
 *
 * @param file name of the study's file, without folders
 * @param program with its version
 */
public record StudyBasis(String file, String program) {
    /** Heads of {@link #tests}; without the first if no variants are told apart. */
    private static final List<String> HEADS = List.of("Variant", "Vehicle", "Load case", "Road", "Speed");

    /**
     * Ride tests before anything varies.
     *
     * @param heads of the columns
     * @param rows one for each ride test
     */
    record Tests(List<String> heads, List<List<String>> rows) {
        Tests {
            heads = List.copyOf(heads);
            rows = List.copyOf(rows);
        }
    }

    /** Those of all variants, or of one where they have the same. */
    static Tests tests(Study study) {
        List<List<List<String>>> all = IntStream.range(0, study.variants().size())
                .mapToObj(study::testsAsWritten)
                .toList();
        if (all.stream().distinct().count() == 1) {
            return new Tests(HEADS.subList(1, HEADS.size()), all.get(0));
        }
        List<List<String>> rows = new ArrayList<>();
        for (int v = 0; v < all.size(); v++) {
            for (List<String> test : all.get(v)) {
                List<String> row =
                        new ArrayList<>(List.of(study.variants().get(v).name()));
                row.addAll(test);
                rows.add(row);
            }
        }
        return new Tests(HEADS, rows);
    }

    /** Names of the files of scenarios. */
    static List<String> bases(Study study) {
        return study.variants().stream().map(Variant::file).distinct().toList();
    }

    /** The files, what is changed in them, what varies, what is drawn. */
    List<String> lines(Study study) {
        List<String> lines = new ArrayList<>();
        lines.add("Study file " + file + ", base " + Listed.of(bases(study)) + ", ridden by " + program + ".");
        List<Variant> variants = study.variants();
        for (Variant variant : variants) {
            String changes = changes(variant);
            if (variants.size() > 1) {
                lines.add("Variant “" + variant.name() + "”"
                        + (bases(study).size() > 1 ? ", base " + variant.file() : "") + ": "
                        + (changes.isEmpty() ? "as the base is written" : changes) + ".");
            } else {
                lines.add(
                        changes.isEmpty()
                                ? "Nothing of the base is changed before values vary."
                                : "Changed in the base: " + changes + ".");
            }
        }
        lines.addAll(StudyDraws.of(study).lines());
        return lines;
    }

    /** {@code path = words; path taken away}. */
    private static String changes(Variant variant) {
        return String.join(
                "; ",
                variant.changes().entrySet().stream().map(StudyBasis::change).toList());
    }

    private static String change(Map.Entry<String, String> change) {
        String path = change.getKey();
        // a file by its name, wherever it lies
        String text = path.endsWith("file") ? change.getValue().replaceFirst(".*[/\\\\]", "") : change.getValue();
        return text.isEmpty() ? path + " taken away" : path + (text.startsWith("×") ? " " : " = ") + text;
    }

    /** For print, in the first person of nobody. */
    List<String> methods(Study study, long runs, long failed) {
        List<String> methods = new ArrayList<>();
        Set<String> vehicles = new LinkedHashSet<>();
        Set<String> loads = new LinkedHashSet<>();
        Set<String> roads = new LinkedHashSet<>();
        Set<String> speeds = new LinkedHashSet<>();
        for (List<String> test : tests(study).rows()) {
            vehicles.add(test.get(test.size() - 4));
            loads.add(test.get(test.size() - 3));
            roads.add(test.get(test.size() - 2));
            speeds.add(test.get(test.size() - 1));
        }
        List.of(vehicles, loads, roads, speeds).forEach(labels -> labels.remove(""));
        methods.add("The ride of " + listed(vehicles) + " over " + listed(roads) + " (" + Listed.of(bases(study))
                + "; as written: load " + listed(loads) + ", speed " + listed(speeds)
                + ") was simulated with a model of rigid masses, springs with dry friction, and wheels that "
                + "can leave the ground, solved from event to event by " + program + ", in " + runs
                + (runs == 1 ? " run" : " runs")
                + (failed == 0 ? "" : ", of which " + failed + " could not be ridden in full") + ".");
        study.variants().stream()
                .filter(v -> !v.changes().isEmpty())
                .forEach(v -> methods.add("Changed in the base"
                        + (study.variants().size() > 1 ? " for “" + v.name() + "”" : "") + ": " + changes(v) + "."));
        methods.add(StudyDraws.of(study).inPrint());
        if (study.method() instanceof Method.Search search) {
            SearchWords words = new SearchWords(study);
            methods.add(words.sought()
                    + search.sought()
                            .target()
                            .map(t -> " "
                                    + StudySummary.with(
                                            t, words.question(search.sought().asked())))
                            .orElse("")
                    + (search.limits().isEmpty() ? "" : ", provided " + words.limits()) + ".");
        }
        Set<RideMeasure> asked = new LinkedHashSet<>();
        study.questions().forEach(q -> asked.add(q.measure()));
        if (asked.contains(RideMeasure.SEAT_RMS) || asked.contains(RideMeasure.SEAT_VDV)) {
            methods.add(
                    "Weighted vertical vibration at the seat is of ISO 2631-1:1997 (W_k); where several seats are occupied and none is named, the worst counts.");
        }
        return methods;
    }

    private static String listed(Set<String> words) {
        return words.isEmpty() ? "–" : Listed.of(List.copyOf(words));
    }

    /** A line for a list of references. */
    String citation(Study study, long runs) {
        String draws = StudyDraws.of(study).brief();
        Method method = study.method();
        return program + ": ./ridewright study " + file + " (“" + study.name() + "”, " + method.word() + "), base "
                + Listed.of(bases(study)) + ", " + runs + (runs == 1 ? " run" : " runs")
                + (draws.isEmpty() ? "" : ", " + draws)
                + ". Model and methods: docs/model.md and docs/studies.md of the same version.";
    }
}
