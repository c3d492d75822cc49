package org.ridewright.report;

import java.util.ArrayList;
import java.util.Comparator;
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
    /** Part of the greatest loop below which an area is not compared by ratio. */
    private static final double LEAST_PART = 0.01;

    /** A smaller share is the solver's. */
    private static final double ROUND_OFF = 1e-5;

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

    /** The limit in per cent of the load; none of a spring that bears nothing. */
    private static Optional<String> ofLoad(SpringLoops loops) {
        return loops.load() > 0 ? Optional.of(Numbers.of(100 * loops.limit() / loops.load(), 2)) : Optional.empty();
    }

    /** The answer, a paragraph to a question, whether there is a best friction first. */
    public static List<String> answers(FrictionLab lab) {
        List<String> answers = new ArrayList<>(new TradeWords(lab).paragraphs());
        answers.add(loops(lab));
        answers.addAll(RingDownWords.of(lab));
        answers.add("Sinusoidal road. " + locked(lab.forced()) + balanced(lab.forced()) + dampers(lab.forced())
                + alone(lab.alone()));
        return answers;
    }

    private static String loops(FrictionLab lab) {
        String loads = lab.loops().stream()
                .filter(l -> l.loadCase().equals(lab.model().loadCase().name()))
                .map(l -> l.spring() + " " + Numbers.of(l.limit()) + " N"
                        + ofLoad(l)
                                .map(share -> " (" + share + " % of its load)")
                                .orElse(""))
                .collect(Collectors.joining(", "));
        double area = 0;
        double rate = 0;
        for (SpringLoops spring : lab.loops()) {
            double most =
                    spring.points().stream().mapToDouble(LoopPoint::area).max().orElse(0);
            for (LoopPoint p : spring.points()) {
                if (p.area() > LEAST_PART * most) {
                    area = Math.max(area, Math.abs(p.balancedArea() / p.area() - 1));
                }
                rate = Math.max(rate, Math.abs(p.balancedRate() / p.firstHarmonicRate() - 1));
            }
        }
        String agree = Math.max(area, rate) < ROUND_OFF
                ? "as simulated, to round-off"
                : "of all simulated loops within %s and %s".formatted(Numbers.percent(area), Numbers.percent(rate));
        return "Loops. With the load '%s', friction holds: %s. Harmonic balance gives areas and rates %s."
                .formatted(lab.model().loadCase().name(), loads, agree);
    }

    private static String locked(ForcedResponse forced) {
        int least = 0;
        for (int i = 1; i < forced.fine().length; i++) {
            least = forced.threshold()[i] < forced.threshold()[least] ? i : least;
        }
        if (!(forced.threshold()[least] > 0)) {
            return "A spring whose friction is described by an envelope slides at every travel: it is never quite locked.";
        }
        return "From %s to %s Hz, waves below ± %s mm let no spring slide; the first to let go does so near %s Hz."
                .formatted(
                        Numbers.brief(forced.fine()[0]),
                        Numbers.brief(forced.fine()[forced.fine().length - 1]),
                        Numbers.of(MILLI * forced.threshold()[least], 2),
                        Numbers.brief(forced.fine()[least]));
    }

    private record Departure(double share, double amplitude, double frequency) {}

    private static String balanced(ForcedResponse forced) {
        List<Departure> departures = new ArrayList<>();
        for (ForcedResponse.Curve curve : forced.curves()) {
            for (int i = 0; i < curve.simulated().size(); i++) {
                ForcedPoint point = curve.simulated().get(i);
                double share = Math.abs(curve.balancedAt(i) / point.harmonic() - 1);
                if (point.settled() && !point.leaves() && point.locked() < 1 && Double.isFinite(share)) {
                    departures.add(new Departure(share, curve.amplitude(), point.frequency()));
                }
            }
        }
        if (departures.isEmpty()) {
            return "";
        }
        departures.sort(Comparator.comparingDouble(Departure::share));
        Departure worst = departures.get(departures.size() - 1);
        return " Harmonic balance gives the body's motion at the %d simulated points at which springs slide and nothing lifts off or meets a stop within %s, half of them within %s; it errs most at %s and %s Hz."
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

    private static String alone(BodyAlone alone) {
        long compared = alone.curves().stream().mapToLong(c -> c.rigid().size()).sum();
        if (compared == 0) {
            return "";
        }
        double soft = alone.curves().stream()
                .flatMap(c -> c.given().stream().map(p -> Math.abs(p.amplitude() / alone.closed(c, p) - 1)))
                .filter(Double::isFinite)
                .max(Double::compare)
                .orElse(Double.NaN);
        String given = Double.isFinite(soft)
                ? "; with springs that give as the file says before they slide it moves otherwise by up to "
                        + Numbers.percent(soft)
                : "";
        return " The body by itself on its springs, their friction rigid, travels as Den Hartog's closed form has it within %s, at %d points%s."
                .formatted(Numbers.percent(alone.departure()), compared, given);
    }
}
