package org.ridewright.io;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.check.NearestWord;

/**
 * A group of keys of one part of a file. Asking for a key gives its value, or notes what is wrong with it and gives a stand-in
 * (required keys) or nothing (others), so that reading goes on.
 */
final class Part {
    private final Reading reading;
    private final Values values;
    private final Node node;
    private final Map<String, Node.Entry> entries;
    private final String called;
    private final boolean silent;

    private Part(Reading reading, Node node, Map<String, Node.Entry> entries, String called, boolean silent) {
        this.reading = reading;
        this.values = new Values(reading);
        this.node = node;
        this.entries = entries;
        this.called = called;
        this.silent = silent;
    }

    /**
     * The group at {@code node}; unknown keys are noted.
     *
     * @param called what it describes, with its article
     * @param known its keys
     */
    static Part of(Reading reading, Node node, String called, String... known) {
        if (node instanceof Node.Mapping mapping) {
            Part part = new Part(reading, node, mapping.entries(), called, false);
            mapping.entries().forEach((key, entry) -> part.refuseUnknown(key, entry, List.of(known)));
            return part;
        }
        String value = node instanceof Node.Scalar scalar ? scalar.text() : "";
        String fault = node instanceof Node.Scalar ? "stands where a group of keys should" : "is " + node.shape();
        reading.problem(
                node,
                value,
                fault,
                called + " as a group of keys: " + Words.listed(List.of(known)),
                node instanceof Node.Sequence
                        ? "remove the dash"
                        : "write its keys with their values on the lines below, indented, or between { and }");
        return new Part(reading, node, Map.of(), called, true);
    }

    Reading reading() {
        return reading;
    }

    String path() {
        return node.path();
    }

    String path(String key) {
        return Node.entryPath(node.path(), key);
    }

    boolean has(String key) {
        return entries.containsKey(key);
    }

    /** The value of a key, whatever its shape. */
    Optional<Node> node(String key) {
        return Optional.ofNullable(entries.get(key)).map(Node.Entry::value);
    }

    /** A required value; a stand-in where it is missing or unreadable. */
    Measure measure(String key, QuantityKind kind) {
        if (!has(key)) {
            missing(key, Values.expected(kind));
        }
        return measureIfAny(key, kind).orElse(Values.standIn(kind));
    }

    /** A value that need not be given. */
    Optional<Measure> measureIfAny(String key, QuantityKind kind) {
        // half a number that its comma cut in two says no more than the other half
        return reading.isSpoilt(path(key)) ? Optional.empty() : node(key).flatMap(value -> values.measure(value, kind));
    }

    /** A value with a default. */
    Measure measureOr(String key, Measure otherwise) {
        return measureIfAny(key, otherwise.kind()).orElse(otherwise);
    }

    /** A value that is nil unless given. */
    Measure measureOrZero(String key, QuantityKind kind) {
        return measureOr(key, new Measure(kind, 0, 0, Provenance.NOT_STATED, "none given"));
    }

    /** A required number; 1 where it is missing or unreadable. */
    double number(String key) {
        if (!has(key)) {
            missing(key, "a number");
        }
        return node(key).flatMap(values::number).orElse(1.0);
    }

    /** A whole number not below {@code least}, with a default. */
    int count(String key, int least, int otherwise) {
        return node(key).flatMap(value -> values.count(value, least)).orElse(otherwise);
    }

    /** A seed: a whole number, 1 unless given. */
    long seed() {
        return node("seed").flatMap(values::seed).orElse(1L);
    }

    /** A required text; {@code expected} says what it should be. */
    String text(String key, String expected) {
        if (!has(key)) {
            missing(key, expected);
        }
        return textIfAny(key, expected).orElse("");
    }

    /** A text that need not be given. */
    Optional<String> textIfAny(String key, String expected) {
        return node(key).flatMap(value -> values.text(value, expected));
    }

    /** The name of one of several, which the only one of its kind can do without. */
    String name(boolean only, String otherwise) {
        return only && !has("name") ? otherwise : text("name", "a name");
    }

    /** A required choice; the first where it is missing or unreadable. */
    <E> E word(String key, Words<E> words) {
        if (!has(key)) {
            missing(key, words.called() + ": " + words.listed());
        }
        return wordIfAny(key, words).orElse(words.meanings().values().iterator().next());
    }

    /** A choice that need not be made. */
    <E> Optional<E> wordIfAny(String key, Words<E> words) {
        return node(key).flatMap(value -> values.word(value, words));
    }

    /** A group of keys within this one. */
    Optional<Part> part(String key, String called, String... known) {
        return node(key).map(value -> of(reading, value, called, known));
    }

    /** A required group of keys within this one; an empty one where it is missing. */
    Part partOrMissing(String key, String called, String... known) {
        return part(key, called, known).orElseGet(() -> {
            missing(key, called + " as a group of keys: " + Words.listed(List.of(known)));
            return new Part(reading, new Node.Empty(node.spot(), path(key)), Map.of(), called, true);
        });
    }

    /** The items of a list; none where the key is absent. */
    List<Node> items(String key, String expected) {
        Optional<Node> value = node(key);
        if (value.isEmpty() || value.get() instanceof Node.Sequence) {
            return value.map(list -> ((Node.Sequence) list).items()).orElse(List.of());
        }
        Node wrong = value.get();
        boolean empty = wrong instanceof Node.Empty;
        String written = wrong instanceof Node.Scalar scalar ? scalar.text() : "";
        reading.problem(
                wrong,
                written,
                empty ? "is empty" : written.isEmpty() ? "is " + wrong.shape() : "stands where a list should",
                "a list: " + expected,
                empty ? "fill it in or remove the key" : "begin each item with '- ', or put the items between [ and ]");
        return List.of();
    }

    /** The items of a list, or the single one that stands in its place. */
    List<Node> itemsOrOne(String key, String expected) {
        Optional<Node> value = node(key);
        if (value.isPresent() && !(value.get() instanceof Node.Sequence) && !(value.get() instanceof Node.Empty)) {
            reading.alias(Node.itemPath(path(key), 0), path(key));
            return List.of(value.get());
        }
        return items(key, expected);
    }

    /** A list of groups of keys. */
    List<Part> parts(String key, String called, String... known) {
        return items(key, called + " after each dash").stream()
                .map(item -> of(reading, item, called, known))
                .toList();
    }

    /** A list of texts, or the single one that stands in its place. */
    List<String> texts(String key, String expected) {
        return itemsOrOne(key, expected).stream()
                .map(item -> values.text(item, expected).orElse(""))
                .toList();
    }

    /** A list of values, or the single one that stands in its place. */
    List<Measure> measures(String key, QuantityKind kind) {
        List<Node> items = itemsOrOne(key, Values.expected(kind));
        if (kind != QuantityKind.RATIO && CutNumber.refuse(items, kind, reading)) {
            return items.stream().map(item -> Values.standIn(kind)).toList();
        }
        return items.stream()
                .map(item -> values.measure(item, kind).orElse(Values.standIn(kind)))
                .toList();
    }

    /** Rows of values, each of the given kinds in turn, such as the points of a curve. */
    List<List<Measure>> rows(String key, QuantityKind... kinds) {
        String row = "["
                + String.join(
                        ", ", Arrays.stream(kinds).map(QuantityKind::label).toList()) + "]";
        return items(key, "rows " + row).stream()
                .map(item -> row(item, row, kinds))
                .toList();
    }

    private List<Measure> row(Node item, String row, QuantityKind... kinds) {
        if (item instanceof Node.Sequence sequence && sequence.items().size() == kinds.length) {
            return IntStream.range(0, kinds.length)
                    .mapToObj(i ->
                            values.measure(sequence.items().get(i), kinds[i]).orElse(Values.standIn(kinds[i])))
                    .toList();
        }
        String value = item instanceof Node.Scalar scalar ? scalar.text() : "";
        String fault = item instanceof Node.Sequence sequence
                ? "has " + sequence.items().size() + " values"
                : value.isEmpty() ? "is " + item.shape() : "stands where a row should";
        String fix = item instanceof Node.Sequence sequence && sequence.items().size() > kinds.length
                ? "write decimals with a point, since a comma separates values"
                : "put the values of each row between [ and ], and all rows between another [ and ]";
        reading.problem(item, value, fault, "a row " + row, fix);
        return Arrays.stream(kinds).map(Values::standIn).toList();
    }

    /** Which of the keys is given, of which there must be one and no more; empty where that is not so. */
    Optional<String> oneOf(String... keys) {
        Optional<String> given = atMostOneOf(keys);
        if (Arrays.stream(keys).noneMatch(this::has)) {
            missing(keys[0], Words.listed(List.of(keys)));
        }
        return given;
    }

    /** Which of the keys is given, of which there may be one; empty where there is none, or there are more. */
    Optional<String> atMostOneOf(String... keys) {
        List<String> given = Arrays.stream(keys).filter(this::has).toList();
        given.stream().skip(1).forEach(key -> conflict(key, given.get(0)));
        return given.size() == 1 ? Optional.of(given.get(0)) : Optional.empty();
    }

    /** Notes that {@code key} cannot stand beside {@code other}. */
    void conflict(String key, String other) {
        conflict(
                key,
                "is given beside '" + other + "', which says the same or contradicts it",
                "remove '" + key + "' or '" + other + "'");
    }

    /** As the other, for a reason of its own. */
    void conflict(String key, String fault, String fix) {
        reading.problem(entries.get(key).keySpot(), path(key), "", fault, "one of them", fix);
    }

    /** Notes that a required key is not there. */
    void missing(String key, String expected) {
        if (!silent && !reading.isSpoilt(path(key))) {
            String whole = called.replaceFirst("^an? ", "the ");
            reading.problem(node.spot(), path(key), "", "is missing", expected, "add '" + key + ": ...' to " + whole);
        }
    }

    private void refuseUnknown(String key, Node.Entry entry, List<String> known) {
        if (known.contains(key)) {
            return;
        }
        boolean radius = key.equalsIgnoreCase("radius") && known.contains("diameter");
        Optional<String> near =
                (radius ? Optional.of("diameter") : NearestWord.to(key, known)).filter(word -> !has(word));
        String fix = radius
                ? "write diameter, which is twice the radius"
                : near.map(word -> "write " + word).orElse("write one of these, or remove it");
        if (entry.value() instanceof Node.Empty && !key.isEmpty() && Character.isDigit(key.charAt(0))) {
            refuseDecimals(key, entry);
            return;
        }
        reading.problem(entry.keySpot(), path(key), key, "is not a key of " + called, Words.listed(known), fix);
        near.ifPresent(word -> reading.spoil(path(word)));
    }

    /** What looks like a key is what follows a decimal comma in the value before it. */
    private void refuseDecimals(String written, Node.Entry entry) {
        List<String> keys = List.copyOf(entries.keySet());
        int before = keys.indexOf(written) - 1;
        String fix = "write decimals with a point";
        if (before >= 0 && entries.get(keys.get(before)).value() instanceof Node.Scalar whole) {
            reading.spoil(whole.path());
            fix = "write " + keys.get(before) + ": " + CutNumber.joined(whole.text(), written);
        }
        reading.problem(
                entry.keySpot(),
                path(written),
                written,
                "stands after a comma, which ends a value between { and }",
                "a decimal point",
                fix);
    }
}
