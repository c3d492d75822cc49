package org.ridewright.io;

import java.util.List;
import java.util.stream.Collectors;
import org.ridewright.quantity.UnfitValueException;

/** Says everything that is wrong with the files that were read. */
public final class InputException extends UnfitValueException {
    private static final long serialVersionUID = 1L;

    private final transient List<InputProblem> problems;

    /** @param problems at least one, in the order in which they are to be shown */
    public InputException(List<InputProblem> problems) {
        super(problems.stream().map(InputProblem::render).collect(Collectors.joining(System.lineSeparator())));
        this.problems = List.copyOf(problems);
    }

    /** Everything found wrong, file by file, from the top of each. */
    public List<InputProblem> problems() {
        return problems;
    }
}
