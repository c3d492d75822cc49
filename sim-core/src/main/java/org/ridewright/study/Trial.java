package org.ridewright.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One run of a study: all ride tests of a variant with some values changed.
 *
 * @param run number, from 0
 * @param variant number of the variant
 * @param role what the run is for, in a word
 * @param texts changes by path, those of the variant included; where two mean one value, the later one prevails
 * @param cells what varies, as it stands in a table's columns
 */
public record Trial(long run, int variant, String role, Map<String, String> texts, List<String> cells) {
    public Trial {
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
        cells = List.copyOf(cells);
    }
}
