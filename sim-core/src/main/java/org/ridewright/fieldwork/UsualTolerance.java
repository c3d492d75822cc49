package org.ridewright.fieldwork;

import org.ridewright.quantity.Measure;

/**
 * Standard uncertainties of readings of which the file states none; common practice, generous rather than mean. A stated one is kept.
 */
public final class UsualTolerance {
    /** Of scales, relative and at least (kg). */
    private static final double SCALES = 0.005;

    private static final double LEAST_OF_SCALES = 0.5;
    /** Of a load laid on, relative; and at least (N). */
    private static final double LEAST_OF_LOADS = 5;
    /** Of a length by tape, of a height that is read again and again (m). */
    private static final double TAPE = 0.002;

    private static final double DEFLECTION = 0.0005;
    /** Of a hand-held stopwatch, start and stop together (s). */
    private static final double STOPWATCH = 0.2;

    private static final double CYCLES = 0.25;
    private static final double CYCLES_TO_REST = 1;
    private static final double SPEED = 0.05;
    private static final double STEPS = 0.05;

    private UsualTolerance() {}

    /** A mass by scales: 0.5 %, at least 0.5 kg. */
    public static Measure ofScales(Measure mass) {
        return filled(mass, Math.max(LEAST_OF_SCALES, SCALES * Math.abs(mass.value())));
    }

    /** A load laid on a spring: 0.5 %, at least 5 N. */
    public static Measure ofLoad(Measure force) {
        return filled(force, Math.max(LEAST_OF_LOADS, SCALES * Math.abs(force.value())));
    }

    /** A length by tape: 2 mm. */
    public static Measure ofTape(Measure length) {
        return filled(length, TAPE);
    }

    /** A deflection by rule or gauge: 0.5 mm. */
    public static Measure ofDeflection(Measure length) {
        return filled(length, DEFLECTION);
    }

    /** A time by stopwatch: 0.2 s. */
    public static Measure ofStopwatch(Measure time) {
        return filled(time, STOPWATCH);
    }

    /** A number of cycles: a quarter of one. */
    public static Measure ofCycles(Measure cycles) {
        return filled(cycles, CYCLES);
    }

    /** Cycles until nothing more is seen: one. */
    public static Measure ofCyclesToRest(Measure cycles) {
        return filled(cycles, CYCLES_TO_REST);
    }

    /** A speed held by eye: 5 %. */
    public static Measure ofSpeed(Measure speed) {
        return filled(speed, SPEED * speed.value());
    }

    /** The steps of a horse: 5 %. */
    public static Measure ofSteps(Measure frequency) {
        return filled(frequency, STEPS * frequency.value());
    }

    private static Measure filled(Measure measure, double tolerance) {
        return measure.tolerance() > 0
                ? measure
                : new Measure(
                        measure.kind(), measure.value(), Math.abs(tolerance), measure.provenance(), measure.written());
    }
}
