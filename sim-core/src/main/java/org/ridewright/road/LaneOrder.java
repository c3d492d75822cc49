package org.ridewright.road;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The lateral positions that a random surface is made for, in the order in which they take up sources of noise: the centre line always
 * first, then left and right by turns from the outside in. So vehicles of any track width ride on the same lane, and the outer wheels of
 * each have the same sources.
 *
 * @param positions distinct (m), the first 0
 * @param sources number of the noise source that each adds to those before it
 */
record LaneOrder(List<Double> positions, List<Integer> sources) {
    /** Positions nearer than this are one (m). */
    private static final double SAME = 1e-6;

    LaneOrder {
        positions = List.copyOf(positions);
        sources = List.copyOf(sources);
    }

    static LaneOrder of(double[] ys) {
        List<Double> positions = new ArrayList<>(List.of(0.0));
        List<Integer> sources = new ArrayList<>(List.of(0));
        List<Double> left = side(ys, 1);
        List<Double> right = side(ys, -1);
        for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
            if (i < left.size()) {
                positions.add(left.get(i));
                sources.add(2 * i + 1);
            }
            if (i < right.size()) {
                positions.add(-right.get(i));
                sources.add(2 * i + 2);
            }
        }
        return new LaneOrder(positions, sources);
    }

    /** Place of a lateral position in the order. */
    int placeOf(double y) {
        for (int i = 0; i < positions.size(); i++) {
            if (Math.abs(positions.get(i) - y) < SAME) {
                return i;
            }
        }
        throw new IllegalArgumentException("no lane at y = " + y + " m");
    }

    private static List<Double> side(double[] ys, int sign) {
        List<Double> side = new ArrayList<>();
        Arrays.stream(ys)
                .map(y -> sign * y)
                .filter(y -> y >= SAME)
                .map(y -> -y)
                .sorted()
                .map(y -> -y)
                .filter(y -> side.isEmpty() || side.get(side.size() - 1) - y >= SAME)
                .forEach(side::add);
        return side;
    }
}
