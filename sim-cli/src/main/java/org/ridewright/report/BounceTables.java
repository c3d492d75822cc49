package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.ridewright.bounce.BounceKind;
import org.ridewright.bounce.BounceResult;
import org.ridewright.bounce.Count;
import org.ridewright.bounce.Decay;
import org.ridewright.bounce.LoadCaseBounces;
import org.ridewright.bounce.Motion;
import org.ridewright.bounce.NaturalPartner;
import org.ridewright.modal.Condition;

/** Tables and sentences of simulated bounce tests. */
final class BounceTables {
    private static final String NONE = "–";
    private static final double MILLI = 1000;

    private BounceTables() {}

    static List<List<String>> frequencies(List<LoadCaseBounces> all) {
        List<List<String>> rows = new ArrayList<>();
        for (LoadCaseBounces bounces : all) {
            for (BounceResult result : bounces.results()) {
                Count count = result.count();
                BounceKind kind = result.test().kind();
                NaturalPartner sliding = bounces.partner(kind, Condition.SLIDING);
                NaturalPartner locked = bounces.partner(kind, Condition.LOCKED);
                rows.add(List.of(
                        bounces.model().loadCase().name(),
                        kind.word(),
                        Numbers.of(MILLI * result.depth()),
                        Numbers.of(result.force()),
                        cycles(count),
                        count.isHeld() ? NONE : Numbers.of(count.duration()),
                        frequency(count.frequency()),
                        natural(sliding),
                        natural(locked)));
            }
        }
        return rows;
    }

    private static String natural(NaturalPartner partner) {
        return Numbers.of(partner.frequency()) + " (" + partner.mode().name() + ", " + Numbers.percent(partner.share())
                + ")";
    }

    static List<List<String>> decays(List<LoadCaseBounces> all) {
        List<List<String>> rows = new ArrayList<>();
        for (LoadCaseBounces bounces : all) {
            for (BounceResult result : bounces.results()) {
                Count count = result.count();
                rows.add(List.of(
                        bounces.model().loadCase().name(),
                        result.test().kind().word(),
                        frequency(count.firstFrequency()),
                        frequency(count.lastFrequency()),
                        count.decay().map(d -> d.shape().word()).orElse(NONE),
                        count.decay()
                                .map(d -> size(count.motion(), d.straightLoss()))
                                .orElse(NONE),
                        count.decay().map(Decay::dampingRatio).map(Numbers::of).orElse(NONE),
                        size(count.motion(), count.offset()),
                        result.lockedSince().isPresent()
                                ? Numbers.of(result.lockedSince().getAsDouble())
                                : NONE,
                        count.left().visible()
                                ? "± " + size(count.motion(), count.left().halfWidth()) + " at "
                                        + Numbers.of(count.left().frequency()) + " Hz"
                                : "nothing seen"));
            }
        }
        return rows;
    }

    static String cycles(Count count) {
        return String.format(Locale.ROOT, count.halfCycles() % 2 == 0 ? "%.0f" : "%.1f", count.cycles());
    }

    /** With the word: {@code 1 cycle}, {@code 2.5 cycles}. */
    static String cyclesInWords(Count count) {
        return cycles(count) + (count.halfCycles() == 2 ? " cycle" : " cycles");
    }

    private static String frequency(OptionalDouble frequency) {
        return frequency.isPresent() ? Numbers.of(frequency.getAsDouble()) : NONE;
    }

    private static String size(Motion motion, double value) {
        return Numbers.of(BounceFigures.shown(motion, value), 2) + (motion.turns() ? "°" : " mm");
    }

    /** What was found, a sentence for each load case. */
    static List<String> answers(List<LoadCaseBounces> all) {
        List<String> answers = new ArrayList<>();
        for (LoadCaseBounces bounces : all) {
            List<String> parts = bounces.results().stream()
                    .map(result -> result.test().kind().word() + " " + answer(result.count()))
                    .toList();
            answers.add(
                    RideFigures.upperFirst(bounces.model().loadCase().name()) + ": " + String.join("; ", parts) + ".");
        }
        return answers;
    }

    private static String answer(Count count) {
        return count.isHeld()
                ? "no cycle to be counted"
                : Numbers.of(count.frequency().getAsDouble()) + " Hz (" + cyclesInWords(count) + " in "
                        + Numbers.of(count.duration(), 2) + " s)";
    }
}
