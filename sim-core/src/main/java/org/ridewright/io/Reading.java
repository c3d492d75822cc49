package org.ridewright.io;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.check.Fault;

/**
 * The reading of one file: what was found wrong so far, and where everything stands. Checks name a value by one path whichever
 * way the file gave it; {@link #alias} says which key of the file stood for it.
 */
final class Reading {
    private final String file;
    private final Set<InputProblem> problems = new LinkedHashSet<>();
    private final Set<String> spoilt = new HashSet<>();
    private final Map<String, Spot> spots = new HashMap<>();
    private final Map<String, String> aliases = new HashMap<>();
    private final Map<String, Measure> measures = new HashMap<>();

    Reading(String file) {
        this.file = file;
    }

    /** Notes where a path stands in the text. */
    void locate(String path, Spot spot) {
        spots.put(path, spot);
    }

    /** Notes what a single value says. */
    void measured(String path, Measure measure) {
        measures.put(path, measure);
    }

    /** What the single value at this path says, if it is one with a unit, or a number. */
    Optional<Measure> measure(String path) {
        return Optional.ofNullable(measures.get(path));
    }

    /** The value that checks call {@code path} stands in the file at {@code written}. */
    void alias(String path, String written) {
        aliases.put(path, written);
    }

    /** Something is wrong at {@code path}, which stands at {@code spot}; nothing below the path is to be judged any further. */
    void problem(Spot spot, String path, String value, String fault, String expected, String fix) {
        spoilt.add(path);
        problems.add(new InputProblem(file, spot.line(), spot.column(), path, value, fault, expected, fix));
    }

    /** As the other, at a node. */
    void problem(Node node, String value, String fault, String expected, String fix) {
        problem(node.spot(), node.path(), value, fault, expected, fix);
    }

    /** Takes up what is wrong with another file that this one names. */
    void include(List<InputProblem> others) {
        problems.addAll(others);
    }

    /** Leaves whatever rests on {@code path} unjudged. */
    void spoil(String path) {
        spoilt.add(path);
    }

    /** Whether something was found wrong at just this path. */
    boolean isSpoilt(String path) {
        return spoilt.contains(path);
    }

    /** Whether something was found wrong at this path or below it. */
    boolean isSpoiltWithin(String path) {
        return spoilt.stream().anyMatch(bad -> within(bad, path));
    }

    /** Takes up what a check found, unless it rests on a value that could not be read. */
    void faults(List<Fault> faults) {
        for (Fault fault : faults) {
            if (!restsOnSpoilt(fault)) {
                String path = written(fault.path());
                Spot spot = spot(path);
                problems.add(new InputProblem(
                        file,
                        spot.line(),
                        spot.column(),
                        path,
                        fault.value(),
                        fault.fault(),
                        fault.expected(),
                        fault.fix()));
            }
        }
    }

    /** Everything found wrong, from the top of the file. */
    List<InputProblem> problems() {
        return problems.stream()
                .sorted(Comparator.comparingInt(InputProblem::line).thenComparingInt(InputProblem::column))
                .toList();
    }

    /** @throws InputException if anything was found wrong */
    void throwIfAny() {
        if (!problems.isEmpty()) {
            throw new InputException(problems());
        }
    }

    private boolean restsOnSpoilt(Fault fault) {
        return spoilt(fault.path()) || fault.restsOn().stream().anyMatch(this::spoilt);
    }

    private boolean spoilt(String path) {
        String written = written(path);
        return spoilt.stream().anyMatch(bad -> within(written, bad) || within(bad, written) || within(path, bad));
    }

    private static boolean within(String path, String whole) {
        return path.equals(whole) || whole.isEmpty() || path.startsWith(whole + ".") || path.startsWith(whole + "[");
    }

    private String written(String path) {
        String now = path;
        String before;
        do {
            before = now;
            String from = before;
            now = aliases.keySet().stream()
                    .filter(alias -> within(from, alias))
                    .max(Comparator.comparingInt(String::length))
                    .map(alias -> aliases.get(alias) + from.substring(alias.length()))
                    .orElse(from);
        } while (!now.equals(before));
        return now;
    }

    /** The place of the path, or of the nearest thing around it that the file has. */
    private Spot spot(String path) {
        String around = path;
        while (!spots.containsKey(around)) {
            int cut = Math.max(around.lastIndexOf('.'), around.lastIndexOf('['));
            if (cut < 0) {
                return spots.getOrDefault("", Spot.WHOLE_FILE);
            }
            around = around.substring(0, cut);
        }
        return spots.get(around);
    }
}
