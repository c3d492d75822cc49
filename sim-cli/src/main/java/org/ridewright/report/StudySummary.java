package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.Estimate;
import org.ridewright.study.Factor;
import org.ridewright.study.Findings;
import org.ridewright.study.IndexFindings;
import org.ridewright.study.QuantileSketch;
import org.ridewright.study.Question;
import org.ridewright.study.ScreeningFindings;
import org.ridewright.study.SearchRun;
import org.ridewright.study.Study;
import org.ridewright.study.SweepFindings;
import org.ridewright.study.UncertaintyFindings;

/**
 * What a study found, as a table and in sentences made of its numbers.
 *
 * @param heads of the columns
 * @param rows of the table
 * @param words how many columns, from the left, hold words
 * @param sentences plain text
 */
public record StudySummary(List<String> heads, List<List<String>> rows, int words, List<String> sentences) {
    public StudySummary {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
        sentences = List.copyOf(sentences);
    }

    /** The author's sentences, with their blanks filled; none if there are none. */
    public static List<String> answer(Findings findings) {
        return StudyAnswer.of(findings);
    }

    /** The same of a search. */
    public static List<String> answer(Study study, SearchRun.Result result) {
        return SearchAnswer.of(study, result);
    }

    /** Of all methods but a search. */
    public static StudySummary of(Findings findings) {
        if (findings instanceof SweepFindings sweep) {
            return sweep(sweep);
        } else if (findings instanceof CompareFindings compare) {
            return compare(compare);
        } else if (findings instanceof UncertaintyFindings uncertainty) {
            return uncertainty(uncertainty);
        } else if (findings instanceof ScreeningFindings screening) {
            return screening(screening);
        }
        return indices((IndexFindings) findings);
    }

    /** A number with its unit. */
    static String with(double value, Question question) {
        String unit = question.measure().unit();
        return Numbers.of(value) + (unit.equals("1") || !Double.isFinite(value) ? "" : " " + unit);
    }

    private static String at(Factor factor, double shown) {
        String unit = factor.unit();
        return factor.name() + " " + Numbers.of(shown) + (unit.equals("1") || unit.isEmpty() ? "" : " " + unit);
    }

    private static StudySummary sweep(SweepFindings sweep) {
        List<List<String>> rows = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        List<String> tests = sweep.tests();
        for (int q = 0; q < sweep.study().questions().size(); q++) {
            Question question = sweep.study().questions().get(q);
            for (int t = 0; t < tests.size() && !sweep.base().isEmpty(); t++) {
                double[][] values = sweep.values(t, q);
                int[] least = extreme(values, false);
                int[] most = extreme(values, true);
                rows.add(List.of(
                        question.name(),
                        tests.get(t),
                        with(sweep.asWritten(t, q), question),
                        least == null ? "–" : with(values[least[0]][least[1]], question),
                        least == null ? "–" : place(sweep, least),
                        most == null ? "–" : with(values[most[0]][most[1]], question),
                        most == null ? "–" : place(sweep, most)));
                if (least != null && most != null) {
                    sentences.add(sentence(sweep, question, tests.size() > 1 ? tests.get(t) : "", values, least, most));
                }
            }
        }
        return new StudySummary(
                List.of("Answer", "Ride test", "As written", "Least", "At", "Greatest", "At"), rows, 2, sentences);
    }

    private static String sentence(
            SweepFindings sweep, Question question, String test, double[][] values, int[] least, int[] most) {
        double low = values[least[0]][least[1]];
        double high = values[most[0]][most[1]];
        String of = RideFigures.upperFirst(question.title()) + (test.isEmpty() ? "" : " (" + test + ")");
        if (high - low <= 1e-9 * Math.max(Math.abs(low), Math.abs(high))) {
            return of + " is " + with(low, question) + " whatever "
                    + sweep.swept().get(0).factor().name() + " is.";
        }
        return of + " is least, " + with(low, question) + ", at " + place(sweep, least) + ", and greatest, "
                + with(high, question) + ", at " + place(sweep, most) + ".";
    }

    /** Slots of the least or greatest value; null where there is none. */
    private static int[] extreme(double[][] values, boolean greatest) {
        int[] found = null;
        for (int i = 0; i < values.length; i++) {
            for (int j = 0; j < values[i].length; j++) {
                double value = values[i][j];
                boolean further = found == null
                        || (greatest ? value > values[found[0]][found[1]] : value < values[found[0]][found[1]]);
                if (Double.isFinite(value) && further) {
                    found = new int[] {i, j};
                }
            }
        }
        return found;
    }

    private static String place(SweepFindings sweep, int[] slots) {
        List<String> parts = new ArrayList<>();
        for (int s = 0; s < sweep.swept().size(); s++) {
            Factor factor = sweep.swept().get(s).factor();
            parts.add(
                    factor instanceof Factor.Listed listed && listed.unit().isEmpty()
                            ? factor.name() + " " + listed.words().get(slots[s])
                            : at(factor, sweep.axis(s)[slots[s]]));
        }
        return String.join(", ", parts);
    }

    private static StudySummary compare(CompareFindings compare) {
        List<String> heads = new ArrayList<>(List.of("Answer", "Ride test"));
        heads.addAll(compare.things());
        List<List<String>> rows = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        for (int q = 0; q < compare.study().questions().size(); q++) {
            Question question = compare.study().questions().get(q);
            int[] wins = new int[compare.things().size()];
            int judged = 0;
            for (int r = 0; r < compare.rows().size(); r++) {
                int best = compare.best(r, q);
                List<String> row =
                        new ArrayList<>(List.of(question.name(), compare.rows().get(r)));
                for (int th = 0; th < compare.things().size(); th++) {
                    row.add(cell(compare, th, r, q, best, question));
                }
                rows.add(row);
                if (best >= 0) {
                    wins[best]++;
                    judged++;
                }
            }
            if (judged > 0) {
                sentences.add(verdict(compare, q, question, wins, judged));
            }
        }
        return new StudySummary(heads, rows, 2, sentences);
    }

    private static String cell(CompareFindings compare, int th, int r, int q, int best, Question question) {
        String value = with(compare.value(th, r, q), question);
        if (th == best) {
            return "★ " + value;
        }
        QuantileSketch difference = compare.difference(th, r, q);
        return difference.count() == 0
                ? value
                : value + " (" + signed(difference.quantile(0.05)) + " to " + signed(difference.quantile(0.95)) + ")";
    }

    private static String signed(double value) {
        return (value > 0 ? "+" : "") + Numbers.of(value, 2);
    }

    private static String verdict(CompareFindings compare, int q, Question question, int[] wins, int judged) {
        List<String> parts = new ArrayList<>();
        for (int th = 0; th < wins.length; th++) {
            if (wins[th] > 0) {
                parts.add(
                        compare.things().get(th) + (judged == 1 ? "" : " in " + wins[th] + " of " + judged + " tests"));
            }
        }
        String text = "Best in " + question.title() + ": " + String.join(", ", parts) + ".";
        int sure = 0;
        int all = 0;
        for (int r = 0; r < compare.rows().size(); r++) {
            for (int th = 0; th < wins.length; th++) {
                QuantileSketch difference = compare.difference(th, r, q);
                if (difference.count() > 0) {
                    all++;
                    sure += difference.quantile(0.05) * difference.quantile(0.95) > 0 ? 1 : 0;
                }
            }
        }
        return all == 0
                ? text
                : text + " Of " + all + (all == 1 ? " difference" : " differences") + " from the best, " + sure
                        + (sure == 1 ? " is" : " are") + " beyond what the tolerances leave open (90 %).";
    }

    private static StudySummary uncertainty(UncertaintyFindings findings) {
        List<List<String>> rows = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        boolean along = findings.method().along().isPresent();
        for (int q = 0; q < findings.study().questions().size(); q++) {
            Question question = findings.study().questions().get(q);
            for (int t = 0; t < findings.tests().size() && !findings.base().isEmpty(); t++) {
                String test = findings.tests().get(t);
                for (int slot = 0; slot < findings.axis().length; slot++) {
                    QuantileSketch spread = findings.spread(slot, t, q);
                    List<String> row = new ArrayList<>(List.of(question.name(), test));
                    if (along) {
                        row.add(where(findings, slot));
                    }
                    if (!along) {
                        row.add(with(findings.asWritten(t, q), question));
                    }
                    row.add(with(spread.quantile(0.05), question));
                    row.add(with(spread.quantile(0.5), question));
                    row.add(with(spread.quantile(0.95), question));
                    rows.add(row);
                }
                if (!along && findings.spread(0, t, q).count() > 0) {
                    QuantileSketch spread = findings.spread(0, t, q);
                    sentences.add(String.format(
                            Locale.ROOT,
                            "%s%s is between %s and %s with 90 %% probability, as far as the tolerances go; as written %s.",
                            RideFigures.upperFirst(question.title()),
                            findings.tests().size() > 1 ? " (" + test + ")" : "",
                            with(spread.quantile(0.05), question),
                            with(spread.quantile(0.95), question),
                            with(findings.asWritten(t, q), question)));
                }
            }
        }
        List<String> heads = new ArrayList<>(List.of("Answer", "Ride test"));
        if (along) {
            heads.add("At");
            sentences.add("At each " + findings.method().along().get().factor().name()
                    + ", 90 % of the draws lie within the wide band.");
        }
        heads.addAll(along ? List.of("5 %", "Median", "95 %") : List.of("As written", "5 %", "Median", "95 %"));
        return new StudySummary(heads, rows, 2, sentences);
    }

    private static String where(UncertaintyFindings findings, int slot) {
        Factor factor = findings.method().along().orElseThrow().factor();
        return at(factor, findings.axis()[slot])
                .substring(factor.name().length())
                .strip();
    }

    private static StudySummary screening(ScreeningFindings findings) {
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
                            with(size.value(), question),
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

    private static StudySummary indices(IndexFindings findings) {
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
                        + with(findings.indices(t, q).deviation().value(), question) + " (one standard deviation).");
            }
        }
        return new StudySummary(
                List.of("Answer", "Ride test", "Value", "First order", "90 % of it", "Total", "90 % of it"),
                rows,
                3,
                sentences);
    }

    /** Of a search. */
    public static StudySummary of(Study study, SearchRun.Result result) {
        return SearchSummary.of(study, result);
    }
}
