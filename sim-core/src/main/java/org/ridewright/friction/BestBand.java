package org.ridewright.friction;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.ridewright.friction.TradeLine.Spread;

/**
 * Where friction is about best by one criterion: of each draw by itself the factors about the one with the least value at which the value is as good as the
 * least, straight lines between the factors that were ridden; then how these bands lie over the draws.
 *
 * @param bands one of each draw
 * @param best factor of the least value
 * @param from lower end of the band
 * @param to upper end
 * @param verdict in one word
 */
public record BestBand(TradeLine line, List<Band> bands, Spread best, Spread from, Spread to, Verdict verdict) {
    /** A band is said to end where it does so in nine draws of ten. */
    private static final double AGREED = 0.9;

    private static final double DOUBT = 0.05;

    /** Steps in which a friction is looked for that serves several criteria. */
    private static final int STEPS = 250;

    public BestBand {
        bands = List.copyOf(bands);
    }

    /** What the bands of the draws have in common. */
    public enum Verdict {
        /** In most draws the band is everything that was ridden. */
        FLAT,
        /** Nine bands of ten begin at no friction, and end: too much is worse. */
        LESS,
        /** Nine bands of ten end at the most that was ridden, and have a beginning: too little is worse. */
        MORE,
        /** Nine bands of ten have both a beginning and an end. */
        BETWEEN,
        /** The draws do not agree. */
        OPEN
    }

    /**
     * Of one draw.
     *
     * @param best factor of the least value
     * @param from lower end
     * @param to upper end
     */
    public record Band(double best, double from, double to) {
        boolean holds(double factor) {
            return factor >= from && factor <= to;
        }
    }

    /**
     * A friction that is as good as the best by several bands at once.
     *
     * @param factor the middle of those that are so in most draws
     * @param draws in how many it is
     */
    public record Shared(double factor, int draws) {}

    /** Of a criterion of which less is better. */
    public static BestBand of(TradeLine line) {
        if (!line.criterion().lessIsBetter()) {
            throw new IllegalArgumentException(
                    "there is no best of " + line.criterion().title());
        }
        double[] f = line.factors();
        List<Band> bands = Arrays.stream(line.values())
                .map(v -> band(line.criterion(), f, v))
                .toList();
        return new BestBand(
                line,
                bands,
                Spread.of(bands.stream().mapToDouble(Band::best).toArray()),
                Spread.of(bands.stream().mapToDouble(Band::from).toArray()),
                Spread.of(bands.stream().mapToDouble(Band::to).toArray()),
                verdict(bands, f[f.length - 1]));
    }

    private static Verdict verdict(List<Band> bands, double most) {
        int all = bands.size();
        int enough = agreeing(all);
        long begins = bands.stream().filter(b -> b.from() > 0).count();
        long stops = bands.stream().filter(b -> b.to() < most).count();
        long flat = bands.stream().filter(b -> b.from() <= 0 && b.to() >= most).count();
        if (2 * flat > all) {
            return Verdict.FLAT;
        }
        if (begins >= enough && stops >= enough) {
            return Verdict.BETWEEN;
        }
        if (stops >= enough && all - begins >= enough) {
            return Verdict.LESS;
        }
        if (begins >= enough && all - stops >= enough) {
            return Verdict.MORE;
        }
        return Verdict.OPEN;
    }

    private static Band band(Criterion criterion, double[] f, double[] v) {
        int least = 0;
        for (int i = 1; i < v.length; i++) {
            least = v[i] < v[least] ? i : least;
        }
        double limit = criterion.asGoodAs(v[least]);
        return new Band(f[least], end(f, v, least, limit, -1), end(f, v, least, limit, 1));
    }

    /** Where the straight lines between the values pass the limit, going one way from the least. */
    private static double end(double[] f, double[] v, int least, double limit, int way) {
        int i = least;
        while (i + way >= 0 && i + way < v.length && v[i + way] <= limit) {
            i += way;
        }
        if (i + way < 0 || i + way >= v.length) {
            return f[i];
        }
        return f[i] + (limit - v[i]) / (v[i + way] - v[i]) * (f[i + way] - f[i]);
    }

    /**
     * Share of all such vehicles and roads that agree, at least, where nine tenths of some draws do, with a confidence of 95 %.
     *
     * <p>Source: C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404, one-sided (from memory).
     */
    public static double assured(int draws) {
        int agree = agreeing(draws);
        return new BetaDistribution(agree, draws - agree + 1.0).inverseCumulativeProbability(DOUBT);
    }

    /** The least number of some draws that makes a verdict. */
    public static int agreeing(int draws) {
        return (int) Math.ceil(AGREED * draws - 1e-9);
    }

    /** The value at the friction as written over the least of the same draw, less 1. */
    public Spread excess() {
        int written = line.written();
        return Spread.of(Arrays.stream(line.values())
                .mapToDouble(v -> v[written] / Arrays.stream(v).min().orElseThrow() - 1)
                .toArray());
    }

    /**
     * In how many draws the best of another line of the same draws is higher or lower.
     *
     * @param up higher
     * @param down lower
     */
    public record Move(int up, int down) {}

    /** From here to another line. */
    public Move to(BestBand other) {
        int up = 0;
        int down = 0;
        for (int d = 0; d < bands.size(); d++) {
            double move = other.bands().get(d).best() - bands.get(d).best();
            up += move > 0 ? 1 : 0;
            down += move < 0 ? 1 : 0;
        }
        return new Move(up, down);
    }

    /** In how many draws a factor lies in the band. */
    public int draws(double factor) {
        return (int) bands.stream().filter(b -> b.holds(factor)).count();
    }

    /** In how many draws a factor lies in every one of some bands of the same draws. */
    public static int draws(List<BestBand> all, double factor) {
        int count = 0;
        for (int d = 0; d < all.get(0).bands().size(); d++) {
            int draw = d;
            count += all.stream().allMatch(b -> b.bands().get(draw).holds(factor)) ? 1 : 0;
        }
        return count;
    }

    /** The friction that lies in every one of some bands of the same draws, in as many draws as any. */
    public static Shared shared(List<BestBand> all) {
        double[] f = all.get(0).line().factors();
        double most = f[f.length - 1];
        int best = -1;
        int first = 0;
        int last = 0;
        for (int i = 0; i <= STEPS; i++) {
            int draws = draws(all, most * i / STEPS);
            if (draws > best) {
                best = draws;
                first = i;
                last = i;
            } else if (draws == best && i == last + 1) {
                last = i;
            }
        }
        return new Shared(most * (first + last) / 2 / STEPS, best);
    }
}
