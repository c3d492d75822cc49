package org.ridewright.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class PersonMeterTest {
    private static final double HALF = Math.sqrt(0.5);

    /** A sine of 1 m/s² (or rad/s²) at 4 Hz on every axis asked for. */
    private static PersonVibration shaken(Map<Position, Set<Axis>> axes) {
        PersonMeter meter = new PersonMeter(axes, new Window(5, 15), 200, 0, StartUp.AT_REST);
        for (int i = 0; i <= 3200; i++) {
            double a = Math.sin(2 * Math.PI * 4 * i / 200);
            axes.forEach((position, list) -> list.forEach(axis -> meter.accept(position, axis, a)));
        }
        return meter.result();
    }

    private static Map<Position, Set<Axis>> allAxes() {
        Map<Position, Set<Axis>> all = new EnumMap<>(Position.class);
        for (Position position : Position.values()) {
            all.put(
                    position,
                    Arrays.stream(Axis.values())
                            .filter(axis -> position.rule(axis).isPresent())
                            .collect(Collectors.toSet()));
        }
        return all;
    }

    /** Factors at 4 Hz of ISO 2631-1:1997 tables 3 and 4: Wk 0.967, Wd 0.512, Wc 1.024, We 0.253. */
    @Test
    void totalsOfTwelveAxesAreThoseOfTheTables() {
        PersonVibration all = shaken(allAxes());
        assertThat(all.points().values().stream().mapToInt(Map::size).sum()).isEqualTo(12);
        double we = 0.253;
        double seat = Math.sqrt(2 * 0.512 * 0.512 + 0.967 * 0.967 + we * we * (0.63 * 0.63 + 0.4 * 0.4 + 0.2 * 0.2));
        double back = Math.sqrt(Math.pow(0.8 * 1.024, 2) + Math.pow(0.5 * 0.512, 2) + Math.pow(0.4 * 0.512, 2));
        double feet = Math.sqrt(2 * Math.pow(0.25 * 0.967, 2) + Math.pow(0.4 * 0.967, 2));
        assertThat(all.pointTotal(Position.SEAT).orElseThrow()).isEqualTo(HALF * seat, within(1e-3));
        assertThat(all.pointTotal(Position.BACKREST).orElseThrow()).isEqualTo(HALF * back, within(1e-3));
        assertThat(all.pointTotal(Position.FEET).orElseThrow()).isEqualTo(HALF * feet, within(1e-3));
        assertThat(all.overallTotal())
                .isEqualTo(HALF * Math.sqrt(seat * seat + back * back + feet * feet), within(1e-3));
    }

    @Test
    void withoutABackrestTheSeatsHorizontalAxesCountMore() {
        PersonVibration seat = shaken(Map.of(Position.SEAT, Set.of(Axis.X, Axis.Z)));
        assertThat(seat.pointTotal(Position.SEAT).orElseThrow())
                .isEqualTo(HALF * Math.hypot(1.4 * 0.512, 0.967), within(1e-3));
        assertThat(seat.pointTotal(Position.FEET)).isEmpty();
        assertThat(seat.axis(Position.SEAT, Axis.X).orElseThrow().effectiveRms())
                .isEqualTo(HALF * 0.512, within(1e-3));
        assertThat(seat.axis(Position.SEAT, Axis.Y)).isEmpty();
    }

    /** (3/8 T)^¼ of each axis's weighted amplitude, added by fourth powers; Wb at 4 Hz is 0.8 to 1. */
    @Test
    void britishDoseAddsFourthPowersWithTheBritishWeighting() {
        PersonVibration seat = shaken(Map.of(Position.SEAT, Set.of(Axis.X, Axis.Z)));
        double fourths = Math.pow(Weighting.WD.factor(4), 4) + Math.pow(Weighting.WB.factor(4), 4);
        assertThat(seat.britishDose()).isEqualTo(Math.pow(3.0 / 8 * 10 * fourths, 0.25), within(1e-3));
        VibrationMetrics z = seat.british(Position.SEAT).get(Axis.Z);
        assertThat(z.rms()).isEqualTo(HALF * Weighting.WB.factor(4), within(1e-3));
        assertThat(z.rmq()).isEqualTo(Math.pow(3.0 / 8, 0.25) * Weighting.WB.factor(4), within(1e-3));
        // x has Wd in both standards
        assertThat(seat.british(Position.SEAT).get(Axis.X))
                .isEqualTo(seat.metrics(Position.SEAT).get(Axis.X));
    }

    @Test
    void whatIsNotMeasuredIsRefused() {
        PersonMeter meter =
                new PersonMeter(Map.of(Position.SEAT, Set.of(Axis.Z)), new Window(0, 5), 100, 0, StartUp.AT_REST);
        assertThatThrownBy(() -> meter.accept(Position.FEET, Axis.Z, 1)).hasMessageContaining("is not measured");
        assertThatThrownBy(() -> new PersonMeter(Map.of(), new Window(0, 5), 100, 0, StartUp.AT_REST))
                .hasMessageContaining("at least 1 axis");
    }
}
