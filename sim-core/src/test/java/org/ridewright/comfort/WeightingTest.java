package org.ridewright.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.signal.AnalogueFilter;
import org.ridewright.signal.Channel;
import org.ridewright.signal.FilterSection;
import org.ridewright.signal.Sines;

/** Source of all tables: ISO 2631-1:1997 tables 3 and 4 and annex A, as named in the resource files. */
class WeightingTest {
    static Stream<List<String>> factors() {
        return Iso2631Tables.rows("weightings.csv").stream();
    }

    @Test
    void theWholeTableIsRead() {
        assertThat(factors()).hasSizeGreaterThan(200);
        assertThat(factors().filter(Iso2631Tables::isMisprint)).hasSize(2);
    }

    @ParameterizedTest
    @MethodSource("factors")
    void analogueFactorIsThatOfAnnexAToOneThousandth(List<String> row) {
        double expected = Double.parseDouble(row.get(4)) / 1000;
        double actual = Iso2631Tables.weighting(row.get(0)).factor(Double.parseDouble(row.get(2)));
        assertThat(actual / expected).isEqualTo(1, within(1e-3));
    }

    @ParameterizedTest
    @MethodSource("factors")
    void analogueFactorRoundsToThePrintedOne(List<String> row) {
        if (row.get(3).isEmpty() || Iso2631Tables.isMisprint(row)) {
            return;
        }
        double printed = Double.parseDouble(row.get(3));
        int point = row.get(3).indexOf('.');
        double halfLastDigit =
                0.5 * Math.pow(10, point < 0 ? 0 : point + 1 - row.get(3).length());
        double actual = 1000 * Iso2631Tables.weighting(row.get(0)).factor(Double.parseDouble(row.get(2)));
        assertThat(actual).isEqualTo(printed, within(halfLastDigit + 1e-3 * printed));
    }

    @Test
    void parametersAreThoseOfAnnexA() {
        List<List<String>> rows = Iso2631Tables.rows("filters.csv").stream()
                .filter(row -> row.get(1).startsWith("ISO"))
                .toList();
        assertThat(rows).hasSize(Weighting.values().length);
        for (List<String> row : rows) {
            AnalogueFilter expected = fromRow(row, Double.parseDouble(row.get(11)));
            AnalogueFilter actual = Iso2631Tables.weighting(row.get(0)).filter();
            assertThat(actual).as(row.get(0)).isEqualTo(expected);
        }
    }

    @Test
    void wbIsTheSameCurveInBothStandards() {
        // BS 6841:1987 writes one gain of 0.4 where ISO 8041 has K = 1.024 and a step (f5/f6)²
        List<String> row = Iso2631Tables.rows("filters.csv").stream()
                .filter(r -> r.get(1).startsWith("BS 6841"))
                .findFirst()
                .orElseThrow();
        double ratio = Double.parseDouble(row.get(9)) / Double.parseDouble(row.get(7));
        AnalogueFilter british = fromRow(row, 0.4 * ratio * ratio);
        for (double f = 0.1; f < 500; f *= 1.3) {
            assertThat(Weighting.WB.factor(f) / british.magnitude(f)).isEqualTo(1, within(1e-12));
        }
    }

    private static AnalogueFilter fromRow(List<String> row, double gain) {
        double butterworth = Math.sqrt(0.5);
        double[] f = row.subList(2, 11).stream()
                .mapToDouble(cell -> switch (cell) {
                    case "" -> Double.NaN;
                    case "inf" -> Double.POSITIVE_INFINITY;
                    default -> Double.parseDouble(cell);
                })
                .toArray();
        Stream.Builder<FilterSection> sections = Stream.builder();
        sections.add(FilterSection.highPass(f[0], butterworth)).add(FilterSection.lowPass(f[1], butterworth));
        if (Double.isFinite(f[3])) {
            sections.add(
                    Double.isFinite(f[2])
                            ? FilterSection.transition(f[2], f[3], f[4])
                            : FilterSection.lowPass(f[3], f[4]));
        }
        if (Double.isFinite(f[5])) {
            sections.add(FilterSection.step(f[5], f[6], f[7], f[8]));
        }
        return new AnalogueFilter(gain, sections.build().toList());
    }

    /** The stated accuracy, 0.02 % in gain and phase to 0.42 fs; 1 % to fs/12 would satisfy the usual requirement. */
    @ParameterizedTest
    @ValueSource(doubles = {50, 100, 200, 1000, 4000, 20_000})
    void digitalGainAndPhaseAreTheAnalogueOnesUpTo042OfTheSamplingRate(double fs) {
        for (Weighting weighting : new Weighting[] {Weighting.WK, Weighting.WD, Weighting.WB, Weighting.WJ}) {
            for (double ratio : new double[] {0.001, 0.01, 1 / 12.0, 0.21, 0.33, 0.42}) {
                assertThat(relativeError(weighting, fs, ratio * fs, 9))
                        .as("%s at %s Hz sampled at %s Hz", weighting, ratio * fs, fs)
                        .isLessThan(2e-4);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.1, 0.25, 1, 4})
    void motionSicknessWeightingIsAsExactFarBelowTheSamplingRate(double frequency) {
        assertThat(relativeError(Weighting.WF, 1000, frequency, 60)).isLessThan(2e-4);
    }

    /** |G − H|/|H| of the digital gain G, read from a sine after {@code settling} seconds. */
    private static double relativeError(Weighting weighting, double fs, double frequency, double settling) {
        double span = Math.max(1 / frequency, 200 / fs);
        Channel y = weighting.apply(Sines.sine(fs, settling + span + 20 / fs, 1, frequency));
        int from = (int) (settling * fs);
        Complex exact = weighting.filter().response(frequency);
        return Sines.gain(y, frequency, from, y.size() - 20).subtract(exact).norm() / exact.norm();
    }

    @ParameterizedTest
    @EnumSource(Weighting.class)
    void anOffsetFadesInTheSettlingTime(Weighting weighting) {
        double settling = weighting.filter().settlingTime(1e-3);
        Channel y = weighting.apply(Sines.sampled(100, 2 * settling, t -> 9.81));
        double late = 0;
        for (int i = (int) (settling * 100); i < y.size(); i++) {
            late = Math.max(late, Math.abs(y.sample(i)));
        }
        assertThat(late).isLessThan(5e-3 * 9.81);
        assertThat(y.sample(0)).isZero();
    }
}
