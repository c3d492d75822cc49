package org.ridewright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MultipleTest {
    @ParameterizedTest
    @CsvSource({"× 1.2, 1.2", "×0.5, 0.5", "x 3, 3", "x2, 2", "× 1e-2, 0.01", "× .5, 0.5", "× 0, 0"})
    void aMultipleIsASignAndANumber(String text, double factor) {
        assertThat(Multiple.parse(text)).contains(new Multiple(factor));
    }

    @ParameterizedTest
    @ValueSource(strings = {"14 kN/m", "iron", "xylem", "x-ply", "", "2 times", "1.2 ×"})
    void otherWordsAreNone(String text) {
        assertThat(Multiple.parse(text)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"× 1.2.3", "x 1.2.3", "×", "× two", "× -1", "× 1 kN/m", "× 1e999", "× ."})
    void aSignWithoutANumberIsRefusedInPlainWords(String text) {
        assertThatThrownBy(() -> Multiple.parse(text))
                .isInstanceOf(UnfitValueException.class)
                .hasMessageContaining(text)
                .hasMessageContaining("× 1.2");
    }

    @Test
    void aMultipleOfAValueIsWrittenInItsUnit() {
        assertThat(new Multiple(1.5).of(QuantityKind.RATE, 20_000)).isEqualTo("30000.0 N/m");
    }
}
