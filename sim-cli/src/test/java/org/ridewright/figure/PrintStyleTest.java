package org.ridewright.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import org.junit.jupiter.api.Test;

class PrintStyleTest {

    @Test
    void tonesRunFromDarkToLightInStepsThatGreyKeepsApart() {
        Tone[] tones = Tone.values();
        for (int i = 1; i < tones.length; i++) {
            assertThat(lightness(tones[i].colour()) - lightness(tones[i - 1].colour()))
                    .as("%s to %s", tones[i - 1], tones[i])
                    .isGreaterThan(10);
        }
        assertThat(100 - lightness(tones[tones.length - 1].colour()))
                .as("lightest on white")
                .isGreaterThan(20);
    }

    @Test
    void anyTwoOfTheFirstFiveLinesDifferInToneAndInDashes() {
        double[] one = {1};
        for (int i = 0; i < 5; i++) {
            for (int k = 0; k < i; k++) {
                Series a = Series.line(i, "a", one, one);
                Series b = Series.line(k, "b", one, one);
                assertThat(a.tone()).isNotEqualTo(b.tone());
                assertThat(a.style().dashes()).isNotEqualTo(b.style().dashes());
            }
        }
    }

    @Test
    void everyCutHasTheLettersAndSignsOfTheTrade() {
        String needed = "ABCXYZabcxyzÄÖÜäöüßéèç0123456789−+±·×/²³°√φθµμψζωΔδσπΩ≤≥–—“”‘’→½ \u2009";
        for (Face face : new Face[] {Face.REGULAR, Face.BOLD, Face.ITALIC}) {
            assertThat(face.covers(needed)).isTrue();
        }
        assertThat(Face.REGULAR.covers("\uE000")).isFalse();
    }

    @Test
    void raisedAndLoweredPiecesAreSmallerAndShifted() {
        RichText unit = RichText.of("a_{w}, m/s^{1.75}");
        assertThat(unit.pieces()).extracting(RichText.Piece::text).containsExactly("a", "w", ", m/s", "1.75");
        assertThat(unit.pieces().get(1).drop()).isPositive();
        assertThat(unit.pieces().get(3).drop()).isNegative();
        assertThat(unit.pieces().get(3).scale()).isLessThan(1);
    }

    @Test
    void aRaisedMinusTheTypefaceLacksIsSetFromAPlainOne() {
        assertThat(RichText.of("N·s·m⁻¹").pieces())
                .extracting(RichText.Piece::text)
                .containsExactly("N·s·m", "−1");
    }

    /** CIE L* of an sRGB colour. Source: IEC 61966-2-1:1999 (transfer curve and luminance), CIE 15:2004 (L*). */
    private static double lightness(Color colour) {
        double luminance = 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
        return luminance > 216.0 / 24389 ? 116 * Math.cbrt(luminance) - 16 : luminance * 24389 / 27;
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
