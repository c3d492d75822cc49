package org.ridewright.suspension;

import java.util.ArrayList;
import java.util.List;

/**
 * Gapped linear pieces of a curve: piece i adds {@code slope_i·(x − at_i)} while {@code side_i·(x − at_i) > 0}. With side +1 it acts
 * above its place, with −1 below. The sum is continuous and zero where every piece is off.
 */
public final class Pieces {
    /** No pieces. */
    public static final Pieces NONE = new Pieces(List.of());

    private final double[] slope;
    private final double[] at;
    private final int[] side;

    /** One piece. */
    public record Piece(double slope, double at, int side) {
        public Piece {
            if (side != 1 && side != -1) {
                throw new IllegalArgumentException("side must be +1 or −1, got " + side);
            }
        }
    }

    private Pieces(List<Piece> pieces) {
        slope = pieces.stream().mapToDouble(Piece::slope).toArray();
        at = pieces.stream().mapToDouble(Piece::at).toArray();
        side = pieces.stream().mapToInt(Piece::side).toArray();
    }

    /** These pieces, in order. */
    public static Pieces of(List<Piece> pieces) {
        return pieces.isEmpty() ? NONE : new Pieces(pieces);
    }

    /** These and one more. */
    public Pieces plus(Piece piece) {
        List<Piece> all = new ArrayList<>();
        for (int i = 0; i < count(); i++) {
            all.add(new Piece(slope[i], at[i], side[i]));
        }
        all.add(piece);
        return of(all);
    }

    /** These, then the others. */
    public Pieces plusAll(Pieces others) {
        Pieces all = this;
        for (int i = 0; i < others.count(); i++) {
            all = all.plus(new Piece(others.slope[i], others.at[i], others.side[i]));
        }
        return all;
    }

    /** Number of pieces. */
    public int count() {
        return slope.length;
    }

    /** Slope that piece i adds where it acts. */
    public double slope(int i) {
        return slope[i];
    }

    /** Place at which piece i begins to act. */
    public double at(int i) {
        return at[i];
    }

    /** +1 if piece i acts above its place, −1 below. */
    public int side(int i) {
        return side[i];
    }

    /** Sum of the pieces at x. */
    public double value(double x) {
        double sum = 0;
        for (int i = 0; i < slope.length; i++) {
            double d = x - at[i];
            if (side[i] * d > 0) {
                sum += slope[i] * d;
            }
        }
        return sum;
    }

    /** Sum of the slopes that act at x. */
    public double slopeAt(double x) {
        double sum = 0;
        for (int i = 0; i < slope.length; i++) {
            if (side[i] * (x - at[i]) > 0) {
                sum += slope[i];
            }
        }
        return sum;
    }

    /** Integral of {@link #value} over x, zero where every piece is off. */
    public double integral(double x) {
        double sum = 0;
        for (int i = 0; i < slope.length; i++) {
            double d = x - at[i];
            if (side[i] * d > 0) {
                sum += slope[i] * d * d / 2;
            }
        }
        return sum;
    }
}
