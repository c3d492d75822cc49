package org.ridewright.io;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.ridewright.ride.RideBench;
import org.ridewright.ride.Scenario;
import org.ridewright.study.Answer;
import org.ridewright.study.Factor;
import org.ridewright.study.Levels;
import org.ridewright.study.Method;
import org.ridewright.study.Question;
import org.ridewright.study.StudyBench;
import org.ridewright.study.Telling;
import org.ridewright.study.Variant;

/** Reads the sentences that a study makes from its numbers, and what fills their blanks. */
final class AnswerReader {
    private static final String[] KINDS = {
        "value", "change", "best", "first", "order", "where", "bands", "found", "binding"
    };
    private static final String[] KEYS = {
        "value", "change", "best", "first", "order", "where", "bands", "found", "binding", "of", "from", "to",
        "against", "above", "below", "as", "on"
    };
    private static final Words<Boolean> LIMITS = Words.of("what may bind", List.of(true), limits -> "limits");
    private static final Words<Boolean> FORMS =
            Words.of("a way to state a change", List.of(false, true), units -> units ? "difference" : "per cent");

    private final AskedReader asked;
    private final Subjects subjects;

    private AnswerReader(AskedReader asked, Subjects subjects) {
        this.asked = asked;
        this.subjects = subjects;
    }

    /** Empty if there is none, or something is wrong with it, which is noted. */
    static Optional<Answer> read(Part study, List<Question> questions, Method method, List<Variant> variants) {
        if (!study.has("answer")) {
            return Optional.empty();
        }
        Optional<Subjects> subjects = Subjects.of(method, variants);
        if (subjects.isEmpty()) {
            study.reading()
                    .problem(
                            study.node("answer").orElseThrow(),
                            "",
                            "cannot be made from this kind of study",
                            "a comparison, an uncertainty, a search, or a sweep of one value, of at most "
                                    + Subjects.MOST + " steps",
                            "remove 'answer'; the report says what was found");
            return Optional.empty();
        }
        AnswerReader reader = new AnswerReader(AskedReader.of(questions, method, variants.get(0)), subjects.get());
        return reader.read(study.partOrMissing("answer", "an answer", "sentences", "blanks"));
    }

    private Optional<Answer> read(Part part) {
        if (!part.has("sentences")) {
            part.missing("sentences", "a list of texts with blanks such as {gravel}");
        }
        Map<String, Telling> blanks = new LinkedHashMap<>();
        Map<String, Node> named = new LinkedHashMap<>();
        if (part.node("blanks").orElse(null) instanceof Node.Mapping mapping) {
            mapping.entries().forEach((name, entry) -> {
                named.put(name, entry.value());
                telling(Part.of(part.reading(), entry.value(), "a blank", KEYS)).ifPresent(t -> blanks.put(name, t));
            });
        } else if (part.has("blanks")) {
            part.part("blanks", "blanks");
        }
        List<String> sentences = new ArrayList<>();
        Set<String> used = new LinkedHashSet<>();
        Values values = new Values(part.reading());
        for (Node item : part.itemsOrOne("sentences", "texts with blanks such as {gravel}")) {
            values.text(item, "a sentence").ifPresent(text -> {
                sentences.add(text.strip());
                for (String name : Answer.blanks(text)) {
                    used.add(name);
                    refuseUnknown(part, item, name, named.keySet());
                }
            });
        }
        named.forEach((name, node) -> {
            if (!used.contains(name) && !sentences.isEmpty()) {
                part.reading()
                        .problem(
                                node,
                                "",
                                "fills no blank",
                                "a blank {" + name + "} in one of the sentences",
                                "remove it, or write the blank");
            }
        });
        return sentences.isEmpty() || part.reading().isSpoiltWithin(part.path())
                ? Optional.empty()
                : Optional.of(new Answer(sentences, blanks));
    }

    private static void refuseUnknown(Part part, Node sentence, String name, Set<String> known) {
        if (!known.contains(name)) {
            part.reading()
                    .problem(
                            sentence,
                            "{" + name + "}",
                            "is a blank that nothing fills",
                            known.isEmpty() ? "a name that stands under 'blanks'" : Words.listed(List.copyOf(known)),
                            known.isEmpty()
                                    ? "write blanks: {" + name + ": {value: a_w}}"
                                    : Hints.nearest(name, known) + ", or say under 'blanks' what fills it");
        }
    }

    private Optional<Telling> telling(Part part) {
        Optional<String> kind = part.oneOf(KINDS);
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        if (kind.get().equals("found") || kind.get().equals("binding")) {
            return ofSearch(part, kind.get());
        }
        Optional<Integer> question = asked.question(part, kind.get());
        Optional<List<String>> on = asked.on(part, kind.get(), kind.get().equals("where"));
        if (question.isEmpty() || on.isEmpty()) {
            return Optional.empty();
        }
        int q = question.get();
        return switch (kind.get()) {
            case "value" -> thing(part, "of").map(of -> new Telling.Value(q, of, on.get()));
            case "change" -> {
                boolean inUnits = part.wordIfAny("as", FORMS).orElse(false);
                yield thing(part, "from")
                        .flatMap(from ->
                                thing(part, "to").map(to -> new Telling.Change(q, from, to, inUnits, on.get())));
            }
            case "best" ->
                subjects.isSwept() || onAxis(part, "best")
                        ? Optional.of(new Telling.Best(q, on.get()))
                        : Optional.empty();
            case "first" -> onAxis(part, "first") ? first(part, q, on.get()) : Optional.empty();
            case "order" -> Optional.of(new Telling.Order(q, on.get()));
            case "bands" ->
                thing(part, "from")
                        .flatMap(from ->
                                thing(part, "to").map(to -> new Telling.Bands(asked.bands(q), from, to, on.get())));
            default ->
                thing(part, "of")
                        .flatMap(of -> thing(part, "against").map(than -> new Telling.Where(q, of, than, on.get())));
        };
    }

    /** The value that a search found, or which of its limits bind. */
    private Optional<Telling> ofSearch(Part part, String kind) {
        if (subjects.search().isEmpty()) {
            part.reading()
                    .problem(
                            part.node(kind).orElseThrow(),
                            "",
                            "needs a search",
                            "a study with 'search'",
                            "ask for 'value', 'change' or 'order'");
            return Optional.empty();
        }
        Method.Search search = subjects.search().get();
        if (kind.equals("binding")) {
            return part.wordIfAny("binding", LIMITS).map(limits -> new Telling.Binding());
        }
        List<String> names = search.factors().stream().map(Factor::name).toList();
        return part.textIfAny("found", "the name of what is sought")
                .flatMap(text -> AskedReader.one(
                        part, "found", names.indexOf(text), text, "is not what the search varies", names))
                .map(Telling.Found::new);
    }

    private Optional<Telling> first(Part part, int question, List<String> on) {
        Optional<String> side = part.oneOf("above", "below");
        return side.flatMap(key -> asked.bound(part, key, question))
                .map(bound -> new Telling.First(question, side.get().equals("above"), bound, on));
    }

    private boolean onAxis(Part part, String key) {
        if (!subjects.isAxis()) {
            part.reading()
                    .problem(
                            part.node(key).orElseThrow(),
                            "",
                            "needs a value that varies in numbers",
                            "a sweep of one, or an uncertainty along one",
                            "ask for 'order', 'change' or 'where'");
        }
        return subjects.isAxis();
    }

    private Optional<Integer> thing(Part part, String key) {
        if (!part.has(key)) {
            if (subjects.names().size() == 1) {
                return Optional.of(0);
            }
            part.missing(key, Words.listed(subjects.names()));
            return Optional.empty();
        }
        return part.textIfAny(key, "one of what is compared").flatMap(text -> {
            if (subjects.isSwept() && (text.equals("best") || text.equals("worst"))) {
                return Optional.of(text.equals("best") ? Telling.BEST : Telling.WORST);
            }
            return AskedReader.one(
                    part, key, subjects.number(text), text, "is not " + subjects.called(), subjects.names());
        });
    }

    /**
     * What the sentences speak of: things that are compared, or levels of a value.
     *
     * @param isAxis whether they are levels that stand on an axis of numbers
     */
    private record Subjects(
            List<String> names, boolean isAxis, Optional<Method.Swept> swept, Optional<Method.Search> search) {
        /** More levels than these are not all kept. */
        static final int MOST = Levels.MOST;

        static Optional<Subjects> of(Method method, List<Variant> variants) {
            if (method instanceof Method.Compare compare) {
                return Optional.of(
                        new Subjects(compared(compare, variants), false, Optional.empty(), Optional.empty()));
            } else if (method instanceof Method.Uncertainty uncertainty) {
                return uncertainty.along().isEmpty()
                        ? Optional.of(new Subjects(List.of("as written"), false, Optional.empty(), Optional.empty()))
                        : along(uncertainty.along().get());
            } else if (method instanceof Method.Sweep sweep && sweep.swept().size() == 1) {
                return along(sweep.swept().get(0));
            } else if (method instanceof Method.Search search) {
                return Optional.of(
                        new Subjects(List.of("as written", "found"), false, Optional.empty(), Optional.of(search)));
            }
            return Optional.empty();
        }

        private static List<String> compared(Method.Compare compare, List<Variant> variants) {
            if (compare.by() == Method.By.VARIANTS) {
                return variants.stream().map(Variant::name).toList();
            }
            int label = compare.by() == Method.By.VEHICLES ? 0 : 1;
            Variant only = variants.get(0);
            Scenario scenario = only.texts().isEmpty()
                    ? only.scenario().asWritten()
                    : only.scenario().with(only.texts());
            return RideBench.tests(scenario).stream()
                    .map(test -> StudyBench.labels(test).get(label))
                    .distinct()
                    .toList();
        }

        private static Optional<Subjects> along(Method.Swept swept) {
            if (swept.coordinates().size() > MOST) {
                return Optional.empty();
            }
            List<String> names =
                    swept.coordinates().stream().map(swept.factor()::level).toList();
            return Optional.of(
                    new Subjects(names, !swept.factor().unit().isEmpty(), Optional.of(swept), Optional.empty()));
        }

        /** Whether they are levels of a value, in numbers or words. */
        boolean isSwept() {
            return swept.isPresent();
        }

        String called() {
            return swept.map(s -> "a step of " + s.factor().name())
                    .orElse(search.isPresent() ? "one of the two" : "one of what is compared");
        }

        /** Which one a text means; −1 if none. */
        int number(String text) {
            if (swept.isEmpty()) {
                return names.indexOf(text);
            }
            String wanted = bare(text);
            return IntStream.range(0, names.size())
                    .filter(i -> bare(names.get(i)).equals(wanted))
                    .findFirst()
                    .orElse(-1);
        }

        private static String bare(String text) {
            return text.replaceFirst("^x\\s*(?=\\d)", "×")
                    .replaceAll("\\s", "")
                    .replaceAll("(\\.\\d*?)0+(?!\\d)", "$1")
                    .replaceAll("\\.(?!\\d)", "");
        }
    }
}
