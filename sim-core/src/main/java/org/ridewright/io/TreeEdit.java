package org.ridewright.io;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.quantity.UnfitValueException;

/** Trees with something else at some of their paths; trees themselves do not change. */
final class TreeEdit {
    private TreeEdit() {}

    /**
     * The tree with {@code text} at {@code path}: a single value, or a group or list where it begins with a brace or bracket; nothing if it is
     * empty. Keys that are not there are put in.
     *
     * @param path with counted items
     */
    static Node with(Node top, String path, String text) {
        return set(top, path, 0, text.strip());
    }

    /** Notes in {@code reading} where everything in the tree stands. */
    static void locate(Node node, Reading reading) {
        reading.locate(node.path(), node.spot());
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().values().forEach(entry -> locate(entry.value(), reading));
        } else if (node instanceof Node.Sequence sequence) {
            sequence.items().forEach(item -> locate(item, reading));
        }
    }

    private static Node set(Node node, String path, int at, String text) {
        if (at == path.length()) {
            return written(node, text);
        }
        if (path.charAt(at) == '[') {
            int close = path.indexOf(']', at);
            int index = Integer.parseInt(path.substring(at + 1, close));
            Node.Sequence list = (Node.Sequence) node;
            List<Node> items = new ArrayList<>(list.items());
            items.set(index, set(items.get(index), path, close + 1, text));
            return new Node.Sequence(list.spot(), list.path(), items);
        }
        int from = path.charAt(at) == '.' ? at + 1 : at;
        int to = from;
        while (to < path.length() && path.charAt(to) != '.' && path.charAt(to) != '[') {
            to++;
        }
        String key = path.substring(from, to);
        Map<String, Node.Entry> entries = new LinkedHashMap<>(
                node instanceof Node.Mapping mapping ? mapping.entries() : Map.<String, Node.Entry>of());
        Node.Entry entry = entries.get(key);
        if (text.isEmpty() && to == path.length()) {
            entries.remove(key);
        } else if (entry == null) {
            Node empty = new Node.Empty(node.spot(), path.substring(0, to));
            entries.put(key, new Node.Entry(node.spot(), set(empty, path, to, text)));
        } else {
            entries.put(key, new Node.Entry(entry.keySpot(), set(entry.value(), path, to, text)));
        }
        return new Node.Mapping(node.spot(), node.path(), entries);
    }

    private static Node written(Node place, String text) {
        if (!text.startsWith("{") && !text.startsWith("[")) {
            return new Node.Scalar(place.spot(), place.spot(), place.path(), text);
        }
        Reading reading = new Reading(place.path());
        try (JsonParser parser = new YAMLFactory().createParser(text)) {
            Node fragment = new TreeBuilder(parser, reading).document();
            reading.throwIfAny();
            return moved(fragment, place.spot(), place.path());
        } catch (IOException broken) {
            UnfitValueException refusal = new UnfitValueException(
                    "'" + text + "' for " + place.path() + " is not a group or list that can be read");
            refusal.initCause(broken);
            throw refusal;
        }
    }

    private static Node moved(Node node, Spot spot, String path) {
        if (node instanceof Node.Mapping mapping) {
            Map<String, Node.Entry> entries = new LinkedHashMap<>();
            mapping.entries()
                    .forEach((key, entry) -> entries.put(
                            key, new Node.Entry(spot, moved(entry.value(), spot, Node.entryPath(path, key)))));
            return new Node.Mapping(spot, path, entries);
        }
        if (node instanceof Node.Sequence sequence) {
            List<Node> items = new ArrayList<>();
            for (Node item : sequence.items()) {
                items.add(moved(item, spot, Node.itemPath(path, items.size())));
            }
            return new Node.Sequence(spot, path, items);
        }
        return node instanceof Node.Scalar scalar
                ? new Node.Scalar(spot, spot, path, scalar.text())
                : new Node.Empty(spot, path);
    }
}
