package org.ridewright.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** {@code docs/validation.md}, line by line. */
final class ValidationDocument {
    /** Share of a tolerance by which a number may move before the document counts as stale. */
    private static final double SLACK = 0.1;

    private static final int LONG_TABLE = 40;
    private static final String INTRODUCTION = """
            # Validation

            Numbers of the program beside numbers that it did not make: of a published standard, a handbook or paper, a closed form, or
            another integrator. Where an expected value itself needs a check, one formula or table of the tests stands beside another;
            such a *check of the reference* says nothing of the program and is listed apart, below the problem's own table. The page is
            written, on a clean checkout, by

                mvn -q -Pvalidation -pl sim-core

            The same checks run with `mvn verify` (`ValidationTest`), which also fails when this page lacks a row or when a number has moved by
            more than a tenth of its tolerance. Equation and solution of each problem stand in the Javadoc of its class in
            `sim-core/src/test/java/org/ridewright/validation`.

            “rel.” marks a tolerance, and its difference, relative to the expected value; others are in the unit of the quantity. Numbers end
            at about a hundredth of the tolerance or at the tenth digit: a difference of 0 is smaller than that; where nought is expected, a
            power of ten that it is below stands in its place. “seen” marks what was seen in
            print or in a copy of it, “from memory” what was not.
            """;

    private final List<Line> lines = new ArrayList<>();

    private ValidationDocument() {}

    /** The whole page. */
    static List<Line> lines() {
        ValidationDocument document = new ValidationDocument();
        INTRODUCTION.lines().forEach(document::plain);
        document.summary();
        for (int i = 0; i < Validation.problems().size(); i++) {
            document.problem(i + 1, Validation.problems().get(i));
        }
        return List.copyOf(document.lines);
    }

    private void plain(String text) {
        lines.add(Line.plain(text));
    }

    private void summary() {
        plain("");
        plain("| problem | rows | beside | largest difference, share of its tolerance | checks of the reference |");
        plain("|---|---:|---|---:|---:|");
        int number = 1;
        int rows = 0;
        int allReferences = 0;
        for (ReferenceProblem problem : Validation.problems()) {
            List<Check> checks = of(problem, Check.Subject.PROGRAM);
            int references = of(problem, Check.Subject.REFERENCE).size();
            double share =
                    checks.stream().mapToDouble(ValidationDocument::share).max().orElse(Double.NaN);
            lines.add(new Line(
                    "| [" + problem.title() + "](#p" + number + ") | " + checks.size() + " | " + kinds(checks) + " | "
                            + percent(share) + " | " + (references == 0 ? "–" : references) + " |",
                    0,
                    0,
                    0,
                    100 * SLACK));
            number++;
            rows += checks.size();
            allReferences += references;
        }
        plain("| all | " + rows + " | | | " + allReferences + " |");
    }

    private static List<Check> of(ReferenceProblem problem, Check.Subject subject) {
        return Validation.checks(problem).stream()
                .filter(check -> check.subject() == subject)
                .toList();
    }

    private static double share(Check check) {
        double difference = Math.abs(check.difference());
        return difference == 0 ? 0 : difference / check.tolerance();
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    private static String kinds(List<Check> checks) {
        Map<Source.Kind, Long> counts = checks.stream()
                .collect(Collectors.groupingBy(c -> c.source().kind(), TreeMap::new, Collectors.counting()));
        return counts.entrySet().stream()
                .map(entry -> entry.getKey().word() + " " + entry.getValue())
                .collect(Collectors.joining(", "));
    }

    private void problem(int number, ReferenceProblem problem) {
        plain("");
        plain("<a id=\"p" + number + "\"></a>");
        plain("");
        plain("## " + number + " " + problem.title());
        plain("");
        plain(problem.statement());
        plain("");
        table(of(problem, Check.Subject.PROGRAM));
        List<Check> references = of(problem, Check.Subject.REFERENCE);
        if (!references.isEmpty()) {
            plain("");
            plain("Checks of the reference: what stands under “computed” is not the program's.");
            plain("");
            table(references);
        }
        if (!problem.remarks().isEmpty()) {
            plain("");
            lines.add(new Line(problem.remarks(), 0.02));
        }
    }

    private void table(List<Check> checks) {
        boolean folded = checks.size() > LONG_TABLE;
        if (folded) {
            plain("<details><summary>" + checks.size() + " rows</summary>");
            plain("");
        }
        plain("| quantity | source | expected | computed | difference | tolerance |");
        plain("|---|---|---:|---:|---:|---:|");
        checks.forEach(this::row);
        if (folded) {
            plain("");
            plain("</details>");
        }
    }

    private void row(Check check) {
        boolean relative = check.scale() == Check.Scale.RELATIVE;
        boolean nought = check.expected() == 0 && check.tolerance() > 0;
        int place = Numbers.lastPlace(check.allowed(), check.expected());
        int differencePlace = Numbers.lastPlace(check.tolerance(), 0);
        String tolerance = Numbers.brief(check.tolerance()) + (relative ? " rel." : "");
        String unit = check.unit().equals("1") ? "" : " (" + check.unit() + ")";
        String text = String.join(
                " | ",
                "| " + check.quantity() + unit,
                check.source().toString(),
                Numbers.rounded(check.expected(), place),
                nought ? Numbers.bounded(check.computed(), place) : Numbers.rounded(check.computed(), place),
                nought
                        ? Numbers.bounded(check.difference(), differencePlace)
                        : Numbers.rounded(check.difference(), differencePlace),
                (check.isMet() ? tolerance : "**missed:** " + tolerance) + " |");
        double slack = Math.max(SLACK * check.allowed(), 1.01 * Math.pow(10, place));
        lines.add(new Line(text, 0, 0, slack, slack, SLACK * check.tolerance(), 0.06 * check.tolerance()));
    }
}
