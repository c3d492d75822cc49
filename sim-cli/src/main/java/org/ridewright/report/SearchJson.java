package org.ridewright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.ridewright.study.Asked;
import org.ridewright.study.Factor;
import org.ridewright.study.Limit;
import org.ridewright.study.Method;
import org.ridewright.study.Outcome;
import org.ridewright.study.Question;
import org.ridewright.study.SearchReading;
import org.ridewright.study.SearchRun;
import org.ridewright.study.Study;

/** What a search sought, had to keep, tried and found, for other programs. */
final class SearchJson {
    private final Study study;
    private final Method.Search method;
    private final SearchRun.Result result;
    private final SearchReading reading;
    private final SearchWords words;

    SearchJson(Study study, SearchRun.Result result) {
        this.study = study;
        this.result = result;
        method = (Method.Search) study.method();
        reading = new SearchReading(method, result);
        words = new SearchWords(study);
    }

    void write(ObjectNode root) {
        List<String> sentences = SearchAnswer.of(study, result);
        if (!sentences.isEmpty()) {
            ArrayNode answer = root.putArray("answer");
            sentences.forEach(answer::add);
        }
        Question sought = asked(root.putObject("sought"), method.sought().asked());
        method.sought()
                .target()
                .ifPresentOrElse(
                        target -> JsonNumbers.put(root, "target", target),
                        () -> root.put("best is", method.sought().least() ? "the least" : "the greatest"));
        root.put("ended by itself", result.settled());
        limits(root.putArray("limits"));
        reading.best().ifPresent(best -> best(root.putObject("best"), best, sought));
        reading.bestWithoutLimits().ifPresent(free -> step(root.putObject("best without limits"), free, sought));
        if (method.factors().size() == 1 && reading.best().isPresent()) {
            root.put(
                    method.sought().least() ? "hollows of more than 1 %" : "summits of more than 1 %",
                    reading.hollows());
        }
        ArrayNode way = root.putArray("way");
        for (SearchRun.Step step : result.way()) {
            ObjectNode node = way.addObject().put("run", step.trial().run());
            ArrayNode shares = node.putArray("shares of the ranges");
            for (double share : step.shares()) {
                shares.add(share);
            }
            JsonNumbers.put(node, sought.name(), step.worth());
            if (!method.limits().isEmpty()) {
                node.put("keeps the limits", step.keeps());
                ArrayNode limited = node.putArray("answers to the limits");
                step.limited().forEach(v -> {
                    if (Double.isFinite(v)) {
                        limited.add(v);
                    } else {
                        limited.addNull();
                    }
                });
            }
        }
    }

    private Question asked(ObjectNode node, Asked asked) {
        Question question = words.question(asked);
        node.put("name", question.name()).put("unit", question.measure().unit());
        ArrayNode on = node.putArray("on");
        asked.on().forEach(on::add);
        return question;
    }

    private void limits(ArrayNode limits) {
        for (int l = 0; l < method.limits().size(); l++) {
            Limit limit = method.limits().get(l);
            int number = l;
            ObjectNode node = limits.addObject();
            asked(node, limit.asked());
            node.put("must be", limit.side().word());
            JsonNumbers.put(node, "bound", limit.bound());
            reading.best()
                    .ifPresent(best ->
                            JsonNumbers.put(node, "at the best", best.limited().get(number)));
            node.put("binds", reading.binding().contains(l));
            node.put(
                    "runs that break it",
                    reading.looks().stream()
                            .filter(s -> reading.breaks(s, number))
                            .count());
        }
    }

    private void best(ObjectNode node, SearchRun.Step best, Question sought) {
        node.put("keeps the limits", reading.keeps());
        ArrayNode values = step(node, best, sought);
        for (int f = 0; f < method.factors().size() && reading.keeps(); f++) {
            ObjectNode value = (ObjectNode) values.get(f);
            value.put("at an end of its range", reading.isAtEnd(f));
            SearchReading.Span span = reading.alike(f);
            ObjectNode alike = value.putObject("within 1 % of the best");
            JsonNumbers.put(alike, "from", span.low());
            JsonNumbers.put(alike, "to", span.high());
        }
    }

    /** A run: what varies, what is sought, and every answer in every ride test. */
    private ArrayNode step(ObjectNode node, SearchRun.Step step, Question sought) {
        node.put("run", step.trial().run());
        ArrayNode values = node.putArray("values");
        for (int f = 0; f < method.factors().size(); f++) {
            Factor factor = method.factors().get(f);
            JsonNumbers.value(values, factor.name(), factor.shown(factor.at(step.shares()[f])), factor.unit());
        }
        JsonNumbers.put(node, sought.name(), step.worth());
        ArrayNode tests = node.putArray("ride tests");
        for (Outcome.Line line : step.outcome().tests()) {
            ObjectNode test = tests.addObject();
            List<String> labels = line.labels();
            test.put("vehicle", labels.get(0)).put("load case", labels.get(1));
            test.put("road", labels.get(2)).put("speed", labels.get(3));
            ArrayNode answers = test.putArray("values");
            for (int q = 0; q < study.questions().size(); q++) {
                Question question = study.questions().get(q);
                JsonNumbers.value(
                        answers,
                        question.name(),
                        line.answer(q),
                        question.measure().unit());
            }
        }
        return values;
    }
}
