package org.ridewright.study;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.quantity.Adjustable;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.Multiple;
import org.ridewright.quantity.QuantityFormatException;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.quantity.Spread;
import org.ridewright.quantity.UnfitValueException;

/**
 * Puts changes over values that were drawn. A change stays, whatever the tolerance of what it changes; a multiple is of the value that was drawn, so
 * that {@code × 1} changes nothing. Belongs to one thread.
 */
final class Overlay {
    private final Adjustable<?> document;
    /** Counted paths by path as an author writes it. */
    private final Map<String, List<String>> meant = new HashMap<>();

    Overlay(Adjustable<?> document) {
        this.document = document;
    }

    /**
     * What a run puts into the files.
     *
     * @param texts by path, those that prevail last
     * @param cells of the drawn values as they are used at last (SI), by path; empty where something else stands there
     */
    record Result(Map<String, String> texts, Map<String, String> cells) {}

    Result over(List<Uncertain.Drawn> drawn, Map<String, String> changes) {
        Map<String, String> texts = new LinkedHashMap<>();
        Map<String, String> cells = new LinkedHashMap<>();
        Map<String, Uncertain.Drawn> byPath = new HashMap<>();
        for (Uncertain.Drawn each : drawn) {
            byPath.put(each.path(), each);
            texts.put(each.path(), Spread.written(each.spread().kind(), each.value()));
            cells.put(each.path(), Double.toString(each.value()));
        }
        changes.forEach((path, text) -> {
            Optional<Multiple> multiple = Multiple.parse(text);
            List<String> places = drawn.isEmpty() ? List.of() : meant(path);
            boolean ofDrawn = multiple.isPresent() && places.stream().anyMatch(byPath::containsKey);
            for (String place : ofDrawn ? places : List.of(path)) {
                Uncertain.Drawn base = ofDrawn ? byPath.get(place) : null;
                // put in anew, since of two paths that mean one value the later prevails
                texts.remove(place);
                texts.put(
                        place,
                        base == null ? text : multiple.get().of(base.spread().kind(), base.value()));
            }
            for (String place : places) {
                Uncertain.Drawn base = byPath.get(place);
                if (base != null && multiple.isPresent()) {
                    cells.put(place, Double.toString(multiple.get().factor() * base.value()));
                } else if (base != null) {
                    cells.put(place, number(text, base.spread().kind()));
                } else {
                    cells.replaceAll((other, cell) -> isWithin(other, place) ? "" : cell);
                }
            }
        });
        return new Result(texts, cells);
    }

    private List<String> meant(String path) {
        return meant.computeIfAbsent(path, written -> {
            try {
                return document.meant(written);
            } catch (UnfitValueException elsewhere) {
                // of a vehicle that a change puts in
                return List.of();
            }
        });
    }

    private static boolean isWithin(String path, String whole) {
        return path.startsWith(whole + ".") || path.startsWith(whole + "[");
    }

    private static String number(String text, QuantityKind kind) {
        try {
            return Double.toString(Measures.parse(text, kind).value());
        } catch (QuantityFormatException word) {
            return "";
        }
    }
}
