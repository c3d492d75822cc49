package org.ridewright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.study.Question;
import org.ridewright.study.RideMeasure;
import org.ridewright.uncertainty.Interval;
import org.ridewright.why.Contribution;
import org.ridewright.why.Contribution.Verdict;
import org.ridewright.why.Swap;
import org.ridewright.why.WhyFindings;

/** What was found, in sentences that claim no more than the intervals allow. */
public final class WhyWords {
    /** Share of draws that must agree before one contribution is called the larger. */
    static final double SURE = 0.95;
    /** Interactions that are told. */
    private static final int MOST_PAIRS = 3;

    /** Rises larger than this are told as a multiple (parts). */
    static final double MANIFOLD = 1;

    /** What is given or taken is at least so much (parts). */
    private static final double WORTH = 0.05;

    private WhyWords() {}

    /** A pair of swaps. */
    record Pair(int i, int j) {}

    /** The answer in two sentences at most. */
    public static List<String> summary(WhyFindings findings) {
        return WhySummary.of(findings);
    }

    /** What lies behind it, a section for each ride, then what changes nothing. */
    public static List<Section> sections(WhyFindings findings) {
        List<Section> sections = new ArrayList<>();
        for (int t = 0; t < findings.tests().size() && !findings.questions().isEmpty(); t++) {
            List<String> paragraphs = new ArrayList<>();
            paragraphs.add(RideFigures.upperFirst(leading(findings, t)));
            paragraphs.addAll(others(findings, t));
            paragraphs.addAll(interactions(findings, t));
            paragraphs.addAll(trades(findings, t));
            sections.add(new Section(RideFigures.upperFirst(findings.tests().get(t)), paragraphs));
        }
        List<String> idle = IntStream.range(0, findings.swaps().size())
                .filter(i -> !findings.questions().isEmpty() && findings.isVoid(i))
                .mapToObj(i -> "The exchange of " + findings.swaps().get(i).name()
                        + " changes no number at all: what it changes is not in use on this ride.")
                .toList();
        if (!idle.isEmpty()) {
            sections.add(new Section("What changes nothing", idle));
        }
        return sections;
    }

    private static String leading(WhyFindings findings, int t) {
        List<Integer> order = ranked(findings, t);
        int first = lead(findings, t);
        Contribution most = findings.alone(t, 0, first);
        String number = number(findings.questions().get(0));
        if (!told(most)) {
            return "none of the exchanges can be told to change " + number + ": the largest of them, "
                    + findings.swaps().get(first).name() + ", would change it by " + signed(most.interval()) + ".";
        }
        List<Integer> level = order.stream()
                .filter(i -> i != first)
                .filter(i -> most.largerThan(findings.alone(t, 0, i)) < SURE)
                .toList();
        String does = swap(findings, first) + " " + effect(most, number);
        List<String> rivals =
                level.stream().map(i -> findings.swaps().get(i).name()).toList();
        if (order.size() == 1) {
            return does + ".";
        }
        return level.isEmpty()
                ? "of all exchanges one does most: " + does + "."
                : does + ", which leads; whether it does more than " + joined(rivals, "or") + " cannot be told.";
    }

    /** By the size of what they do to the first number, the largest first. */
    static List<Integer> ranked(WhyFindings findings, int t) {
        return IntStream.range(0, findings.swaps().size())
                .boxed()
                .sorted(Comparator.comparingDouble(
                        i -> -Math.abs(findings.alone(t, 0, i).interval().median())))
                .toList();
    }

    /** The largest of those of which can be told whether they raise or lower the first number, or, if there is none, of all. */
    private static int lead(WhyFindings findings, int t) {
        List<Integer> order = ranked(findings, t);
        return order.stream()
                .filter(i -> told(findings.alone(t, 0, i)))
                .findFirst()
                .orElse(order.get(0));
    }

    private static List<String> others(WhyFindings findings, int t) {
        int lead = lead(findings, t);
        List<Integer> order =
                ranked(findings, t).stream().filter(i -> i != lead).toList();
        List<String> lower = new ArrayList<>();
        List<String> raise = new ArrayList<>();
        List<String> untold = new ArrayList<>();
        List<String> nothing = new ArrayList<>();
        for (int i : order) {
            Contribution part = findings.alone(t, 0, i);
            switch (part.verdict()) {
                case LOWERS -> lower.add(swap(findings, i) + " by " + sized(part.interval()));
                case RAISES -> raise.add(swap(findings, i) + raised(part));
                case UNTOLD -> untold.add(findings.swaps().get(i).name() + " (" + signed(part.interval()) + ")");
                case NOTHING -> {
                    if (!findings.isVoid(i)) {
                        nothing.add(findings.swaps().get(i).name());
                    }
                }
            }
        }
        List<String> sentences = new ArrayList<>();
        if (!lower.isEmpty()) {
            sentences.add("Lower with " + String.join("; with ", lower) + ".");
        }
        if (!raise.isEmpty()) {
            sentences.add("Higher with " + String.join("; with ", raise) + ".");
        }
        if (!untold.isEmpty()) {
            sentences.add("Whether it rises or falls cannot be told for " + joined(untold, "and") + ".");
        }
        if (!nothing.isEmpty()) {
            sentences.add(RideFigures.upperFirst(joined(nothing, "and")) + (nothing.size() > 1 ? " change" : " changes")
                    + " it by less than 1 %.");
        }
        return sentences;
    }

    private static String raised(Contribution part) {
        return part.interval().low() >= MANIFOLD
                ? ", " + times(part.interval()) + " what it is now"
                : " by " + sized(part.interval());
    }

    private static List<String> interactions(WhyFindings findings, int t) {
        List<Pair> pairs = pairs(findings, t, 0).stream()
                .filter(p -> told(findings.interaction(t, 0, p.i(), p.j())))
                .limit(MOST_PAIRS)
                .toList();
        List<String> sentences = new ArrayList<>();
        for (Pair pair : pairs) {
            Contribution part = findings.interaction(t, 0, pair.i(), pair.j());
            sentences.add(findings.swaps().get(pair.i()).name() + " with "
                    + findings.swaps().get(pair.j()).name() + " "
                    + (part.verdict() == Verdict.RAISES ? "above" : "below") + " it by " + sized(part.interval()));
        }
        return sentences.isEmpty()
                ? List.of()
                : List.of("Exchanged together, some leave it elsewhere than the sum of what each does alone would: "
                        + String.join("; ", sentences) + " of what it is now.");
    }

    /** Pairs by the size of their interaction, the largest first. */
    static List<Pair> pairs(WhyFindings findings, int t, int q) {
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < findings.swaps().size(); i++) {
            for (int j = i + 1; j < findings.swaps().size(); j++) {
                pairs.add(new Pair(i, j));
            }
        }
        pairs.sort(Comparator.comparingDouble(p ->
                -Math.abs(findings.interaction(t, q, p.i(), p.j()).interval().median())));
        return pairs;
    }

    /** Exchanges that do good to one kind of motion and harm to another. */
    private static List<String> trades(WhyFindings findings, int t) {
        List<String> sentences = new ArrayList<>();
        List<Integer> kinds = IntStream.range(0, findings.questions().size())
                .filter(q -> List.of(RideMeasure.SEAT_HEAVE, RideMeasure.SEAT_JOLT, RideMeasure.SEAT_BUZZ)
                        .contains(findings.questions().get(q).measure()))
                .boxed()
                .toList();
        for (int i = 0; i < findings.swaps().size(); i++) {
            List<String> raised = new ArrayList<>();
            List<String> lowered = new ArrayList<>();
            for (int q : kinds) {
                Contribution part = findings.alone(t, q, i);
                String word = findings.questions().get(q).measure().word();
                String words = part.interval().low() >= MANIFOLD
                        ? word + " to " + times(part.interval()) + " what it is"
                        : word + " by " + sized(part.interval());
                if (Math.abs(part.interval().median()) < WORTH) {
                    continue;
                }
                if (part.verdict() == Verdict.RAISES) {
                    raised.add(words);
                } else if (part.verdict() == Verdict.LOWERS) {
                    lowered.add(words);
                }
            }
            if (!raised.isEmpty() && !lowered.isEmpty()) {
                sentences.add("Give and take: " + swap(findings, i) + " would lower " + joined(lowered, "and")
                        + " and raise " + joined(raised, "and") + ".");
            }
        }
        return sentences;
    }

    static boolean told(Contribution part) {
        return part.verdict() == Verdict.LOWERS || part.verdict() == Verdict.RAISES;
    }

    private static String effect(Contribution part, String number) {
        Interval interval = part.interval();
        return interval.low() >= MANIFOLD
                ? "would raise " + number + " to " + times(interval) + " what it is now"
                : "would " + (part.verdict() == Verdict.RAISES ? "raise " : "lower ") + number + " by "
                        + sized(interval);
    }

    static String swap(WhyFindings findings, int i) {
        Swap swap = findings.swaps().get(i);
        return swap.alternative();
    }

    static String number(Question question) {
        return switch (question.measure()) {
            case SEAT_RMS -> "the weighted r.m.s. (a_w)";
            case SEAT_VDV -> "the vibration dose";
            default -> "the " + question.name();
        };
    }

    /** {@code 3.9 to 5.3 times}. */
    static String times(Interval interval) {
        String low = Numbers.of(1 + interval.low(), 2);
        String high = Numbers.of(1 + interval.high(), 2);
        return (low.equals(high) ? low : low + " to " + high) + " times";
    }

    /** An interval on one side of 0, without its sign. */
    static String sized(Interval interval) {
        double small = Math.min(Math.abs(interval.low()), Math.abs(interval.high()));
        double large = Math.max(Math.abs(interval.low()), Math.abs(interval.high()));
        int decimals = decimals(interval);
        String least = Numbers.fixed(100 * small, decimals);
        String most = Numbers.fixed(100 * large, decimals);
        return least.chars().noneMatch(c -> c >= '1' && c <= '9') ? "up to " + most + " %" : range(least, most);
    }

    /** An interval with signs. */
    static String signed(Interval interval) {
        int decimals = decimals(interval);
        return range(plus(interval.low(), decimals), plus(interval.high(), decimals));
    }

    private static String range(String low, String high) {
        return low.equals(high) ? low + " %" : low + " to " + high + " %";
    }

    /** A part in per cent with its sign. */
    static String plus(double part, int decimals) {
        String text = Numbers.fixed(100 * part, decimals);
        boolean zero = text.chars().noneMatch(c -> c >= '1' && c <= '9');
        return part > 0 && !zero ? "+" + text : text;
    }

    static int decimals(Interval interval) {
        double large = Math.max(Math.abs(interval.low()), Math.abs(interval.high()));
        return large >= 0.1 ? 0 : large >= 0.01 ? 1 : 2;
    }

    static String joined(List<String> words, String with) {
        int last = words.size() - 1;
        return last < 1 ? words.get(0) : String.join(", ", words.subList(0, last)) + " " + with + " " + words.get(last);
    }
}
