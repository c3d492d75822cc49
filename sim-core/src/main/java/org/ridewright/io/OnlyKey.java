package org.ridewright.io;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the one key that says of which kind an item of a list is. */
final class OnlyKey {
    private OnlyKey() {}

    /** The one kind that the item names, of those known; of an item with an unknown key no more is asked. */
    static Optional<String> of(Part item, String... kinds) {
        List<String> given = Stream.of(kinds).filter(item::has).toList();
        given.stream()
                .skip(1)
                .forEach(kind -> item.conflict(
                        kind,
                        "stands in the same item as '" + given.get(0) + "'",
                        "begin it with a dash of its own: - " + kind + ": ..."));
        if (given.isEmpty() && !item.reading().isSpoiltWithin(item.path())) {
            item.missing(kinds[0], Words.listed(List.of(kinds)));
        }
        return given.size() == 1 ? Optional.of(given.get(0)) : Optional.empty();
    }
}
