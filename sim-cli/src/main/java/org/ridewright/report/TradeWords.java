package org.ridewright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ridewright.friction.BestBand;
import org.ridewright.friction.Criterion;
import org.ridewright.friction.FrictionLab;
import org.ridewright.friction.TradeLine;
import org.ridewright.friction.TradeOff;

/** Where friction is best, in sentences that say no more than the draws. */
final class TradeWords {
    private static final double MILLI = 1000;

    private final TradeOff trade;
    private final List<BestBand> bands;

    TradeWords(FrictionLab lab) {
        trade = lab.tradeOff();
        bands = bands(lab);
    }

    /** Bands of every criterion that has a best, in the order of the report. */
    static List<BestBand> bands(FrictionLab lab) {
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
                    case LOCKED, HEAVE_LEFT, PITCH_LEFT -> line.criterion().title();
                };
        return what + ", " + TradeFigures.speed(line.speed());
    }

    static String verdict(BestBand band) {
        return switch (band.verdict()) {
            case FLAT -> "flat: no best";
            case LESS -> "best up to a limit";
            case MORE -> "best from a limit on";
            case BETWEEN -> "best in between";
            case OPEN -> "open: the draws do not agree on its ends";
        };
    }

    /** One row for each band. */
    List<List<String>> rows() {
        return bands.stream()
                .map(b -> {
                    boolean turns = b.line().criterion() == Criterion.PITCH_AFTER;
                    double scale = turns ? MILLI : 1;
                    String unit = turns ? "mrad" : b.line().criterion().unit();
                    return List.of(
                            b.line().criterion().title(),
                            b.line().road(),
                            Numbers.brief(3.6 * b.line().speed()),
                            (Numbers.of(scale * b.line().at(b.line().written()).median()) + " " + unit).strip(),
                            spread(b.best()),
                            spread(b.from()),
                            spread(b.to()),
                            "%d of %d".formatted(b.draws(1), trade.draws()),
                            verdict(b) + HeldSwing.beside(trade, b));
                })
                .toList();
    }

    private static String spread(TradeLine.Spread spread) {
        String low = factor(spread.low());
        String high = factor(spread.high());
        String median = "× " + factor(spread.median());
        return low.equals(high) ? median : "%s (%s to %s)".formatted(median, low, high);
    }

    /** Two decimals: the frictions that were ridden lie no closer than a tenth. */
    static String factor(double factor) {
        String text = Numbers.fixed(factor, 2);
        return text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
    }

    /** What is said of the gravel, of roughness and of the plank, a paragraph each. */
    List<String> paragraphs() {
        List<String> paragraphs = new ArrayList<>();
        List<BestBand> gravel =
                bands.stream().filter(b -> b.line().road().equals("gravel")).toList();
        if (!gravel.isEmpty()) {
            paragraphs.add("Gravel, by weighted acceleration at %s: %s.%s"
                    .formatted(trade.place(), each(gravel), common(gravel)));
        }
        List<TradeLine> classes = classes(trade);
        if (classes.size() > 1) {
            paragraphs.add(roughness(classes));
        }
        List<String> plank = new ArrayList<>();
        for (Criterion criterion : List.of(Criterion.PLANK_PEAK, Criterion.PITCH_AFTER, Criterion.CYCLES)) {
            List<BestBand> some = bands.stream()
                    .filter(b -> b.line().criterion() == criterion)
                    .toList();
            if (!some.isEmpty()) {
                String what =
                        criterion == Criterion.PLANK_PEAK ? "peak acceleration at " + trade.place() : criterion.title();
                boolean swingsOn =
                        some.stream().anyMatch(b -> !HeldSwing.beside(trade, b).isEmpty());
                plank.add("by %s %s%s"
                        .formatted(
                                what,
                                each(some),
                                swingsOn ? ", where the body yet swings on, on springs that friction holds" : ""));
            }
        }
        if (!plank.isEmpty()) {
            paragraphs.add("Plank: " + String.join("; ", plank) + ".");
        }
        return paragraphs;
    }

    /** Speeds with the same verdict together. */
    private static String each(List<BestBand> some) {
        Map<BestBand.Verdict, List<BestBand>> by = new LinkedHashMap<>();
        some.forEach(
                b -> by.computeIfAbsent(b.verdict(), v -> new ArrayList<>()).add(b));
        return by.values().stream()
                .map(alike -> says(alike.get(0).verdict()) + " " + speeds(alike))
                .collect(Collectors.joining("; "));
    }

    private static String says(BestBand.Verdict verdict) {
        return switch (verdict) {
            case FLAT -> "flat, no best, at";
            case LESS -> "best up to a limit at";
            case MORE -> "best from a limit on at";
            case BETWEEN -> "best in between at";
            case OPEN -> "the draws do not agree on the ends of the band at";
        };
    }

    private static String speeds(List<BestBand> alike) {
        return Listed.of(
                alike.stream().map(b -> TradeFigures.speed(b.line().speed())).toList());
    }

    /** Whether one friction serves every speed, and whether that as written does, counted draw by draw. */
    private String common(List<BestBand> some) {
        if (some.size() < 2) {
            return "";
        }
        int draws = trade.draws();
        BestBand.Shared shared = BestBand.shared(some);
        int written = BestBand.draws(some, 1);
        if (draws == 1) {
            return shared.draws() == 0
                    ? " No one friction is as good as the best at every speed."
                    : " One for every speed: × %s.%s"
                            .formatted(factor(shared.factor()), written > 0 ? " So is that as written." : "");
        }
        if (shared.draws() == 0) {
            return " No one friction is as good as the best at every speed in any draw.";
        }
        String does = 2 * shared.draws() >= draws
                ? " One for every speed: × %s is as good as the best"
                : " No one serves every speed in most draws: × %s is as good as the best";
        return (does + " at each in %d of %d, and none in more; that as written in %d.")
                .formatted(factor(shared.factor()), shared.draws(), draws, written);
    }

    private String roughness(List<TradeLine> classes) {
        List<BestBand> each = classes.stream().map(BestBand::of).toList();
        String medians = each.stream()
                .map(b -> "%s on %s".formatted(spread(b.best()), b.line().road()))
                .collect(Collectors.joining(", "));
        String smooth = classes.get(0).road();
        String rough = classes.get(classes.size() - 1).road();
        int draws = trade.draws();
        BestBand.Move move = each.get(0).to(each.get(each.size() - 1));
        int up = move.up();
        int down = move.down();
        String moves;
        if (draws == 1) {
            moves = "One draw does not tell whether that is more than chance.";
        } else {
            String counted = "From %s to %s it goes up in %d of %d draws and down in %d"
                    .formatted(smooth, rough, up, draws, down);
            moves = counted
                    + (up >= BestBand.agreeing(draws)
                            ? ": the rougher the road, the more friction."
                            : down >= BestBand.agreeing(draws)
                                    ? ": the rougher the road, the less friction."
                                    : ", so that it does not clearly move with roughness.");
        }
        return "Roughness: at %s the least weighted acceleration is at a friction of %s. %s"
                .formatted(TradeFigures.speed(classes.get(0).speed()), medians, moves);
    }

    /** How the draws and what is said of them are to be read. */
    String reading() {
        int draws = trade.draws();
        if (draws == 1) {
            return "With one draw nothing says how sure these numbers are.";
        }
        return "In brackets: where one further draw would lie with a probability of %s, by the order of the %d draws and whatever their distribution. Before the brackets: their median."
                .formatted(Numbers.percent(TradeLine.Spread.coverage(draws)), draws);
    }

    /** What a verdict is worth. */
    String worth() {
        int draws = trade.draws();
        return "A verdict is what %d of the %d draws have in common; so many say, with a confidence of 95 %%, that at least %s of all such vehicles and roads would agree."
                .formatted(BestBand.agreeing(draws), draws, Numbers.percent(BestBand.assured(draws)));
    }

    /** Speeds of the rides in words. */
    static String speeds(TradeOff trade) {
        return Listed.of(trade.speeds().stream().map(TradeFigures::speed).toList());
    }
}
