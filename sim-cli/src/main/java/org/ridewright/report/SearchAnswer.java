package org.ridewright.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.study.Answer;
import org.ridewright.study.Factor;
import org.ridewright.study.Method;
import org.ridewright.study.Outcome;
import org.ridewright.study.SearchReading;
import org.ridewright.study.SearchRun;
import org.ridewright.study.Study;
import org.ridewright.study.Telling;
import org.ridewright.study.Tries;

/**
 * The sentences of a search with their blanks filled. A best at an end of the range is not called one, nor is what breaks a limit.
 */
final class SearchAnswer {
    private final Method.Search method;
    private final SearchReading reading;
    private final SearchWords words;
    private final StudyAnswer numbers;

    private SearchAnswer(Study study, SearchRun.Result result) {
        method = (Method.Search) study.method();
        reading = new SearchReading(method, result);
        words = new SearchWords(study);
        Outcome found = reading.best().map(SearchRun.Step::outcome).orElse(Outcome.failed("nothing found"));
        Tries tries = Tries.of(
                study,
                List.of("as written", "found"),
                List.of(result.way().get(0).outcome(), found));
        numbers = new StudyAnswer(study.questions(), tries, Optional.empty());
    }

    /** None if the study's author wrote none. */
    static List<String> of(Study study, SearchRun.Result result) {
        Optional<Answer> answer = study.answer();
        if (answer.isEmpty()) {
            return List.of();
        }
        SearchAnswer search = new SearchAnswer(study, result);
        Map<String, String> filled = new LinkedHashMap<>();
        answer.get().blanks().forEach((name, telling) -> filled.put(name, search.of(telling)));
        return answer.get().with(filled);
    }

    private String of(Telling telling) {
        if (telling instanceof Telling.Found found) {
            return found(found.factor());
        }
        return telling instanceof Telling.Binding ? binding() : numbers.of(telling);
    }

    private String found(int f) {
        if (reading.best().isEmpty()) {
            return StudyAnswer.NOTHING;
        }
        SearchRun.Step best = reading.best().get();
        String at = words.spoken(best, f);
        if (!reading.unanswered().isEmpty()) {
            return "none: "
                    + words.called(
                            method.limits().get(reading.unanswered().get(0)).asked())
                    + " has no value in any run, so that its limit cannot be kept or broken";
        } else if (!reading.keeps()) {
            return "none: nothing that was tried keeps the limits, and " + at + " comes nearest";
        } else if (method.sought().target().isPresent()) {
            double target = method.sought().target().get();
            boolean meets = Math.abs(best.worth() - target) <= SearchReading.ALIKE * Math.abs(target);
            return meets ? at : "none: what was tried does not meet the target, and " + at + " comes nearest";
        }
        boolean alone = method.factors().size() == 1;
        if (alone && reading.isFlat(f)) {
            return "none: the answer is flat, and any from "
                    + SearchWords.span(method.factors().get(f), reading.alike(f)) + " is as good within 1 %";
        } else if (reading.isAtEnd(f) && !(alone && reading.isBroad(f))) {
            return "none within what was tried: it is best at the end, " + at;
        }
        Factor factor = method.factors().get(f);
        SearchReading.Span span = reading.alike(f);
        String low = factor.spoken(span.low());
        String high = factor.spoken(span.high());
        return low.equals(high) ? at : at + " (within 1 % of the best from " + low + " to " + high + ")";
    }

    private String binding() {
        if (!reading.keeps()) {
            return "none, since nothing keeps them";
        }
        List<String> binding = reading.binding().stream()
                .map(l -> words.called(method.limits().get(l).asked()))
                .toList();
        return binding.isEmpty()
                ? "no limit"
                : (binding.size() == 1 ? "the limit on " : "the limits on ") + Listed.of(binding);
    }
}
