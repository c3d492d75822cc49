package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ridewright.friction.BodyAlone;
import org.ridewright.friction.ForcedPoint;
import org.ridewright.friction.ForcedResponse;
import org.ridewright.friction.FrictionLab;
import org.ridewright.friction.LoopPoint;
import org.ridewright.friction.SpringLoops;

/** What the friction laboratory found, in sentences that say no more than its numbers. */
public final class FrictionWords {
    private static final double MILLI = 1000;
    private static final double KILO = 1000;
    /** Heads of {@link #bandRows}. */
    public static final List<String> BAND_HEADS = List.of(
            "Criterion",
            "Road",
            "Speed (km/h)",
            "As written",
            "Least, at friction of",
            "As good from",
            "to",
            "As written is as good in",
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

    /** One row for each band. */
    public static List<List<String>> bandRows(FrictionLab lab) {
        return new TradeWords(lab).rows();
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
                            ofLoad(l).orElse("–"),
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

    /** Heads of {@link #ringDownRows}. */
    public static List<String> ringDownHeads() {
        return RingDownWords.heads();
    }

    /** One row for each place that is let go. */
    public static List<List<String>> ringDownRows(FrictionLab lab) {
        return RingDownWords.rows(lab);
    }

    /** How these rows are to be read. */
    public static String ringDownNotes(FrictionLab lab) {
        return RingDownWords.notes(lab);
    }

    /** The limit in per cent of the load; none of a spring that bears nothing. */
    private static Optional<String> ofLoad(SpringLoops loops) {
        return loops.load() > 0 ? Optional.of(Numbers.of(100 * loops.limit() / loops.load(), 2)) : Optional.empty();
    }

    /** The answer in two sentences at most. */
    public static List<String> summary(FrictionLab lab) {
        return new TradeSummary(lab).sentences();
    }

    /** What lies behind it, whether there is a best friction first. */
    public static List<Section> sections(FrictionLab lab) {
        return List.of(trade(lab), loops(lab), RingDownWords.of(lab), forced(lab));
    }

    static Section trade(FrictionLab lab) {
        return new Section("Where friction is best", new TradeWords(lab).paragraphs());
    }

    static Section loops(FrictionLab lab) {
        String loads = lab.loops().stream()
                .filter(l -> l.loadCase().equals(lab.model().loadCase().name()))
                .map(l -> l.spring() + " " + Numbers.of(l.limit()) + " N"
                        + ofLoad(l)
                                .map(share -> " (" + share + " % of its load)")
                                .orElse(""))
                .collect(Collectors.joining(", "));
        SpringLoops.Departure off = SpringLoops.balanced(lab.loops());
        String agree = off.isRoundOff()
                ? "as simulated, to round-off"
                : "of all simulated loops within %s and %s"
                        .formatted(Numbers.percent(off.area()), Numbers.percent(off.rate()));
        return new Section(
                "Loops",
                List.of(
                        "With the load '%s', friction holds: %s."
                                .formatted(lab.model().loadCase().name(), loads),
                        "Harmonic balance gives areas and rates %s.".formatted(agree)));
    }

    static Section forced(FrictionLab lab) {
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add(locked(lab.forced()));
        String balanced = balanced(lab.forced()) + dampers(lab.forced());
        if (!balanced.isBlank()) {
            paragraphs.add(balanced.strip());
        }
        paragraphs.addAll(failed(lab.forced()));
        paragraphs.addAll(alone(lab.alone()));
        return new Section("Sinusoidal road", paragraphs);
    }

    private static String locked(ForcedResponse forced) {
        if (forced.firstToSlide().isEmpty()) {
            return "A spring whose friction is described by an envelope slides at every travel: it is never quite locked.";
        }
        int least = forced.firstToSlide().getAsInt();
        return "From %s to %s Hz, waves below ± %s mm let no spring slide; the first to let go does so near %s Hz."
                .formatted(
                        Numbers.brief(forced.fine()[0]),
                        Numbers.brief(forced.fine()[forced.fine().length - 1]),
                        Numbers.of(MILLI * forced.threshold()[least], 2),
                        Numbers.brief(forced.fine()[least]));
    }

    private static String balanced(ForcedResponse forced) {
        List<ForcedResponse.Departure> departures = forced.departures();
        if (departures.isEmpty()) {
            return "";
        }
        ForcedResponse.Departure worst = departures.get(departures.size() - 1);
        return "Harmonic balance gives the body's motion at the %d simulated points at which springs slide and nothing lifts off or meets a stop within %s, half of them within %s; it errs most at %s and %s Hz."
                .formatted(
                        departures.size(),
                        Numbers.percent(worst.share()),
                        Numbers.percent(departures.get(departures.size() / 2).share()),
                        ForcedFigures.waves(worst.amplitude()),
                        Numbers.brief(worst.frequency()));
    }

    /** Bump and rebound that differ, or a table. */
    private static String dampers(ForcedResponse forced) {
        return forced.model().equations().elements().stream()
                        .anyMatch(e -> e.law().speedStages().count() > 0)
                ? " It takes each damper as it is at small speeds, which dampers of this vehicle are not at great ones."
                : "";
    }

    /** What could not be simulated, or did not come to a steady motion, is nowhere else. */
    private static List<String> failed(ForcedResponse forced) {
        List<String> left = new ArrayList<>();
        for (ForcedResponse.Curve curve : forced.curves()) {
            List<ForcedPoint> gone =
                    curve.simulated().stream().filter(p -> !p.settled()).toList();
            if (!gone.isEmpty()) {
                String reason = gone.stream()
                        .filter(ForcedPoint::hasFailed)
                        .findFirst()
                        .map(p -> "at %s Hz %s".formatted(Numbers.brief(p.frequency()), p.failed()))
                        .orElse("the motion does not become steady");
                left.add("%d of %d on %s (%s)"
                        .formatted(
                                gone.size(), curve.simulated().size(), ForcedFigures.waves(curve.amplitude()), reason));
            }
        }
        return left.isEmpty() ? List.of() : List.of("Simulated points left out: " + String.join("; ", left) + ".");
    }

    private static List<String> alone(BodyAlone alone) {
        if (alone.compared() == 0) {
            return List.of();
        }
        double soft = alone.departureAsWritten();
        String given = Double.isFinite(soft)
                ? "; with springs that give as the file says before they slide it moves otherwise by up to "
                        + Numbers.percent(soft)
                : "";
        return List.of(
                "The body by itself on its springs, their friction rigid, travels as Den Hartog's closed form has it within %s, at %d points%s."
                        .formatted(Numbers.percent(alone.departure()), alone.compared(), given));
    }
}
