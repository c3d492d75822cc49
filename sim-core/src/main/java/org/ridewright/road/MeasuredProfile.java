package org.ridewright.road;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * Heights of a road as they were measured, on one track or two. A height that is missing is not a number.
 */
public final class MeasuredProfile {
    private final String name;
    private final double[] stations;
    private final double[][] heights;

    /**
     * @param name of the file
     * @param stations increasing (m), at least 3; copied
     * @param heights of one track, or of the left and the right (m), each as long as the stations and with at least 3 numbers; copied
     * @throws IllegalArgumentException if a bound above is broken
     */
    public MeasuredProfile(String name, double[] stations, List<double[]> heights) {
        if (stations.length < 3 || heights.isEmpty() || heights.size() > 2) {
            throw new IllegalArgumentException(
                    "need at least 3 stations and 1 or 2 tracks, got " + stations.length + " and " + heights.size());
        }
        for (int i = 1; i < stations.length; i++) {
            if (!(stations[i] > stations[i - 1])) {
                throw new IllegalArgumentException(
                        "stations must increase, got " + stations[i - 1] + " m, then " + stations[i] + " m");
            }
        }
        this.name = name;
        this.stations = stations.clone();
        this.heights = new double[heights.size()][];
        for (int t = 0; t < this.heights.length; t++) {
            this.heights[t] = heights.get(t).clone();
            if (this.heights[t].length != stations.length || known(t) < 3) {
                throw new IllegalArgumentException(
                        "each track needs a height for each station, at least 3 of them known");
            }
        }
    }

    /** Name of the file. */
    public String name() {
        return name;
    }

    /** Number of stations. */
    public int size() {
        return stations.length;
    }

    /** Number of tracks: 1, or 2 for left and right. */
    public int tracks() {
        return heights.length;
    }

    /** Station i (m). */
    public double station(int i) {
        return stations[i];
    }

    /** Height at station i of a track, 0 the only or left one (m); not a number where it is missing. */
    public double height(int track, int i) {
        return heights[track][i];
    }

    /** From the first station to the last (m). */
    public double length() {
        return stations[stations.length - 1] - stations[0];
    }

    /** The points of a track whose height is known: stations, then heights. */
    double[][] points(int track) {
        double[][] points = new double[2][known(track)];
        int n = 0;
        for (int i = 0; i < stations.length; i++) {
            if (!Double.isNaN(heights[track][i])) {
                points[0][n] = stations[i];
                points[1][n++] = heights[track][i];
            }
        }
        return points;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof MeasuredProfile profile
                && name.equals(profile.name)
                && Arrays.equals(stations, profile.stations)
                && Arrays.deepEquals(heights, profile.heights);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, Arrays.hashCode(stations), Arrays.deepHashCode(heights));
    }

    /** Every value to its last bit, as records have it: rides are told apart by the words of what they rode over. */
    @Override
    public String toString() {
        return "MeasuredProfile[name=" + name + ", stations=" + Arrays.toString(stations) + ", heights="
                + Arrays.deepToString(heights) + "]";
    }

    private int known(int track) {
        int n = 0;
        for (double z : heights[track]) {
            n += Double.isNaN(z) ? 0 : 1;
        }
        return n;
    }
}
