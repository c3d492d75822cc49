package org.ridewright.io;

import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityFormatException;
import org.ridewright.quantity.QuantityKind;

/** Turns single values of a file into texts, measures, numbers and choices, noting those that cannot be. */
final class Values {
    private static final double GREATEST_SEED = 1e15;
    private static final int MOST = 10_000;

    private final Reading reading;

    Values(Reading reading) {
        this.reading = reading;
    }

    /** The text of a single value; {@code expected} says what it should be. */
    Optional<String> text(Node node, String expected) {
        if (node instanceof Node.Scalar scalar && !scalar.text().isEmpty()) {
            return Optional.of(scalar.text());
        }
        boolean empty = node instanceof Node.Empty || node instanceof Node.Scalar;
        reading.problem(
                node,
                "",
                empty ? "is empty" : "is " + node.shape(),
                expected,
                empty ? "write the value after the colon, or remove the key" : "write a single value");
        return Optional.empty();
    }

    /** A value with its unit. */
    Optional<Measure> measure(Node node, QuantityKind kind) {
        return text(node, expected(kind)).flatMap(text -> {
            try {
                Measure measure = Measures.parse(text, kind);
                reading.measured(node.path(), measure);
                return Optional.of(measure);
            } catch (QuantityFormatException refused) {
                reading.problem(node, text, fault(refused, text, kind), expected(kind), fix(refused));
                return Optional.empty();
            }
        });
    }

    private static String fix(QuantityFormatException refused) {
        return refused.hint().isEmpty() ? "write the value like one of these" : refused.hint();
    }

    /** A plain number. */
    Optional<Double> number(Node node) {
        return measure(node, QuantityKind.RATIO).map(Measure::value);
    }

    /** A whole number not below {@code least}. */
    Optional<Integer> count(Node node, int least) {
        return number(node).flatMap(number -> {
            if (number == Math.rint(number) && number >= least && number <= MOST) {
                return Optional.of((int) number.doubleValue());
            }
            String written = node instanceof Node.Scalar scalar ? scalar.text() : "";
            reading.problem(
                    node,
                    written,
                    number < least ? "is too few" : number > MOST ? "is too many" : "is not a count",
                    number < least
                            ? "at least " + least + ", a whole number"
                            : "a whole number from " + least + " to " + MOST,
                    "write a whole number in digits");
            return Optional.empty();
        });
    }

    /** A whole number that tells one random choice from another. */
    Optional<Long> seed(Node node) {
        return number(node).flatMap(number -> {
            if (number == Math.rint(number) && number >= 0 && number <= GREATEST_SEED) {
                return Optional.of(number.longValue());
            }
            String written = node instanceof Node.Scalar scalar ? scalar.text() : "";
            reading.problem(
                    node,
                    written,
                    "is not a seed",
                    "a whole number from 0 to 10^15",
                    "write any whole number in digits");
            return Optional.empty();
        });
    }

    /** One of several words. */
    <E> Optional<E> word(Node node, Words<E> words) {
        String expected = words.called() + ": " + words.listed();
        return text(node, expected).flatMap(text -> {
            Optional<E> meaning = words.meaning(text);
            if (meaning.isEmpty()) {
                reading.problem(
                        node, text, "is not " + words.called(), words.listed(), Hints.nearest(text, words.all()));
            }
            return meaning;
        });
    }

    /** What a value of the kind looks like, for a message. */
    static String expected(QuantityKind kind) {
        String forms =
                String.join(", ", Measures.acceptedForms(kind).stream().limit(4).toList());
        return Hints.article(kind.label()) + " " + kind.label() + " such as " + forms;
    }

    /** Stands for a required value that could not be read; what it would rest on is left unjudged. */
    static Measure standIn(QuantityKind kind) {
        return new Measure(kind, 1, 0, Provenance.NOT_STATED, "not read");
    }

    /** The refusal without what a problem says in its other parts. */
    private static String fault(QuantityFormatException refused, String text, QuantityKind kind) {
        String whole = refused.getMessage();
        String opening = kind.label() + " '" + text + "' ";
        if (!whole.startsWith(opening)) {
            return "cannot be read: " + whole;
        }
        String rest = whole.substring(opening.length());
        String remedy = refused.hint().isEmpty() ? "; accepted are " + refused.expected() : "; " + refused.hint();
        return rest.endsWith(remedy) ? rest.substring(0, rest.length() - remedy.length()) : rest;
    }
}
