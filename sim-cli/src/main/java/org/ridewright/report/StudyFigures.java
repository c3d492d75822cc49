package org.ridewright.report;

import java.util.ArrayList;
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
