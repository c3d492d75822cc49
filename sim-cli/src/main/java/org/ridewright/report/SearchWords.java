package org.ridewright.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.stream.IntStream;
import org.ridewright.study.Asked;
import org.ridewright.study.Factor;
import org.ridewright.study.Limit;
import org.ridewright.study.Method;
import org.ridewright.study.Question;
import org.ridewright.study.SearchReading;
import org.ridewright.study.SearchRun;
import org.ridewright.study.Study;

/** Words for what a search is after, must keep, and has tried. */
final class SearchWords {
    private final Study study;
    private final Method.Search method;

    SearchWords(Study study) {
        this.study = study;
        method = (Method.Search) study.method();
    }

    Question question(Asked asked) {
        return study.questions().get(asked.question());
    }

    /** The answer in short, and the ride tests if they were named. */
    String called(Asked asked) {
        return question(asked).name() + on(asked);
    }

    /** What is sought, above a panel: {@code Sought: a_w (gravel lane)}. */
    String sought() {
        Asked asked = method.sought().asked();
        return "Sought: " + StudyFigures.name(question(asked)) + on(asked)
                + method.sought().target().map(t -> "").orElse(method.sought().least() ? ", least" : ", greatest");
    }

    /** The answer in full. */
    String titled(Asked asked, int tests) {
        return question(asked).title() + on(asked) + (asked.isOfSeveral(tests) ? ", the worst of the ride tests," : "");
    }

    private static String on(Asked asked) {
        return asked.on().isEmpty() ? "" : " (" + String.join(", ", asked.on()) + ")";
    }

    /** {@code below 0.06 m}. */
    String bound(Limit limit) {
        String unit = question(limit.asked()).measure().unit();
        String number = new BigDecimal(limit.bound())
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
        return limit.side().word() + " " + number.replace('-', '−') + (unit.equals("1") ? "" : " " + unit);
    }

    /** {@code cycles to rest (kerb stone) below 5}. */
    String limit(Limit limit) {
        return called(limit.asked()) + " " + bound(limit);
    }

    /** That nothing can be said of a limit; a sentence. */
    String unanswered(Limit limit) {
        return RideFigures.upperFirst(called(limit.asked())) + " has no value in any run; the limit, " + bound(limit)
                + ", cannot be kept or broken, and nothing is found. Leave the limit out, or set it where the ride has such a number.";
    }

    String limits() {
        return Listed.of(method.limits().stream().map(this::limit).toList());
    }

    /** {@code friction × 0.54}, all values that vary. */
    String place(SearchRun.Step step) {
        return Listed.of(IntStream.range(0, method.factors().size())
                .mapToObj(f -> method.factors().get(f).name() + " " + spoken(step, f))
                .toList());
    }

    /** {@code × 0.54}. */
    String spoken(SearchRun.Step step, int factor) {
        Factor of = method.factors().get(factor);
        return of.spoken(of.shown(of.at(step.shares()[factor])));
    }

    /** {@code 5 mm to 48 mm}. */
    static String span(Factor factor, SearchReading.Span span) {
        String high = factor.spoken(span.high());
        String low = factor.spoken(span.low());
        int unit = high.lastIndexOf(' ');
        boolean shared = !factor.isMultiple() && unit > 0 && low.endsWith(high.substring(unit));
        return (shared ? low.substring(0, low.lastIndexOf(' ')) : low) + " to " + high;
    }
}
