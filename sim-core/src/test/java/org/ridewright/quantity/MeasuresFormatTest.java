package org.ridewright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What reports say is short, in the trade's units, and can be read again. */
class MeasuresFormatTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            LENGTH    | 0.52         | 0       | 520 mm
            LENGTH    | 1.1176       | 0       | 1.118 m
            LENGTH    | 0.99999      | 0       | 1 m
            LENGTH    | 1.12         | 0.005   | 1.120 ± 0.005 m
            LENGTH    | 0            | 0.005   | 0 ± 5 mm
            LENGTH    | 0            | 0       | 0 mm
            MASS      | 410          | 5       | 410 ± 5 kg
            MASS      | 1234         | 100     | 1230 ± 100 kg
            RATE      | 21000        | 2000    | 21 ± 2 N/mm
            RATE      | 20500        | 1000    | 20.5 ± 1.0 N/mm
            RATE      | 21015.22     | 0       | 21.02 N/mm
            ROLL_RATE | 20000        | 0       | 349.1 N·m/deg
            PRESSURE  | 2.2e5        | 0       | 220 kPa
            PRESSURE  | 2.06e11      | 0       | 206 GPa
            ANGLE     | -0.0436332313| 0       | -2.5 deg
            RATIO     | 0.06         | 0.006   | 0.060 ± 0.006
            FORCE     | 1e-12        | 0       | 1e-12 N
            """)
    void figuresFollowTheTolerance(QuantityKind kind, double value, double tolerance, String expected) {
        assertThat(Measures.format(new Measure(kind, value, tolerance, Provenance.MEASURED, "")))
                .isEqualTo(expected);
    }

    @Property(tries = 300)
    void aValueIsReadBackWithinHalfItsLastFigure(
            @ForAll QuantityKind kind,
            @ForAll @Scale(6) @DoubleRange(min = -9.999, max = 9.999) double mantissa,
            @ForAll @Scale(6) @DoubleRange(min = -12, max = 12) double exponent) {
        double value = mantissa * Math.pow(10, exponent);
        String text = Measures.format(Measure.of(value, kind));
        Measure back = Measures.parse(text, kind);
        assertThat(back.value()).as(text).isCloseTo(value, within(5.001e-4 * Math.abs(value)));
        assertThat(Measures.format(back)).isEqualTo(text);
    }

    @Property(tries = 300)
    void aToleranceIsReadBackWithinHalfItsSecondFigure(
            @ForAll QuantityKind kind,
            @ForAll @Scale(6) @DoubleRange(min = -1e6, max = 1e6) double value,
            @ForAll @Scale(6) @DoubleRange(min = 1e-6, max = 2) double share) {
        double tolerance = share * Math.abs(value);
        Assume.that(tolerance > 1e-9);
        String text = Measures.format(new Measure(kind, value, tolerance, Provenance.NOT_STATED, ""));
        Measure back = Measures.parse(text, kind);
        assertThat(back.value()).as(text).isCloseTo(value, within(0.0501 * tolerance));
        assertThat(back.tolerance()).as(text).isCloseTo(tolerance, within(0.0501 * tolerance));
    }

    @Property(tries = 500)
    void anyTextIsEitherReadOrRefused(@ForAll QuantityKind kind, @ForAll @StringLength(max = 20) String text) {
        readOrRefuse(text, kind);
    }

    @Property(tries = 1000)
    void anyTextOfItsOwnCharactersIsEitherReadOrRefused(@ForAll QuantityKind kind, @ForAll("likely") String text) {
        readOrRefuse(text, kind);
    }

    @Provide
    Arbitrary<String> likely() {
        return Arbitraries.strings()
                .withChars("0123456789 ./-+±%()'\"½²·^,_eNmkgfinlbstd°*")
                .ofMaxLength(14);
    }

    private static void readOrRefuse(String text, QuantityKind kind) {
        try {
            assertThat(Measures.parse(text, kind).value()).isFinite();
        } catch (QuantityFormatException refusal) {
            assertThat(refusal.getMessage()).startsWith(kind.label());
        }
    }
}
