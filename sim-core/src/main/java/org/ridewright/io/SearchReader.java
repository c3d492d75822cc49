package org.ridewright.io;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ridewright.study.Asked;
import org.ridewright.study.Factor;
import org.ridewright.study.Limit;
import org.ridewright.study.Method;
import org.ridewright.study.Question;
import org.ridewright.study.Search;
import org.ridewright.study.Sought;

/** Reads what is sought, between which ends, and which limits must be kept. */
final class SearchReader {
    private static final Words<Boolean> BEST =
            Words.of("what is best", List.of(true, false), least -> least ? "least" : "greatest");
    private static final String[] SIDES =
            Arrays.stream(Limit.Side.values()).map(Limit.Side::word).toArray(String[]::new);
    private static final int RUNS_OF_ONE = 40;
    private static final int RUNS_OF_EACH = 200;
    /** How many times as many runs a search may have that must keep limits. */
    private static final int WITH_LIMITS = 2;

    private final FactorReader factors;
    private final AskedReader asked;

    SearchReader(FactorReader factors, List<Question> questions, VariantReader.Base base) {
        this.factors = factors;
        asked = AskedReader.of(questions, base.variant());
    }

    Optional<Method> read(Part study) {
        Part part = study.partOrMissing(
                "search", "a search", "vary", "answer", "on", "target", "best", "provided", "looks", "runs", "seed");
        if (!part.has("vary")) {
            part.missing("vary", "a list such as [{vary: vehicles[0].speeds[0], from: 4 km/h, to: 16 km/h}]");
        }
        List<Node> items = part.itemsOrOne("vary", "values between two ends");
        List<Factor> varying = new ArrayList<>();
        for (Node item : items) {
            factors.range(Part.of(study.reading(), item, "a value between two ends", FactorReader.rangeKeys()))
                    .ifPresent(varying::add);
        }
        FactorReader.refuseSameNames(part, "vary", varying);
        Optional<Sought> sought = sought(part);
        Optional<List<Limit>> limits = limits(part);
        if (items.isEmpty() || varying.size() < items.size() || sought.isEmpty() || limits.isEmpty()) {
            return Optional.empty();
        }
        if (varying.size() > 1 && part.has("looks")) {
            part.conflict("looks", "belongs to a search of one value", "remove it, or write 'runs'");
        }
        int looks = part.count("looks", 3, Search.LOOKS);
        int factor = limits.get().isEmpty() ? 1 : WITH_LIMITS;
        int runs = varying.size() == 1
                ? RUNS_OF_ONE * factor + looks - Search.LOOKS
                : RUNS_OF_EACH * factor * varying.size();
        runs = part.count("runs", 5, runs);
        return Optional.of(new Method.Search(varying, sought.get(), limits.get(), looks, runs, part.seed()));
    }

    private Optional<Sought> sought(Part part) {
        Optional<String> aim = part.oneOf("best", "target");
        Optional<Asked> what = asked.asked(part, false);
        if (aim.isEmpty() || what.isEmpty()) {
            return Optional.empty();
        }
        return aim.get().equals("target")
                ? asked.bound(part, "target", what.get().question())
                        .map(target -> new Sought(what.get(), Optional.of(target), true))
                : part.wordIfAny("best", BEST).map(least -> new Sought(what.get(), Optional.empty(), least));
    }

    private Optional<List<Limit>> limits(Part part) {
        List<Limit> limits = new ArrayList<>();
        String[] keys = {"answer", "on", SIDES[0], SIDES[1], SIDES[2], SIDES[3]};
        List<Node> items = part.itemsOrOne("provided", "limits such as {answer: cycles to rest, below: 5}");
        for (Node item : items) {
            limit(Part.of(part.reading(), item, "a limit", keys)).ifPresent(limits::add);
        }
        return limits.size() < items.size() ? Optional.empty() : Optional.of(limits);
    }

    private Optional<Limit> limit(Part part) {
        Optional<Asked> what = asked.asked(part, true);
        Optional<String> side = part.oneOf(SIDES);
        if (what.isEmpty() || side.isEmpty()) {
            return Optional.empty();
        }
        Limit.Side kept = Arrays.stream(Limit.Side.values())
                .filter(s -> s.word().equals(side.get()))
                .findFirst()
                .orElseThrow();
        return asked.bound(part, side.get(), what.get().question()).map(bound -> new Limit(what.get(), kept, bound));
    }
}
