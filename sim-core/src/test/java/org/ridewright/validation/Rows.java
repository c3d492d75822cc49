package org.ridewright.validation;

import java.util.ArrayList;
import java.util.List;

/** Collects the checks of one problem. */
final class Rows {
    private final String problem;
    private final Check.Subject subject;
    private final List<Check> checks;

    Rows(ReferenceProblem problem) {
        this(problem.title(), Check.Subject.PROGRAM, new ArrayList<>());
    }

    private Rows(String problem, Check.Subject subject, List<Check> checks) {
        this.problem = problem;
        this.subject = subject;
        this.checks = checks;
    }

    /** Collects into the same list what does not come from the program: formulas and tables of the tests, one beside another. */
    Rows ofReference() {
        return new Rows(problem, Check.Subject.REFERENCE, checks);
    }

    /** A number that must agree to a share of the expected one. */
    Rows relative(Source source, String quantity, String unit, double expected, double computed, double tolerance) {
        return add(source, quantity, unit, expected, computed, tolerance, Check.Scale.RELATIVE);
    }

    /** A number that must agree to so many of its units. */
    Rows absolute(Source source, String quantity, String unit, double expected, double computed, double tolerance) {
        return add(source, quantity, unit, expected, computed, tolerance, Check.Scale.ABSOLUTE);
    }

    private Rows add(
            Source source,
            String quantity,
            String unit,
            double expected,
            double computed,
            double tolerance,
            Check.Scale scale) {
        checks.add(new Check(problem, source, subject, quantity, unit, expected, computed, tolerance, scale));
        return this;
    }

    List<Check> list() {
        return List.copyOf(checks);
    }
}
