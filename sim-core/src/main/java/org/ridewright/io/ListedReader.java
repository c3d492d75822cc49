package org.ridewright.io;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Multiple;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.study.Factor;
import org.ridewright.study.Method;

/** Reads a value that varies by listed steps: values with a unit, multiples, or words. */
final class ListedReader {
    private final FactorReader factors;

    /** @param factors which knows the paths of the base */
    ListedReader(FactorReader factors) {
        this.factors = factors;
    }

    /** The steps that a key {@code values} lists. */
    Optional<Method.Swept> swept(Part part) {
        List<String> paths = factors.paths(part);
        for (String key : List.of("to", "steps", "spacing")) {
            if (part.has(key)) {
                part.conflict(key, "belongs to a range, but 'values' lists every step", "remove it");
            }
        }
        List<Node> items = part.itemsOrOne("values", "what the value is to be in turn");
        List<String> words = new ArrayList<>();
        Values values = new Values(part.reading());
        items.forEach(item -> values.text(item, "a value").ifPresent(words::add));
        if (paths.isEmpty() || words.isEmpty() || words.size() < items.size()) {
            return Optional.empty();
        }
        if (refuseEqual(part, items, words)) {
            return Optional.empty();
        }
        String name = factors.name(part, paths);
        Optional<NamedValue> value = factors.valueIfAny(paths.get(0));
        if (!items.stream().allMatch(item -> FactorReader.isReadable(part, item))) {
            return Optional.empty();
        }
        List<Multiple> multiples =
                words.stream().map(Multiple::parse).flatMap(Optional::stream).toList();
        if (multiples.size() == words.size()) {
            return listedMultiples(part, name, paths, items, multiples);
        }
        Optional<QuantityKind> kind = value.flatMap(NamedValue::measure).map(Measure::kind);
        if (kind.isPresent()) {
            return listedMeasures(name, paths, items, kind.get(), part);
        }
        List<Double> numbers = new ArrayList<>();
        boolean allFit = true;
        for (int i = 0; i < words.size(); i++) {
            numbers.add((double) i);
            allFit &= factors.fits(part, items.get(i), paths, words.get(i));
        }
        List<Double> coordinates = List.copyOf(numbers);
        boolean counts = words.stream().allMatch(w -> w.matches("\\d{1,15}"));
        return allFit
                ? Optional.of(new Method.Swept(
                        new Factor.Listed(
                                name,
                                counts ? "1" : "",
                                paths,
                                words,
                                counts ? words.stream().map(Double::valueOf).toList() : numbers),
                        coordinates))
                : Optional.empty();
    }

    private Optional<Method.Swept> listedMultiples(
            Part part, String name, List<String> paths, List<Node> items, List<Multiple> multiples) {
        for (String path : paths) {
            if (factors.value(part, path).isEmpty()) {
                return Optional.empty();
            }
        }
        for (Node item : items) {
            if (!factors.fits(part, item, paths, ((Node.Scalar) item).text())) {
                return Optional.empty();
            }
        }
        for (int i = 0; i < multiples.size(); i++) {
            if (multiples.indexOf(multiples.get(i)) < i) {
                refuseTwice(part, items.get(i));
                return Optional.empty();
            }
        }
        List<Double> numbers = multiples.stream().map(Multiple::factor).toList();
        List<String> texts = numbers.stream().map(n -> "× " + n).toList();
        return Optional.of(
                new Method.Swept(new Factor.Listed(name, "1", paths, texts, numbers), counting(numbers.size())));
    }

    private Optional<Method.Swept> listedMeasures(
            String name, List<String> paths, List<Node> items, QuantityKind kind, Part part) {
        List<Measure> measures = new ArrayList<>();
        List<String> words = new ArrayList<>();
        Values values = new Values(part.reading());
        for (Node item : items) {
            Optional<Measure> measure = values.measure(item, kind).filter(m -> FactorReader.isCertain(part, item, m));
            if (measure.isEmpty()) {
                return Optional.empty();
            }
            if (measures.stream().anyMatch(m -> m.value() == measure.get().value())) {
                refuseTwice(part, item);
                return Optional.empty();
            }
            measures.add(measure.get());
            words.add(((Node.Scalar) item).text());
        }
        AuthorsUnit unit = AuthorsUnit.of(words.get(0), measures.get(0));
        for (int i = 1; i < words.size(); i++) {
            unit = unit.same(AuthorsUnit.of(words.get(i), measures.get(i)), kind);
        }
        AuthorsUnit shown = unit;
        return Optional.of(new Method.Swept(
                new Factor.Listed(
                        name,
                        shown.name(),
                        paths,
                        words,
                        measures.stream().map(shown::of).toList()),
                counting(words.size())));
    }

    private static List<Double> counting(int count) {
        List<Double> numbers = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            numbers.add((double) i);
        }
        return numbers;
    }

    private static boolean refuseEqual(Part part, List<Node> items, List<String> words) {
        for (int i = 0; i < words.size(); i++) {
            if (words.indexOf(words.get(i)) < i) {
                refuseTwice(part, items.get(i));
                return true;
            }
        }
        return false;
    }

    private static void refuseTwice(Part part, Node item) {
        part.reading()
                .problem(
                        item,
                        ((Node.Scalar) item).text(),
                        "is a step that is listed before",
                        "each step once",
                        "remove it");
    }
}
