package org.ridewright.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a study says of its question: sentences in the author's words, with blanks between braces, filled from the numbers.
 *
 * @param sentences at least one
 * @param blanks what fills each blank, by its name
 */
public record Answer(List<String> sentences, Map<String, Telling> blanks) {
    /** A blank in a sentence. */
    public static final Pattern BLANK = Pattern.compile("\\{([^{}]*)}");

    public Answer {
        sentences = List.copyOf(sentences);
        blanks = Collections.unmodifiableMap(new LinkedHashMap<>(blanks));
    }

    /** Names of the blanks in a sentence, in order. */
    public static List<String> blanks(String sentence) {
        return BLANK.matcher(sentence).results().map(found -> found.group(1)).toList();
    }

    /**
     * The sentences with their blanks filled.
     *
     * @param words what to write in each blank
     */
    public List<String> with(Map<String, String> words) {
        return sentences.stream()
                .map(s -> BLANK.matcher(s).replaceAll(found -> Matcher.quoteReplacement(words.get(found.group(1)))))
                .toList();
    }
}
