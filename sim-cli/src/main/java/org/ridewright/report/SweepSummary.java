package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ridewright.study.Question;
import org.ridewright.study.RoundOff;
import org.ridewright.study.SweepFindings;

/** What a sweep found, as a table and in sentences, which tell nothing of a shape that fewer than two steps show. */
final class SweepSummary {
    private final SweepFindings sweep;

    private SweepSummary(SweepFindings sweep) {
        this.sweep = sweep;
    }

    static StudySummary of(SweepFindings sweep) {
        return new SweepSummary(sweep).summary();
    }

    private StudySummary summary() {
        List<List<String>> rows = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        List<String> tests = sweep.tests();
        for (int q = 0; q < sweep.study().questions().size(); q++) {
            Question question = sweep.study().questions().get(q);
            for (int t = 0; t < tests.size() && !sweep.base().isEmpty(); t++) {
                double[][] values = sweep.values(t, q);
                List<int[]> least = extremes(values, false);
                List<int[]> most = extremes(values, true);
                boolean any = !least.isEmpty();
                boolean same = any && RoundOff.isAlike(at(values, least), at(values, most));
                rows.add(List.of(
                        question.name(),
                        tests.get(t),
                        StudySummary.with(sweep.asWritten(t, q), question),
                        any ? StudySummary.with(at(values, least), question) : "–",
                        same && least.size() > 1 ? "everywhere" : any ? place(least) : "–",
                        any ? StudySummary.with(at(values, most), question) : "–",
                        same && least.size() > 1 ? "everywhere" : any ? place(most) : "–"));
                if (any) {
                    String of = RideFigures.upperFirst(question.title())
                            + (tests.size() > 1 ? " (" + tests.get(t) + ")" : "");
                    sentences.add(sentence(of, question, values, least, most) + lacking(t, q));
                }
            }
        }
        return new StudySummary(
                List.of("Answer", "Ride test", "As written", "Least", "At", "Greatest", "At"), rows, 2, sentences);
    }

    private static double at(double[][] values, List<int[]> slots) {
        return values[slots.get(0)[0]][slots.get(0)[1]];
    }

    private String sentence(String of, Question question, double[][] values, List<int[]> least, List<int[]> most) {
        double low = at(values, least);
        double high = at(values, most);
        long shown = IntStream.range(0, values.length)
                .mapToLong(i -> IntStream.range(0, values[i].length)
                        .filter(j -> Double.isFinite(values[i][j]))
                        .count())
                .sum();
        if (shown < 2) {
            return of + " is " + StudySummary.with(low, question) + " at " + place(least) + ".";
        }
        if (RoundOff.isAlike(low, high)) {
            return of + " is " + StudySummary.with(low, question) + " whatever "
                    + sweep.swept().stream().map(s -> s.factor().name()).collect(Collectors.joining(" and "))
                    + (sweep.swept().size() == 1 ? " is." : " are.");
        }
        return of + " is least, " + StudySummary.with(low, question) + ", " + where(least) + ", and greatest, "
                + StudySummary.with(high, question) + ", " + where(most) + ".";
    }

    /** How many steps have an answer, if not all. */
    private String lacking(int test, int question) {
        long some = sweep.answered(test, question);
        return some == sweep.steps()
                ? ""
                : " Only " + some + " of " + sweep.steps() + " steps "
                        + (sweep.failed() > 0 ? "could be ridden." : "have this answer.");
    }

    private String where(List<int[]> slots) {
        String place = place(slots);
        return sweep.swept().size() == 1 && slots.size() > 1 ? "for " + place : "at " + place;
    }

    /** Slots of the least or greatest value, of which several may be alike. */
    private static List<int[]> extremes(double[][] values, boolean greatest) {
        double found = Double.NaN;
        for (double[] row : values) {
            for (double value : row) {
                if (Double.isFinite(value) && (Double.isNaN(found) || (greatest ? value > found : value < found))) {
                    found = value;
                }
            }
        }
        List<int[]> slots = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            for (int j = 0; j < values[i].length; j++) {
                if (Double.isFinite(values[i][j]) && RoundOff.isAlike(values[i][j], found)) {
                    slots.add(new int[] {i, j});
                }
            }
        }
        return slots;
    }

    /** One step, a stretch of them, or the first of several and how many more there are. */
    private String place(List<int[]> slots) {
        if (slots.size() == 1) {
            return place(slots.get(0));
        }
        if (sweep.swept().size() > 1 || sweep.swept().get(0).factor().unit().isEmpty()) {
            return place(slots.get(0)) + " and " + (slots.size() - 1) + " more";
        }
        double[] axis = sweep.axis(0);
        double low = slots.stream().mapToDouble(s -> axis[s[0]]).min().orElseThrow();
        double high = slots.stream().mapToDouble(s -> axis[s[0]]).max().orElseThrow();
        long between = IntStream.range(0, axis.length)
                .filter(i -> axis[i] >= low && axis[i] <= high)
                .count();
        String from = StudySummary.at(sweep.swept().get(0).factor(), low);
        if (between > slots.size()) {
            return from + " and " + (slots.size() - 1) + " more";
        }
        String to = StudySummary.spoken(sweep.swept().get(0).factor(), high);
        boolean first = IntStream.range(0, axis.length).allMatch(i -> axis[i] >= low);
        boolean last = IntStream.range(0, axis.length).allMatch(i -> axis[i] <= high);
        return last
                ? from + " and more"
                : first ? sweep.swept().get(0).factor().name() + " up to " + to : from + " to " + to;
    }

    private String place(int[] slots) {
        List<String> parts = new ArrayList<>();
        for (int s = 0; s < sweep.swept().size(); s++) {
            parts.add(StudySummary.at(sweep.swept().get(s).factor(), sweep.axis(s)[slots[s]]));
        }
        return String.join(", ", parts);
    }
}
