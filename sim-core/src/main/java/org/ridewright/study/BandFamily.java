package org.ridewright.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.signal.ThirdOctave;

/**
 * The questions that ask one thing in all third octaves.
 *
 * @param first that of the lowest band
 * @param questions their numbers in the study, lowest band first
 * @param bands of each
 */
public record BandFamily(Question first, List<Integer> questions, List<ThirdOctave> bands) {
    public BandFamily {
        questions = List.copyOf(questions);
        bands = List.copyOf(bands);
    }

    /** All families among a study's questions, in their order. */
    public static List<BandFamily> of(List<Question> questions) {
        Map<String, List<Integer>> numbers = new LinkedHashMap<>();
        for (int q = 0; q < questions.size(); q++) {
            if (questions.get(q).band().isPresent()) {
                numbers.computeIfAbsent(questions.get(q).family(), f -> new ArrayList<>())
                        .add(q);
            }
        }
        return numbers.values().stream()
                .map(family -> new BandFamily(
                        questions.get(family.get(0)),
                        family,
                        family.stream()
                                .map(q -> questions.get(q).band().orElseThrow())
                                .toList()))
                .toList();
    }
}
