package org.ridewright.study;

import java.util.List;

/**
 * A question to be answered by many runs.
 *
 * @param about in the author's words; may be empty
 * @param variants at least one; methods other than a comparison use the first
 * @param questions at least one
 * @param fingerprint of all files that the study rests on; runs of one fingerprint can stand in for each other
 */
public record Study(
        String name,
        String about,
        List<Variant> variants,
        List<Question> questions,
        Method method,
        String fingerprint) {
    public Study {
        variants = List.copyOf(variants);
        questions = List.copyOf(questions);
    }

    /** Its runs; of a search, which finds its runs as it goes, none but the first. */
    public Schedule schedule() {
        return Schedules.of(this);
    }
}
