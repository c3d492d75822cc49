package org.ridewright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.ridewright.signal.ThirdOctave;
import org.ridewright.study.Answer;
import org.ridewright.study.Estimate;
import org.ridewright.study.Factor;
import org.ridewright.study.Findings;
import org.ridewright.study.Method;
import org.ridewright.study.Question;
import org.ridewright.study.Telling;
import org.ridewright.study.Tries;

/**
 * The sentences of a study with their blanks filled. What the draws do not tell apart is said to be so, and a best at the edge of what was tried, or
 * that nothing sets apart, is not called one.
 */
final class StudyAnswer {
    static final String NOTHING = ChangeWords.NOTHING;
    private static final String ALIKE = "neither clearly lower nor higher";

    private static final Map<String, String> MULTIPLES = Map.of(
            "0.10", "a tenth of",
            "0.20", "a fifth of",
            "0.25", "a quarter of",
            "0.50", "half",
            "2", "twice",
            "3", "three times",
            "4", "four times",
            "5", "five times",
            "10", "ten times");

    private final List<Question> questions;
    private final Tries tries;
    private final Optional<Factor> along;

    StudyAnswer(List<Question> questions, Tries tries, Optional<Factor> along) {
        this.questions = questions;
        this.tries = tries;
        this.along = along;
    }

    /** None if the study's author wrote none. */
    static List<String> of(Findings findings) {
        Optional<Answer> answer = findings.study().answer();
        if (answer.isEmpty() || findings.tries().isEmpty()) {
            return List.of();
        }
        StudyAnswer words = new StudyAnswer(
                findings.study().questions(),
                findings.tries().get(),
                along(findings.study().method()).map(Method.Swept::factor));
        Map<String, String> filled = new LinkedHashMap<>();
        answer.get().blanks().forEach((name, telling) -> filled.put(name, words.of(telling)));
        return answer.get().with(filled);
    }

    private static Optional<Method.Swept> along(Method method) {
        if (method instanceof Method.Uncertainty uncertainty) {
            return uncertainty.along();
        }
        return method instanceof Method.Sweep sweep ? Optional.of(sweep.swept().get(0)) : Optional.empty();
    }

    String of(Telling telling) {
        if (telling instanceof Telling.Where where) {
            return where(where);
        }
        OptionalInt test = tries.test(telling.on());
        if (test.isEmpty()) {
            return NOTHING;
        }
        int t = test.getAsInt();
        if (telling instanceof Telling.Value value) {
            int of = tries.thing(value.of(), t, value.question());
            return of < 0 ? NOTHING : value(of, t, value.question());
        } else if (telling instanceof Telling.Change change) {
            return change(change, t);
        } else if (telling instanceof Telling.Best best) {
            return isWords() ? bestWord(t, best.question()) : best(tries.best(t, best.question()));
        } else if (telling instanceof Telling.First first) {
            return first(tries.first(first.above(), first.bound(), t, first.question()));
        }
        return telling instanceof Telling.Bands bands ? bands(bands, t) : order((Telling.Order) telling, t);
    }

    private String unit(int question) {
        return StudySummary.unit(questions.get(question));
    }

    private String value(int thing, int test, int question) {
        Estimate e = tries.value(thing, test, question);
        if (!Double.isFinite(e.value())) {
            return NOTHING;
        }
        String text = Numbers.of(e.value(), 2) + unit(question);
        return of(
                tries.isDrawn() && e.low() < e.high()
                        ? text + " (" + Numbers.brief(e.low()) + " to " + Numbers.brief(e.high()) + ")"
                        : text,
                tries.used(test, question, thing));
    }

    /** With the number of draws that it rests on, where these are not all. */
    private String of(String text, int used) {
        String part = tries.isDrawn() ? DrawnShare.part(used, tries.draws()) : "";
        if (part.isEmpty()) {
            return text;
        }
        return text.endsWith(")") ? text.substring(0, text.length() - 1) + "; " + part + ")" : text + " (" + part + ")";
    }

    private String change(Telling.Change change, int t) {
        int from = tries.thing(change.from(), t, change.question());
        int to = tries.thing(change.to(), t, change.question());
        if (from < 0 || to < 0) {
            return NOTHING;
        } else if (from == to) {
            return "the same";
        }
        int q = change.question();
        String text = change.inUnits()
                ? ChangeWords.ofDifference(tries.difference(from, to, t, q), tries.isDrawn(), unit(q))
                : ChangeWords.ofRatio(tries.ratio(from, to, t, q), tries.isDrawn());
        return of(text, tries.used(t, q, from, to));
    }

    private String bands(Telling.Bands asked, int t) {
        int from = tries.thing(asked.from(), t, asked.question());
        int to = tries.thing(asked.to(), t, asked.question());
        List<ThirdOctave> bands = new ArrayList<>();
        List<Estimate> ratios = new ArrayList<>();
        for (int q : asked.questions()) {
            Estimate ratio = from < 0 || to < 0 ? null : tries.ratio(from, to, t, q);
            if (ratio != null && Double.isFinite(ratio.value())) {
                bands.add(questions.get(q).band().orElseThrow());
                ratios.add(ratio);
            }
        }
        return new BandWords(bands, ratios, tries.isDrawn()).text();
    }

    private String best(Tries.Band band) {
        int last = tries.things().size() - 1;
        if (band.best() < 0) {
            return NOTHING;
        } else if (band.low() == 0 && band.high() == last) {
            return "none: the answer is flat, nothing from " + level(0) + " to " + level(last) + " can be told from "
                    + level(band.best());
        }
        String like = like(band);
        if (band.best() == 0 || band.best() == last) {
            return "none within what was tried: it is best at the end, " + level(band.best()) + like;
        }
        return level(band.best()) + like;
    }

    private boolean isWords() {
        return along.filter(a -> a.unit().isEmpty()).isPresent();
    }

    /** Words have no order: the best of them, and all that cannot be told from it. */
    private String bestWord(int t, int q) {
        int best = tries.best(t, q).best();
        if (best < 0) {
            return NOTHING;
        }
        List<String> like = IntStream.range(0, tries.things().size())
                .filter(th ->
                        th != best && Double.isFinite(tries.value(th, t, q).value()) && tries.isLike(best, th, t, q))
                .mapToObj(this::level)
                .toList();
        long answered = IntStream.range(0, tries.things().size())
                .filter(th -> Double.isFinite(tries.value(th, t, q).value()))
                .count();
        if (like.size() == answered - 1 && answered > 1) {
            return "none: the answer is flat, " + level(best) + " cannot be told from " + Listed.of(like);
        }
        return like.isEmpty() ? level(best) : level(best) + ", which cannot be told from " + Listed.of(like);
    }

    /** Which neighbours cannot be told from the best; empty if all can. */
    private String like(Tries.Band band) {
        if (band.low() < band.best() && band.high() > band.best()) {
            return ", though nothing from " + level(band.low()) + " to " + level(band.high()) + " can be told from it";
        } else if (band.low() == band.high()) {
            return "";
        }
        int other = band.low() < band.best() ? band.low() : band.high();
        String way = other < band.best() - 1 ? "anything down to " : other > band.best() + 1 ? "anything up to " : "";
        return ", which cannot be told from " + way + level(other);
    }

    private String level(int level) {
        return isWords() ? along.orElseThrow().level(tries.at(level)) : spoken(tries.at(level));
    }

    private String spoken(double at) {
        return along.map(a -> a.isMultiple() ? multiple(at, a.name()) : a.spoken(at))
                .orElse(Numbers.of(at));
    }

    /** A multiple of what stands in the files as somebody says it who never saw them. */
    private static String multiple(double of, String name) {
        return Math.abs(of - 1) < 1e-9
                ? "the " + name + " as it is"
                : MULTIPLES.getOrDefault(Numbers.brief(of), Numbers.brief(of) + " times") + " the " + name;
    }

    private String first(Tries.Passing passing) {
        Estimate at = passing.at();
        String end = level(tries.things().size() - 1);
        if (passing.never() == 1) {
            return "nowhere up to " + end;
        } else if (passing.atOnce() == 1) {
            return level(0) + " or less";
        }
        if (!tries.isDrawn()) {
            return Double.isNaN(at.value())
                    ? NOTHING
                    : between(at.value(), passing.after().value());
        } else if (at.high() == tries.at(0)) {
            return "less than " + level(0);
        }
        String low = passing.atOnce() >= 0.05 ? "less than " + level(0) : spoken(at.low());
        String high = Double.isNaN(passing.after().high())
                ? "more than " + end
                : spoken(passing.after().high());
        String middle = passing.atOnce() > 0.5
                ? "less than " + level(0)
                : Double.isNaN(passing.after().value())
                        ? "more than " + end
                        : between(at.value(), passing.after().value());
        int unit = middle.lastIndexOf(' ');
        String same = unit < 0 || along.filter(Factor::isMultiple).isPresent() ? "" : middle.substring(unit);
        boolean shared = !same.isEmpty() && low.endsWith(same) && high.endsWith(same);
        String left = passing.left() > 0
                ? "; " + Numbers.brief(100 * passing.left()) + " % of the draws could not be ridden that far"
                : "";
        return middle + " (" + (shared ? low.substring(0, low.length() - same.length()) : low) + " to " + high + left
                + ")";
    }

    /** One place, or two between which it lies. */
    private String between(double from, double to) {
        String last = spoken(to);
        if (from == to) {
            return last;
        }
        String first = spoken(from);
        int unit = last.lastIndexOf(' ');
        boolean shared =
                unit >= 0 && along.filter(Factor::isMultiple).isEmpty() && first.endsWith(last.substring(unit));
        return "between " + (shared ? first.substring(0, first.lastIndexOf(' ')) : first) + " and " + last;
    }

    private String order(Telling.Order order, int t) {
        int q = order.question();
        List<Integer> sorted = IntStream.range(0, tries.things().size())
                .filter(th -> Double.isFinite(tries.value(th, t, q).value()))
                .boxed()
                .sorted(Comparator.comparingDouble(th -> tries.value(th, t, q).value()))
                .toList();
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            String value = value(sorted.get(i), t, q);
            boolean alike = i > 0 && tries.isDrawn() && tries.isLike(sorted.get(i - 1), sorted.get(i), t, q);
            parts.add(name(sorted.get(i)) + " " + (alike ? value.replaceFirst("\\)?$", "; not clearly more)") : value));
        }
        return parts.isEmpty() ? NOTHING : Listed.of(parts);
    }

    private String name(int thing) {
        return along.isPresent() ? level(thing) : tries.things().get(thing);
    }

    private String where(Telling.Where where) {
        List<String> lower = new ArrayList<>();
        List<String> higher = new ArrayList<>();
        List<String> alike = new ArrayList<>();
        List<String> same = new ArrayList<>();
        int[] tests = tries.tests(where.on());
        for (int t : tests) {
            Estimate difference = tries.difference(where.against(), where.of(), t, where.question());
            if (Double.isFinite(difference.value())) {
                boolean none = difference.low() == 0 && difference.high() == 0;
                (none ? same : difference.high() < 0 ? lower : difference.low() > 0 ? higher : alike)
                        .add(label(t, tests));
            }
        }
        List<String> parts = new ArrayList<>();
        int all = lower.size() + higher.size() + alike.size() + same.size();
        add(parts, "lower", lower, all);
        add(parts, "higher", higher, all);
        add(parts, ALIKE, alike, all);
        add(parts, "the same", same, all);
        return parts.isEmpty() ? NOTHING : String.join(", ", parts);
    }

    private static void add(List<String> parts, String what, List<String> tests, int all) {
        if (!tests.isEmpty()) {
            parts.add(what + (tests.size() == all ? " in every test" : " for " + Listed.of(tests)));
        }
    }

    /** What tells a ride test from the others. */
    private String label(int test, int[] among) {
        List<String> own = tries.labels().get(test);
        List<String> parts = IntStream.range(0, own.size())
                .filter(i -> !own.get(i).isEmpty()
                        && IntStream.of(among)
                                .anyMatch(o -> !tries.labels().get(o).get(i).equals(own.get(i))))
                .mapToObj(own::get)
                .toList();
        return parts.isEmpty() ? "it" : String.join(", ", parts);
    }
}
