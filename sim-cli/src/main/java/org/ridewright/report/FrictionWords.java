package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.ridewright.bounce.Count;
import org.ridewright.bounce.Decay;
import org.ridewright.bounce.Tremor;
import org.ridewright.friction.BestBand;
import org.ridewright.friction.Criterion;
import org.ridewright.friction.ForcedPoint;
import org.ridewright.friction.ForcedResponse;
import org.ridewright.friction.FrictionLab;
import org.ridewright.friction.LoopPoint;
import org.ridewright.friction.RingDowns;
import org.ridewright.friction.RingDowns.Rung;
import org.ridewright.friction.SpringLoops;
import org.ridewright.friction.TradeLine;
import org.ridewright.friction.TradeOff;

/** What the friction laboratory found, in sentences that say no more than its numbers. */
public final class FrictionWords {
    private static final double MILLI = 1000;
    private static final double KILO = 1000;
    /** Part of the greatest loop below which an area is not compared by ratio. */
    private static final double LEAST_PART = 0.01;

    /** A first swing less than this many times as wide as the tremor that is left is one of the tremor, as in a bounce test. */
    private static final double TREMOR = 1.5;

    /** Fewer swings than this lie on any line. */
    private static final int FEWEST_SWINGS = 4;

    /** Heads of {@link #bandRows}. */
    public static final List<String> BAND_HEADS = List.of(
            "Criterion",
            "Road",
            "Speed (km/h)",
            "As written",
            "Least, at friction of",
            "Within 5 % from",
            "to",
            "Verdict");

    /** Heads of {@link #loopRows}. */
    public static final List<String> LOOP_HEADS = List.of(
            "Spring",
            "Load case",
            "Load (kN)",
            "Friction (N)",
            "Friction (% of load)",
            "Rate, locked (N/mm)",
            "Rate, widest loop (N/mm)",
            "Area of that loop (J)",
            "by harmonic balance (J)");

    private FrictionWords() {}

    /** Bands of every criterion that has a best, in the order of the report. */
    public static List<BestBand> bands(FrictionLab lab) {
        List<BestBand> bands = new ArrayList<>();
        for (Criterion criterion : Criterion.values()) {
            lab.tradeOff().lines().stream()
                    .filter(l -> l.criterion() == criterion && criterion.lessIsBetter())
                    .forEach(l -> bands.add(BestBand.of(l)));
        }
        return bands;
    }

    static List<TradeLine> classes(TradeOff trade) {
        return TradeOff.CLASSES.stream()
                .flatMap(c -> trade.lines(Criterion.WEIGHTED, "class " + c.name()).stream())
                .toList();
    }

    /** Criterion, road and speed in a few words. */
    static String brief(BestBand band) {
        TradeLine line = band.line();
        String what =
                switch (line.criterion()) {
                    case PLANK_PEAK -> "plank, peak";
                    case PITCH_AFTER -> "plank, pitch after";
                    case CYCLES -> "plank, cycles to rest";
                    case WEIGHTED -> line.road();
                    case LOCKED -> "time locked";
                };
        return what + ", " + TradeFigures.speed(line.speed());
    }

    static String verdict(BestBand band) {
        return switch (band.verdict()) {
            case FLAT -> "flat: no best";
            case LESS -> "the less, the better";
            case MORE -> "the more, the better";
            case BETWEEN -> "best in between";
            case OPEN -> "open: the draws do not agree";
        };
    }

    private static String spread(TradeLine.Spread spread) {
        String low = Numbers.brief(spread.low());
        String high = Numbers.brief(spread.high());
        String median = "× " + Numbers.brief(spread.median());
        return low.equals(high) ? median : "%s (%s to %s)".formatted(median, low, high);
    }

    /** One row for each band. */
    public static List<List<String>> bandRows(FrictionLab lab) {
        return bands(lab).stream()
                .map(b -> {
                    double scale = b.line().criterion() == Criterion.PITCH_AFTER ? MILLI : 1;
                    String unit = b.line().criterion() == Criterion.PITCH_AFTER
                            ? "mrad"
                            : b.line().criterion().unit();
                    return List.of(
                            b.line().criterion().title(),
                            b.line().road(),
                            Numbers.brief(3.6 * b.line().speed()),
                            (Numbers.of(scale * b.line().at(b.line().written()).median()) + " " + unit).strip(),
                            spread(b.best()),
                            spread(b.from()),
                            spread(b.to()),
                            verdict(b));
                })
                .toList();
    }

    /** One row for each spring and load. */
    public static List<List<String>> loopRows(FrictionLab lab) {
        return lab.loops().stream()
                .map(l -> {
                    LoopPoint first = l.points().get(0);
                    LoopPoint last = l.points().get(l.points().size() - 1);
                    return List.of(
                            l.spring(),
                            l.loadCase(),
                            Numbers.of(l.load() / KILO),
                            Numbers.of(l.limit()),
                            l.load() > 0 ? Numbers.of(100 * l.limit() / l.load(), 2) : "–",
                            Numbers.of(first.firstHarmonicRate() / KILO),
                            "%s at ± %s mm"
                                    .formatted(
                                            Numbers.of(last.firstHarmonicRate() / KILO),
                                            Numbers.of(MILLI * last.amplitude(), 2)),
                            Numbers.of(last.area()),
                            Numbers.of(last.balancedArea()));
                })
                .toList();
    }

    /** The answer, one paragraph to a question. */
    public static List<String> answers(FrictionLab lab) {
        List<String> answers = new ArrayList<>();
        answers.add(loops(lab));
        answers.addAll(ringDowns(lab));
        answers.add(forced(lab));
        answers.addAll(gravel(lab));
        answers.addAll(roughness(lab));
        answers.addAll(plank(lab));
        return answers;
    }

    private static String loops(FrictionLab lab) {
        String loads = lab.loops().stream()
                .filter(l -> l.loadCase().equals(lab.model().loadCase().name()))
                .map(l -> "%s %s N, %s %% of its load"
                        .formatted(l.spring(), Numbers.of(l.limit()), Numbers.of(100 * l.limit() / l.load(), 2)))
                .collect(Collectors.joining("; "));
        double worstArea = 0;
        double worstRate = 0;
        for (SpringLoops spring : lab.loops()) {
            double most =
                    spring.points().stream().mapToDouble(LoopPoint::area).max().orElse(0);
            for (LoopPoint p : spring.points()) {
                if (p.area() > LEAST_PART * most) {
                    worstArea = Math.max(worstArea, Math.abs(p.balancedArea() / p.area() - 1));
                }
                worstRate = Math.max(worstRate, Math.abs(p.balancedRate() / p.firstHarmonicRate() - 1));
            }
        }
        return "Loops. Friction holds, %s: %s. Harmonic balance gives the areas of all simulated loops within %s and their rates within %s."
                .formatted(
                        lab.model().loadCase().name(), loads, Numbers.percent(worstArea), Numbers.percent(worstRate));
    }

    private static List<String> ringDowns(FrictionLab lab) {
        return lab.ringDowns().stream().map(each -> ringDown(lab, each)).toList();
    }

    private static String ringDown(FrictionLab lab, RingDowns each) {
        String counts = each.rungs().stream()
                .map(r -> cycles(r.result().count()) + " " + r.word())
                .collect(Collectors.joining(", "));
        StringBuilder words = new StringBuilder("Let go from %s mm, %s swings %s."
                .formatted(
                        Numbers.brief(MILLI * lab.settings().depth()),
                        each.kind().word().equals("roll")
                                ? "the side"
                                : "the " + each.kind().word(),
                        counts));
        if (each.damper().isPresent()) {
            Rung damper = each.damper().get();
            words.append(" Dampers that take as much of the first cycle as the friction as written let it swing %s."
                    .formatted(cycles(damper.result().count())));
        } else {
            words.append(
                    " With the friction as written it swings too little for dampers of equal loss in the first cycle to be found.");
        }
        String shapes = RingDownFigures.rungs(each).stream()
                .filter(r -> r.result().count().halfCycles() >= FEWEST_SWINGS
                        && !onlyTrembles(r.result().count()))
                .map(r -> "%s, %s"
                        .formatted(r.word(), shape(r.result().count().decay().orElseThrow())))
                .collect(Collectors.joining("; "));
        if (!shapes.isEmpty()) {
            words.append(" Swings shrink: ").append(shapes).append(".");
        }
        return words.toString();
    }

    private static String shape(Decay decay) {
        return switch (decay.shape()) {
            case STRAIGHT -> "along a straight line";
            case EXPONENTIAL -> "along an exponential";
            case MIXED -> "along neither a straight line nor an exponential clearly";
        };
    }

    private static boolean onlyTrembles(Count count) {
        Tremor left = count.left();
        return !count.isHeld() && left.held() && left.visible() && count.swing(0) < 2 * TREMOR * left.halfWidth();
    }

    private static String cycles(Count count) {
        double cycles = count.cycles();
        if (cycles == 0) {
            return "no cycle";
        }
        double tremor = count.left().halfWidth();
        String width = Numbers.brief(MILLI * tremor) + (count.motion().turns() ? " mrad" : " mm");
        boolean trembles = count.left().held() && count.left().visible();
        if (onlyTrembles(count)) {
            return "not at all but for a tremor of ± " + width + " on held springs";
        }
        String swings = cycles == 0.5 ? "half a cycle" : Numbers.brief(cycles) + (cycles == 1 ? " cycle" : " cycles");
        return trembles ? swings + " (then a tremor of ± " + width + " on held springs)" : swings;
    }

    private static String forced(FrictionLab lab) {
        ForcedResponse forced = lab.forced();
        int least = 0;
        for (int i = 1; i < forced.fine().length; i++) {
            least = forced.threshold()[i] < forced.threshold()[least] ? i : least;
        }
        if (!(forced.threshold()[least] > 0)) {
            return "Sinusoidal road. A spring of this vehicle, described with an envelope, slides at every travel: it is never quite locked.";
        }
        List<Double> departures = new ArrayList<>();
        for (ForcedResponse.Curve curve : forced.curves()) {
            for (int i = 0; i < curve.simulated().size(); i++) {
                ForcedPoint point = curve.simulated().get(i);
                double departure = Math.abs(curve.balancedAt(i) / point.harmonic() - 1);
                if (point.settled() && !point.leaves() && point.locked() < 1 && Double.isFinite(departure)) {
                    departures.add(departure);
                }
            }
        }
        departures.sort(Double::compare);
        String accuracy = departures.isEmpty()
                ? ""
                : " At the %d simulated points at which leaves slide and nothing lifts off, harmonic balance gives the body's motion within %s, half of them within %s."
                        .formatted(
                                departures.size(),
                                Numbers.percent(departures.get(departures.size() - 1)),
                                Numbers.percent(departures.get(departures.size() / 2)));
        return "Sinusoidal road. Between %s and %s Hz, a road of less than about ± %s mm moves no leaf at any frequency; the spring that lets go first does so near %s Hz.%s"
                .formatted(
                        Numbers.of(forced.fine()[0], 2),
                        Numbers.of(forced.fine()[forced.fine().length - 1], 2),
                        Numbers.of(MILLI * forced.threshold()[least], 2),
                        Numbers.of(forced.fine()[least], 2),
                        accuracy);
    }

    /** What a band says, after a subject. */
    private static String says(BestBand band) {
        return switch (band.verdict()) {
            case FLAT -> "friction is flat: no best";
            case LESS -> "the less friction, the better, up to " + spread(band.to()) + " within 5 %";
            case MORE -> "the more friction, the better, from " + spread(band.from()) + " on within 5 %";
            case BETWEEN -> "friction is best from %s to %s".formatted(spread(band.from()), spread(band.to()));
            case OPEN ->
                "the draws do not agree on where friction is best (median from × %s to × %s)"
                        .formatted(
                                Numbers.brief(band.from().median()),
                                Numbers.brief(band.to().median()));
        };
    }

    private static List<String> gravel(FrictionLab lab) {
        List<BestBand> bands = bands(lab).stream()
                .filter(b -> b.line().road().equals("gravel"))
                .toList();
        if (bands.isEmpty()) {
            return List.of("Gravel. Nobody is aboard, so that there is no seat to weigh the ride at.");
        }
        String each = bands.stream()
                .map(b -> "at %s %s".formatted(TradeFigures.speed(b.line().speed()), says(b)))
                .collect(Collectors.joining("; "));
        return List.of("Gravel. By weighted acceleration, %s. %s".formatted(each, common(bands)));
    }

    /** Whether one friction serves every speed, and whether that as written does. */
    private static String common(List<BestBand> bands) {
        double from = bands.stream().mapToDouble(b -> b.from().median()).max().orElse(0);
        double to = bands.stream().mapToDouble(b -> b.to().median()).min().orElse(0);
        String shared = from <= to
                ? "In the median, × %s to × %s serves all of these speeds"
                        .formatted(Numbers.brief(from), Numbers.brief(to))
                : "No one friction is within 5 % of the best at all of these speeds";
        long within = bands.stream().filter(b -> b.holds(1)).count();
        return "%s; that as written is within 5 %% of the best at %s of %d."
                .formatted(shared, within == 0 ? "none" : String.valueOf(within), bands.size());
    }

    private static List<String> roughness(FrictionLab lab) {
        List<TradeLine> classes = classes(lab.tradeOff());
        if (classes.size() < 2) {
            return List.of();
        }
        String each = classes.stream()
                .map(l -> "%s × %s"
                        .formatted(l.road(), Numbers.brief(BestBand.of(l).best().median())))
                .collect(Collectors.joining(", "));
        double[] first = least(classes.get(0));
        double[] last = least(classes.get(classes.size() - 1));
        int up = 0;
        int down = 0;
        for (int d = 0; d < first.length; d++) {
            up += last[d] > first[d] ? 1 : 0;
            down += last[d] < first[d] ? 1 : 0;
        }
        String moves = up >= 0.9 * first.length
                ? "The rougher the road, the more friction is best: so in %d of %d draws".formatted(up, first.length)
                : down >= 0.9 * first.length
                        ? "The rougher the road, the less friction is best: so in %d of %d draws"
                                .formatted(down, first.length)
                        : "The draws do not agree on whether the best moves with roughness (up in %d, down in %d of %d)"
                                .formatted(up, down, first.length);
        return List.of("Roughness. At %s the least weighted acceleration is at %s (medians). %s, between %s and %s."
                .formatted(
                        TradeFigures.speed(classes.get(0).speed()),
                        each,
                        lab.tradeOff().draws() == 1 ? "One draw does not tell whether that is more than chance" : moves,
                        classes.get(0).road(),
                        classes.get(classes.size() - 1).road()));
    }

    /** Factor of the least value of each draw. */
    private static double[] least(TradeLine line) {
        return Arrays.stream(line.values())
                .mapToDouble(row -> {
                    int least = 0;
                    for (int i = 1; i < row.length; i++) {
                        least = row[i] < row[least] ? i : least;
                    }
                    return line.factors()[least];
                })
                .toArray();
    }

    /** A paragraph for each criterion. */
    private static List<String> plank(FrictionLab lab) {
        List<String> paragraphs = new ArrayList<>();
        for (Criterion criterion : List.of(Criterion.PLANK_PEAK, Criterion.PITCH_AFTER, Criterion.CYCLES)) {
            String each = bands(lab).stream()
                    .filter(b -> b.line().criterion() == criterion)
                    .map(b -> "at %s %s".formatted(TradeFigures.speed(b.line().speed()), says(b)))
                    .collect(Collectors.joining("; "));
            if (!each.isEmpty()) {
                String what = criterion == Criterion.PLANK_PEAK ? "peak acceleration" : criterion.title();
                paragraphs.add("Plank. By %s, %s.".formatted(what, each));
            }
        }
        return paragraphs;
    }
}
