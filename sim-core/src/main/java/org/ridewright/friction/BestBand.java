package org.ridewright.friction;

import java.util.Arrays;
import org.ridewright.friction.TradeLine.Spread;

/**
 * Where friction is about best by one criterion: of each draw the factors about the one with the least value at which the value is
 * within {@link #NEAR} of it, straight lines between the factors that were ridden; then how these ends lie over the draws.
 *
 * @param best factor of the least value
 * @param from lower end of the band
 * @param to upper end
 * @param verdict in one word
 */
public record BestBand(TradeLine line, Spread best, Spread from, Spread to, Verdict verdict) {
    /** Half of the least difference of vibration that seated people notice, about a tenth (from memory). */
    public static final double NEAR = 0.05;

    /** A band is said to end where it does so in nine draws of ten. */
    private static final double AGREED = 0.9;

    /** What the bands of the draws have in common. */
    public enum Verdict {
        /** In most draws the band is everything that was ridden. */
        FLAT,
        /** Nine bands of ten begin at no friction, and end: the less, the better. */
        LESS,
        /** Nine bands of ten end at the most that was ridden, and have a beginning. */
        MORE,
        /** Nine bands of ten have both a beginning and an end. */
        BETWEEN,
        /** The draws do not agree. */
        OPEN
    }

    private record Ends(double best, double from, double to) {}

    /** Of a criterion of which less is better. */
    public static BestBand of(TradeLine line) {
        if (!line.criterion().lessIsBetter()) {
            throw new IllegalArgumentException(
                    "there is no best of " + line.criterion().title());
        }
        double[] f = line.factors();
        Ends[] ends = Arrays.stream(line.values()).map(v -> ends(f, v)).toArray(Ends[]::new);
        double most = f[f.length - 1];
        double begins = share(ends, most, true);
        double stops = share(ends, most, false);
        double flat = (double) Arrays.stream(ends)
                        .filter(e -> e.from() == f[0] && e.to() == most)
                        .count()
                / ends.length;
        return new BestBand(
                line,
                Spread.of(Arrays.stream(ends).mapToDouble(Ends::best).toArray()),
                Spread.of(Arrays.stream(ends).mapToDouble(Ends::from).toArray()),
                Spread.of(Arrays.stream(ends).mapToDouble(Ends::to).toArray()),
                verdict(begins, stops, flat));
    }

    /** Share of the draws whose band begins above no friction, or ends below the most. */
    private static double share(Ends[] ends, double most, boolean begin) {
        return (double) Arrays.stream(ends)
                        .filter(e -> begin ? e.from() > 0 : e.to() < most)
                        .count()
                / ends.length;
    }

    private static Verdict verdict(double begins, double stops, double flat) {
        if (flat > 0.5) {
            return Verdict.FLAT;
        }
        if (begins >= AGREED && stops >= AGREED) {
            return Verdict.BETWEEN;
        }
        if (stops >= AGREED && begins <= 1 - AGREED) {
            return Verdict.LESS;
        }
        if (begins >= AGREED && stops <= 1 - AGREED) {
            return Verdict.MORE;
        }
        return Verdict.OPEN;
    }

    private static Ends ends(double[] f, double[] v) {
        int least = 0;
        for (int i = 1; i < v.length; i++) {
            least = v[i] < v[least] ? i : least;
        }
        double limit = (1 + NEAR) * v[least];
        return new Ends(f[least], end(f, v, least, limit, -1), end(f, v, least, limit, 1));
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

    /** Whether a factor lies in the band of most draws. */
    public boolean holds(double factor) {
        return factor >= from.median() && factor <= to.median();
    }
}
