package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.friction.BestBand;
import org.ridewright.friction.Criterion;
import org.ridewright.friction.TradeLine;
import org.ridewright.friction.TradeOff;

/** What counting cycles leaves out: the body that swings on, behind the plank, on springs that friction holds. */
final class HeldSwing {
    private static final double MILLI = 1000;
    /** To either side; 2 mm or 2 mrad from turn to turn, from which a swing counts (m or rad). */
    private static final double COUNTS = 1e-3;

    private HeldSwing() {}

    /** After a sentence on cycles to rest; empty where nothing that would count is left at the friction as written or more. */
    static String notAtRest(TradeOff trade, List<TradeLine> cycles) {
        return cycles.stream()
                .flatMap(line -> says(trade, line).stream())
                .findFirst()
                .map(says ->
                        " But the body is not at rest then: in the last second of the 3 s behind the plank it still swings by "
                                + says
                                + " on springs that friction holds. This is not counted, and this model hardly damps it; "
                                + "leaves of a real pack, which let go one by one, still it.")
                .orElse("");
    }

    private static Optional<String> says(TradeOff trade, TradeLine cycles) {
        int written = cycles.written();
        int most = cycles.factors().length - 1;
        List<String> each = new ArrayList<>();
        size(trade, cycles, written).ifPresent(s -> each.add(s + " as written"));
        size(trade, cycles, most)
                .ifPresent(s -> each.add("%s with × %s".formatted(s, TradeWords.factor(cycles.factors()[most]))));
        return each.isEmpty()
                ? Optional.empty()
                : Optional.of(String.join(", ", each)
                        + " (%sat %s)"
                                .formatted(trade.draws() > 1 ? "medians, " : "", TradeFigures.speed(cycles.speed())));
    }

    /** Beside a verdict on cycles to rest; empty of other criteria, and where the least leaves nothing that would count. */
    static String beside(TradeOff trade, BestBand band) {
        if (band.line().criterion() != Criterion.CYCLES) {
            return "";
        }
        int best = 0;
        double[] factors = band.line().factors();
        for (int i = 1; i < factors.length; i++) {
            best = Math.abs(factors[i] - band.best().median())
                            < Math.abs(factors[best] - band.best().median())
                    ? i
                    : best;
        }
        return size(trade, band.line(), best)
                .map(size -> "; not at rest: swings on by " + size + " on held springs")
                .orElse("");
    }

    /** Heave and pitch that are left, as far as they would count. */
    private static Optional<String> size(TradeOff trade, TradeLine cycles, int factor) {
        List<String> sizes = new ArrayList<>();
        left(trade, Criterion.HEAVE_LEFT, cycles, factor).map(h -> h + " mm").ifPresent(sizes::add);
        left(trade, Criterion.PITCH_LEFT, cycles, factor).map(p -> p + " mrad").ifPresent(sizes::add);
        return sizes.isEmpty() ? Optional.empty() : Optional.of(String.join(" and ", sizes));
    }

    private static Optional<String> left(TradeOff trade, Criterion criterion, TradeLine cycles, int factor) {
        return trade.lines(criterion, cycles.road()).stream()
                .filter(line -> line.speed() == cycles.speed())
                .map(line -> line.at(factor).median())
                .filter(left -> left >= COUNTS)
                .map(left -> "± " + Numbers.of(MILLI * left, 2))
                .findFirst();
    }
}
