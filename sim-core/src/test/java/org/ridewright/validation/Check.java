package org.ridewright.validation;

/**
 * One number of the program beside one that is not its own, or a check of the reference: one expected value beside another.
 *
 * @param problem that it belongs to
 * @param source of the expected value
 * @param quantity what is compared, in words
 * @param unit of expected and computed; "1" for none
 * @param subject what {@code computed} comes from
 * @param tolerance greatest difference, ≥ 0, in the sense of {@code scale}
 */
record Check(
        String problem,
        Source source,
        Subject subject,
        String quantity,
        String unit,
        double expected,
        double computed,
        double tolerance,
        Scale scale) {
    /** Where a computed value comes from. */
    enum Subject {
        /** The program. */
        PROGRAM,
        /** The tests: a formula or a table on which expected values rest. */
        REFERENCE
    }

    /** What differences and tolerances are measured by. */
    enum Scale {
        /** By the expected value. */
        RELATIVE,
        /** By the unit. */
        ABSOLUTE
    }

    /** {@code computed − expected}, divided by the expected value where the scale is relative. */
    double difference() {
        double difference = computed - expected;
        return scale == Scale.RELATIVE ? difference / Math.abs(expected) : difference;
    }

    /** Greatest difference in the unit of the quantity. */
    double allowed() {
        return scale == Scale.RELATIVE ? tolerance * Math.abs(expected) : tolerance;
    }

    /** Whether the difference is within the tolerance; never with a number that is none. */
    boolean isMet() {
        return Math.abs(difference()) <= tolerance;
    }
}
