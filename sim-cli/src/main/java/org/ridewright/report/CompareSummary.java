package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.QuantileSketch;
import org.ridewright.study.Question;

/** What a comparison found, as a table with the best marked, and which thing is best in how many tests. */
final class CompareSummary {
    private CompareSummary() {}

    static StudySummary of(CompareFindings compare) {
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
            int same = 0;
            int tied = 0;
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
                } else if (compare.isSame(r, q)) {
                    same++;
                } else if (compare.isTied(r, q)) {
                    tied++;
                }
            }
            if (judged > 0) {
                sentences.add(verdict(compare, q, question, wins) + same(same) + tied(tied));
            } else if (same > 0) {
                sentences.add(RideFigures.upperFirst(question.title()) + " is the same for all"
                        + (same < compare.rows().size()
                                ? " in " + same + " of " + compare.rows().size() + " tests."
                                : "."));
            }
        }
        return new StudySummary(heads, rows, 2, sentences);
    }

    private static String cell(CompareFindings compare, int th, int r, int q, int best, Question question) {
        String value = StudySummary.with(compare.value(th, r, q), question);
        if (th == best) {
            return (compare.isClear(r, q) ? "★ " : "☆ ") + value;
        }
        QuantileSketch difference = compare.difference(th, r, q);
        double low = difference.quantile(0.05);
        double high = difference.quantile(0.95);
        return difference.count() == 0
                ? value
                : low == 0 && high == 0
                        ? value + " (the same)"
                        : value + " (" + signed(low) + " to " + signed(high) + ")";
    }

    private static String same(int tests) {
        return tests == 0 ? "" : " In " + tests + (tests == 1 ? " test" : " tests") + " it is the same for all.";
    }

    private static String tied(int tests) {
        return tests == 0 ? "" : " In " + tests + (tests == 1 ? " test" : " tests") + " two or more are best alike.";
    }

    private static String signed(double value) {
        return (value > 0 ? "+" : "") + Numbers.of(value, 2);
    }

    /** Which thing is best, in how many tests, and in how many of these the draws tell it from all others. */
    private static String verdict(CompareFindings compare, int q, Question question, int[] wins) {
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
                        + (compare.rows().size() == 1
                                ? ""
                                : " in " + wins[th] + " of " + compare.rows().size() + " tests")
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
                        + (compare.rows().size() == 1
                                ? ""
                                : " in " + otherwise + " of " + compare.rows().size() + " tests")
                        + "; the files as written are one case among many.";
    }
}
