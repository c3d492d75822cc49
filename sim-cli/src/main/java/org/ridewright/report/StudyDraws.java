package org.ridewright.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.ridewright.study.Draws;
import org.ridewright.study.Factor;
import org.ridewright.study.Method;
import org.ridewright.study.Study;

/**
 * What the runs of a study vary and how, in words.
 *
 * @param tolerated values drawn within their tolerances, each value of a file once
 * @param ranges what is drawn or tried besides, between two ends
 * @param steps what takes given steps
 */
record StudyDraws(Method method, int tolerated, List<Factor> ranges, List<Method.Swept> steps) {
    StudyDraws {
        ranges = List.copyOf(ranges);
        steps = List.copyOf(steps);
    }

    static StudyDraws of(Study study) {
        Method method = study.method();
        if (method instanceof Method.Sweep sweep) {
            return new StudyDraws(method, 0, List.of(), sweep.swept());
        } else if (method instanceof Method.Compare compare) {
            Set<String> keys = new LinkedHashSet<>();
            compare.uncertain().forEach(u -> keys.addAll(u.varying()));
            return new StudyDraws(method, keys.size(), compare.ranges(), List.of());
        } else if (method instanceof Method.Uncertainty uncertainty) {
            return new StudyDraws(
                    method,
                    uncertainty.uncertain().varying().size(),
                    uncertainty.ranges(),
                    uncertainty.along().stream().toList());
        } else if (method instanceof Method.Screening screening) {
            return of(method, screening.factors());
        } else if (method instanceof Method.Indices indices) {
            return of(method, indices.factors());
        }
        return of(method, ((Method.Search) method).factors());
    }

    private static StudyDraws of(Method method, List<Factor> factors) {
        List<Factor> ranges =
                factors.stream().filter(f -> !(f instanceof Factor.Tolerated)).toList();
        return new StudyDraws(method, factors.size() - ranges.size(), ranges, List.of());
    }

    /** Draws as such; 0 where nothing is drawn. */
    private int draws() {
        return method instanceof Method.Compare compare
                ? compare.draws()
                : method instanceof Method.Uncertainty uncertainty ? uncertainty.draws() : 0;
    }

    /** Of chance in the method; absent where there is none. */
    OptionalLong seed() {
        if (method instanceof Method.Compare compare) {
            return compare.draws() > 0 ? OptionalLong.of(compare.seed()) : OptionalLong.empty();
        } else if (method instanceof Method.Uncertainty uncertainty) {
            return OptionalLong.of(uncertainty.seed());
        } else if (method instanceof Method.Screening screening) {
            return OptionalLong.of(screening.seed());
        } else if (method instanceof Method.Indices indices) {
            return OptionalLong.of(indices.seed());
        }
        // of one value the search takes no chances
        return method instanceof Method.Search search && search.factors().size() > 1
                ? OptionalLong.of(search.seed())
                : OptionalLong.empty();
    }

    /** How points are spread. */
    private String spread() {
        Draws.Kind kind =
                method instanceof Method.Compare compare ? compare.kind() : ((Method.Uncertainty) method).kind();
        return kind == Draws.Kind.SOBOL ? "Sobol' points" : "Latin hypercube";
    }

    /** {@code 57 values being uncertain as their tolerances say, and seed, from 1 to 100000}. */
    String uncertain() {
        String own = tolerated == 0
                ? ""
                : tolerated
                        + (tolerated == 1
                                ? " value being uncertain as its tolerance says"
                                : " values being uncertain as their tolerances say");
        if (ranges.isEmpty()) {
            return own.isEmpty() ? "no value being uncertain" : own;
        }
        return (own.isEmpty() ? "" : own + ", and ") + ranged() + " being drawn";
    }

    /** {@code seed (from 1 to 100000)}. */
    private String ranged() {
        return Listed.of(
                ranges.stream().map(f -> f.name() + " (" + ends(f) + ")").toList());
    }

    private static String ends(Factor factor) {
        if (factor instanceof Factor.Range range) {
            return "from " + number(range.from(), range.unit()) + " to " + number(range.to(), range.unit());
        } else if (factor instanceof Factor.Multiple multiple) {
            return "from × " + number(multiple.from(), "1") + " to × " + number(multiple.to(), "1");
        }
        return factor instanceof Factor.Listed listed ? "one of " + String.join(", ", listed.words()) : "";
    }

    private static String number(double value, String unit) {
        String number = new BigDecimal(value)
                .round(new MathContext(12))
                .stripTrailingZeros()
                .toPlainString();
        return number.replace('-', '−') + (unit.equals("1") || unit.isEmpty() ? "" : " " + unit);
    }

    /** What varies and what is drawn, each a sentence. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (Method.Swept each : steps) {
            if (each.factor().unit().isEmpty()) {
                lines.add(RideFigures.upperFirst(each.factor().name()) + " is in turn "
                        + Listed.of(each.coordinates().stream()
                                .map(each.factor()::level)
                                .toList()) + ".");
                continue;
            }
            lines.add(RideFigures.upperFirst(each.factor().name()) + " takes "
                    + each.coordinates().size()
                    + (each.coordinates().size() == 1 ? " step, " : " steps, from ")
                    + each.factor().level(each.coordinates().get(0))
                    + (each.coordinates().size() == 1
                            ? ""
                            : " to "
                                    + each.factor()
                                            .level(each.coordinates()
                                                    .get(each.coordinates().size() - 1)))
                    + ".");
        }
        if (method instanceof Method.Search) {
            lines.add("Sought: " + ranged() + ".");
        } else if (draws() > 0) {
            lines.add("Drawn: " + uncertain() + "; " + draws() + " draws" + alike() + ", " + spread() + ", seed "
                    + seed().getAsLong() + ".");
        } else if (method instanceof Method.Screening || method instanceof Method.Indices) {
            lines.add("Varied: " + uncertain().replaceFirst(" being drawn$", "") + "; " + brief() + ".");
        } else {
            lines.add("Nothing is drawn: tolerances are left out of account.");
        }
        lines.addAll(roads());
        return lines;
    }

    /** Between what a draw is the same. */
    private String alike() {
        return method instanceof Method.Compare
                ? ", the same for all that is compared"
                : steps.isEmpty() ? "" : ", the same ones at every step";
    }

    /** What runs do to roads of chance. */
    private List<String> roads() {
        List<String> seeds = ranges.stream()
                .filter(f -> f.paths().stream().anyMatch(StudyDraws::isSeed))
                .map(Factor::name)
                .toList();
        if (draws() == 0) {
            return List.of();
        } else if (seeds.isEmpty()) {
            return List.of(
                    "Draws change no seed of a road: its ground and stones of chance are the same in every draw, so that intervals say nothing of "
                            + "other stretches.");
        }
        List<String> rode = new ArrayList<>();
        if (hasSeedOf("spectrum")) {
            rode.add("another stretch of the same kind of ground");
        }
        if (hasSeedOf("stones")) {
            rode.add("other stones of the same kind");
        }
        return List.of("Each draw has its own " + Listed.of(seeds) + ", and so rode "
                + (rode.isEmpty() ? "another road of the same kind" : Listed.of(rode)) + ".");
    }

    private boolean hasSeedOf(String what) {
        return ranges.stream().flatMap(f -> f.paths().stream()).anyMatch(p -> p.endsWith(what + ".seed"));
    }

    private static boolean isSeed(String path) {
        return path.endsWith(".seed");
    }

    /** How the runs were chosen, for print. */
    String inPrint() {
        if (method instanceof Method.Sweep) {
            List<String> each = steps.stream()
                    .map(s -> s.factor().name() + " (" + s.coordinates().size() + " steps)")
                    .toList();
            return "Runs take every step of " + String.join(" with every step of ", each)
                    + "; everything else is as written, and tolerances are left out of account.";
        } else if (method instanceof Method.Screening screening) {
            return "Elementary effects (Morris 1991) were taken along " + screening.trajectories()
                    + " trajectories with "
                    + screening.levels() + " levels of each of "
                    + screening.factors().size() + " values (seed "
                    + screening.seed() + "), which were varied independently.";
        } else if (method instanceof Method.Indices indices) {
            return "Sobol' indices of " + indices.factors().size()
                    + " values, varied independently, were estimated from two samples of "
                    + indices.draws() + " points each (seed " + indices.seed()
                    + "; first order after Saltelli and others 2010, total after Jansen 1999).";
        } else if (method instanceof Method.Search search) {
            return search.factors().size() == 1
                    ? "The range of " + ranged() + " was looked at in " + search.looks()
                            + " places, and narrowed from there by Brent's methods"
                            + (search.limits().isEmpty() ? "" : " as far as runs keep the limits") + ", in at most "
                            + search.runs()
                            + " runs; tolerances are left out of account."
                    : "The ranges of " + ranged() + " were searched by CMA-ES (seed " + search.seed() + "), in at most "
                            + search.runs() + " runs; tolerances are left out of account.";
        } else if (draws() == 0) {
            return "What is compared was ridden as written; tolerances are left out of account.";
        }
        return (tolerated == 0
                        ? RideFigures.upperFirst(ranged()) + (ranges.size() == 1 ? " was" : " were")
                        : tolerated
                                + (tolerated == 1 ? " value that has a tolerance" : " values that have a tolerance")
                                + (ranges.isEmpty() ? "" : ", and, evenly likely, " + ranged() + ",")
                                + (tolerated == 1 && ranges.isEmpty() ? " was" : " were"))
                + (tolerated + ranges.size() == 1 ? " drawn " : " drawn together ") + draws() + " times" + alike()
                + " (" + spread() + ", seed "
                + seed().getAsLong()
                + (tolerated == 0 ? "" : "; a tolerance taken as a standard uncertainty, JCGM 100:2008, 4.3") + ")"
                + ". " + String.join(" ", roads())
                + " Intervals are quantiles of the draws; they say what draws leave open, and nothing of what the model leaves out.";
    }

    /** {@code 40 draws, Sobol' points, seed 1}; empty where there is no chance. */
    String brief() {
        if (method instanceof Method.Screening screening) {
            return screening.trajectories() + " trajectories, seed " + screening.seed();
        } else if (method instanceof Method.Indices indices) {
            return indices.draws() + " points, seed " + indices.seed();
        } else if (method instanceof Method.Search) {
            return seed().isPresent() ? "seed " + seed().getAsLong() : "";
        }
        return draws() == 0 ? "" : draws() + " draws, " + spread() + ", seed " + seed().getAsLong();
    }
}
