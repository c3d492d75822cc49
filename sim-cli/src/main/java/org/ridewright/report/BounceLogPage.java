package org.ridewright.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.ridewright.figure.FigureFiles;
import org.ridewright.report.BounceLogResult.Motion;
import org.ridewright.ringdown.RingDown;

/** The page of a log's bounce tests. One file that needs no other. */
public final class BounceLogPage {
    private BounceLogPage() {}

    /**
     * The page; every text of the user's is escaped.
     *
     * @param figures drawn from {@link BounceLogFigures#of}
     */
    public static String render(BounceLogResult result, List<FigureFiles> figures) {
        Map<String, Object> model = new HashMap<>();
        model.put("name", result.name());
        model.put(
                "asked",
                "How fast a vehicle swings when it is pushed down and let go, and what makes it come to rest, by the acceleration recorded in "
                        + result.name() + ": " + result.extent() + ".");
        model.put("answers", result.answers());
        model.put("remarks", remarks(result));
        model.put("heads", BounceLogWords.heads());
        List<Map<String, Object>> tables = new ArrayList<>();
        for (Motion motion : result.motions()) {
            tables.add(Map.of(
                    "heading",
                    RideFigures.upperFirst(motion.name()),
                    "rows",
                    BounceLogWords.rows(motion),
                    "kinds",
                    kinds(motion)));
        }
        model.put("tables", tables);
        model.put("groups", Templates.groups(BounceLogFigures.groups(result), figures));
        return Templates.render("bounce-log.ftlh", model);
    }

    /** What to keep in mind, of the releases first. */
    public static List<String> remarks(BounceLogResult result) {
        List<String> remarks = new ArrayList<>();
        for (Motion motion : result.motions()) {
            String of = result.motions().size() > 1 ? RideFigures.upperFirst(motion.name()) + ", release" : "Release";
            remarkedOn(motion)
                    .forEach((remark, numbers) -> remarks.add(of
                            + (numbers.size() > 1 ? "s " : " ")
                            + numbers.stream().map(String::valueOf).collect(Collectors.joining(", "))
                            + ": " + remark));
            remarks.addAll(motion.ringDowns().leftOut());
            if (motion.ringDowns().releases().size() > 1
                    && motion.ringDowns().together().isEmpty()) {
                remarks.add(
                        "The frequencies of the releases differ by more than 12 %: they are of other ends or loads, and are not taken together.");
            }
        }
        remarks.addAll(result.remarks());
        return remarks;
    }

    /** Each remark once, with the numbers of the releases. */
    private static Map<String, List<Integer>> remarkedOn(Motion motion) {
        Map<String, List<Integer>> remarked = new LinkedHashMap<>();
        int number = 1;
        for (RingDown release : motion.ringDowns().releases()) {
            for (String remark : release.remarks()) {
                remarked.computeIfAbsent(remark, r -> new ArrayList<>()).add(number);
            }
            number++;
        }
        return remarked;
    }

    private static List<List<String>> kinds(Motion motion) {
        List<List<String>> rows = new ArrayList<>();
        int number = 1;
        for (RingDown release : motion.ringDowns().releases()) {
            rows.add(List.of(
                    String.valueOf(number++),
                    Numbers.of(release.dryOnly().noise(), 2),
                    Numbers.of(release.viscousOnly().noise(), 2),
                    Numbers.of(release.noise(), 2),
                    release.kind().words(),
                    BounceLogWords.plusMinus(release.naturalFrequency()),
                    release.softness().map(q -> BounceLogWords.interval(q, 1)).orElse("–"),
                    release.second()
                            .map(s -> BounceLogWords.plusMinus(s.frequency()) + " Hz, "
                                    + String.format(Locale.ROOT, "%.0f %%", 100 * s.share()))
                            .orElse("–"),
                    release.samples() + ", worth " + Numbers.of(release.independent(), 2)));
        }
        return rows;
    }
}
