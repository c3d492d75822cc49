package org.ridewright.io;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Damping;
import org.ridewright.vehicle.Seat.SeatStage;

/**
 * Cushions that are named rather than measured: figures chosen by this project so that two conditions of one cushion can be set side by
 * side, not published ones. In good condition: 30 kN/m, 300 N·s/m. Gone hard, its hair or foam matted: 200 kN/m and 600 N·s/m, at which a person on
 * it bounces at some 10 Hz.
 */
final class Cushions {
    static final Words<Function<Measure, SeatStage>> NAMED = named();

    private Cushions() {}

    private static Words<Function<Measure, SeatStage>> named() {
        Map<String, Function<Measure, SeatStage>> cushions = new LinkedHashMap<>();
        cushions.put("in good condition", share -> stage("cushion in good condition", 30_000, 300, share));
        cushions.put("gone hard", share -> stage("cushion gone hard", 200_000, 600, share));
        return new Words<>("a condition, or a group of keys", cushions);
    }

    private static SeatStage stage(String name, double rate, double damping, Measure share) {
        String rule = name + ", a choice of this project";
        return new SeatStage(
                Measure.estimated(rate, QuantityKind.RATE, rule),
                new Damping.Coefficient(Measure.estimated(damping, QuantityKind.DAMPING, rule)),
                Measure.of(0, QuantityKind.MASS),
                share);
    }
}
