package org.ridewright.io;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ridewright.quantity.JointSpread;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.quantity.UnfitValueException;

/**
 * The key {@code calibration} of a vehicle file: which of its values were fitted together, and their correlation.
 *
 * @param of paths as the tree counts them
 * @param correlation as many rows and columns
 */
record CalibrationBlock(List<String> of, List<List<Double>> correlation) {
    static final String KEY = "calibration";

    /** The block of a file; nothing where there is none, or faults are noted. */
    static Optional<CalibrationBlock> read(Node top, ValueTree tree, Reading reading) {
        if (!(top instanceof Node.Mapping mapping) || !mapping.entries().containsKey(KEY)) {
            return Optional.empty();
        }
        Part part = Part.of(reading, mapping.entries().get(KEY).value(), "a calibration", "from", "of", "correlation");
        List<String> of = paths(part, tree, reading);
        List<List<Double>> rows = rows(part, of.size(), reading);
        if (reading.isSpoiltWithin(KEY)) {
            return Optional.empty();
        }
        CalibrationBlock block = new CalibrationBlock(of, rows);
        try {
            block.spread(of.stream().map(tree::value).toList());
        } catch (UnfitValueException contradicting) {
            part.node("correlation")
                    .ifPresent(node -> reading.problem(
                            node,
                            "",
                            contradicting.getMessage(),
                            "the matrix that the program wrote",
                            "calibrate again, or remove the whole of 'calibration'"));
            return Optional.empty();
        }
        return Optional.of(block);
    }

    private static List<String> paths(Part part, ValueTree tree, Reading reading) {
        List<String> paths = new ArrayList<>();
        for (Node item : part.items("of", "paths of values in this file")) {
            new Values(reading).text(item, "the path of a value of this file").ifPresent(text -> {
                try {
                    NamedValue value = tree.value(text);
                    if (value.measure().filter(m -> m.tolerance() > 0).isEmpty()) {
                        throw new UnfitValueException("'" + text + "' has no tolerance");
                    }
                    paths.add(value.path());
                } catch (UnfitValueException none) {
                    reading.problem(
                            item,
                            text,
                            none.getMessage(),
                            "the path of a value that was calibrated",
                            "calibrate again, or remove the whole of 'calibration'");
                }
            });
        }
        return paths;
    }

    private static List<List<Double>> rows(Part part, int size, Reading reading) {
        List<List<Double>> rows = new ArrayList<>();
        Values values = new Values(reading);
        for (Node item : part.items("correlation", "rows of numbers")) {
            List<Double> row = item instanceof Node.Sequence sequence
                    ? sequence.items().stream()
                            .map(cell -> values.measure(cell, QuantityKind.RATIO)
                                    .map(m -> m.value())
                                    .orElse(0.0))
                            .toList()
                    : List.of();
            rows.add(row);
        }
        boolean square = rows.size() == size && rows.stream().allMatch(row -> row.size() == size);
        if (!square || !isCorrelation(rows)) {
            part.node("correlation")
                    .ifPresent(node -> reading.problem(
                            node,
                            "",
                            square
                                    ? "is not symmetric with ones on its diagonal"
                                    : "is not " + size + " rows of " + size,
                            "the matrix that the program wrote",
                            "calibrate again, or remove the whole of 'calibration'"));
        }
        return rows;
    }

    private static boolean isCorrelation(List<List<Double>> rows) {
        for (int i = 0; i < rows.size(); i++) {
            for (int j = 0; j < rows.size(); j++) {
                double r = rows.get(i).get(j);
                if (Math.abs(r - rows.get(j).get(i)) > 1e-6 || Math.abs(r) > 1 || i == j && r != 1) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The same without some values, which are no longer those that were calibrated. */
    CalibrationBlock without(Set<String> paths) {
        return new CalibrationBlock(
                of.stream().map(path -> paths.contains(path) ? "" : path).toList(), correlation);
    }

    /** The values with this correlation; those that it does not name stand alone. */
    JointSpread spread(List<NamedValue> values) {
        int n = values.size();
        double[][] r = new double[n][n];
        for (int i = 0; i < n; i++) {
            int a = of.indexOf(values.get(i).path());
            for (int j = 0; j < n; j++) {
                int b = of.indexOf(values.get(j).path());
                r[i][j] = i == j ? 1 : a >= 0 && b >= 0 ? correlation.get(a).get(b) : 0;
            }
        }
        return new JointSpread(values, r);
    }
}
