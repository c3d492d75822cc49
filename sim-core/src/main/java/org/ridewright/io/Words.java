package org.ridewright.io;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The words that may stand for one choice, in large or small letters.
 *
 * @param called what is chosen, with its article
 * @param meanings the words and what they mean
 */
record Words<E>(String called, Map<String, E> meanings) {
    static <E> Words<E> of(String called, List<E> values, Function<E, String> word) {
        Map<String, E> meanings = new LinkedHashMap<>();
        values.forEach(value -> meanings.put(word.apply(value), value));
        return new Words<>(called, meanings);
    }

    Optional<E> meaning(String written) {
        String plain = written.replaceAll("\\s+", " ");
        return meanings.entrySet().stream()
                .filter(e -> e.getKey().equalsIgnoreCase(plain))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    List<String> all() {
        return List.copyOf(meanings.keySet());
    }

    /** All words in a row, for a message. */
    String listed() {
        return listed(all());
    }

    /** Words in a row, for a message. */
    static String listed(List<String> words) {
        int last = words.size() - 1;
        return last < 1 ? String.join("", words) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }
}
