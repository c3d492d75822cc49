package org.ridewright.io;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A piece of a file, with its place in the text and its path from the top, such as {@code axles[1].springs[0].rate}. */
sealed interface Node {
    Spot spot();

    String path();

    /** What it is, in words for a message. */
    String shape();

    /** A single value, as written, without its quotes; {@code end} is the place right behind it. */
    record Scalar(Spot spot, Spot end, String path, String text) implements Node {
        @Override
        public String shape() {
            return "a single value";
        }
    }

    /** Nothing after the colon or dash. */
    record Empty(Spot spot, String path) implements Node {
        @Override
        public String shape() {
            return "empty";
        }
    }

    /** A list. */
    record Sequence(Spot spot, String path, List<Node> items) implements Node {
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String shape() {
            return "a list";
        }
    }

    /** Keys with their values, in the order of the file. */
    record Mapping(Spot spot, String path, Map<String, Entry> entries) implements Node {
        public Mapping {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        @Override
        public String shape() {
            return "a group of keys";
        }
    }

    /** A value and where its key stands. */
    record Entry(Spot keySpot, Node value) {}

    /** Path of the entry {@code key} of the mapping at {@code path}. */
    static String entryPath(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    /** Path of the item {@code index} of the list at {@code path}. */
    static String itemPath(String path, int index) {
        return path + "[" + index + "]";
    }
}
