package org.ridewright.fieldwork;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ridewright.fieldwork.Heights.Mark;
import org.ridewright.fieldwork.Heights.Reading;
import org.ridewright.fieldwork.Heights.Settled;
import org.ridewright.fieldwork.Heights.Step;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.check.Faults;

/** Judges heights. */
record HeightsCheck(Names names, Faults faults) {
    private static final double HIGHEST = 5;

    void run(String path, Heights heights) {
        if (heights.marks().isEmpty()) {
            faults.add(path + ".at", "", "has none", "at least one mark", "write 'four corners'");
        }
        if (heights.steps().isEmpty()) {
            faults.add(path + ".steps", "", "has none", "at least one", "write {with: , heights: [...]}");
        }
        marks(path + ".at", heights.marks());
        for (int i = 0; i < heights.steps().size(); i++) {
            step(
                    path + ".steps[" + i + "]",
                    heights.steps().get(i),
                    heights.marks().size(),
                    path + ".at");
        }
    }

    private void marks(String path, List<Mark> marks) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < marks.size(); i++) {
            String at = path + "[" + i + "]";
            if (marks.get(i) instanceof Mark.Corner corner) {
                names.axle(at + ".axle", corner.axle());
                names.side(at + ".side", corner.axle());
            }
            if (!seen.add(marks.get(i).label())) {
                faults.add(at, marks.get(i).label(), "is marked already", "each place once", "remove one of them");
            }
        }
    }

    private void step(String path, Step step, int marks, String at) {
        names.loading(path, step.load());
        for (Reading reading : step.readings()) {
            String list = path + "." + reading.settled().key();
            if (reading.heights().size() != marks) {
                faults.add(
                        list,
                        "",
                        "has " + reading.heights().size() + " heights for " + marks + " marks",
                        "a height at each mark, in their order",
                        "add the ones that are missing, or remove their marks",
                        at);
            }
            for (int i = 0; i < reading.heights().size(); i++) {
                Measure height = reading.heights().get(i);
                faults.positive(list + "[" + i + "]", height);
                if (height.value() > HIGHEST) {
                    faults.within(list + "[" + i + "]", height, 0, HIGHEST, "check the unit");
                }
            }
        }
        swapped(path, step);
    }

    /** Friction holds up what came from above. */
    private void swapped(String path, Step step) {
        var above = step.settled(Settled.FROM_ABOVE);
        var below = step.settled(Settled.FROM_BELOW);
        if (above.isPresent() && below.isPresent() && mean(above.get()) < mean(below.get()) - error(above.get())) {
            faults.add(
                    path + "." + Settled.FROM_ABOVE.key(),
                    "",
                    "is lower than settled from below",
                    "friction holds up a body that was lifted and let down",
                    "exchange the two",
                    path + "." + Settled.FROM_BELOW.key());
        }
    }

    private static double mean(List<Measure> heights) {
        return heights.stream().mapToDouble(Measure::value).average().orElse(0);
    }

    /** Three times the uncertainty of the difference of two means. */
    private static double error(List<Measure> heights) {
        double square =
                heights.stream().mapToDouble(h -> h.tolerance() * h.tolerance()).sum();
        return 3 * Math.sqrt(2 * square) / Math.max(1, heights.size());
    }
}
