package org.ridewright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ridewright.io.InputProblem;

/** Faults that were told; a file that is named in two ways is still one file. */
final class FaultList {
    private final Set<InputProblem> told = new HashSet<>();

    /** Those of the problems that were not told before. */
    List<InputProblem> add(List<InputProblem> problems) {
        List<InputProblem> fresh = new ArrayList<>();
        for (InputProblem problem : problems) {
            if (told.add(anywhere(problem))) {
                fresh.add(problem);
            }
        }
        return fresh;
    }

    int size() {
        return told.size();
    }

    /** How many, in words. */
    String count() {
        return told.size() == 1 ? "1 fault" : told.size() + " faults";
    }

    private static InputProblem anywhere(InputProblem p) {
        String file = Path.of(p.file()).toAbsolutePath().normalize().toString();
        return new InputProblem(file, p.line(), p.column(), p.path(), p.value(), p.fault(), p.expected(), p.fix());
    }
}
