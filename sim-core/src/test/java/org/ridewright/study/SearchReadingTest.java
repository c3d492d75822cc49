package org.ridewright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What the runs of a search say of the best of them. */
class SearchReadingTest {
    private static final Limit LIMIT = new Limit(Asked.everywhere(1), Limit.Side.BELOW, 5);

    private static Method.Search method(Limit... limits) {
        return new Method.Search(
                List.of(new Factor.Range("length", "m", List.of("x"), 0, 10, false, false)),
                new Sought(Asked.everywhere(0), Optional.empty(), true),
                List.of(limits),
                9,
                40,
                1);
    }

    /** Runs at even distances, the best of those that keep the limit being what was found. */
    private static SearchReading reading(DoubleUnaryOperator worth, DoubleUnaryOperator limited, int runs) {
        List<SearchRun.Step> way = new ArrayList<>();
        way.add(step(new double[0], worth.applyAsDouble(0.9), limited.applyAsDouble(0.9)));
        int best = -1;
        for (int i = 0; i < runs; i++) {
            double x = i / (runs - 1.0);
            way.add(step(new double[] {x}, worth.applyAsDouble(x), limited.applyAsDouble(x)));
            SearchRun.Step last = way.get(way.size() - 1);
            if (last.keeps() && (best < 0 || last.worth() < way.get(best).worth())) {
                best = way.size() - 1;
            }
        }
        return new SearchReading(method(LIMIT), new SearchRun.Result(way, best, true));
    }

    private static SearchRun.Step step(double[] shares, double worth, double limited) {
        return new SearchRun.Step(
                new Trial(0, 0, "search", Map.of(), List.of()),
                shares,
                Outcome.failed(""),
                worth,
                List.of(limited),
                limited < 5);
    }

    @Test
    void aLimitBindsWhereJustBeyondItTheAnswerIsBetter() {
        SearchReading reading = reading(x -> 1 + x, x -> x < 0.4 ? 6 : 4, 201);

        assertThat(reading.binding()).containsExactly(0);
        assertThat(reading.bestWithoutLimits().orElseThrow().worth()).isEqualTo(1);
        assertThat(reading.isAtEnd(0)).isFalse();
    }

    @Test
    void aLimitDoesNotBindAtAHollowOfItsOwn() {
        SearchReading reading = reading(x -> 1 + Math.pow(x - 0.6, 2), x -> x < 0.4 ? 6 : 4, 201);

        assertThat(reading.binding()).isEmpty();
        assertThat(reading.bestWithoutLimits()).isEmpty();
    }

    /** 1 + (x − 0.6)² is within 1 % of 1 for |x − 0.6| ≤ 0.1. */
    @Test
    void theBestIsKnownAsFarAsTheAnswerIsWithinAHundredthOfIt() {
        SearchReading.Span span =
                reading(x -> 1 + Math.pow(x - 0.6, 2), x -> 4, 201).alike(0);

        assertThat(span.low()).isCloseTo(5, within(0.01));
        assertThat(span.high()).isCloseTo(7, within(0.01));
    }

    @Test
    void thatStretchEndsWhereTheLimitIsBroken() {
        SearchReading.Span span = reading(x -> 1 + Math.pow(x - 0.6, 2), x -> x < 0.575 ? 6 : 4, 201)
                .alike(0);

        assertThat(span.low()).isCloseTo(5.75, within(0.06));
        assertThat(span.high()).isCloseTo(7, within(0.01));
    }

    @Test
    void hollowsDeeperThanAHundredthAreCountedAndThoseOfARippleAreNot() {
        assertThat(reading(x -> 2 + 0.1 * Math.cos(6 * Math.PI * x), x -> 4, 201)
                        .hollows())
                .isEqualTo(3);
        assertThat(reading(x -> 2 + x + 0.005 * Math.cos(60 * Math.PI * x), x -> 4, 201)
                        .hollows())
                .isEqualTo(1);
        assertThat(reading(x -> 2 - x, x -> 4, 21).hollows()).isEqualTo(1);
    }

    @Test
    void whatLiesAtAnEndOfTheRangeIsSaidTo() {
        assertThat(reading(x -> 2 - x, x -> 4, 21).isAtEnd(0)).isTrue();
    }

    @Test
    void whereNothingKeepsTheLimitNothingBinds() {
        SearchReading reading = reading(x -> 1 + x, x -> 6 + x, 21);

        assertThat(reading.keeps()).isFalse();
        assertThat(reading.binding()).isEmpty();
    }

    @Test
    void anAnswerWithinAHundredthOverTheWholeRangeIsFlat() {
        SearchReading flat = reading(x -> 4.37 + 0.008 * x, x -> 4, 21);
        SearchReading half = reading(x -> 4.37 + 0.08 * x, x -> 4, 21);
        SearchReading steep = reading(x -> 4.37 + 8 * x, x -> 4, 21);

        assertThat(flat.isFlat(0)).isTrue();
        assertThat(half.isFlat(0)).isFalse();
        assertThat(half.isBroad(0)).isTrue();
        assertThat(steep.isBroad(0)).isFalse();
    }
}
