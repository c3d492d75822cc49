package org.ridewright.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MotionSicknessTest {
    private static MotionSicknessMeter swell(double amplitude, double frequency) {
        double fs = 20;
        // whole periods of 0.16 Hz: 6.25 s each
        MotionSicknessMeter meter = new MotionSicknessMeter(new Window(100, 725), fs, 0, StartUp.AT_REST);
        for (int i = 0; i <= 730 * fs; i++) {
            meter.accept(amplitude * Math.sin(2 * Math.PI * frequency * i / fs));
        }
        return meter;
    }

    /** Wf at 0.16 Hz: 1.006, ISO 2631-1:1997 table 3. */
    @Test
    void aSwellHasTheDoseOfItsWeightedAcceleration() {
        MotionSickness twoHours = swell(0.5, 0.16).result(7200);
        double rms = 1.006 * 0.5 * Math.sqrt(0.5);
        assertThat(twoHours.rms()).isEqualTo(rms, within(5e-4));
        assertThat(twoHours.dose()).isEqualTo(rms * Math.sqrt(7200), within(0.05));
        // a third of 30.2
        assertThat(twoHours.percentage()).isEqualTo(10.06, within(0.02));
        assertThat(twoHours.reservations()).isEmpty();
    }

    @Test
    void aSpringyRideSickensHardlyAnyone() {
        // 1.6 Hz passes Wf at 0.00377
        assertThat(swell(1, 1.6).result(3600).percentage()).isLessThan(0.06);
    }

    @Test
    void fourTimesTheExposureIsTwiceTheDose() {
        MotionSicknessMeter meter = swell(0.5, 0.2);
        assertThat(meter.result(8000).dose() / meter.result(2000).dose()).isEqualTo(2, within(1e-12));
    }

    @Test
    void outsideItsEvidenceThePercentageCarriesReservations() {
        assertThat(new MotionSickness(0.3, 600, 60).reservations())
                .singleElement()
                .asString()
                .contains("20 min to 6 h");
        assertThat(new MotionSickness(5, 600, 7200).reservations())
                .singleElement()
                .asString()
                .contains("70 %");
        assertThat(new MotionSickness(0.3, 30, 7200).reservations())
                .singleElement()
                .asString()
                .contains("30.0 s were measured");
        assertThatThrownBy(() -> swell(1, 0.2).result(0)).hasMessageContaining("> 0 s");
    }
}
