package org.ridewright.io;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Multiple;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.vehicle.check.NearestWord;

/**
 * The tree of a file that could be read, with what its single values say. A part that the file marks once and uses again counts as one: its
 * values go by the path of their first place, and change at all.
 */
final class ValueTree {
    private static final Pattern MULTIPLE = Pattern.compile("(?:times|×)(?:\\s+the\\s+rate)?\\s*$");

    private final Node top;
    private final Map<String, Node.Scalar> scalars = new LinkedHashMap<>();
    private final Map<Spot, List<String>> places = new LinkedHashMap<>();
    private final Map<String, NamedValue> values = new LinkedHashMap<>();

    /** @param reading in which the tree was read */
    ValueTree(Node top, Reading reading) {
        this.top = top;
        gather(top);
        for (List<String> paths : places.values()) {
            String first = paths.get(0);
            Optional<Measure> measure = paths.stream()
                    .map(reading::measure)
                    .flatMap(Optional::stream)
                    .findFirst();
            values.put(first, new NamedValue(first, scalars.get(first).text(), measure));
        }
    }

    private void gather(Node node) {
        if (node instanceof Node.Scalar scalar) {
            scalars.put(scalar.path(), scalar);
            places.computeIfAbsent(scalar.spot(), spot -> new ArrayList<>()).add(scalar.path());
        } else if (node instanceof Node.Mapping mapping) {
            mapping.entries().values().forEach(entry -> gather(entry.value()));
        } else if (node instanceof Node.Sequence sequence) {
            sequence.items().forEach(this::gather);
        }
    }

    Node top() {
        return top;
    }

    List<NamedValue> values() {
        return List.copyOf(values.values());
    }

    /** The paths with counted items that a path means. */
    List<String> places(String path) {
        return new TreePath(path).in(top);
    }

    /** The same, each by the path under which its value goes. */
    List<String> meant(String path) {
        return places(path).stream()
                .map(place -> scalars.containsKey(place)
                        ? places.get(scalars.get(place).spot()).get(0)
                        : place)
                .distinct()
                .toList();
    }

    /** The text's place of a value. */
    Node.Scalar scalar(String path) {
        return scalars.get(path);
    }

    /** @throws UnfitValueException if there is none */
    NamedValue value(String path) {
        String found = new TreePath(path).in(top).get(0);
        Node.Scalar scalar = scalars.get(found);
        if (scalar == null) {
            String near = NearestWord.to(found, values.keySet())
                    .map(word -> "; write " + word)
                    .orElse("");
            throw new UnfitValueException("'" + path + "' is no single value of the file" + near);
        }
        return values.get(places.get(scalar.spot()).get(0));
    }

    /**
     * The tree with other words at some paths. {@code × 1.2} stands for 1.2 times the value that the file has.
     *
     * @throws UnfitValueException if a path leads nowhere
     */
    Node with(Map<String, String> texts) {
        Node edited = top;
        for (Map.Entry<String, String> change : texts.entrySet()) {
            for (String path : new TreePath(change.getKey()).in(top)) {
                Node.Scalar old = scalars.get(path);
                String text = old == null
                        ? absolute(path, change.getValue())
                        : inTheFilesWords(old, absolute(places.get(old.spot()).get(0), change.getValue()));
                for (String place : old == null ? List.of(path) : places.get(old.spot())) {
                    edited = TreeEdit.with(edited, place, text);
                }
            }
        }
        return edited;
    }

    private String absolute(String path, String text) {
        Optional<Multiple> multiple = Multiple.parse(text);
        if (multiple.isEmpty()) {
            return text;
        }
        Measure measure = Optional.ofNullable(values.get(path))
                .flatMap(NamedValue::measure)
                .orElseThrow(() -> new UnfitValueException("'" + text + "' for " + path
                        + ": the file has no number there that could be multiplied; write the value itself"));
        return multiple.get().of(measure.kind(), measure.value());
    }

    /** A locked rate may be a multiple, {@code 2 times}, and stays one. */
    private static String inTheFilesWords(Node.Scalar old, String text) {
        boolean multiple = MULTIPLE.matcher(old.text()).find();
        boolean bare =
                !MULTIPLE.matcher(text).find() && text.matches("[-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?(?:\\s*[±(].*)?");
        return multiple && bare ? text + " times" : text;
    }
}
