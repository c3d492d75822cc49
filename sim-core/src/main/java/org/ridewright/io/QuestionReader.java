package org.ridewright.io;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ridewright.ride.RidePlaces;
import org.ridewright.ride.Scenario;
import org.ridewright.study.Places;
import org.ridewright.study.Question;
import org.ridewright.study.RideMeasure;

/** Reads what a study asks of its ride tests. */
final class QuestionReader {
    private static final Words<RideMeasure> MEASURES =
            Words.of("a measure of a ride", Arrays.asList(RideMeasure.values()), RideMeasure::word);

    private QuestionReader() {}

    /** @param scenario in whose ride tests the places must be; absent where it could not be read */
    static List<Question> read(Part study, Optional<Scenario> scenario) {
        if (!study.has("answers")) {
            study.missing("answers", "a list of measures such as [a_w, {measure: peak, at: driver}]");
        }
        Optional<RidePlaces> places = scenario.map(RidePlaces::of);
        Values values = new Values(study.reading());
        List<Question> questions = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (Node item : study.itemsOrOne("answers", "measures such as a_w, VDV or {measure: peak, at: driver}")) {
            List<Question> asked = asked(item, study, values, places);
            if (!asked.isEmpty() && !seen.add(asked.get(0).family())) {
                study.reading()
                        .problem(
                                item,
                                asked.get(0).family(),
                                "is asked twice",
                                "each answer once",
                                "remove one of them, or name another place with 'at'");
            }
            if (!asked.isEmpty() && asked.get(0).measure().isInBands() && !study.has("compare")) {
                study.reading()
                        .problem(
                                item,
                                asked.get(0).family(),
                                "are asked of a study that compares nothing",
                                "third octaves in a study with 'compare', whose figure puts the bands of two things side by side",
                                "ask for heave, jolt and buzz");
            }
            questions.addAll(asked);
        }
        if (study.has("answers") && questions.isEmpty() && !study.reading().isSpoiltWithin(study.path("answers"))) {
            study.reading()
                    .problem(
                            study.node("answers").orElseThrow(),
                            "",
                            "asks nothing",
                            "one measure at least: " + MEASURES.listed(),
                            "write answers: [a_w]");
        }
        return questions;
    }

    /** One, or one for each band; none if something is wrong, which is noted. */
    private static List<Question> asked(Node item, Part study, Values values, Optional<RidePlaces> places) {
        if (!(item instanceof Node.Mapping)) {
            return values.word(item, MEASURES)
                    .map(m -> Question.of(m, Optional.empty()))
                    .orElse(List.of());
        }
        Part part = Part.of(study.reading(), item, "an answer", "measure", "at");
        if (!part.has("measure")) {
            part.missing("measure", MEASURES.called() + ": " + MEASURES.listed());
            return List.of();
        }
        List<Question> asked = part.wordIfAny("measure", MEASURES)
                .map(m -> Question.of(m, part.textIfAny("at", "the name of a place")))
                .orElse(List.of());
        if (!asked.isEmpty()) {
            places.ifPresent(p -> check(asked.get(0), p, part));
        }
        return asked;
    }

    private static void check(Question question, RidePlaces places, Part part) {
        if (question.place().isEmpty()) {
            return;
        }
        String place = question.place().get();
        Set<String> known = names(question.measure().places(), places);
        if (!known.contains(place) && !known.isEmpty()) {
            part.node("at")
                    .ifPresent(node -> part.reading()
                            .problem(
                                    node,
                                    place,
                                    "is no " + question.measure().places().called() + " of any ride test",
                                    Words.listed(List.copyOf(known)),
                                    Hints.nearest(place, known) + ", or leave out 'at' for the worst of all"));
        }
    }

    private static Set<String> names(Places kind, RidePlaces places) {
        Set<String> names = new LinkedHashSet<>();
        switch (kind) {
            case SEATS -> names.addAll(places.seats());
            case SEATS_AND_POINTS -> {
                names.addAll(places.seats());
                names.addAll(places.points());
            }
            case WHEELS -> names.addAll(places.wheels());
            case SPRINGS -> names.addAll(places.elements());
            case MOTIONS -> names.addAll(List.of("heave", "roll", "pitch"));
            case VEHICLE -> names.add("vehicle");
        }
        return names;
    }
}
