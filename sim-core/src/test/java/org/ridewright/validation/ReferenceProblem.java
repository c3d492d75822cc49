package org.ridewright.validation;

import java.util.List;

/** A problem whose answer is known from elsewhere; deterministic. Equation and solution stand in the Javadoc of each. */
interface ReferenceProblem {
    /** Heading in the table. */
    String title();

    /** The problem in a few words, for a reader of the table; Markdown. */
    String statement();

    /** Solves the problem and compares. */
    List<Check> checks();

    /** What the table alone does not say, Markdown; called after {@link #checks}. */
    default String remarks() {
        return "";
    }
}
