package org.ridewright.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.signal.Channel;
import org.ridewright.signal.SampledFilter;
import org.ridewright.signal.Sines;
import org.ridewright.signal.ThirdOctave;

/**
 * The filters that records really pass, at sampling rates from a phone's to a laboratory's, beside the printed factors of ISO 2631-1:1997
 * tables 3 and 4 and the analogue filters of its annex A.
 *
 * <p>Tolerance of an instrument after ISO 8041-1 (from memory): +12 % and −11 % within the nominal range, +26 % and −21 % at its
 * ends, +26 % and −100 % beyond; phase 6°. What is asked here is a hundred times closer.
 */
class FilterToleranceTest {
    private static final double INSTRUMENT = 0.11;
    private static final double OURS = 2e-4;

    @ParameterizedTest
    @ValueSource(doubles = {50, 64, 100, 128, 200, 256, 400, 500, 1000, 2000, 4000, 10_000, 20_000})
    void everyPrintedFactorUpTo04OfTheSamplingRateIsMet(double fs) {
        int checked = 0;
        for (Weighting weighting : Weighting.values()) {
            SampledFilter filter = weighting.filter().at(fs);
            for (List<String> row : Iso2631Tables.rows("weightings.csv")) {
                double f = Double.parseDouble(row.get(2));
                if (!row.get(0).equals(weighting.symbol())
                        || row.get(3).isEmpty()
                        || Iso2631Tables.isMisprint(row)
                        || f > 0.4 * fs) {
                    continue;
                }
                double printed = Double.parseDouble(row.get(3));
                int point = row.get(3).indexOf('.');
                double halfDigit = 0.5
                        * Math.pow(10, point < 0 ? 0 : point + 1 - row.get(3).length());
                double gain = 1000 * filter.response(f).norm();
                assertThat(gain)
                        .as("%s at %s Hz sampled at %s Hz", row.get(0), f, fs)
                        .isEqualTo(printed, within(halfDigit + (1e-3 + OURS) * printed));
                assertThat(Math.abs(gain / printed - 1)).isLessThan(INSTRUMENT);
                checked++;
            }
        }
        // at 50 Hz: 24 rows of Wk, We, Wj and Wc, one less of Wd, 24 of Wf
        assertThat(checked).isGreaterThan(135);
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 64, 100, 128, 200, 256, 400, 500, 1000, 2000, 4000, 10_000, 20_000})
    void gainAndPhaseAreTheAnalogueOnesAtEveryCentreWbIncluded(double fs) {
        for (Weighting weighting : Weighting.values()) {
            SampledFilter filter = weighting.filter().at(fs);
            double lowest = weighting == Weighting.WF ? 0.02 : 0.1;
            double highest = weighting == Weighting.WF ? 4 : Math.min(400, 0.4 * fs);
            for (ThirdOctave band : ThirdOctave.between(lowest, highest)) {
                double f = Math.min(band.nominal(), 0.4 * fs);
                Complex exact = weighting.filter().response(f);
                assertThat(filter.response(f).subtract(exact).norm() / exact.norm())
                        .as("%s at %s Hz sampled at %s Hz", weighting, f, fs)
                        .isLessThan(OURS);
            }
        }
    }

    /** The slowest filter at the highest rate, run through 1.6 million samples: rounding has not crept in. */
    @Test
    void motionSicknessWeightingHoldsAtALaboratorysRate() {
        double fs = 20_000;
        double f = 0.125;
        Channel y = Weighting.WF.apply(Sines.sine(fs, 80, 1, f));
        Complex gain = Sines.gain(y, f, (int) (72 * fs), y.size() - 20);
        Complex exact = Weighting.WF.filter().response(f);
        assertThat(gain.subtract(exact).norm() / exact.norm()).isLessThan(OURS);
        // ISO 2631-1:1997 table 3: 895
        assertThat(gain.norm()).isEqualTo(0.895, within(5e-4 + 9e-4));
    }

    @ParameterizedTest
    @EnumSource(Weighting.class)
    void whatALowRateMissesIsWhatTheWeightingWouldHaveLetThrough(Weighting weighting) {
        double before = 1;
        for (double fs : new double[] {20, 50, 100, 200, 500, 2000}) {
            double missed = new TrustedBand(fs).missedShare(weighting);
            assertThat(missed).isBetween(0.0, before);
            before = missed;
        }
        assertThat(before).isLessThan(1e-3);
    }

    /** Wd beyond 2 Hz falls like 2/f: at 20 Hz a sum over thousands of narrow strips says how much of it lies above. */
    @Test
    void missedShareIsTheShareOfTheSquare() {
        double above = 0;
        double whole = 0;
        double step = 0.01;
        for (double f = step / 2; f < 1000; f += step) {
            double h = Weighting.WD.factor(f);
            whole += h * h;
            above += f > 20 ? h * h : 0;
        }
        TrustedBand phone = new TrustedBand(50);
        assertThat(phone.upper()).isEqualTo(20);
        assertThat(phone.missedShare(Weighting.WD)).isEqualTo(above / whole, within(1e-4));
        assertThat(phone.statement(Weighting.WK))
                .startsWith("sampled at 50.00 Hz: trusted up to 20.0 Hz; above it Wk still counts motion at 0.64")
                .contains("false frequency");
        assertThat(new TrustedBand(2000).statement(Weighting.WK)).endsWith("nothing through that counts");
    }
}
