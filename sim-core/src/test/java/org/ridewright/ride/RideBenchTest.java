package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.Position;
import org.ridewright.io.ScenarioFile;

/** What is measured lightly is what a whole ride test measures. */
class RideBenchTest {
    private static final Scenario GATE = ScenarioFile.read(Path.of("../scenarios/gate.yaml"));

    private static Measured light(int test, Set<Wanted> wanted) {
        return new RideBench().measure(GATE, RideBench.tests(GATE).get(test), wanted);
    }

    @Test
    void everyNumberIsThatOfTheWholeRideTestToTheLastBit() {
        List<RideResult> whole = RideRunner.run(GATE, r -> {});
        for (int test : new int[] {1, 4}) {
            RideResult full = whole.get(test);
            RideResult light = light(test, EnumSet.allOf(Wanted.class)).ride();

            assertThat(light.model().vehicle().name())
                    .isEqualTo(full.model().vehicle().name());
            assertThat(light.seats().toString()).isEqualTo(full.seats().toString());
            assertThat(light.points()).isEqualTo(full.points());
            assertThat(light.springs()).isEqualTo(full.springs());
            assertThat(light.wheels()).isEqualTo(full.wheels());
            assertThat(light.draught()).isEqualTo(full.draught());
            assertThat(light.window()).isEqualTo(full.window());
            assertThat(light.traces()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(Wanted.class)
    void askingForLessChangesNoNumberThatIsAskedFor(Wanted one) {
        RideResult all = light(4, EnumSet.allOf(Wanted.class)).ride();
        RideResult own = light(4, EnumSet.of(Wanted.SEAT, one)).ride();

        assertThat(own.seats().get(0).metrics().get(Axis.Z))
                .isEqualTo(all.seats().get(0).metrics().get(Axis.Z));
        boolean feet = one == Wanted.FEET || one == Wanted.WHOLE_RIDER;
        assertThat(own.seats().get(0).metrics(Position.FEET).isEmpty()).isEqualTo(!feet);
        assertThat(Double.isNaN(own.seats().get(0).peak())).isEqualTo(one != Wanted.PEAKS);
        assertThat(own.springs())
                .extracting(RideResult.ElementResult::lockedShare)
                .isEqualTo(all.springs().stream()
                        .map(RideResult.ElementResult::lockedShare)
                        .toList());
    }

    @Test
    void aBenchThatRodeOtherTestsBeforeMeasuresTheSame() {
        RideBench used = new RideBench();
        List<RideBench.Test> tests = RideBench.tests(GATE);
        Set<Wanted> wanted = EnumSet.of(Wanted.PEAKS, Wanted.SWINGS);
        tests.forEach(test -> used.measure(GATE, test, wanted));

        Measured again = used.measure(GATE, tests.get(1), wanted);
        assertThat(again.swings()).isEqualTo(light(1, wanted).swings());
        assertThat(again.ride().seats().toString())
                .isEqualTo(light(1, wanted).ride().seats().toString());
    }

    /** A swing that dies away by the factor e^(−δ) a cycle, from 100 mm, stays within 1 mm after ln 100/δ cycles; here δ = ½. */
    @Test
    void cyclesBeforeRestFollowFromTheLogarithmicDecrement() {
        SwingCounter counter = new SwingCounter(1e-3, 0, 60);
        for (int i = 0; i < 40 * 250; i++) {
            double t = i / 250.0;
            counter.accept(t, 0.1 * Math.exp(-0.5 * t) * Math.cos(2 * Math.PI * t), t);
        }

        assertThat(counter.cycles()).isCloseTo(Math.log(100) / 0.5, within(0.51));
        assertThat(counter.greatest()).isEqualTo(0.1);
    }

    @Test
    void aMotionThatComesToRestAwayFromItsPlaceIsCountedFromWhereItRests() {
        SwingCounter counter = new SwingCounter(1e-3, 0, 60);
        for (int i = 0; i < 20 * 250; i++) {
            double t = i / 250.0;
            counter.accept(t, 0.02 + 0.1 * Math.exp(-2 * t) * Math.cos(2 * Math.PI * t), t);
        }

        assertThat(counter.cycles()).isCloseTo(Math.log(100) / 2, within(0.51));
    }

    @Test
    void whatHappensBeforeTheLastAxleHasLeftIsNoSwing() {
        SwingCounter counter = new SwingCounter(1e-3, 5, 60);
        for (int i = 0; i < 10 * 250; i++) {
            double t = i / 250.0;
            counter.accept(t, t < 4.9 ? Math.sin(20 * t) : 0, t);
        }

        assertThat(counter.cycles()).isZero();
        assertThat(counter.after()).isZero();
        assertThat(counter.greatest()).isCloseTo(1, within(1e-2));
    }

    /** Swings that friction ends after ten half cycles, 20 mm less each, and a tremor of 3 mm on held springs for the rest of the run. */
    @Test
    void theTremorOfHeldSpringsIsNoWallow() {
        SwingCounter counter = new SwingCounter(1e-3, 0, 60);
        for (int i = 0; i < 60 * 250; i++) {
            double t = i / 250.0;
            double size = t < 5 ? 0.1 - 0.02 * Math.floor(2 * t) / 2 : 0.003;
            counter.accept(t, size * Math.cos(2 * Math.PI * t), Math.min(t, 5));
        }

        assertThat(counter.cycles()).isCloseTo(5, within(0.51));
    }

    @Test
    void theSameTremorCountsWhereSpringsGoOnSliding() {
        SwingCounter counter = new SwingCounter(1e-3, 0, 60);
        for (int i = 0; i < 60 * 250; i++) {
            double t = i / 250.0;
            counter.accept(t, 0.003 * Math.cos(2 * Math.PI * t), t);
        }

        assertThat(counter.cycles()).isCloseTo(60, within(0.51));
    }

    @Test
    void ripplesOfLessThanTwoMillimetresFromTurnToTurnAreNotSeen() {
        SwingCounter counter = new SwingCounter(1e-3, 0, 60);
        for (int i = 0; i < 10 * 250; i++) {
            double t = i / 250.0;
            counter.accept(t, 0.05 * Math.cos(Math.PI * t / 5) + 0.0009 * Math.sin(50 * t), t);
        }

        assertThat(counter.cycles()).isEqualTo(1);
    }

    @Test
    void whatSwingsOnHeldSpringsAtTheEndIsTold() {
        assertThat(atTheEnd(0)).isCloseTo(0.003, within(1e-5));
        assertThat(atTheEnd(1)).as("springs slide").isZero();
    }

    /** @param sliding share of the time during which springs slide */
    private static double atTheEnd(double sliding) {
        SwingCounter counter = new SwingCounter(1e-3, 0, 10);
        for (int i = 0; i <= 10 * 250; i++) {
            double t = i / 250.0;
            counter.accept(t, 0.01 + 0.003 * Math.cos(4 * Math.PI * t), sliding * t);
        }
        return counter.leftHeld();
    }
}
