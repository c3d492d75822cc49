package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.math.Quantiles;
import org.ridewright.study.Factor;
import org.ridewright.study.QuantileSketch;
import org.ridewright.study.Question;
import org.ridewright.study.RoundOff;
import org.ridewright.study.UncertaintyFindings;

/** How far tolerances let answers be known, as a table and in sentences that say of how many draws they speak. */
final class SpreadSummary {
    private final UncertaintyFindings findings;
    private final boolean along;

    private SpreadSummary(UncertaintyFindings findings) {
        this.findings = findings;
        along = findings.method().along().isPresent();
    }

    static StudySummary of(UncertaintyFindings findings) {
        return new SpreadSummary(findings).summary();
    }

    private StudySummary summary() {
        List<List<String>> rows = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        for (int q = 0; q < findings.study().questions().size(); q++) {
            for (int t = 0; t < findings.tests().size() && !findings.base().isEmpty(); t++) {
                for (int slot = 0; slot < findings.axis().length; slot++) {
                    rows.add(row(slot, t, q));
                }
                sentence(t, q, sentences);
            }
        }
        List<String> heads = new ArrayList<>(List.of("Answer", "Ride test"));
        heads.add(along ? "At" : "As written");
        boolean few = DrawnShare.of(findings).isFew();
        heads.addAll(few ? List.of("Least", "Median", "Greatest") : List.of("5 %", "Median", "95 %"));
        boolean part = DrawnShare.of(findings).isPart();
        if (part) {
            heads.add("Draws");
        }
        return new StudySummary(heads, rows, along ? 3 : 2, sentences);
    }

    private List<String> row(int slot, int t, int q) {
        Question question = findings.study().questions().get(q);
        QuantileSketch spread = findings.spread(slot, t, q);
        List<String> row =
                new ArrayList<>(List.of(question.name(), findings.tests().get(t)));
        row.add(along ? step(slot) : StudySummary.with(findings.asWritten(t, q), question));
        for (double share : new double[] {Quantiles.TAIL, 0.5, 1 - Quantiles.TAIL}) {
            row.add(StudySummary.with(spread.quantile(share), question));
        }
        if (DrawnShare.of(findings).isPart()) {
            row.add(spread.count() + " of " + findings.method().draws());
        }
        return row;
    }

    private String step(int slot) {
        return StudySummary.spoken(findings.method().along().orElseThrow().factor(), findings.axis()[slot]);
    }

    private void sentence(int t, int q, List<String> sentences) {
        int[] ridden = IntStream.range(0, findings.axis().length)
                .filter(slot -> findings.spread(slot, t, q).count() > 0)
                .toArray();
        if (ridden.length == 0) {
            return;
        }
        Question question = findings.study().questions().get(q);
        String of = RideFigures.upperFirst(question.title())
                + (findings.tests().size() > 1 ? " (" + findings.tests().get(t) + ")" : "");
        sentences.add(along ? ofSteps(of, question, t, q, ridden) : once(of, question, t, q));
    }

    private String once(String of, Question question, int t, int q) {
        QuantileSketch spread = findings.spread(0, t, q);
        long used = spread.count();
        long all = findings.method().draws();
        String part = DrawnShare.part(used, all);
        String ends = StudySummary.with(spread.low(), question) + " and " + StudySummary.with(spread.high(), question);
        String how = used < Quantiles.FEWEST
                ? " in all " + (part.isEmpty() ? used + " draws" : part + " that could be ridden")
                : " with 90 % probability, as far as the tolerances go"
                        + (part.isEmpty() ? "" : " and the vehicle can be ridden (" + part + ")");
        return of + " is between " + ends + how + "; as written "
                + StudySummary.with(findings.asWritten(t, q), question) + ".";
    }

    /** Where the median is least and greatest, with the intervals there. */
    private String ofSteps(String of, Question question, int t, int q, int[] ridden) {
        Factor factor = findings.method().along().orElseThrow().factor();
        int least = ridden[0];
        int most = ridden[0];
        for (int slot : ridden) {
            least = median(slot, t, q) < median(least, t, q) ? slot : least;
            most = median(slot, t, q) > median(most, t, q) ? slot : most;
        }
        String named = findings.axis().length == ridden.length
                ? ""
                : " Only " + ridden.length + " of " + findings.axis().length + " steps could be ridden in any draw.";
        if (ridden.length < 2 || RoundOff.isAlike(median(least, t, q), median(most, t, q))) {
            return of + " has the median " + told(least, t, q, question) + " at "
                    + (ridden.length < 2 ? factor.name() + " " + step(least) : "each " + factor.name()) + "." + named;
        }
        return of + " has its least median at " + factor.name() + " " + step(least) + ", "
                + told(least, t, q, question) + ", and its greatest at " + step(most) + ", "
                + told(most, t, q, question) + "." + named;
    }

    private double median(int slot, int t, int q) {
        return findings.spread(slot, t, q).quantile(0.5);
    }

    private String told(int slot, int t, int q, Question question) {
        QuantileSketch spread = findings.spread(slot, t, q);
        String part = DrawnShare.part(spread.count(), findings.method().draws());
        return StudySummary.with(spread.quantile(0.5), question) + " (" + Numbers.of(spread.low()) + " to "
                + Numbers.of(spread.high()) + (part.isEmpty() ? "" : "; " + part) + ")";
    }
}
