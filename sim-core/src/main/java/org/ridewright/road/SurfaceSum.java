package org.ridewright.road;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ridewright.math.PiecewisePolynomial;

/** The surfaces along one track on top of one another. */
final class SurfaceSum {
    /** Joints nearer than this are one (m). */
    private static final double SAME_STATION = 1e-9;

    private final List<SurfaceTrack> surfaces;

    SurfaceSum(List<SurfaceTrack> surfaces) {
        this.surfaces = List.copyOf(surfaces);
    }

    /** Where the first begins (m); +∞ where there is none. */
    double begin() {
        return surfaces.stream().mapToDouble(SurfaceTrack::begin).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** Where the last ends (m); −∞ where there is none. */
    double end() {
        return surfaces.stream().mapToDouble(SurfaceTrack::end).max().orElse(Double.NEGATIVE_INFINITY);
    }

    /**
     * Their sum near a window, as {@link Track#window} has it.
     *
     * @param rise what to add (m)
     */
    RoadProfile window(double from, double to, double rise) {
        List<Pieces> parts = new ArrayList<>();
        for (SurfaceTrack surface : surfaces) {
            if (surface.begin() <= to && surface.end() >= from) {
                Pieces part = new Pieces();
                surface.pieces(from, to, part);
                if (part.size() > 0) {
                    parts.add(part);
                }
            }
        }
        double[] joints = joints(parts);
        int first = 0;
        while (first + 1 < joints.length && joints[first + 1] < from) {
            first++;
        }
        int last = joints.length - 1;
        while (last > 0 && joints[last - 1] > to) {
            last--;
        }
        if (last <= first) {
            return RoadProfile.of(PiecewisePolynomial.constant(rise));
        }
        boolean opens = joints[first] >= from;
        boolean closes = joints[last] <= to;
        return RoadProfile.of(sum(parts, Arrays.copyOfRange(joints, first, last + 1), rise, opens, closes));
    }

    /**
     * @param opens whether the first joint is where the road begins to be rough, and not one within it
     * @param closes whether the last joint is where it ceases to be
     */
    private static PiecewisePolynomial sum(
            List<Pieces> parts, double[] joints, double rise, boolean opens, boolean closes) {
        int n = joints.length - 1;
        double[][] rows = new double[n][Pieces.WIDTH];
        for (Pieces part : parts) {
            int piece = 0;
            for (int i = 0; i < n; i++) {
                double middle = joints[i] + (joints[i + 1] - joints[i]) / 2;
                while (piece < part.size() && part.joint(piece + 1) < middle) {
                    piece++;
                }
                if (piece < part.size() && part.joint(piece) < middle) {
                    part.addExpanded(piece, joints[i], rows[i]);
                }
            }
        }
        for (double[] row : rows) {
            row[0] += rise;
        }
        double after = rise;
        if (!closes) {
            double d = joints[n] - joints[n - 1];
            double[] c = rows[n - 1];
            after = c[0] + d * (c[1] + d * (c[2] + d * c[3]));
        }
        if (opens && rows[0][0] != rise) {
            return opened(joints, rows, rise, after);
        }
        return new PiecewisePolynomial(joints, rows, after);
    }

    /** A jump at the beginning needs a level piece before it. */
    private static PiecewisePolynomial opened(double[] joints, double[][] rows, double before, double after) {
        int n = rows.length;
        double[] longer = new double[n + 2];
        double[][] more = new double[n + 1][];
        longer[0] = joints[0] - 1;
        more[0] = new double[] {before};
        System.arraycopy(joints, 0, longer, 1, n + 1);
        System.arraycopy(rows, 0, more, 1, n);
        return new PiecewisePolynomial(longer, more, after);
    }

    private static double[] joints(List<Pieces> parts) {
        int n = 0;
        for (Pieces part : parts) {
            n += part.size() + 1;
        }
        double[] all = new double[n];
        n = 0;
        for (Pieces part : parts) {
            for (int i = 0; i <= part.size(); i++) {
                all[n++] = part.joint(i);
            }
        }
        if (parts.size() > 1) {
            Arrays.sort(all);
        }
        int kept = 0;
        for (double x : all) {
            if (kept == 0 || x - all[kept - 1] > SAME_STATION) {
                all[kept++] = x;
            }
        }
        return Arrays.copyOf(all, kept);
    }
}
