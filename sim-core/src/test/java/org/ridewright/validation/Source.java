package org.ridewright.validation;

/**
 * Where an expected value comes from.
 *
 * @param reference short enough for a cell of a table; says "from memory" where the value was not seen in print
 */
record Source(Kind kind, String reference) {
    /** What a value from outside can be. */
    enum Kind {
        STANDARD("standard"),
        BOOK("handbook or paper"),
        CLOSED_FORM("closed form"),
        INTEGRATOR("independent integrator");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    static Source standard(String reference) {
        return new Source(Kind.STANDARD, reference);
    }

    static Source book(String reference) {
        return new Source(Kind.BOOK, reference);
    }

    static Source closedForm(String reference) {
        return new Source(Kind.CLOSED_FORM, reference);
    }

    static Source integrator(String reference) {
        return new Source(Kind.INTEGRATOR, reference);
    }

    @Override
    public String toString() {
        return kind.word() + ": " + reference;
    }
}
