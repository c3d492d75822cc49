package org.ridewright.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ridewright.quantity.JointSpread;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.study.Uncertain;

/** Finds what is uncertain in a scenario and its vehicles: every value with a tolerance, those calibrated together with their correlation. */
final class UncertainReader {
    /** More items than any list of a file. */
    private static final int MOST_ITEMS = 60;
    /** Correlations are written to a few decimals. */
    private static final double UNCORRELATED = 1e-6;

    private UncertainReader() {}

    /** Everything of a scenario. */
    static Uncertain all(ScenarioDocument document) {
        List<Uncertain.Block> blocks = new ArrayList<>();
        List<NamedValue> own = document.values().stream()
                .filter(v -> !v.path().matches("vehicles\\[\\d+]\\.vehicle\\..*"))
                .filter(v -> v.measure().filter(m -> m.tolerance() > 0).isPresent())
                .toList();
        add(blocks, document.file(), "", JointSpread.independent(own), document.stated());
        for (int i = 0; i < document.vehicles().size(); i++) {
            VehicleDocument vehicle = document.vehicles().get(i);
            add(blocks, vehicle.file(), ScenarioDocument.vehiclePath(i, ""), vehicle.spread(), vehicle.stated());
        }
        return new Uncertain(blocks);
    }

    /** What a study states in place of the file's is another value than that of the file, and drawn apart from it. */
    private static void add(
            List<Uncertain.Block> blocks, Path file, String prefix, JointSpread joint, Map<String, String> stated) {
        String source = file.toAbsolutePath().normalize().toString();
        Set<String> written = new LinkedHashSet<>(joint.paths());
        written.removeAll(stated.keySet());
        if (!written.isEmpty()) {
            blocks.add(new Uncertain.Block(source, prefix, joint, written));
        }
        for (int i = 0; i < joint.size(); i++) {
            String path = joint.paths().get(i);
            if (stated.containsKey(path)) {
                blocks.add(
                        new Uncertain.Block(source + " with " + stated.get(path), prefix, joint.only(i), Set.of(path)));
            }
        }
    }

    /** Those at the paths of a key {@code of}; all if there is none. Notes paths that lead to nothing uncertain. */
    static Uncertain chosen(Part part, ScenarioDocument document) {
        Uncertain all = all(document);
        if (!part.has("of")) {
            if (all.paths().isEmpty()) {
                part.reading()
                        .problem(
                                part.node("draws").orElse(new Node.Empty(Spot.WHOLE_FILE, part.path())),
                                "",
                                "draws from tolerances, but no value of the base or its vehicles has one",
                                "values such as 44 in ± 1/4 in",
                                "state tolerances in the vehicle file");
            }
            return all;
        }
        Set<String> wanted = new LinkedHashSet<>();
        for (Node item : part.itemsOrOne("of", "paths of values with a tolerance")) {
            new Values(part.reading())
                    .text(item, "the path of a value with a tolerance")
                    .ifPresent(path -> wanted.addAll(found(part, item, path, document, all)));
        }
        List<Uncertain.Block> blocks = new ArrayList<>();
        for (Uncertain.Block block : all.blocks()) {
            Set<String> chosen = new LinkedHashSet<>(block.chosen());
            chosen.removeIf(path -> !wanted.contains(block.prefix() + path));
            if (!chosen.isEmpty()) {
                blocks.add(new Uncertain.Block(block.source(), block.prefix(), block.joint(), chosen));
            }
        }
        return new Uncertain(blocks);
    }

    /** The same, for values that are drawn together: those that were calibrated with others are known only together with them. */
    static Uncertain together(Part part, ScenarioDocument document) {
        Uncertain chosen = chosen(part, document);
        for (Uncertain.Block block : part.has("of") ? chosen.blocks() : List.<Uncertain.Block>of()) {
            Set<String> partners = partners(block);
            if (!partners.isEmpty()) {
                part.reading()
                        .problem(
                                part.node("of").orElseThrow(),
                                "",
                                "draws only some of the values that were calibrated together, and are correlated",
                                "their partners too: " + Words.listed(List.copyOf(partners)),
                                "add them to 'of', or leave 'of' out");
                return chosen;
            }
        }
        return chosen;
    }

    /** Values that are correlated with chosen ones, but not chosen. */
    private static Set<String> partners(Uncertain.Block block) {
        Set<String> partners = new LinkedHashSet<>();
        List<String> paths = block.joint().paths();
        for (int i = 0; i < paths.size(); i++) {
            for (int j = 0; j < paths.size(); j++) {
                boolean one =
                        block.chosen().contains(paths.get(i)) && !block.chosen().contains(paths.get(j));
                if (one && Math.abs(block.joint().correlation(i, j)) > UNCORRELATED) {
                    partners.add(block.prefix() + paths.get(j));
                }
            }
        }
        return partners;
    }

    private static Set<String> found(Part part, Node item, String path, ScenarioDocument document, Uncertain all) {
        Set<String> uncertain = new LinkedHashSet<>();
        for (Uncertain.Block block : all.blocks()) {
            block.joint().paths().forEach(p -> uncertain.add(block.prefix() + p));
        }
        try {
            Set<String> counted = counted(path, document);
            counted.retainAll(uncertain);
            if (counted.isEmpty()) {
                part.reading()
                        .problem(
                                item,
                                path,
                                "has no tolerance from which to draw",
                                "a value such as 44 in ± 1/4 in",
                                "state one in its file, or take it off the list");
            }
            return counted;
        } catch (UnfitValueException none) {
            part.reading()
                    .problem(
                            item,
                            "",
                            VariantReader.oneLine(none),
                            "the path of a value with a tolerance",
                            "correct the path");
            return Set.of();
        }
    }

    /** The paths with counted items that a path with names and stars means. */
    private static Set<String> counted(String path, ScenarioDocument document) {
        Set<String> paths = new LinkedHashSet<>();
        if (!path.contains("[*]")) {
            paths.add(document.value(path).path());
            return paths;
        }
        UnfitValueException last = null;
        for (int i = 0; i < MOST_ITEMS; i++) {
            try {
                paths.addAll(counted(path.replaceFirst("\\[\\*]", "[" + i + "]"), document));
            } catch (UnfitValueException lacks) {
                last = last == null ? lacks : last;
            }
        }
        if (paths.isEmpty() && last != null) {
            throw last;
        }
        return paths;
    }
}
