package org.ridewright.quantity;

import java.util.List;
import java.util.Map;

/**
 * A description of which every written value has a name and can be exchanged, so that calibrations, draws and studies need not know
 * the description.
 *
 * <p>A path names keys and items of lists: {@code axles[1].springs[0].rate}. An item that has a name may be called by it,
 * {@code axles[rear].springs[main].rate}.
 *
 * @param <D> the description
 */
public interface Adjustable<D> {
    /** As the file has it. */
    D asWritten();

    /** All single values that the file writes, in its order, each by its path with counted items. */
    List<NamedValue> values();

    /**
     * The value at a path.
     *
     * @throws UnfitValueException if the file has no such value, with the nearest path that it has
     */
    NamedValue value(String path);

    /**
     * The paths with counted items that a path with names and stars means; of a part that the file uses again, by its first place.
     *
     * @throws UnfitValueException if it leads nowhere
     */
    default List<String> meant(String path) {
        return List.of(path);
    }

    /**
     * The same description with other values at some paths; {@code this} stays as it is.
     *
     * @param texts from path to what is to stand there, in the words of the file ({@code 14.2 kN/m}, {@code iron})
     * @throws UnfitValueException if there is no such path, or no such vehicle or scenario can be
     */
    D with(Map<String, String> texts);

    /** What is known of all values that have a tolerance, in the order of the file; independent unless the description says how they hang together. */
    default JointSpread spread() {
        return JointSpread.independent(values().stream()
                .filter(value -> value.measure().filter(m -> m.tolerance() > 0).isPresent())
                .toList());
    }
}
