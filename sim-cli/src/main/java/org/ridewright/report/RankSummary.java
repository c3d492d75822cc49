package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.study.Estimate;
import org.ridewright.study.Factor;
import org.ridewright.study.IndexFindings;
import org.ridewright.study.Question;
import org.ridewright.study.ScreeningFindings;

/** Which value matters most, as a table and in sentences. */
final class RankSummary {
    private RankSummary() {}

    /** Effects of a screening, the greatest first. */
    static StudySummary of(ScreeningFindings findings) {
        List<List<String>> rows = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        for (int q = 0; q < findings.study().questions().size(); q++) {
            Question question = findings.study().questions().get(q);
            for (int t = 0; t < findings.tests().size() && !findings.base().isEmpty(); t++) {
                int test = t;
                int asked = q;
                if (!findings.effects(t, q).isTold()) {
                    long left = findings.effects(t, q).left();
                    sentences.add(untold(
                            question,
                            findings.tests().get(t),
                            left,
                            left + findings.effects(t, q).used(),
                            "jumps lead to or from"));
                    continue;
                }
                int[] ranked = RankFigures.ranked(
                        findings.factors().size(),
                        f -> findings.effects(test, asked).size(f));
                for (int f : ranked) {
                    Estimate size = findings.effects(t, q).size(f);
                    rows.add(List.of(
                            question.name(),
                            findings.tests().get(t),
                            findings.factors().get(f).name(),
                            StudySummary.with(size.value(), question),
                            interval(size),
                            Numbers.of(findings.effects(t, q).mean(f).value()),
                            Numbers.of(findings.effects(t, q).deviation(f).value())));
                }
                Estimate first = findings.effects(t, q).size(ranked[0]);
                sentences.add(strongest(
                        question,
                        findings.tests().size() > 1 ? findings.tests().get(t) : "",
                        findings.factors(),
                        ranked,
                        first,
                        ranked.length > 1 ? findings.effects(t, q).size(ranked[1]) : first,
                        "moves"));
            }
        }
        return new StudySummary(
                List.of("Answer", "Ride test", "Value", "μ*, mean size of effect", "90 % of it", "μ, mean effect", "σ"),
                rows,
                3,
                sentences);
    }

    private static String untold(Question question, String test, long left, long all, String what) {
        return "What moves " + question.name() + " (" + test + ") is not told: " + left + " of " + all + " " + what
                + " a run that gave no such answer, and with more than a tenth left out the rest says too little of the whole.";
    }

    private static String strongest(
            Question question,
            String test,
            List<Factor> factors,
            int[] ranked,
            Estimate first,
            Estimate second,
            String verb) {
        if (!(first.value() > 0)) {
            return "Nothing that varied " + verb + " " + question.name() + (test.isEmpty() ? "." : " (" + test + ").");
        }
        boolean clear = ranked.length == 1 || first.low() > second.high();
        return RideFigures.upperFirst(factors.get(ranked[0]).name()) + " " + verb + " " + question.name()
                + (test.isEmpty() ? "" : " (" + test + ")") + " most"
                + (clear
                        ? "."
                        : ", but not by more than the intervals leave open: "
                                + factors.get(ranked[1]).name() + " may matter as much.");
    }

    private static String interval(Estimate estimate) {
        return Numbers.of(estimate.low()) + " to " + Numbers.of(estimate.high());
    }

    /** Shares of the variance, the greatest first. */
    static StudySummary of(IndexFindings findings) {
        List<List<String>> rows = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        for (int q = 0; q < findings.study().questions().size(); q++) {
            Question question = findings.study().questions().get(q);
            for (int t = 0; t < findings.tests().size() && !findings.base().isEmpty(); t++) {
                int test = t;
                int asked = q;
                if (!findings.indices(t, q).isTold()) {
                    long left = findings.indices(t, q).left();
                    sentences.add(untold(
                            question,
                            findings.tests().get(t),
                            left,
                            left + findings.indices(t, q).used(),
                            "points need"));
                    continue;
                }
                int[] ranked = RankFigures.ranked(
                        findings.factors().size(),
                        f -> findings.indices(test, asked).total(f));
                for (int f : ranked) {
                    Estimate total = findings.indices(t, q).total(f);
                    Estimate first = findings.indices(t, q).first(f);
                    rows.add(List.of(
                            question.name(),
                            findings.tests().get(t),
                            findings.factors().get(f).name(),
                            Numbers.of(first.value(), 2),
                            Numbers.of(first.low(), 2) + " to " + Numbers.of(first.high(), 2),
                            Numbers.of(total.value(), 2),
                            Numbers.of(total.low(), 2) + " to " + Numbers.of(total.high(), 2)));
                }
                Estimate first = findings.indices(t, q).total(ranked[0]);
                sentences.add(strongest(
                                question,
                                findings.tests().size() > 1 ? findings.tests().get(t) : "",
                                findings.factors(),
                                ranked,
                                first,
                                ranked.length > 1 ? findings.indices(t, q).total(ranked[1]) : first,
                                "moves")
                        + " All together leave it uncertain by "
                        + StudySummary.with(findings.indices(t, q).deviation().value(), question)
                        + " (one standard deviation).");
            }
        }
        return new StudySummary(
                List.of("Answer", "Ride test", "Value", "First order", "90 % of it", "Total", "90 % of it"),
                rows,
                3,
                sentences);
    }
}
