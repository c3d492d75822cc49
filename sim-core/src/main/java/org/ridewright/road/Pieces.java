package org.ridewright.road;

import java.util.Arrays;

/** Adjoining cubic pieces of a surface from left to right, in powers of the distance from each one's left joint. */
final class Pieces {
    static final int WIDTH = 4;

    private double[] joints = new double[65];
    private double[] rows = new double[64 * WIDTH];
    private int size;

    /** Adds the cubic with the given value and slope at its ends. */
    void hermite(double from, double to, double z0, double s0, double z1, double s1) {
        double d = to - from;
        double chord = (z1 - z0) / d;
        add(from, to, z0, s0, (3 * chord - 2 * s0 - s1) / d, (s0 + s1 - 2 * chord) / (d * d));
    }

    /**
     * Adds one piece.
     *
     * @param from where it begins; where the last one ended
     * @param to where it ends; a piece of no length is left out
     */
    void add(double from, double to, double c0, double c1, double c2, double c3) {
        if (!(to > from)) {
            return;
        }
        if (size > 0 && joints[size] != from) {
            throw new IllegalArgumentException("pieces must adjoin, got one from " + from + " m after " + joints[size]);
        }
        if (joints.length < size + 2) {
            joints = Arrays.copyOf(joints, 2 * joints.length);
            rows = Arrays.copyOf(rows, (joints.length - 1) * WIDTH);
        }
        joints[size] = from;
        joints[size + 1] = to;
        rows[size * WIDTH] = c0;
        rows[size * WIDTH + 1] = c1;
        rows[size * WIDTH + 2] = c2;
        rows[size * WIDTH + 3] = c3;
        size++;
    }

    int size() {
        return size;
    }

    /** Joint i, from 0 to {@link #size()}. */
    double joint(int i) {
        return joints[i];
    }

    /** Adds the coefficients of piece i about x to {@code sum}. */
    void addExpanded(int i, double x, double[] sum) {
        double d = x - joints[i];
        int at = i * WIDTH;
        double c1 = rows[at + 1];
        double c2 = rows[at + 2];
        double c3 = rows[at + 3];
        sum[0] += rows[at] + d * (c1 + d * (c2 + d * c3));
        sum[1] += c1 + d * (2 * c2 + 3 * d * c3);
        sum[2] += c2 + 3 * d * c3;
        sum[3] += c3;
    }
}
