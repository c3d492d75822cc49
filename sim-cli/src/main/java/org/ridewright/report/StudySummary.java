package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
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

/**
 * What a study found, as a table and in sentences made of its numbers.
 *
 * @param heads of the columns
 * @param rows of the table
 * @param words how many columns, from the left, hold words
 * @param sentences plain text
 */
public record StudySummary(List<String> heads, List<List<String>> rows, int words, List<String> sentences) {
    public StudySummary {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
        sentences = List.copyOf(sentences);
    }

    /** The author's sentences, with their blanks filled; none if there are none. */
    public static List<String> answer(Findings findings) {
        return StudyAnswer.of(findings);
    }

    /** The same of a search. */
    public static List<String> answer(Study study, SearchRun.Result result) {
        return SearchAnswer.of(study, result);
    }

    /** Of all methods but a search. */
    public static StudySummary of(Findings findings) {
        StudySummary told = told(findings);
        List<String> sentences = new ArrayList<>(remarks(findings));
        sentences.addAll(told.sentences());
        return new StudySummary(told.heads(), told.rows(), told.words(), sentences);
    }

    private static StudySummary told(Findings findings) {
        if (findings instanceof SweepFindings sweep) {
            return SweepSummary.of(sweep);
        } else if (findings instanceof CompareFindings compare) {
            return CompareSummary.of(compare);
        } else if (findings instanceof UncertaintyFindings uncertainty) {
            return SpreadSummary.of(uncertainty);
        } else if (findings instanceof ScreeningFindings screening) {
            return RankSummary.of(screening);
        }
        return RankSummary.of((IndexFindings) findings);
    }

    /** The unit behind a number, with a space before it; nothing for pure numbers. */
    static String unit(Question question) {
        String unit = question.measure().unit();
        return unit.equals("1") ? "" : " " + unit.replace("^1.75", "¹·⁷⁵");
    }

    /** What varies and a value of it: {@code speed 8 km/h}, {@code friction × 0.505}. */
    static String at(Factor factor, double shown) {
        return factor.name() + " " + spoken(factor, shown);
    }

    /** A value of what varies; of words, the word of that number. */
    static String spoken(Factor factor, double shown) {
        return factor.unit().isEmpty() ? factor.level(shown) : factor.spoken(shown);
    }

    /** A number with its unit. */
    static String with(double value, Question question) {
        return Numbers.of(value) + (Double.isFinite(value) ? unit(question) : "");
    }

    /** What no table shows: that the base fails, or that something has nothing beside it. */
    private static List<String> remarks(Findings findings) {
        List<String> remarks = new ArrayList<>();
        if (!findings.baseFailure().isEmpty() && findings.failed() < findings.runs()) {
            remarks.add("As written, the base cannot be ridden in full, though other runs can: "
                    + findings.baseFailure().replaceFirst("\\.?\\s*$", "."));
        }
        if (findings instanceof CompareFindings compare && !compare.leftOut().isEmpty()) {
            List<String> left = compare.leftOut();
            remarks.add("Left out, since nothing else goes through the same test: "
                    + String.join("; ", left.subList(0, Math.min(6, left.size())))
                    + (left.size() > 6 ? "; and " + (left.size() - 6) + " more" : "") + ".");
        }
        return remarks;
    }

    /** Of a search. */
    public static StudySummary of(Study study, SearchRun.Result result) {
        return SearchSummary.of(study, result);
    }
}
