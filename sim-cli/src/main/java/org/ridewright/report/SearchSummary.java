package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.study.Factor;
import org.ridewright.study.Limit;
import org.ridewright.study.Method;
import org.ridewright.study.Outcome;
import org.ridewright.study.Question;
import org.ridewright.study.SearchReading;
import org.ridewright.study.SearchRun;
import org.ridewright.study.Sought;
import org.ridewright.study.Study;
import org.ridewright.study.TestNames;

/** What a search found: its table and its sentences, which claim no more than the runs show. */
final class SearchSummary {
    private final Study study;
    private final Method.Search method;
    private final SearchRun.Result result;
    private final SearchReading reading;
    private final SearchWords words;

    private SearchSummary(Study study, SearchRun.Result result) {
        this.study = study;
        this.result = result;
        method = (Method.Search) study.method();
        reading = new SearchReading(method, result);
        words = new SearchWords(study);
    }

    static StudySummary of(Study study, SearchRun.Result result) {
        SearchSummary summary = new SearchSummary(study, result);
        List<String> heads = new ArrayList<>(List.of("", "Ride test"));
        summary.method.factors().forEach(f -> heads.add(f.head()));
        study.questions().forEach(q -> heads.add(q.head()));
        return new StudySummary(heads, summary.rows(), 2, summary.sentences());
    }

    private List<List<String>> rows() {
        List<List<String>> rows =
                new ArrayList<>(rows("as written", result.way().get(0)));
        if (!reading.unanswered().isEmpty()) {
            return rows;
        }
        reading.best().ifPresent(best -> rows.addAll(rows(reading.keeps() ? "found" : "nearest", best)));
        reading.bestWithoutLimits().ifPresent(free -> rows.addAll(rows("without limits", free)));
        return rows;
    }

    /** One for each ride test. */
    private List<List<String>> rows(String name, SearchRun.Step step) {
        List<List<String>> rows = new ArrayList<>();
        List<Outcome.Line> tests = step.outcome().tests();
        List<String> names =
                TestNames.of(tests.stream().map(Outcome.Line::labels).toList());
        for (int t = 0; t < Math.max(1, tests.size()); t++) {
            List<String> row = new ArrayList<>(List.of(name, tests.isEmpty() ? "not ridden" : names.get(t)));
            for (int f = 0; f < method.factors().size(); f++) {
                Factor factor = method.factors().get(f);
                row.add(
                        step.shares().length > 0
                                ? number(factor, factor.shown(factor.at(step.shares()[f])))
                                : study.asWritten(factor).isPresent()
                                        ? number(factor, study.asWritten(factor).getAsDouble())
                                        : "–");
            }
            for (int q = 0; q < study.questions().size(); q++) {
                row.add(Numbers.of(step.outcome().answer(t, q)));
            }
            rows.add(row);
        }
        return rows;
    }

    /** Without the unit, which stands in the head. */
    private static String number(Factor factor, double shown) {
        return factor.unit().equals("1") ? factor.spoken(shown) : Numbers.of(shown);
    }

    private List<String> sentences() {
        if (reading.best().isEmpty()) {
            return List.of("No run of the search could be ridden; the table of runs says why.");
        } else if (!reading.unanswered().isEmpty()) {
            return reading.unanswered().stream()
                    .map(l -> words.unanswered(method.limits().get(l)))
                    .toList();
        }
        List<String> sentences = new ArrayList<>();
        SearchRun.Step best = reading.best().get();
        if (reading.keeps()) {
            sentences.add(found(best));
            for (int l = 0; l < method.limits().size(); l++) {
                sentences.add(kept(l, best));
            }
            reading.bestWithoutLimits().ifPresent(free -> sentences.add(without(free)));
            sentences.add(determined());
            if (method.factors().size() == 1 && method.sought().target().isEmpty() && reading.hollows() > 1) {
                sentences.add(rough());
            }
        } else {
            sentences.add(nearest(best));
        }
        if (!result.settled() && method.sought().target().isEmpty()) {
            sentences.add("The search was ended by its number of runs, " + method.runs()
                    + ", not by itself: more may find better.");
        }
        return sentences;
    }

    private String with(double value) {
        return StudySummary.with(value, words.question(method.sought().asked()));
    }

    private String found(SearchRun.Step best) {
        Sought sought = method.sought();
        String of = RideFigures.upperFirst(
                words.titled(sought.asked(), best.outcome().tests().size()));
        String kept = method.limits().isEmpty() ? "" : " with the limits kept";
        if (sought.target().isPresent()) {
            double target = sought.target().get();
            boolean meets = Math.abs(best.worth() - target) <= SearchReading.ALIKE * Math.abs(target);
            return of
                    + (meets
                            ? " meets " + with(target) + " at " + words.place(best) + kept + " (" + with(best.worth())
                                    + ")."
                            : (result.settled() ? " jumps past " : " does not meet ") + with(target)
                                    + (result.settled() ? "" : " as far as the search looked" + kept)
                                    + "; it comes nearest, " + with(best.worth()) + ", at " + words.place(best) + ".");
        }
        double written = result.way().get(0).worth();
        return of + " is " + (sought.least() ? "least" : "greatest") + ", " + with(best.worth()) + ", at "
                + words.place(best) + kept
                + (Double.isFinite(written)
                        ? "; as written it is " + with(written)
                                + broken(result.way().get(0))
                        : "") + "." + ends();
    }

    /** That a run breaks a limit. */
    private String broken(SearchRun.Step step) {
        return reading.broken(step).isEmpty() ? "" : ", where " + listed(step);
    }

    private String ends() {
        StringBuilder text = new StringBuilder();
        for (int f = 0; f < method.factors().size(); f++) {
            if (reading.isAtEnd(f) && !(method.factors().size() == 1 && reading.isBroad(f))) {
                text.append(" This is an end of the range of ")
                        .append(method.factors().get(f).name())
                        .append(": beyond it there may be better.");
            }
        }
        return text.toString();
    }

    private String kept(int number, SearchRun.Step best) {
        Limit limit = method.limits().get(number);
        String value = StudySummary.with(best.limited().get(number), words.question(limit.asked()));
        boolean binds = reading.binding().contains(number);
        return "The limit " + words.limit(limit) + (binds ? " binds" : " does not bind") + ": it is " + value + " there"
                + (binds ? ", and just beyond, where it is broken, the answer would be better." : ".");
    }

    private String without(SearchRun.Step free) {
        return "Without limits, the best of the runs is " + words.place(free) + " (" + with(free.worth()) + "), where "
                + listed(free) + ".";
    }

    /** What a run breaks, with its values. */
    private String listed(SearchRun.Step step) {
        return Listed.of(reading.broken(step).stream()
                .map(l -> {
                    Limit limit = method.limits().get(l);
                    Question question = words.question(limit.asked());
                    return words.called(limit.asked()) + " is "
                            + StudySummary.with(step.limited().get(l), question) + " and not " + words.bound(limit);
                })
                .toList());
    }

    private String nearest(SearchRun.Step best) {
        return "None of the " + reading.looks().size() + " runs keeps the limits (" + words.limits()
                + "). What comes nearest is " + words.place(best) + ", where " + listed(best) + "; "
                + words.called(method.sought().asked()) + " is then " + with(best.worth()) + ".";
    }

    /** Between which values the answer is hardly less good. */
    private String determined() {
        if (method.factors().size() == 1 && method.sought().target().isEmpty() && reading.isBroad(0)) {
            Factor factor = method.factors().get(0);
            return (reading.isFlat(0) ? "The answer is flat: any " : "Any ") + factor.name() + " from "
                    + SearchWords.span(factor, reading.alike(0)) + " is as good within 1 %.";
        }
        List<String> spans = new ArrayList<>();
        for (int f = 0; f < method.factors().size(); f++) {
            Factor factor = method.factors().get(f);
            SearchReading.Span span = reading.alike(f);
            spans.add(factor.name() + " from " + SearchWords.span(factor, span));
        }
        return "Within 1 % of that answer: " + Listed.of(spans)
                + (method.factors().size() == 1
                        ? ", by straight lines between the runs."
                        : ", each by itself among the runs: " + reading.looks().size()
                                + " of them, most near the best.");
    }

    private String rough() {
        boolean least = method.sought().least();
        return "Along " + method.factors().get(0).name() + " the "
                + reading.looks().size() + " runs show "
                + reading.hollows() + (least ? " hollows" : " summits") + " of more than 1 %"
                + (method.limits().isEmpty() ? "" : " where the limits are kept") + ", of which this is the "
                + (least ? "deepest" : "highest") + "; another may lie between the runs.";
    }
}
