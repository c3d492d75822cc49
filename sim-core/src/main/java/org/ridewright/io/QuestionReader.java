package org.ridewright.io;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ridewright.ride.RidePlaces;
import org.ridewright.ride.Scenario;
import org.ridewright.study.Question;
import org.ridewright.study.RideMeasure;

/** Reads what a study asks of its ride tests. */
final class QuestionReader {
    private static final Words<RideMeasure> MEASURES =
            new Words<>("a measure of a ride", lowerCase(Arrays.asList(RideMeasure.values())));

    private QuestionReader() {}

    private static Map<String, RideMeasure> lowerCase(List<RideMeasure> measures) {
        Map<String, RideMeasure> meanings = new LinkedHashMap<>();
        measures.forEach(m -> meanings.put(m.word().toLowerCase(Locale.ROOT), m));
        return meanings;
    }

    /** @param scenario in whose ride tests the places must be; absent where it could not be read */
    static List<Question> read(Part study, Optional<Scenario> scenario) {
        if (!study.has("answers")) {
            study.missing("answers", "a list of measures such as [a_w, {measure: peak, at: driver}]");
        }
        Optional<RidePlaces> places = scenario.map(RidePlaces::of);
        Values values = new Values(study.reading());
        List<Question> questions = new ArrayList<>();
        Set<Question> seen = new LinkedHashSet<>();
        for (Node item : study.itemsOrOne("answers", "measures such as a_w, VDV or {measure: peak, at: driver}")) {
            Optional<Question> question;
            if (item instanceof Node.Mapping) {
                Part part = Part.of(study.reading(), item, "an answer", "measure", "at");
                question = part.has("measure")
                        ? part.wordIfAny("measure", MEASURES)
                                .map(m -> new Question(m, part.textIfAny("at", "the name of a place")))
                        : Optional.empty();
                if (!part.has("measure")) {
                    part.missing("measure", MEASURES.called() + ": " + MEASURES.listed());
                }
                question.ifPresent(q -> places.ifPresent(p -> check(q, p, part)));
            } else {
                question = values.word(item, MEASURES).map(m -> new Question(m, Optional.empty()));
            }
            if (question.isPresent() && !seen.add(question.get())) {
                study.reading()
                        .problem(
                                item,
                                question.get().name(),
                                "is asked twice",
                                "each answer once",
                                "remove one of them, or name another place with 'at'");
            }
            question.ifPresent(questions::add);
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

    private static Set<String> names(RideMeasure.Places kind, RidePlaces places) {
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
