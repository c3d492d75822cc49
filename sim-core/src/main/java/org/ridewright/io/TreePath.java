package org.ridewright.io;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.vehicle.check.NearestWord;

/**
 * A way from the top of a tree to a value: keys and items of lists, {@code axles[1].springs[0].rate}. An item may be called by its name, and
 * {@code *} means every item.
 */
final class TreePath {
    private static final Pattern STEP = Pattern.compile("\\G\\.?(?:\\[([^\\]]*)]|([^.\\[\\]]+))");
    /** Keys whose value may name an item. */
    private static final List<String> NAMING =
            List.of("name", "file", "person", "cargo", "point", "vehicle", "road", "kind");

    private final String written;

    TreePath(String written) {
        this.written = written.strip();
    }

    /** One step down: a key, or what stands between brackets. */
    private record Step(String word, boolean item) {}

    /**
     * The paths with counted items that this one means, in the order of the tree. The last keys need not be there yet, but whatever they
     * are to be put into.
     *
     * @throws UnfitValueException if it leads nowhere, with what is there instead
     */
    List<String> in(Node top) {
        List<String> found = new ArrayList<>();
        follow(top, steps(), 0, "", found);
        return found;
    }

    private List<Step> steps() {
        Matcher matcher = STEP.matcher(written);
        List<Step> steps = new ArrayList<>();
        int end = 0;
        while (matcher.find()) {
            boolean item = matcher.group(1) != null;
            steps.add(new Step((item ? matcher.group(1) : matcher.group(2)).strip(), item));
            end = matcher.end();
        }
        if (steps.isEmpty() || end != written.length()) {
            throw new UnfitValueException("'" + written
                    + "' is no path to a value; expected keys and items such as axles[0].springs[0].rate");
        }
        return steps;
    }

    private void follow(Node node, List<Step> steps, int at, String path, List<String> found) {
        if (at == steps.size()) {
            found.add(path);
            return;
        }
        Step step = steps.get(at);
        if (step.item()) {
            Node.Sequence list = list(node, path);
            items(list, step.word(), path)
                    .forEach(i -> follow(list.items().get(i), steps, at + 1, Node.itemPath(path, i), found));
            return;
        }
        Map<String, Node.Entry> entries = entries(node, path);
        Node.Entry entry = entries.get(step.word());
        if (entry != null) {
            follow(entry.value(), steps, at + 1, Node.entryPath(path, step.word()), found);
        } else if (steps.subList(at, steps.size()).stream().noneMatch(Step::item)) {
            StringBuilder whole = new StringBuilder(path);
            for (Step rest : steps.subList(at, steps.size())) {
                whole.append(whole.isEmpty() ? "" : ".").append(rest.word());
            }
            found.add(whole.toString());
        } else {
            throw new UnfitValueException(missing(step.word(), path, entries.keySet()));
        }
    }

    private Node.Sequence list(Node node, String path) {
        if (node instanceof Node.Sequence sequence) {
            return sequence;
        }
        throw new UnfitValueException("'" + written + "': " + called(path) + " is " + node.shape()
                + ", not a list; leave out the brackets behind it");
    }

    private Map<String, Node.Entry> entries(Node node, String path) {
        if (node instanceof Node.Mapping mapping) {
            return mapping.entries();
        }
        if (node instanceof Node.Empty) {
            return Map.of();
        }
        String fix =
                node instanceof Node.Sequence ? "say which of its items, as in " + path + "[0]" : "end the path there";
        throw new UnfitValueException("'" + written + "': " + called(path) + " is " + node.shape() + "; " + fix);
    }

    private List<Integer> items(Node.Sequence list, String word, String path) {
        int size = list.items().size();
        if (word.equals("*")) {
            return IntStream.range(0, size).boxed().toList();
        }
        if (word.matches("\\d{1,6}")) {
            int index = Integer.parseInt(word);
            if (index < size) {
                return List.of(index);
            }
            throw new UnfitValueException("'" + written + "': " + called(path) + " has " + size
                    + " items, counted from 0; there is no [" + index + "]");
        }
        List<Optional<String>> names =
                list.items().stream().map(item -> name(item, word)).toList();
        List<Integer> named = IntStream.range(0, size)
                .filter(i -> names.get(i).filter(word::equals).isPresent())
                .boxed()
                .toList();
        if (named.isEmpty()) {
            throw new UnfitValueException(missing(
                    word,
                    path,
                    names.stream().flatMap(Optional::stream).collect(Collectors.toCollection(LinkedHashSet::new))));
        }
        if (named.size() > 1) {
            throw new UnfitValueException("'" + written + "': " + named.size() + " items of " + called(path)
                    + " are called " + word + "; use their number, as in [" + named.get(0) + "]");
        }
        return named;
    }

    /** The item's name; of several names the one that was asked for. */
    private static Optional<String> name(Node item, String wanted) {
        if (item instanceof Node.Scalar scalar) {
            return Optional.of(scalar.text());
        }
        if (!(item instanceof Node.Mapping mapping)) {
            return Optional.empty();
        }
        List<String> names = NAMING.stream()
                .map(key -> mapping.entries().get(key))
                .filter(entry -> entry != null && entry.value() instanceof Node.Scalar)
                .map(entry -> ((Node.Scalar) entry.value()).text())
                .toList();
        return names.stream()
                .filter(wanted::equals)
                .findFirst()
                .or(() -> names.stream().findFirst());
    }

    private String missing(String word, String path, Set<String> there) {
        String near = NearestWord.to(word, there).map(n -> "; write " + n).orElse("");
        String listed = there.isEmpty() ? "" : "; there are " + String.join(", ", there);
        return "'" + written + "': " + called(path) + " has no " + word + (near.isEmpty() ? listed : near);
    }

    private static String called(String path) {
        return path.isEmpty() ? "the file" : path;
    }
}
