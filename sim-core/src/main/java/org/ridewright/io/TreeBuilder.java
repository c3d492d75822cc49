package org.ridewright.io;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Builds the tree of nodes from the tokens of one document. Anchors are copied to where they are used; tags and merge keys refused. */
final class TreeBuilder {
    private static final int MOST_NODES = 200_000;

    private final JsonParser parser;
    private final Reading reading;
    private final Map<String, Node> anchored = new HashMap<>();
    private int nodes;

    TreeBuilder(JsonParser parser, Reading reading) {
        this.parser = parser;
        this.reading = reading;
    }

    /** The top of the document, which may be empty. */
    Node document() throws IOException {
        if (parser.nextToken() == null) {
            return new Node.Empty(new Spot(1, 1), "");
        }
        Node top = node("");
        if (parser.nextToken() != null) {
            reading.problem(
                    spot(),
                    "",
                    "",
                    "a second document begins here",
                    "one document in a file",
                    "remove the line --- or put what follows into a file of its own");
        }
        return top;
    }

    private Node node(String path) throws IOException {
        Spot spot = spot();
        if (parser instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
            return aliased(spot, path, yaml.getText());
        }
        refuseTag(spot, path);
        Object anchor = parser.getObjectId();
        JsonToken token = parser.currentToken();
        Node node = token == JsonToken.START_OBJECT
                ? mapping(spot, path)
                : token == JsonToken.START_ARRAY ? sequence(spot, path) : scalar(spot, path, token);
        if (anchor != null) {
            anchored.put(anchor.toString(), node);
        }
        return noted(node);
    }

    private Node mapping(Spot spot, String path) throws IOException {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            Spot keySpot = spot();
            String key = parser.getText().strip();
            String entryPath = Node.entryPath(path, key);
            parser.nextToken();
            Node value = node(entryPath);
            if (key.equals("<<")) {
                reading.problem(
                        keySpot,
                        entryPath,
                        "",
                        "merging one group into another is not supported",
                        "",
                        "write the keys out");
            } else if (entries.containsKey(key)) {
                int first = entries.get(key).keySpot().line();
                reading.problem(
                        keySpot,
                        entryPath,
                        "",
                        "is given twice, first in line " + first,
                        "each key once",
                        "remove one of them");
            } else {
                entries.put(key, new Node.Entry(keySpot, value));
            }
        }
        return new Node.Mapping(spot, path, entries);
    }

    private Node sequence(Spot spot, String path) throws IOException {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node(Node.itemPath(path, items.size())));
        }
        return new Node.Sequence(spot, path, items);
    }

    private Node scalar(Spot spot, String path, JsonToken token) throws IOException {
        return token == JsonToken.VALUE_NULL
                ? new Node.Empty(spot, path)
                : new Node.Scalar(spot, end(), path, parser.getText().strip());
    }

    private Node aliased(Spot spot, String path, String name) {
        Node original = anchored.get(name);
        if (original == null) {
            reading.problem(
                    spot,
                    path,
                    "*" + name,
                    "refers to nothing above it that is marked &" + name,
                    "the mark of a finished part farther up",
                    "write the value out");
            return noted(new Node.Empty(spot, path));
        }
        return copied(original, path);
    }

    private Node copied(Node original, String path) {
        if (original instanceof Node.Mapping mapping) {
            Map<String, Node.Entry> entries = new LinkedHashMap<>();
            mapping.entries()
                    .forEach((key, entry) -> entries.put(
                            key, new Node.Entry(entry.keySpot(), copied(entry.value(), Node.entryPath(path, key)))));
            return noted(new Node.Mapping(mapping.spot(), path, entries));
        }
        if (original instanceof Node.Sequence sequence) {
            List<Node> items = new ArrayList<>();
            for (Node item : sequence.items()) {
                items.add(copied(item, Node.itemPath(path, items.size())));
            }
            return noted(new Node.Sequence(sequence.spot(), path, items));
        }
        return noted(
                original instanceof Node.Scalar scalar
                        ? new Node.Scalar(scalar.spot(), scalar.end(), path, scalar.text())
                        : new Node.Empty(original.spot(), path));
    }

    private Node noted(Node node) {
        if (++nodes > MOST_NODES) {
            reading.problem(
                    node.spot(),
                    "",
                    "",
                    "the file holds more than " + MOST_NODES + " values",
                    "a file written by hand",
                    "");
            reading.throwIfAny();
        }
        reading.locate(node.path(), node.spot());
        return node;
    }

    private void refuseTag(Spot spot, String path) throws IOException {
        if (parser.getTypeId() != null) {
            reading.problem(
                    spot, path, "", "has a type tag, which is not supported", "", "remove the word that begins with !");
        }
    }

    private Spot end() throws IOException {
        // a value in quotes is read to its end only when it is asked for
        parser.getText();
        JsonLocation location = parser.currentLocation();
        return new Spot(location.getLineNr(), location.getColumnNr());
    }

    private Spot spot() {
        JsonLocation location = parser.currentTokenLocation();
        return new Spot(location.getLineNr(), location.getColumnNr());
    }
}
