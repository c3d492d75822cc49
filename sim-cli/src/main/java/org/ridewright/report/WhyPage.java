package org.ridewright.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ridewright.figure.FigureFiles;
import org.ridewright.study.Question;
import org.ridewright.uncertainty.Interval;
import org.ridewright.why.Contribution;
import org.ridewright.why.WhyFindings;

/** The page of {@code why}. One file that needs no other. */
public final class WhyPage {
    private static final int MOST_PAIRS = 10;

    private WhyPage() {}

    /** The page; every text of the user's is escaped. */
    public static String render(
            WhyFindings findings, WhyBasis basis, List<FigureGroup> groups, List<FigureFiles> drawn) {
        Map<String, Object> page = new HashMap<>();
        page.put("name", basis.vehicle());
        page.put("ride", basis.ride());
        page.put("load", basis.load());
        page.put(
                "answers", WhyWords.summary(findings).stream().map(Unbroken::of).toList());
        page.put(
                "sections",
                WhyWords.sections(findings).stream()
                        .map(s -> new Section(
                                s.heading(),
                                s.paragraphs().stream().map(Unbroken::of).toList()))
                        .toList());
        page.put("groups", Templates.groups(groups, drawn));
        page.put("swaps", swaps(findings));
        page.put("skipped", basis.skipped());
        page.put("remarks", basis.remarks());
        page.put(
                "unanswered", findings.unanswered().stream().map(Question::name).collect(Collectors.joining(", ")));
        List<String> heads = new ArrayList<>(List.of("Ride", "Ingredient"));
        findings.questions().forEach(q -> heads.add(q.name()));
        page.put("heads", heads);
        page.put("rows", rows(findings));
        page.put("shares", shares(findings));
        page.put("whole", basis.whole());
        page.put("first", first(findings));
        page.put("pairs", pairs(findings));
        page.put("pairHeads", List.of("Ride", "Exchanged together", "Of " + first(findings), "90 % interval"));
        page.put("methods", basis.methods(findings));
        page.put("citation", basis.citation(findings.draws() + findings.lost()));
        return Templates.render("why.ftlh", page);
    }

    private static String first(WhyFindings findings) {
        return findings.questions().isEmpty()
                ? "–"
                : findings.questions().get(0).name();
    }

    private static List<List<String>> swaps(WhyFindings findings) {
        return findings.swaps().stream()
                .map(s -> List.of(s.name(), s.alternative(), s.words()))
                .toList();
    }

    private static List<List<String>> rows(WhyFindings findings) {
        List<List<String>> rows = new ArrayList<>();
        for (int t = 0; t < findings.tests().size(); t++) {
            List<String> now = new ArrayList<>(List.of(findings.tests().get(t), "as it is"));
            List<String> together = new ArrayList<>(List.of(findings.tests().get(t), "all exchanged"));
            for (int q = 0; q < findings.questions().size(); q++) {
                now.add(now(findings, t, q));
                together.add(cell(findings.together(t, q)));
            }
            rows.add(now);
            if (!findings.questions().isEmpty()) {
                for (int i : WhyWords.ranked(findings, t)) {
                    List<String> row = new ArrayList<>(List.of(
                            findings.tests().get(t), findings.swaps().get(i).name()));
                    for (int q = 0; q < findings.questions().size(); q++) {
                        row.add(cell(findings.alone(t, q, i)));
                    }
                    rows.add(row);
                }
            }
            rows.add(together);
        }
        return rows;
    }

    private static String now(WhyFindings findings, int t, int q) {
        Question question = findings.questions().get(q);
        Interval interval = findings.nowDrawn(t, q).interval();
        return Numbers.of(findings.now(t, q), 3) + " "
                + question.measure().unit().replace("^1.75", "¹·⁷⁵") + " (" + Numbers.of(interval.low(), 3) + " to "
                + Numbers.of(interval.high(), 3) + ")";
    }

    private static String cell(Contribution part) {
        Interval interval = part.interval();
        return WhyWords.plus(part.asWritten(), WhyWords.decimals(interval)) + " % (" + WhyWords.signed(interval) + ")";
    }

    /** Shares in the first number. */
    private static List<List<String>> shares(WhyFindings findings) {
        List<List<String>> rows = new ArrayList<>();
        for (int t = 0; t < findings.tests().size() && !findings.questions().isEmpty(); t++) {
            for (int i : WhyWords.ranked(findings, t)) {
                Contribution share = findings.share(t, 0, i);
                if (Double.isFinite(share.asWritten())) {
                    List<String> row = new ArrayList<>(List.of(
                            findings.tests().get(t),
                            findings.swaps().get(i).name(),
                            WhyWords.plus(share.asWritten(), 1) + " %"));
                    if (share.hasInterval()) {
                        row.add(WhyWords.signed(share.interval()));
                    }
                    rows.add(row);
                }
            }
        }
        return rows;
    }

    private static List<List<String>> pairs(WhyFindings findings) {
        List<List<String>> rows = new ArrayList<>();
        for (int t = 0; t < findings.tests().size() && !findings.questions().isEmpty(); t++) {
            for (WhyWords.Pair pair :
                    WhyWords.pairs(findings, t, 0).stream().limit(MOST_PAIRS).toList()) {
                Contribution part = findings.interaction(t, 0, pair.i(), pair.j());
                rows.add(List.of(
                        findings.tests().get(t),
                        findings.swaps().get(pair.i()).name() + " and "
                                + findings.swaps().get(pair.j()).name(),
                        WhyWords.plus(part.asWritten(), 1) + " %",
                        WhyWords.signed(part.interval())));
            }
        }
        return rows;
    }
}
