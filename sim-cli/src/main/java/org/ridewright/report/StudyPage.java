package org.ridewright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ridewright.figure.FigureFiles;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.Correlated;
import org.ridewright.study.Draws;
import org.ridewright.study.Factor;
import org.ridewright.study.Findings;
import org.ridewright.study.IndexFindings;
import org.ridewright.study.Method;
import org.ridewright.study.Places;
import org.ridewright.study.Question;
import org.ridewright.study.Reasons;
import org.ridewright.study.ScreeningFindings;
import org.ridewright.study.SearchRun;
import org.ridewright.study.Study;
import org.ridewright.study.SweepFindings;
import org.ridewright.study.UncertaintyFindings;

/** The page of a study. One file that needs no other. */
public final class StudyPage {
    private static final String TEMPLATE = "study.ftlh";
    /** Correlated pairs that are named. */
    private static final int MOST_PAIRS = 12;

    private StudyPage() {}

    /** Of all methods but a search; every text of the user's is escaped. */
    public static String render(
            StudyBasis basis, Findings findings, List<FigureGroup> groups, List<FigureFiles> figures) {
        Map<String, Object> model = model(findings.study(), StudySummary.of(findings), groups, figures);
        model.put("runs", findings.runs());
        model.put("failed", findings.failed());
        model.put("reasons", findings.reasons());
        basis(model, basis, findings.study(), findings.runs(), findings.failed());
        model.put("own", Unbroken.all(StudyAnswer.of(findings)));
        model.put("drawn", true);
        if (findings instanceof CompareFindings compare) {
            BandTable bands = BandTable.of(compare);
            model.put("bandHeads", bands.heads());
            model.put("bandRows", bands.rows());
        }
        model.put("asked", Unbroken.of(asked(findings)));
        DrawnShare share = DrawnShare.of(findings);
        model.put("held", share.of() > 0 ? Unbroken.of(share.counted()) : "");
        model.put("note", Unbroken.of(note(findings) + leftOut(findings)));
        return Templates.render(TEMPLATE, model);
    }

    /** Of a search. */
    public static String render(
            StudyBasis basis,
            Study study,
            SearchRun.Result result,
            List<FigureGroup> groups,
            List<FigureFiles> figures) {
        Map<String, Object> model = model(study, StudySummary.of(study, result), groups, figures);
        Method.Search method = (Method.Search) study.method();
        List<SearchRun.Step> failed =
                result.way().stream().filter(s -> s.outcome().hasFailed()).toList();
        model.put("own", Unbroken.all(SearchAnswer.of(study, result)));
        model.put("drawn", false);
        model.put("runs", result.way().size());
        model.put("failed", failed.size());
        basis(model, basis, study, result.way().size(), failed.size());
        Reasons reasons = new Reasons();
        failed.forEach(step -> reasons.add(step.reason()));
        model.put("reasons", reasons.commonest(1));
        SearchWords words = new SearchWords(study);
        String names = Listed.of(method.factors().stream().map(Factor::name).toList());
        String what = words.titled(
                method.sought().asked(), result.way().get(0).outcome().tests().size());
        model.put(
                "asked",
                "For which " + names + " " + what + " is "
                        + method.sought()
                                .target()
                                .map(t -> StudySummary.with(
                                        t, words.question(method.sought().asked())))
                                .orElse(method.sought().least() ? "least" : "greatest")
                        + (method.limits().isEmpty() ? "" : ", provided " + words.limits())
                        + ".");
        model.put("note", note(method));
        return Templates.render(TEMPLATE, model);
    }

    private static void basis(Map<String, Object> model, StudyBasis basis, Study study, long runs, long failed) {
        StudyBasis.Tests tests = StudyBasis.tests(study);
        model.put("testHeads", tests.heads());
        model.put("testRows", tests.rows().stream().map(Unbroken::all).toList());
        model.put("basis", Unbroken.all(basis.lines(study)));
        model.put("methods", Unbroken.all(basis.methods(study, runs, failed)));
        model.put("citation", Unbroken.of(basis.citation(study, runs)));
    }

    private static String note(Method.Search method) {
        boolean limited = !method.limits().isEmpty();
        if (method.factors().size() > 1) {
            return "CMA-ES from the middle of the ranges"
                    + (limited
                            ? ", runs that keep the limits before those that break them, and of these the lesser excess first (Deb 2000); once at rest it starts "
                                    + "anew from where it is, until that gains nothing. In a narrow corner between limits it may still stop short."
                            : ".")
                    + " It finds the best of a neighbourhood, which need not be the best of all; another seed that ends elsewhere would show it.";
        }
        return method.looks() + " looks at equal distances over the range, then "
                + (limited
                        ? "Brent's root search for the border wherever one of two neighbours keeps the limits and the other does not, then "
                        : "")
                + "Brent's method between the neighbours of the best one"
                + (limited ? " of each stretch that keeps them" : "")
                + (method.sought().target().isPresent()
                        ? ", or across the first change of sign of the distance from the target"
                        : "")
                + ". What lies between two looks can be missed"
                + (limited ? ", also a stretch that keeps the limits." : ".");
    }

    private static Map<String, Object> model(
            Study study, StudySummary summary, List<FigureGroup> groups, List<FigureFiles> figures) {
        Map<String, Object> model = new HashMap<>();
        model.put("name", RideFigures.upperFirst(study.name()));
        model.put("about", study.about().strip());
        model.put("answers", Unbroken.all(summary.sentences()));
        model.put("heads", summary.heads());
        model.put("rows", summary.rows().stream().map(Unbroken::all).toList());
        model.put("words", summary.words());
        model.put("groups", Templates.groups(groups, figures));
        List<List<String>> questions = new ArrayList<>();
        Set<String> families = new HashSet<>();
        for (Question question : study.questions()) {
            if (!families.add(question.family())) {
                continue;
            }
            questions.add(List.of(
                    question.family(),
                    RideFigures.upperFirst(question.title())
                            + (question.place().isEmpty() && question.measure().places() != Places.VEHICLE
                                    ? ", the worst "
                                            + question.measure().places().called()
                                    : ""),
                    StudySummary.unit(question).strip()));
        }
        model.put("questions", questions);
        return model;
    }

    private static String asked(Findings findings) {
        List<String> asked = findings.study().questions().stream()
                .map(Question::family)
                .distinct()
                .toList();
        String answers = Listed.of(asked);
        if (findings instanceof SweepFindings sweep) {
            return "How " + answers + (asked.size() == 1 ? " depends on " : " depend on ")
                    + String.join(
                            " and ",
                            sweep.swept().stream()
                                    .map(s -> s.factor().name() + " ("
                                            + s.coordinates().size() + " steps)")
                                    .toList())
                    + ".";
        } else if (findings instanceof CompareFindings compare) {
            return "How " + Listed.of(compare.things()) + " compare in " + answers + ".";
        } else if (findings instanceof UncertaintyFindings uncertainty) {
            return "How well " + answers + " can be known, "
                    + StudyDraws.of(findings.study()).uncertain() + " ("
                    + uncertainty.method().draws() + " draws, "
                    + (uncertainty.method().kind() == Draws.Kind.SOBOL ? "Sobol' points" : "Latin hypercube") + ").";
        } else if (findings instanceof ScreeningFindings screening) {
            return "Which of " + screening.factors().size() + " values move " + answers + " most ("
                    + screening.trajectories() + " trajectories).";
        }
        IndexFindings indices = (IndexFindings) findings;
        return "Where the uncertainty of " + answers + " comes from, "
                + indices.factors().size() + " values varying (" + indices.draws() + " points).";
    }

    /** What it means that values are varied independently. */
    private static String independent(List<Correlated> correlated) {
        if (correlated.isEmpty()) {
            return "Values are varied independently; none of them are known to be correlated.";
        }
        List<String> pairs = correlated.stream()
                .sorted(Comparator.comparingDouble(c -> -Math.abs(c.correlation())))
                .limit(MOST_PAIRS)
                .map(c -> c.one() + " with " + c.other() + " (" + Numbers.of(c.correlation(), 2) + ")")
                .toList();
        return "Correlation is ignored: values are varied independently, although these were calibrated together and are correlated: "
                + String.join("; ", pairs)
                + (correlated.size() > pairs.size()
                        ? "; and " + (correlated.size() - pairs.size()) + " more pairs"
                        : "")
                + ". What each of a pair does is then told for values that do not go together as they are known to, and their shares add up to another variance "
                + "than the true one. The method 'uncertainty' draws them together.";
    }

    private static String leftOut(Findings findings) {
        if (findings.failed() > 0 && (findings instanceof ScreeningFindings || findings instanceof IndexFindings)) {
            return " " + findings.failed() + " of " + findings.runs()
                    + " runs could not be ridden in full, and what rests on them is left out: what stands here is "
                    + "of the values with which the vehicles can ride. A value of which one end cannot be ridden comes out too small. Of an answer that lacks more "
                    + "than a tenth nothing is told.";
        }
        return findings.failed() == 0 || findings instanceof SweepFindings
                ? ""
                : " Runs that could not be ridden are left out: intervals and medians are of the draws that could be, and hold for values with which the vehicles can "
                        + "stand and ride.";
    }

    private static String note(Findings findings) {
        if (findings instanceof CompareFindings) {
            DrawnShare share = DrawnShare.of(findings);
            return share.of() == 0
                    ? "★ marks the best."
                    : "★ marks the best by the median of the draws where they tell it from all others, ☆ where they do not; numbers are as written. In brackets: the difference from the best one, as drawn from the tolerances, in "
                            + share.counted()
                            + ". Values of one file, such as those of one vehicle that is compared with itself, are drawn alike for "
                            + "all, so that what is common cancels.";
        } else if (findings instanceof UncertaintyFindings) {
            return "A tolerance is taken as one standard deviation: of lengths, angles and what is not positive as they are, of everything else by factors. "
                    + "Values that were calibrated together are drawn together.";
        } else if (findings instanceof ScreeningFindings screening) {
            return "An effect is the change of the answer over the whole range of a value, as told by jumps over half of it (for a value with a tolerance: "
                    + "half of its distribution). σ large beside μ* says that a value acts otherwise where others are otherwise, or not in proportion. "
                    + "Source: Morris, Technometrics 33 (1991). " + independent(screening.correlated());
        } else if (findings instanceof IndexFindings indices) {
            return "Intervals are those of 400 resamples of the points, which are "
                    + "spread more evenly than the resampling assumes; they are rather too wide. Estimators: Saltelli and others (2010) for the first order, "
                    + "Jansen (1999) for the total. " + independent(indices.correlated());
        }
        return "";
    }
}
