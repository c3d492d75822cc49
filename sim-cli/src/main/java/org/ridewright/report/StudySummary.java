package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.ridewright.study.CompareFindings;
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
        StudySummary told = told(findings);
        List<String> sentences = new ArrayList<>(remarks(findings));
        sentences.addAll(told.sentences());
        return new StudySummary(told.heads(), told.rows(), told.words(), sentences);
    }

    private static StudySummary told(Findings findings) {
        if (findings instanceof SweepFindings sweep) {
            return sweep(sweep);
        } else if (findings instanceof CompareFindings compare) {
            return compare(compare);
        } else if (findings instanceof UncertaintyFindings uncertainty) {
            return uncertainty(uncertainty);
        } else if (findings instanceof ScreeningFindings screening) {
            return RankSummary.of(screening);
        }
        return RankSummary.of((IndexFindings) findings);
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
            if (question.band().isPresent()) {
                continue;
            }
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
            return (compare.isClear(r, q) ? "★ " : "☆ ") + value;
        }
        QuantileSketch difference = compare.difference(th, r, q);
        return difference.count() == 0
                ? value
                : value + " (" + signed(difference.quantile(0.05)) + " to " + signed(difference.quantile(0.95)) + ")";
    }

    private static String signed(double value) {
        return (value > 0 ? "+" : "") + Numbers.of(value, 2);
    }

    /** Which thing is best, in how many tests, and in how many of these the draws tell it from all others. */
    private static String verdict(CompareFindings compare, int q, Question question, int[] wins, int judged) {
        List<String> parts = new ArrayList<>();
        for (int th = 0; th < wins.length; th++) {
            int thing = th;
            if (wins[th] > 0) {
                long clear = IntStream.range(0, compare.rows().size())
                        .filter(r -> compare.best(r, q) == thing && compare.isClear(r, q))
                        .count();
                String sure = compare.method().draws() == 0 || clear == wins[th]
                        ? ""
                        : clear == 0 ? ", not told from all others" : ", told from all others in " + clear;
                parts.add(compare.things().get(th)
                        + (judged == 1 ? "" : " in " + wins[th] + " of " + judged + " tests")
                        + sure);
            }
        }
        String text = RideFigures.upperFirst(question.title()) + ": best is " + String.join("; ", parts) + ".";
        long otherwise = IntStream.range(0, compare.rows().size())
                .filter(r -> compare.best(r, q) >= 0
                        && compare.bestAsWritten(r, q) >= 0
                        && compare.bestAsWritten(r, q) != compare.best(r, q))
                .count();
        return otherwise == 0
                ? text
                : text + " As written, another one is best"
                        + (judged == 1 ? "" : " in " + otherwise + " of " + judged + " tests")
                        + "; the files as written are one case among many.";
    }

    /** What no table shows: that the base fails, or that something has nothing beside it. */
    private static List<String> remarks(Findings findings) {
        List<String> remarks = new ArrayList<>();
        if (!findings.baseFailure().isEmpty() && findings.failed() < findings.runs()) {
            remarks.add("As written, the base cannot be ridden in full, though other runs can: "
                    + findings.baseFailure().replaceFirst("\\.?\\s*$", "."));
        }
        if (findings instanceof CompareFindings compare && !compare.leftOut().isEmpty()) {
            List<String> left = compare.leftOut();
            remarks.add("Left out, since nothing else goes through the same test: "
                    + String.join("; ", left.subList(0, Math.min(6, left.size())))
                    + (left.size() > 6 ? "; and " + (left.size() - 6) + " more" : "") + ".");
        }
        return remarks;
    }

    private static StudySummary uncertainty(UncertaintyFindings findings) {
        List<List<String>> rows = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        boolean along = findings.method().along().isPresent();
        boolean few = DrawnShare.isFew(findings.method().draws());
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
                            few
                                    ? "%s%s is between %s and %s in all "
                                            + findings.method().draws() + " draws; as written %s."
                                    : "%s%s is between %s and %s with 90 %% probability, as far as the tolerances go; as written %s.",
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
            sentences.add("At each " + findings.method().along().get().factor().name() + ", "
                    + DrawnShare.of(findings.method().draws()) + " lie within the wide band.");
        }
        if (!along) {
            heads.add("As written");
        }
        heads.addAll(few ? List.of("Least", "Median", "Greatest") : List.of("5 %", "Median", "95 %"));
        return new StudySummary(heads, rows, 2, sentences);
    }

    private static String where(UncertaintyFindings findings, int slot) {
        Factor factor = findings.method().along().orElseThrow().factor();
        return at(factor, findings.axis()[slot])
                .substring(factor.name().length())
                .strip();
    }

    /** Of a search. */
    public static StudySummary of(Study study, SearchRun.Result result) {
        return SearchSummary.of(study, result);
    }
}
