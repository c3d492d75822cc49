package org.ridewright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ridewright.friction.BestBand;
import org.ridewright.friction.Criterion;
import org.ridewright.friction.FrictionLab;
import org.ridewright.friction.TradeLine;
import org.ridewright.friction.TradeOff;

/** Whether the friction of the springs suits the gravel, and what it does behind a plank, in a sentence each. */
final class TradeSummary {
    private final TradeOff trade;
    private final List<BestBand> gravel;

    TradeSummary(FrictionLab lab) {
        trade = lab.tradeOff();
        gravel = trade.lines(Criterion.WEIGHTED, "gravel").stream()
                .map(BestBand::of)
                .toList();
    }

    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        onGravel().ifPresent(sentences::add);
        behindPlank().ifPresent(sentences::add);
        return sentences.isEmpty() ? List.of("Nothing could be compared on these roads.") : sentences;
    }

    private Optional<String> onGravel() {
        if (gravel.isEmpty()) {
            return Optional.empty();
        }
        BestBand worst = gravel.stream()
                .max(Comparator.comparingDouble(b -> b.excess().median()))
                .orElseThrow();
        TradeLine.Spread excess = worst.excess();
        String at = " at " + TradeFigures.speed(worst.line().speed());
        String above = excess.high() == 0
                ? "On gravel no friction shakes %s less than that as written".formatted(trade.place())
                : "On gravel the friction as written makes weighted acceleration at %s %s %% higher than the best%s%s"
                        .formatted(
                                trade.place(),
                                whole(excess.median()),
                                trade.draws() > 1
                                        ? " (%s to %s %%)".formatted(whole(excess.low()), whole(excess.high()))
                                        : "",
                                at + (gravel.size() > 1 ? " and no more at other speeds" : ""));
        return Optional.of(above + serves() + ".");
    }

    private String serves() {
        if (trade.draws() == 1) {
            return ", in the one draw that was made";
        }
        String where = gravel.size() > 1 ? " at every speed" : "";
        int written = BestBand.draws(gravel, 1);
        BestBand.Shared shared = BestBand.shared(gravel);
        String as = "; it is as good as the best%s in %d of %d draws".formatted(where, written, trade.draws());
        return written >= shared.draws()
                ? as + ", and no other friction in more"
                : as + ", × %s in %d".formatted(TradeWords.factor(shared.factor()), shared.draws());
    }

    private Optional<String> behindPlank() {
        List<TradeLine> lines = trade.lines(Criterion.CYCLES, "plank");
        if (lines.isEmpty()) {
            return Optional.empty();
        }
        TradeLine line = lines.get(lines.size() / 2);
        TradeLine.Spread none = line.at(0);
        TradeLine.Spread written = line.at(line.written());
        String counted =
                "%s cycles as written, %s without friction, counted for 3 s".formatted(cycles(written), cycles(none));
        String says = written.high() < none.low()
                ? "friction shortens the swinging"
                : written.low() > none.high()
                        ? "friction lengthens the swinging"
                        : "the draws do not tell whether friction shortens the swinging";
        return Optional.of("Behind a plank at %s %s: %s.%s"
                .formatted(TradeFigures.speed(line.speed()), says, counted, HeldSwing.notAtRest(trade, List.of(line))));
    }

    private String cycles(TradeLine.Spread spread) {
        String median = half(spread.median());
        return spread.low() == spread.high()
                ? median
                : "%s (%s to %s)".formatted(median, half(spread.low()), half(spread.high()));
    }

    /** Cycles are counted in halves. */
    private static String half(double cycles) {
        String text = Numbers.fixed(cycles, 2);
        return text.replaceFirst("\\.?0+$", "");
    }

    private static String whole(double part) {
        return Numbers.fixed(100 * part, 100 * part < 10 ? 1 : 0);
    }
}
