package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.ridewright.figure.AxisSpec;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.Factor;
import org.ridewright.study.Findings;
import org.ridewright.study.IndexFindings;
import org.ridewright.study.Question;
import org.ridewright.study.ScreeningFindings;
import org.ridewright.study.SearchRun;
import org.ridewright.study.Study;
import org.ridewright.study.SweepFindings;
import org.ridewright.study.UncertaintyFindings;

/** The figures of a study. */
public final class StudyFigures {
    /** Least over greatest value from which on an axis does not begin at 0. */
    private static final double CUT = 0.75;

    private StudyFigures() {}

    /** Of all methods but a search. */
    public static List<FigureGroup> of(Findings findings) {
        if (findings.base().isEmpty() && !(findings instanceof CompareFindings)) {
            return List.of();
        }
        if (findings instanceof SweepFindings sweep) {
            return SweepFigures.of(sweep);
        } else if (findings instanceof CompareFindings compare) {
            List<FigureGroup> groups = new ArrayList<>(BandFigures.of(compare));
            groups.addAll(CompareFigures.of(compare));
            return groups;
        } else if (findings instanceof UncertaintyFindings uncertainty) {
            return SpreadFigures.of(uncertainty);
        } else if (findings instanceof ScreeningFindings screening) {
            return RankFigures.of(screening);
        }
        return RankFigures.of((IndexFindings) findings);
    }

    /** Of a search. */
    public static List<FigureGroup> of(Study study, SearchRun.Result result) {
        return SearchFigures.of(study, result);
    }

    /** Axis of an answer. */
    static AxisSpec axis(Question question) {
        return AxisSpec.of(name(question), unit(question.measure().unit()));
    }

    /**
     * Axis of an answer on which certain values stand. It begins at 0, so that lengths tell ratios, unless all values lie so near to each other that this
     * would hide how they differ, or some are below 0.
     */
    static AxisSpec axis(Question question, double[] shown) {
        if (isCut(shown)) {
            return axis(question);
        }
        double[] finite = Arrays.stream(shown).filter(Double::isFinite).toArray();
        boolean onTheFrame = Arrays.stream(finite).min().orElse(1) == 0;
        // a line along 0 would hide behind the frame
        return axis(question)
                .from(onTheFrame ? -0.03 * Arrays.stream(finite).max().orElse(0) : 0);
    }

    /** Whether an axis of such values does not begin at 0. */
    static boolean isCut(double[] shown) {
        double[] finite = Arrays.stream(shown).filter(Double::isFinite).toArray();
        double least = Arrays.stream(finite).min().orElse(0);
        double most = Arrays.stream(finite).max().orElse(0);
        return !(most > 0) || least < 0 || least > CUT * most;
    }

    /** What a caption says of an axis that does not begin at 0. */
    static String cut(double[] shown) {
        double least = Arrays.stream(shown).filter(Double::isFinite).min().orElse(0);
        return isCut(shown) && least > 0 ? " The axis of the answer does not begin at 0." : "";
    }

    /** Axis of what varies. */
    static AxisSpec axis(Factor factor) {
        AxisSpec axis = AxisSpec.of(
                RideFigures.upperFirst(factor.name()), factor.isMultiple() ? "times as written" : unit(factor.unit()));
        return factor.isByRatio() || isWide(factor) ? axis.logarithmic() : axis;
    }

    /** Whether listed multiples reach so far that equal steps would crowd the low ones. */
    private static boolean isWide(Factor factor) {
        if (!(factor instanceof Factor.Listed listed) || !factor.isMultiple()) {
            return false;
        }
        double least = Collections.min(listed.shown());
        return least > 0 && Collections.max(listed.shown()) / least >= 10;
    }

    /** Name of an answer as figures print it: a symbol stays as it is, with its index below the line. */
    static String name(Question question) {
        String name = question.name();
        return name.contains("a_w") ? name.replace("a_w", "a_{w}") : RideFigures.upperFirst(name);
    }

    /** As figures print it: nothing for pure numbers, raised exponents. */
    static String unit(String unit) {
        return unit.equals("1") ? "" : unit.replaceAll("\\^([0-9.]+)", "^{$1}");
    }

    /** Name of a bar with its number, which a short bar beside a long one does not show. */
    static String numbered(String name, double value) {
        return Double.isFinite(value) ? name + "  " + Numbers.of(value) : name;
    }

    /** What was asked, below a heading. */
    static String heading(Question question) {
        return RideFigures.upperFirst(question.title());
    }

    /** Name of a file. */
    static String file(String kind, Question question) {
        return file(kind, question.name());
    }

    /** Name of a file. */
    static String file(String kind, String of) {
        return kind + "-" + RideName.slug(of);
    }
}
