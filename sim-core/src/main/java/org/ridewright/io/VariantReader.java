package org.ridewright.io;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.ride.Scenario;
import org.ridewright.study.Variant;

/** Reads scenarios with some values changed, as studies name them; each scenario file is read once. */
final class VariantReader {
    private final Path folder;
    private final Map<Path, ScenarioDocument> documents = new LinkedHashMap<>();
    private final Set<Path> broken = new LinkedHashSet<>();

    /** @param folder from which the names of scenario files are reckoned */
    VariantReader(Path folder) {
        this.folder = folder;
    }

    /**
     * A variant with the document that it changes, and what becomes of it.
     *
     * @param document tolerances and all: other vehicle files and values with tolerances of their own are written in
     * @param written the file itself
     * @param changes all of them, by path
     * @param unread paths of changes whose tolerances cannot be drawn
     */
    record Base(
            Variant variant,
            ScenarioDocument document,
            Scenario scenario,
            ScenarioDocument written,
            Map<String, String> changes,
            List<String> unread) {}

    /** Every file that was read for a scenario. */
    Set<Path> files() {
        Set<Path> files = new LinkedHashSet<>();
        documents.values().forEach(document -> files.addAll(document.files()));
        return files;
    }

    /** The scenario of a required key {@code base}, with the changes of {@code with}; empty if it cannot be read. */
    Optional<Base> base(Part part, String name) {
        String file = part.text("base", "the name of a scenario file, reckoned from the folder of the study");
        Optional<ScenarioDocument> document =
                file.isEmpty() ? Optional.empty() : part.node("base").flatMap(node -> read(part, node, file));
        return document.flatMap(d -> variant(part, name, d, Map.of()));
    }

    /** A variant of {@code base}, or of another scenario that it names. */
    Optional<Base> variant(Part part, Base base) {
        String name = part.text("called", "a name for figures and tables");
        if (!part.has("base")) {
            return variant(part, name, base.written(), base.changes());
        }
        return base(part, name);
    }

    private Optional<Base> variant(Part part, String name, ScenarioDocument document, Map<String, String> before) {
        Map<String, String> texts = new LinkedHashMap<>(before);
        Map<String, String> own = changes(part);
        texts.putAll(own);
        try {
            Scenario scenario = texts.isEmpty() ? document.asWritten() : document.with(texts);
            StatedChanges changes = StatedChanges.of(document, texts);
            ScenarioDocument stated = changes.within().isEmpty() ? document : document.stating(changes.within());
            if (!changes.within().isEmpty()) {
                scenario = stated.with(changes.over());
            }
            Map<String, String> over = changes.within().isEmpty() ? texts : changes.over();
            return Optional.of(new Base(
                    new Variant(name, stated, over, changes.within(), document.fileName(), texts),
                    stated,
                    scenario,
                    document,
                    texts,
                    changes.unread()));
        } catch (UnfitValueException unfit) {
            refuse(part, document, texts, unfit);
            return Optional.empty();
        }
    }

    /** Notes every change that cannot be, beside those that can. */
    private static void refuse(
            Part part, ScenarioDocument document, Map<String, String> texts, UnfitValueException together) {
        Map<String, UnfitValueException> pending = new LinkedHashMap<>();
        texts.keySet().forEach(path -> pending.put(path, together));
        Map<String, String> good = new LinkedHashMap<>();
        for (boolean progress = true; progress; ) {
            progress = false;
            for (String path : List.copyOf(pending.keySet())) {
                Map<String, String> tried = new LinkedHashMap<>(good);
                tried.put(path, texts.get(path));
                try {
                    document.with(tried);
                    good = tried;
                    pending.remove(path);
                    progress = true;
                } catch (UnfitValueException alone) {
                    pending.put(path, alone);
                }
            }
        }
        Node with = part.node("with").orElse(null);
        if (with == null || pending.isEmpty()) {
            Node place = with == null ? part.node("base").orElse(new Node.Empty(Spot.WHOLE_FILE, part.path())) : with;
            Refused.of(together)
                    .addTo(part.reading(), place, "", "asks for what cannot be: ", "changes that can be made together");
            return;
        }
        pending.forEach((path, why) -> {
            Node place =
                    with instanceof Node.Mapping mapping && mapping.entries().containsKey(path)
                            ? mapping.entries().get(path).value()
                            : with;
            Refused.of(why)
                    .addTo(
                            part.reading(),
                            place,
                            "",
                            "asks for what cannot be: ",
                            "the path of a value of the base or its vehicles, and what may stand there");
        });
    }

    private static Map<String, String> changes(Part part) {
        Map<String, String> texts = new LinkedHashMap<>();
        Optional<Node> node = part.node("with");
        if (node.isEmpty()) {
            return texts;
        }
        if (node.get() instanceof Node.Mapping mapping) {
            Values values = new Values(part.reading());
            mapping.entries().forEach((path, entry) -> {
                if (entry.value() instanceof Node.Scalar scalar && scalar.text().isEmpty()) {
                    // an empty text, written as such, takes the key away
                    texts.put(path, "");
                } else {
                    values.text(entry.value(), "what is to stand there, or \"\" if nothing is")
                            .ifPresent(text -> texts.put(path, text));
                }
            });
        } else {
            part.reading()
                    .problem(
                            node.get(),
                            "",
                            "is " + node.get().shape(),
                            "values by path, such as vehicles[0].speeds[0]: 8 km/h",
                            "write one path and its value on each line below, indented");
        }
        return texts;
    }

    private Optional<ScenarioDocument> read(Part part, Node node, String file) {
        Path path;
        try {
            path = folder.resolve(file);
        } catch (InvalidPathException impossible) {
            part.reading()
                    .problem(
                            node,
                            file,
                            "cannot be the name of a file",
                            "the name of a scenario file",
                            "write the name as the folder shows it");
            return Optional.empty();
        }
        if (!Files.isRegularFile(path)) {
            String fix = TreeFile.nearestFile(path)
                    .map(near -> "write "
                            + Path.of(file).resolveSibling(near).toString().replace('\\', '/'))
                    .orElse("check the name; it is reckoned from the folder of the study");
            part.reading()
                    .problem(
                            node,
                            file,
                            Files.isDirectory(path) ? "is a folder" : "is not there",
                            "the name of a scenario file",
                            fix);
            return Optional.empty();
        }
        Path known = path.toAbsolutePath().normalize();
        if (broken.contains(known)) {
            return Optional.empty();
        }
        try {
            if (!documents.containsKey(known)) {
                documents.put(known, ScenarioDocument.read(path));
            }
            return Optional.of(documents.get(known));
        } catch (InputException faults) {
            broken.add(known);
            part.reading().include(faults.problems());
            return Optional.empty();
        }
    }

    /** Of a refusal that lists several faults, the first, without what would do instead. */
    static String oneLine(UnfitValueException unfit) {
        if (unfit instanceof InputException input && !input.problems().isEmpty()) {
            InputProblem first = input.problems().get(0);
            return (first.path() + ": " + first.value()).strip() + " " + first.fault();
        }
        return unfit.getMessage().strip().replaceAll("\\s*\\R\\s*", "; ").replaceFirst("\\.$", "");
    }
}
