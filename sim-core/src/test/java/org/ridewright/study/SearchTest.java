package org.ridewright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Searches find what is known to be there, and say so when they do not. */
class SearchTest {
    private static Search of(ToDoubleFunction<double[]> f, int most) {
        return new Search(
                points -> points.stream()
                        .map(x -> new Tried(x, f.applyAsDouble(x), new double[0]))
                        .toList(),
                Search.LOOKS,
                most);
    }

    private static double[] at(Search.Found found) {
        return found.best().orElseThrow().at();
    }

    @Test
    void theLeastOfASmoothFunctionOfOneValue() {
        Search.Found found = of(x -> Math.pow(x[0] - 0.3721, 2) + 5, 60).least(1, 1);

        assertThat(found.settled()).isTrue();
        assertThat(at(found)[0]).isCloseTo(0.3721, within(2e-4));
        assertThat(found.best().orElseThrow().worth()).isCloseTo(5, within(1e-7));
    }

    @Test
    void theDeeperOfTwoHollows() {
        // hollows at 0.2 and 0.8, the second deeper
        Search.Found found = of(x -> Math.min(Math.abs(x[0] - 0.2), Math.abs(x[0] - 0.8) - 0.05), 80)
                .least(1, 1);

        assertThat(at(found)[0]).isCloseTo(0.8, within(2e-3));
    }

    @Test
    void theEndOfTheRangeWhereItIsLeastThere() {
        assertThat(of(x -> x[0], 60).least(1, 1).best().orElseThrow().at()[0]).isCloseTo(0, within(1e-3));
        assertThat(of(x -> -x[0], 60).least(1, 1).best().orElseThrow().at()[0]).isCloseTo(1, within(1e-3));
    }

    @Test
    void whereATargetIsMet() {
        Search.Found found = of(x -> Math.exp(3 * x[0]), 60).meeting(7);

        assertThat(found.settled()).isTrue();
        assertThat(at(found)[0]).isCloseTo(Math.log(7) / 3, within(1e-4));
    }

    @Test
    void aTargetThatIsNowhereMetIsSaidSoAndApproached() {
        Search.Found found = of(x -> 2 + Math.pow(x[0] - 0.4, 2), 60).meeting(1);

        assertThat(found.settled()).isFalse();
        assertThat(at(found)[0]).isCloseTo(0.4, within(1e-2));
        assertThat(found.best().orElseThrow().worth()).isCloseTo(2, within(1e-3));
    }

    @Test
    void noMoreRunsThanAllowed() {
        int[] count = {0};
        Search.Found found = of(
                        x -> {
                            count[0]++;
                            return (x[0] - 0.5) * (x[1] - 0.1);
                        },
                        50)
                .least(2, 1);

        assertThat(count[0]).isLessThanOrEqualTo(50);
        assertThat(found.settled()).isFalse();
        assertThat(at(found)).hasSize(2);
    }

    @Test
    void pointsWithoutAValueAreNoObstacle() {
        Search.Found found = of(x -> x[0] < 0.3 ? Double.NaN : x[0], 60).least(1, 1);

        assertThat(at(found)[0]).isBetween(0.3, 0.301);
    }

    @Test
    void nothingIsFoundWhereThereIsNoValue() {
        assertThat(of(x -> Double.NaN, 60).least(1, 1).best()).isEmpty();
        assertThat(of(x -> Double.NaN, 60).least(3, 1).best()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 6})
    void theLeastOfAHollowOfSeveralValues(int n) {
        double[] at = {0.3, 0.62, 0.15, 0.8, 0.5, 0.41};
        Search.Found found = of(
                        x -> {
                            double sum = 0;
                            for (int d = 0; d < n; d++) {
                                sum += Math.pow(10, 2.0 * d / (n - 1)) * Math.pow(x[d] - at[d], 2);
                            }
                            return sum;
                        },
                        3000)
                .least(n, 5);

        assertThat(found.settled()).isTrue();
        for (int d = 0; d < n; d++) {
            assertThat(at(found)[d]).isCloseTo(at[d], within(3e-3));
        }
    }

    /** Rosenbrock's valley, 100 (y − x²)² + (1 − x)², least at (1, 1); x and y from −2 to 2. Rosenbrock (1960). */
    @Test
    void theEndOfRosenbrocksValley() {
        Search.Found found = of(
                        share -> {
                            double x = 4 * share[0] - 2;
                            double y = 4 * share[1] - 2;
                            return 100 * Math.pow(y - x * x, 2) + Math.pow(1 - x, 2);
                        },
                        3000)
                .least(2, 3);

        assertThat(4 * at(found)[0] - 2).isCloseTo(1, within(0.02));
        assertThat(4 * at(found)[1] - 2).isCloseTo(1, within(0.04));
    }

    @Test
    void severalValuesTogetherMeetATarget() {
        Search.Found found = of(x -> x[0] + 2 * x[1], 2000).nearest(2, 1.25, 1);

        assertThat(at(found)[0] + 2 * at(found)[1]).isCloseTo(1.25, within(1e-2));
    }
}
