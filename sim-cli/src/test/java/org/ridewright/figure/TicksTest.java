package org.ridewright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TicksTest {

    @Property(tries = 200)
    void everyNumberSaysItsValueAndStandsOnTheAxis(
            @ForAll @DoubleRange(min = -1000, max = 1000) double low,
            @ForAll @DoubleRange(min = -7, max = 8) double magnitude,
            @ForAll @DoubleRange(min = 60, max = 450) double length) {
        Scale scale = new Scale(low, low + Math.pow(10, magnitude) * 1.7 + 1e-6, false);
        for (Ticks ticks : List.of(Ticks.level(scale, length), Ticks.upright(scale, length))) {
            assertThat(ticks.marks()).extracting(Ticks.Mark::label).doesNotHaveDuplicates();
            for (Ticks.Mark mark : ticks.marks()) {
                assertThat(scale.share(mark.value())).isBetween(-1e-6, 1 + 1e-6);
                double said = Double.parseDouble(mark.label().replace('−', '-').replace("\u2009", ""))
                        * Math.pow(10, ticks.exponent());
                assertThat(said).isCloseTo(mark.value(), within(1e-9 * Math.max(1, Math.abs(mark.value()))));
            }
        }
    }

    @Property(tries = 100)
    void numbersSideBySideDoNotTouch(
            @ForAll @DoubleRange(min = -1e5, max = 1e5) double low,
            @ForAll @DoubleRange(min = -3, max = 6) double magnitude,
            @ForAll @DoubleRange(min = 60, max = 450) double length) {
        Scale scale = new Scale(low, low + Math.pow(10, magnitude), false);
        double end = Double.NEGATIVE_INFINITY;
        for (Ticks.Mark mark : Ticks.level(scale, length).marks()) {
            double half = 0.5 * Face.REGULAR.width(mark.label(), PrintStyle.TICK_LABEL);
            double centre = scale.share(mark.value()) * length;
            assertThat(centre - half).isGreaterThan(end);
            end = centre + half + 3;
        }
    }

    @Test
    void aHandsomeAxisHasRoundNumbersOfOneLength() {
        Ticks ticks = Ticks.level(new Scale(-0.6, 0.6, false), 200);
        assertThat(ticks.marks())
                .extracting(Ticks.Mark::label)
                .containsExactly("−0.6", "−0.4", "−0.2", "0.0", "0.2", "0.4", "0.6");
    }

    @Test
    void largeAndTinyValuesGiveTheirPowerOfTenToTheUnit() {
        Ticks stiff = Ticks.upright(new Scale(0, 2.4e6, false), 120);
        assertThat(stiff.exponent()).isEqualTo(6);
        assertThat(PlacedPanel.axisTitle(AxisSpec.of("Stiffness", "N/m"), stiff))
                .isEqualTo("Stiffness, 10^{6} N/m");
        Ticks rough = Ticks.upright(new Scale(0, 3e-6, false), 120);
        assertThat(PlacedPanel.axisTitle(AxisSpec.of("Roughness", "m³"), rough)).isEqualTo("Roughness, 10^{−6} m³");
        assertThat(PlacedPanel.axisTitle(AxisSpec.of("Number of wheels", ""), Ticks.level(new Scale(0, 4, false), 99)))
                .isEqualTo("Number of wheels");
    }

    @Test
    void aFrequencyAxisIsNumberedByDecades() {
        Ticks ticks = Ticks.level(new Scale(0.1, 100, true), 120);
        assertThat(ticks.marks()).extracting(Ticks.Mark::label).containsExactly("0.1", "1", "10", "100");
        Ticks wide = Ticks.level(new Scale(0.5, 80, true), 400);
        assertThat(wide.marks()).extracting(Ticks.Mark::label).containsExactly("0.5", "1", "2", "5", "10", "20", "50");
        assertThat(wide.fine()).contains(0.6, 3.0, 70.0).doesNotContain(2.0);
    }

    @Test
    void thousandsAreGroupedFromFiveDigitsOn() {
        assertThat(Ticks.number(new BigDecimal("-12500"), 0)).isEqualTo("−12\u2009500");
        assertThat(Ticks.number(new BigDecimal("4500"), 0)).isEqualTo("4500");
        assertThat(Ticks.number(new BigDecimal("-1234567.5"), 1)).isEqualTo("−1\u2009234\u2009567.5");
    }
}
