package org.ridewright.io;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Multiple;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.study.Factor;
import org.ridewright.study.Method;

/** Reads what varies in a study, and checks that its base has it. */
final class FactorReader {
    private static final Words<Boolean> SPACINGS =
            Words.of("a spacing of steps", List.of(false, true), byRatio -> byRatio ? "logarithmic" : "linear");
    private static final int MOST_STEPS = 10_000;
    private static final int USUAL_STEPS = 11;

    private final VariantReader.Base base;

    FactorReader(VariantReader.Base base) {
        this.base = base;
    }

    /** Keys of a value that varies between ends. */
    static String[] rangeKeys() {
        return new String[] {"vary", "called", "from", "to", "spacing"};
    }

    /** Keys of a value that takes steps. */
    static String[] stepKeys() {
        return new String[] {"vary", "called", "from", "to", "spacing", "steps", "values"};
    }

    /** A value and the steps that it takes. */
    Optional<Method.Swept> swept(Part part) {
        Optional<String> given = part.oneOf("values", "from");
        if (given.isEmpty()) {
            return Optional.empty();
        }
        if (given.get().equals("values")) {
            return new ListedReader(this).swept(part);
        }
        int steps = part.count("steps", 2, USUAL_STEPS);
        return range(part).map(factor -> {
            List<Double> coordinates = new ArrayList<>();
            for (int i = 0; i < Math.min(steps, MOST_STEPS); i++) {
                coordinates.add(brief(factor.at(i / (steps - 1.0))));
            }
            return new Method.Swept(factor, coordinates);
        });
    }

    /** With twelve digits: what a sum of binary numbers leaves beyond these, {@code 10.000000000000002}, nobody asked for. */
    private static double brief(double step) {
        return !Double.isFinite(step)
                ? step
                : new BigDecimal(step).round(new MathContext(12)).doubleValue();
    }

    /** A value between two ends. */
    Optional<Factor> range(Part part) {
        List<String> paths = paths(part);
        for (String key : List.of("from", "to")) {
            if (!part.has(key)) {
                part.missing(key, "an end of the range, such as 4 km/h or × 0.5");
            }
        }
        Optional<String> from = part.textIfAny("from", "an end of the range");
        Optional<String> to = part.textIfAny("to", "an end of the range");
        boolean byRatio = part.wordIfAny("spacing", SPACINGS).orElse(false);
        if (paths.isEmpty() || from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        String name = name(part, paths);
        if (!isReadable(part, part.node("from").orElseThrow())
                || !isReadable(part, part.node("to").orElseThrow())) {
            return Optional.empty();
        }
        Optional<Multiple> timesFrom = Multiple.parse(from.get());
        Optional<Multiple> timesTo = Multiple.parse(to.get());
        if (timesFrom.isPresent() || timesTo.isPresent()) {
            return multiples(part, name, paths, timesFrom, timesTo, byRatio);
        }
        Optional<NamedValue> value = value(part, paths.get(0));
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (value.get().measure().isEmpty() || isWhole(value.get())) {
            return whole(part, name, paths, value.get(), byRatio);
        }
        QuantityKind kind = value.get().measure().get().kind();
        Optional<Measure> low = measure(part, "from", kind);
        Optional<Measure> high = measure(part, "to", kind);
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        AuthorsUnit unit = AuthorsUnit.of(from.get(), low.get()).same(AuthorsUnit.of(to.get(), high.get()), kind);
        return checked(
                part,
                new Factor.Range(name, unit.name(), paths, unit.of(low.get()), unit.of(high.get()), byRatio, false));
    }

    private Optional<Factor> multiples(
            Part part,
            String name,
            List<String> paths,
            Optional<Multiple> from,
            Optional<Multiple> to,
            boolean byRatio) {
        boolean both = from.isPresent() && to.isPresent();
        if (!both) {
            Node node = part.node(from.isPresent() ? "to" : "from").orElseThrow();
            part.reading()
                    .problem(
                            node,
                            ((Node.Scalar) node).text(),
                            "is no multiple, but the other end is",
                            "a multiple such as × 2",
                            "write both ends as multiples, or both as values");
            return Optional.empty();
        }
        for (String path : paths) {
            if (value(part, path).isEmpty()) {
                return Optional.empty();
            }
        }
        for (String end : List.of("from", "to")) {
            Node node = part.node(end).orElseThrow();
            if (!fits(part, node, paths, ((Node.Scalar) node).text())) {
                return Optional.empty();
            }
        }
        return checked(
                part,
                new Factor.Multiple(name, paths, from.get().factor(), to.get().factor(), byRatio));
    }

    /** Whether what begins as a multiple is one. */
    static boolean isReadable(Part part, Node node) {
        try {
            Multiple.parse(((Node.Scalar) node).text());
            return true;
        } catch (UnfitValueException none) {
            part.reading()
                    .problem(
                            node,
                            "",
                            VariantReader.oneLine(none),
                            "a multiple such as × 1.2",
                            "write one number behind the sign");
            return false;
        }
    }

    /** Whether the file takes whole numbers alone there: a seed, a count. */
    private boolean isWhole(NamedValue value) {
        if (!value.written().matches("\\d{1,15}")) {
            return false;
        }
        Map<String, String> texts = new LinkedHashMap<>(base.variant().texts());
        texts.put(value.path(), value.written() + ".5");
        try {
            base.document().with(texts);
            return false;
        } catch (UnfitValueException refused) {
            return true;
        }
    }

    /** Counts and seeds: whole numbers. */
    private Optional<Factor> whole(Part part, String name, List<String> paths, NamedValue value, boolean byRatio) {
        boolean number = value.written().matches("\\d+");
        List<Double> ends = new ArrayList<>();
        for (String key : List.of("from", "to")) {
            Node node = part.node(key).orElseThrow();
            String text = ((Node.Scalar) node).text();
            if (!number || !text.matches("\\d{1,9}")) {
                part.reading()
                        .problem(
                                node,
                                text,
                                number
                                        ? "is no whole number, as " + paths.get(0) + " must be"
                                        : "is an end of a range, but " + paths.get(0) + " is a word, '"
                                                + value.written() + "'",
                                number ? "a whole number in digits" : "'values', a list of words",
                                number ? "write a whole number" : "write values: [" + value.written() + ", ...]");
                return Optional.empty();
            }
            ends.add(Double.parseDouble(text));
        }
        return checked(part, new Factor.Range(name, "1", paths, ends.get(0), ends.get(1), byRatio, true));
    }

    private static Optional<Factor> checked(Part part, Factor factor) {
        double from = factor.at(0);
        double to = factor.at(1);
        Node node = part.node("to").orElseThrow();
        String text = ((Node.Scalar) node).text();
        if (!(from < to)) {
            part.reading()
                    .problem(
                            node,
                            text,
                            from == to ? "is the same as 'from'" : "is below 'from'",
                            "the upper end of the range",
                            from == to ? "write two unlike ends" : "exchange the ends");
            return Optional.empty();
        }
        boolean byRatio = part.wordIfAny("spacing", SPACINGS).orElse(false);
        if (byRatio && from <= 0) {
            Node low = part.node("from").orElseThrow();
            part.reading()
                    .problem(
                            low,
                            ((Node.Scalar) low).text(),
                            "cannot begin steps of equal ratio",
                            "a value above 0",
                            "raise it, or write spacing: linear");
            return Optional.empty();
        }
        return Optional.of(factor);
    }

    boolean fits(Part part, Node item, List<String> paths, String word) {
        Map<String, String> texts = new LinkedHashMap<>(base.variant().texts());
        paths.forEach(path -> texts.put(path, word));
        try {
            base.document().with(texts);
            return true;
        } catch (UnfitValueException unfit) {
            Refused.of(unfit).addTo(part.reading(), item, word, "cannot be: ", "what may stand at " + paths.get(0));
            return false;
        }
    }

    List<String> paths(Part part) {
        if (!part.has("vary")) {
            part.missing("vary", "the path of a value, such as vehicles[0].speeds[0]");
            return List.of();
        }
        return part.texts("vary", "the path of a value").stream()
                .filter(path -> !path.isEmpty())
                .toList();
    }

    String name(Part part, List<String> paths) {
        return part.textIfAny("called", "a name for figures and tables")
                .orElseGet(() -> ValueLabel.of(
                        base.document(),
                        valueIfAny(paths.get(0)).map(NamedValue::path).orElse(paths.get(0))));
    }

    Optional<NamedValue> valueIfAny(String path) {
        try {
            return Optional.of(found(path));
        } catch (UnfitValueException none) {
            return Optional.empty();
        }
    }

    Optional<NamedValue> value(Part part, String path) {
        try {
            return Optional.of(found(path));
        } catch (UnfitValueException none) {
            part.node("vary")
                    .ifPresent(
                            node -> part.reading()
                                    .problem(
                                            node,
                                            "",
                                            VariantReader.oneLine(none),
                                            "the path of a value of the base, its vehicle files included",
                                            "correct the path; './ridewright check' of the base says whether that is in order"));
            return Optional.empty();
        }
    }

    /** Of the files, or put in by the changes to them. */
    private NamedValue found(String path) {
        try {
            return base.document().value(path);
        } catch (UnfitValueException notInTheFiles) {
            if (!base.variant().texts().containsKey(path)) {
                throw notInTheFiles;
            }
            return base.document().value(path, base.variant().texts());
        }
    }

    /** Whether a step or end states no tolerance, from which nothing would be drawn. */
    static boolean isCertain(Part part, Node node, Measure measure) {
        if (measure.tolerance() > 0) {
            part.reading()
                    .problem(
                            node,
                            ((Node.Scalar) node).text(),
                            "has a tolerance, which is not drawn here",
                            "a value without one",
                            "leave the tolerance out; under 'with' of a variant it is drawn");
        }
        return !(measure.tolerance() > 0);
    }

    /** Names in figures and tables tell what varies apart; notes those that do not. */
    static void refuseSameNames(Part part, String key, List<Factor> factors) {
        Set<String> names = new HashSet<>();
        for (Factor factor : factors) {
            if (!names.add(factor.name())) {
                part.node(key)
                        .ifPresent(node -> part.reading()
                                .problem(
                                        node,
                                        "",
                                        "has two values that are both called '" + factor.name() + "'",
                                        "names that tell them apart in figures and tables",
                                        "give one of them another name with 'called'"));
                return;
            }
        }
    }

    private static Optional<Measure> measure(Part part, String key, QuantityKind kind) {
        return part.node(key)
                .flatMap(node -> new Values(part.reading()).measure(node, kind).filter(m -> isCertain(part, node, m)));
    }
}
