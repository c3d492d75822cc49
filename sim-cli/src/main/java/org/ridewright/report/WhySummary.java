package org.ridewright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ridewright.uncertainty.Interval;
import org.ridewright.why.Contribution;
import org.ridewright.why.Contribution.Verdict;
import org.ridewright.why.WhyFindings;

/** Which exchange would lower the first number most, and which would raise it most, in a sentence each. */
final class WhySummary {
    private final WhyFindings findings;

    private WhySummary(WhyFindings findings) {
        this.findings = findings;
    }

    static List<String> of(WhyFindings findings) {
        if (findings.questions().isEmpty()) {
            return List.of("Nothing could be measured on this ride.");
        }
        WhySummary summary = new WhySummary(findings);
        return List.of(summary.sentence(Verdict.LOWERS, "lower"), summary.sentence(Verdict.RAISES, "raise"));
    }

    private String sentence(Verdict verdict, String does) {
        Map<String, List<String>> byExchange = new LinkedHashMap<>();
        List<String> without = new ArrayList<>();
        for (int t = 0; t < findings.tests().size(); t++) {
            String ride = findings.tests().get(t);
            most(t, verdict, does)
                    .ifPresentOrElse(
                            most -> byExchange
                                    .computeIfAbsent(most.exchange(), e -> new ArrayList<>())
                                    .add("on " + ride + " " + most.effect()),
                            () -> without.add(ride));
        }
        String number = WhyWords.number(findings.questions().get(0));
        if (byExchange.isEmpty()) {
            return "None of the exchanges can be told to %s %s.".formatted(does, number);
        }
        String exchanges = byExchange.entrySet().stream()
                .map(e -> e.getKey() + " (" + WhyWords.joined(e.getValue(), "and") + ")")
                .collect(Collectors.joining("; and by "));
        String rest = without.isEmpty()
                ? ""
                : "; on " + WhyWords.joined(without, "and") + " none can be told to " + does + " it";
        return RideFigures.upperFirst("%s would be %s most by %s%s."
                .formatted(number, does.equals("raise") ? "raised" : "lowered", exchanges, rest));
    }

    private record Most(String exchange, String effect) {}

    /** The one that does most of its kind, with the others that may do as much. */
    private Optional<Most> most(int t, Verdict verdict, String does) {
        List<Integer> such = WhyWords.ranked(findings, t).stream()
                .filter(i -> findings.alone(t, 0, i).verdict() == verdict)
                .toList();
        if (such.isEmpty()) {
            return Optional.empty();
        }
        Contribution first = findings.alone(t, 0, such.get(0));
        // one of which nothing can be told may yet do more
        String rivals = WhyWords.ranked(findings, t).stream()
                .filter(i -> !i.equals(such.get(0)))
                .filter(i -> findings.alone(t, 0, i).verdict() == verdict
                        || findings.alone(t, 0, i).verdict() == Verdict.UNTOLD)
                .filter(i -> first.largerThan(findings.alone(t, 0, i)) < WhyWords.SURE)
                .map(i -> findings.swaps().get(i).name())
                .collect(Collectors.joining(" or "));
        Interval interval = first.interval();
        String effect = interval.low() >= WhyWords.MANIFOLD
                ? "to " + WhyWords.times(interval) + " what it is now"
                : "by " + WhyWords.sized(interval);
        return Optional.of(new Most(
                WhyWords.swap(findings, such.get(0)),
                effect
                        + (rivals.isEmpty()
                                ? ""
                                : ", unless " + rivals + " " + does + (rivals.contains(" or ") ? "" : "s")
                                        + " it more")));
    }
}
