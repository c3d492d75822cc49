package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

class TravelTest {
    private static SpeedPlan plan(double change, double... stationsAndSpeeds) {
        List<SpeedPlan.Leg> legs = new ArrayList<>();
        for (int i = 0; i < stationsAndSpeeds.length; i += 2) {
            legs.add(new SpeedPlan.Leg(
                    Measure.of(stationsAndSpeeds[i], QuantityKind.LENGTH),
                    Measure.of(stationsAndSpeeds[i + 1], QuantityKind.SPEED)));
        }
        return new SpeedPlan(Optional.of("test"), legs, Measure.of(change, QuantityKind.LENGTH));
    }

    private static SpeedPlan chance(Random random) {
        double change = 1 + 10 * random.nextDouble();
        double[] legs = new double[2 * (1 + random.nextInt(4))];
        for (int i = 0; i < legs.length; i += 2) {
            legs[i] = i == 0 ? 0 : legs[i - 2] + change * (1 + 3 * random.nextDouble());
            legs[i + 1] = 0.5 + 10 * random.nextDouble();
        }
        return plan(change, legs);
    }

    @Test
    void aChangeOfSpeedTakesPlaceOverItsDistanceAndNowhereElse() {
        Travel travel = new Travel(plan(12, 0, 2, 30, 6));
        assertThat(travel.time(30)).isCloseTo(15, within(1e-12));
        // mean of 2 and 6 m/s over 12 m
        assertThat(travel.time(42)).isCloseTo(18, within(1e-12));
        assertThat(travel.speed(15)).isEqualTo(2);
        assertThat(travel.speed(16.5)).isCloseTo(4, within(1e-12));
        assertThat(travel.speed(18)).isEqualTo(6);
        assertThat(travel.station(20)).isCloseTo(54, within(1e-12));
    }

    @Property(tries = 200)
    void timeIsTheInverseOfStation(@ForAll Random random) {
        Travel travel = new Travel(chance(random));
        for (int i = 0; i < 20; i++) {
            double t = 40 * random.nextDouble();
            assertThat(travel.time(travel.station(t))).isCloseTo(t, within(1e-11));
        }
    }

    @Property(tries = 200)
    void speedIsTheRateOfStationAndAccelerationThatOfSpeed(@ForAll Random random) {
        Travel travel = new Travel(chance(random));
        double d = 1e-5;
        double[] about = new double[4];
        for (int i = 0; i < 20; i++) {
            double t = 0.1 + 30 * random.nextDouble();
            assertThat((travel.station(t + d) - travel.station(t - d)) / (2 * d))
                    .isCloseTo(travel.speed(t), within(1e-6));
            assertThat((travel.speed(t + d) - travel.speed(t - d)) / (2 * d))
                    .isCloseTo(travel.acceleration(t), within(1e-3));
            travel.expandSpeed(t, 0.01, about);
            assertThat(about[0]).isEqualTo(travel.speed(t));
            assertThat(about[1] / 0.01).isCloseTo(travel.acceleration(t), within(1e-9));
        }
    }

    /** The wheel is where its station says, whatever the speed has been. */
    @Property(tries = 60)
    void aPathInTimeIsThePathAtTheStationReached(@ForAll Random random) {
        Travel travel = new Travel(chance(random));
        int pieces = 40;
        double[] joints = new double[pieces + 1];
        double[][] rows = new double[pieces][];
        double height = 0;
        joints[0] = 1;
        for (int i = 0; i < pieces; i++) {
            double length = 0.1 + random.nextDouble();
            joints[i + 1] = joints[i] + length;
            rows[i] = new double[] {height, random.nextGaussian() / 20, random.nextGaussian() / 20};
            height += length * (rows[i][1] + length * rows[i][2]);
        }
        PiecewisePolynomial path = new PiecewisePolynomial(joints, rows, height);
        double x = -2.5;
        PiecewisePolynomial inTime = PathInTime.of(path, x, travel, 1e-9);
        double end = travel.time(joints[pieces] + 5);
        for (int i = 0; i < 200; i++) {
            double t = end * random.nextDouble();
            assertThat(inTime.value(t)).isCloseTo(path.value(travel.station(t) + x), within(2e-9));
        }
    }
}
