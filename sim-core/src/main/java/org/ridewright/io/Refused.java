package org.ridewright.io;

import org.ridewright.quantity.UnfitValueException;

/**
 * Why a change to a file was refused, in the parts of a message of the file that asked for it.
 *
 * @param fault what is wrong, on one line
 * @param expected what would do; empty where it is not known
 * @param fix what puts it right; empty where it is not known
 */
record Refused(String fault, String expected, String fix) {
    static Refused of(UnfitValueException unfit) {
        if (unfit instanceof InputException input && !input.problems().isEmpty()) {
            InputProblem first = input.problems().get(0);
            return new Refused(
                    (first.path() + ": " + first.value()).strip() + " " + first.fault(), first.expected(), first.fix());
        }
        return new Refused(VariantReader.oneLine(unfit), "", "");
    }

    /** Notes it at a place of the file that asked. */
    void addTo(Reading reading, Node node, String value, String opening, String otherwiseExpected) {
        reading.problem(
                node,
                value,
                opening + fault,
                expected.isEmpty() ? otherwiseExpected : expected,
                fix.isEmpty() ? "correct it" : fix);
    }
}
