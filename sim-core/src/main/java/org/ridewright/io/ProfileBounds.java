package org.ridewright.io;

import java.util.List;
import java.util.Locale;

/** Looks for what cannot be a road: too few points, units mistaken. */
record ProfileBounds(ProfileColumns columns, List<Double> stations, List<List<Double>> heights, Reading reading) {
    private static final int LEAST_POINTS = 3;
    private static final double SHORTEST = 0.5;
    private static final double FARTHEST_APART = 5;
    /** Steeper than any road from its lowest to its highest point. */
    private static final double STEEPEST = 0.5;

    void check() {
        if (stations.size() < LEAST_POINTS) {
            problem(
                    columns.station().name(),
                    "has " + stations.size() + (stations.size() == 1 ? " row" : " rows") + " of numbers",
                    "at least " + LEAST_POINTS,
                    "export the whole profile");
            return;
        }
        double length = stations.get(stations.size() - 1) - stations.get(0);
        if (length < SHORTEST) {
            problem(
                    columns.station().name(),
                    "goes over " + metres(length) + " in all",
                    "a profile of at least " + metres(SHORTEST),
                    "check the unit of the stations");
        } else if (length / (stations.size() - 1) > FARTHEST_APART) {
            problem(
                    columns.station().name(),
                    "has points " + metres(length / (stations.size() - 1)) + " apart on the average",
                    "points at most " + metres(FARTHEST_APART) + " apart",
                    "check the unit of the stations");
        }
        for (int t = 0; t < heights.size(); t++) {
            heights(t, length);
        }
    }

    private void heights(int track, double length) {
        String name = columns.heights().get(track).name();
        double[] known = heights.get(track).stream()
                .mapToDouble(Double::doubleValue)
                .filter(z -> !Double.isNaN(z))
                .sorted()
                .toArray();
        if (known.length < LEAST_POINTS) {
            problem(
                    name,
                    "has " + known.length + (known.length == 1 ? " height" : " heights"),
                    "at least " + LEAST_POINTS,
                    "check that the right column is named");
        } else if (known[known.length - 1] - known[0] > STEEPEST * length) {
            problem(
                    name,
                    "rises " + metres(known[known.length - 1] - known[0])
                            + " from its lowest point to its highest, over " + metres(length) + " of road",
                    "heights of a road",
                    "check the unit of the heights");
        }
    }

    private void problem(String column, String fault, String expected, String fix) {
        reading.problem(new Spot(columns.line(), 1), column, "", fault, expected, fix);
    }

    private static String metres(double value) {
        return String.format(Locale.ROOT, "%.4g m", value);
    }
}
