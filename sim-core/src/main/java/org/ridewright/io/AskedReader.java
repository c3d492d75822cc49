package org.ridewright.io;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.ride.RideBench;
import org.ridewright.ride.Scenario;
import org.ridewright.study.Asked;
import org.ridewright.study.Method;
import org.ridewright.study.Question;
import org.ridewright.study.StudyBench;
import org.ridewright.study.Variant;

/** Reads which of a study's answers is meant, in which of its ride tests, and bounds in its unit. */
final class AskedReader {
    private static final Pattern BARE = Pattern.compile("[-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?");

    private final List<Question> questions;
    private final List<List<String>> tests;

    private AskedReader(List<Question> questions, List<List<String>> tests) {
        this.questions = questions;
        this.tests = tests;
    }

    /** Of the ride tests of a scenario. */
    static AskedReader of(List<Question> questions, Variant variant) {
        return new AskedReader(questions, labels(variant));
    }

    /** Of the ride tests that each of what a method compares goes through. */
    static AskedReader of(List<Question> questions, Method method, Variant first) {
        List<List<String>> labels = labels(first);
        int thing = !(method instanceof Method.Compare compare)
                ? -1
                : switch (compare.by()) {
                    case VEHICLES -> 0;
                    case LOAD_CASES -> 1;
                    case VARIANTS -> -1;
                };
        return new AskedReader(
                questions,
                labels.stream()
                        .filter(l ->
                                thing < 0 || l.get(thing).equals(labels.get(0).get(thing)))
                        .toList());
    }

    private static List<List<String>> labels(Variant variant) {
        Scenario scenario = variant.texts().isEmpty()
                ? variant.scenario().asWritten()
                : variant.scenario().with(variant.texts());
        return RideBench.tests(scenario).stream().map(StudyBench::labels).toList();
    }

    /** The number of the answer that a key names; of a family of bands, which {@code bands} alone asks for, that of its first band. */
    Optional<Integer> question(Part part, String key) {
        boolean bands = key.equals("bands");
        List<String> names = questions.stream()
                .map(q -> bands && q.band().isPresent() ? q.family() : bands ? "" : q.name())
                .toList();
        List<String> known = names.stream().filter(n -> !n.isEmpty()).distinct().toList();
        if (known.isEmpty()) {
            part.reading()
                    .problem(
                            part.node(key).orElseThrow(),
                            "",
                            "needs an answer in third octaves",
                            "'third octaves' or 'feet third octaves' among the answers",
                            "add one of them to 'answers', or write 'change'");
            return Optional.empty();
        }
        return part.textIfAny(key, "one of the answers")
                .flatMap(text -> one(part, key, names.indexOf(text), text, "is not among the answers", known));
    }

    /** The numbers of the bands of an answer in third octaves, lowest first. */
    List<Integer> bands(int question) {
        String family = questions.get(question).family();
        return IntStream.range(0, questions.size())
                .filter(q -> questions.get(q).family().equals(family))
                .boxed()
                .toList();
    }

    /** The answer that {@code answer} names, the first unless it must be named, where {@code on} says; the worst of several tests counts. */
    Optional<Asked> asked(Part part, boolean named) {
        if (questions.isEmpty()) {
            return Optional.empty();
        }
        if (named && !part.has("answer")) {
            part.missing(
                    "answer",
                    Words.listed(questions.stream().map(Question::name).toList()));
            return Optional.empty();
        }
        Optional<Integer> question = part.has("answer") ? question(part, "answer") : Optional.of(0);
        if (!part.has("on")) {
            return question.map(Asked::everywhere);
        }
        Optional<List<String>> on = on(part, "answer", true);
        return question.flatMap(q -> on.map(words -> new Asked(
                q,
                IntStream.range(0, tests.size())
                        .filter(t -> tests.get(t).containsAll(words))
                        .boxed()
                        .toList(),
                words)));
    }

    static Optional<Integer> one(Part part, String key, int number, String text, String fault, List<String> known) {
        if (number < 0) {
            part.reading()
                    .problem(
                            part.node(key).orElseThrow(), text, fault, Words.listed(known), Hints.nearest(text, known));
            return Optional.empty();
        }
        return Optional.of(number);
    }

    /** The words of {@code on}, which leave one ride test, or several where that may be. */
    Optional<List<String>> on(Part part, String kind, boolean several) {
        List<String> on = part.has("on") ? part.texts("on", "a road, load case or speed") : List.of();
        long found = tests.stream().filter(t -> t.containsAll(on)).count();
        if (found == 1 || several && found > 0) {
            return Optional.of(on);
        }
        Set<String> words = new LinkedHashSet<>();
        for (int i = 0; i < 4; i++) {
            int label = i;
            Set<String> each =
                    new LinkedHashSet<>(tests.stream().map(t -> t.get(label)).toList());
            if (each.size() > 1) {
                words.addAll(each);
            }
        }
        boolean single = words.isEmpty();
        part.reading()
                .problem(
                        part.node("on").orElseGet(() -> part.node(kind).orElseThrow()),
                        String.join(", ", on),
                        found == 0 ? "is no ride test" : "leaves " + found + " ride tests",
                        single
                                ? "nothing, since there is but one ride test"
                                : "what tells one ride test from the others: " + Words.listed(List.copyOf(words)),
                        single ? "remove 'on'" : "write on: [...] with as many of these as it takes");
        return Optional.empty();
    }

    /** A number in the answer's unit, or with a unit of its own: {@code 60 mm}. */
    Optional<Double> bound(Part part, String key, int question) {
        String unit = questions.get(question).measure().unit();
        Optional<QuantityKind> kind = Arrays.stream(QuantityKind.values())
                .filter(k -> states(k, unit))
                .findFirst();
        return part.node(key).flatMap(node -> {
            boolean bare = node instanceof Node.Scalar scalar
                    && BARE.matcher(scalar.text().strip()).matches();
            return bare || kind.isEmpty()
                    ? new Values(part.reading()).number(node)
                    : new Values(part.reading()).measure(node, kind.get()).map(m -> m.value() / inSi(kind.get(), unit));
        });
    }

    private static boolean states(QuantityKind kind, String unit) {
        return kind.siUnit().equals(unit)
                || kind == QuantityKind.LENGTH && unit.equals("mm")
                || kind == QuantityKind.ANGLE && unit.equals("mrad");
    }

    private static double inSi(QuantityKind kind, String unit) {
        return kind.siUnit().equals(unit)
                ? 1
                : Measures.parse("1 " + unit, kind).value();
    }
}
