package org.ridewright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What could be taken in two ways, or in none, is refused with a way out. */
class MeasuresRefusalTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            RATE      | 21                      | 21         | 21 N/mm, 21 kN/m, 21 lbf/in
            LENGTH    | 0 ± 5                   | 5          | 5 mm, 5 m, 5 in
            LENGTH    | 410 kg                  | kg         | length expected, got a mass (kg)
            LENGTH    | 1.12 m ± 5 kg           | kg         | length expected, got a mass (kg)
            MASS      | 1200 lbf                | lbf        | mass expected, got a force (lbf)
            LENGTH    | 5 m m                   | m m        | got an area (m m)
            ROLL_RATE | 200 N m                 | N m        | add /rad or /deg
            FREQUENCY | 6 rad/s                 | rad/s      | divide rad/s by 2π
            RATIO     | 3 cycles                | cycles     | got the unit cycles
            LENGTH    | 1,12 m                  | 1,12       | write the decimals after a point: 1.12
            PRESSURE  | 1.000,5 bar             | 1.000,5    | 1000.5
            LENGTH    | 1,000 mm                | 1,000      | 1000 if the comma marks thousands, 1.000 if
            LENGTH    | 1,234.5 mm              | 1,234.5    | write 1234.5
            LENGTH    | 1_000 mm                | 1_000      | write 1000
            LENGTH    | 1 000 mm                | 000 mm     | write thousands without a gap: 1000 mm
            LENGTH    | 1'000 mm                | 000 mm     | thousands without a mark
            LENGTH    | 1'250 mm                | 250 mm     | each unit is a whole number of the next
            LENGTH    | 8 in 3 ft               | 3 ft       | each unit is a whole number of the next
            LENGTH    | 3 ft 14 in              | 14 in      | less than 12 in
            LENGTH    | 3.5 ft 2 in             | 3.5 ft     | a fraction may stand in the last unit alone
            LENGTH    | 44-46 in                | -46 in     | 45 in ± 1 in
            LENGTH    | 1.12 mn                 | mn         | did you mean mm?
            LENGTH    | 1.12 metrs              | metrs      | did you mean metre
            MASS      | 80 KG                   | KG         | did you mean kg?
            FORCE     | 12 kn                   | kn         | did you mean kN?
            RATE      | 21 N/mn                 | mn         | did you mean N/mm?
            PRESSURE  | 32 PSI                  | PSI        | did you mean psi?
            LENGTH    | 1.12 m ± -5 mm          | -5 mm      | negative tolerance
            LENGTH    | 1.12 m ± 120 %          | 120 %      | wider than 100 %
            LENGTH    | 3 ft 8 in ± 1/2         | 1/2        | 1/2 in
            RATE      | 21 ± 10 % N/mm          | % N/mm     | 21 N/mm ± 10 %
            RATE      | 21 +2 -1 N/mm           | +2 -1 N/mm | one tolerance for both sides
            LENGTH    | 1 m ± 2 mm ± 3 mm       | 1 m ± 2 mm ± 3 mm | one tolerance
            RATIO     | 6 % ± 1 %               | 1 %        | two ways
            LENGTH    | 1.12 m (mesured)        | mesured    | did you mean measured?
            LENGTH    | 1.12 m (computed)       | computed   | the program alone sets
            LENGTH    | 1.12 m (by eye)         | by eye     | measured, weighed, counted
            LENGTH    | 1.12 m (measured) ± 5 mm | (measured) | at the end
            RATE      | 1.2×10^5 N/m            | ×10^5      | 1.2e5
            LENGTH    | 1/0 in                  | 1/0 in     | divides by zero
            LENGTH    | 1e400 m                 | 1e400 m    | beyond what can be held
            LENGTH    | abc                     | abc        | where a number should stand
            DAMPING   | 5 N/(m/s                | N/(m/s     | not closed
            """)
    void theRefusalNamesThePartAndARemedy(QuantityKind kind, String text, String part, String words) {
        assertThatExceptionOfType(QuantityFormatException.class)
                .isThrownBy(() -> Measures.parse(text, kind))
                .satisfies(refusal -> {
                    assertThat(refusal.offendingPart()).isEqualTo(part);
                    assertThat(refusal).hasMessageContaining(words);
                    assertThat(refusal).hasMessageStartingWith(kind.label() + " '" + text + "' ");
                    assertThat(refusal.getMessage())
                            .endsWith(refusal.hint().isEmpty() ? refusal.expected() : refusal.hint());
                });
    }

    @Test
    void theMessageReadsByItself() {
        assertThatExceptionOfType(QuantityFormatException.class)
                .isThrownBy(() -> Measures.parse("21", QuantityKind.RATE))
                .withMessage("rate '21' has no unit; write it as 21 N/mm, 21 kN/m, 21 lbf/in, whichever is meant")
                .satisfies(refusal ->
                        assertThat(refusal.expected()).isEqualTo("21 N/mm, 21 kN/m, 120 lbf/in, 2.1 kgf/mm"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "±",
                "± 5 mm",
                "1.12 m ±",
                "m",
                "1.12.3 m",
                "1. m",
                "--1 m",
                "1.12 m ()",
                "1.12 m,",
                "1e99999 m",
                "5 °C",
                "m 5",
                "1.12 m)",
                "1/2/3 in",
                "1.12 m/",
                "1 m^9",
                "NaN m",
                "Infinity m",
                "0x10 m",
                "٣ m"
            })
    void nonsenseIsRefusedWithoutFurtherHarm(String text) {
        Assertions.assertThatThrownBy(() -> Measures.parse(text, QuantityKind.LENGTH))
                .isInstanceOf(QuantityFormatException.class);
    }

    @Test
    void aTextBeyondTwoHundredCharactersIsRefused() {
        assertThatExceptionOfType(QuantityFormatException.class)
                .isThrownBy(() -> Measures.parse("1".repeat(300) + " m", QuantityKind.LENGTH))
                .withMessageContaining("longer than 200 characters");
    }
}
