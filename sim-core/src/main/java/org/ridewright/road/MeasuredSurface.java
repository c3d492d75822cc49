package org.ridewright.road;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Lays out a measured profile: spikes, trend and waves too long or too short taken off as the description says, faded in and out. */
final class MeasuredSurface implements SurfaceLayout {
    /** How far the end of a profile may lie above or below its beginning before that is said (m). */
    private static final double FAR_OFF = 0.5;

    private final List<HeightCurve> curves = new ArrayList<>();
    private final double stretchEnd;
    private final double runUp;

    MeasuredSurface(Surface.Measured measured, double runUp) {
        stretchEnd = measured.stretch().end();
        this.runUp = runUp;
        MeasuredProfile profile = measured.profile();
        for (int t = 0; t < profile.tracks(); t++) {
            curves.add(curve(measured, t));
        }
    }

    /** What is to be said of a profile before it is ridden. */
    static List<String> remarks(Surface.Measured measured) {
        MeasuredProfile profile = measured.profile();
        List<String> remarks = new ArrayList<>();
        for (int t = 0; t < profile.tracks(); t++) {
            double[][] points = profile.points(t);
            String called = "'" + profile.name() + "'"
                    + (profile.tracks() == 1 ? "" : t == 0 ? ", left track," : ", right track,");
            int missing = profile.size() - points[0].length;
            if (missing > 0) {
                remarks.add("%s lacks %s, bridged by smooth lines."
                        .formatted(called, missing == 1 ? "1 height" : missing + " heights"));
            }
            remarks.addAll(
                    ProfileDefects.of(points[0], points[1]).remarks(called, points[0], measured.spikesRemoved()));
            double rise = points[1][points[1].length - 1] - points[1][0];
            if (measured.trend() instanceof Surface.Measured.AsMeasured && Math.abs(rise) > FAR_OFF) {
                remarks.add(String.format(
                        Locale.ROOT,
                        "%s ends %.2f m %s its beginning, and goes back to the level over the run-up; with 'heights: detrended' it "
                                + "would not have to.",
                        called,
                        Math.abs(rise),
                        rise > 0 ? "above" : "below"));
            }
        }
        return remarks;
    }

    private static HeightCurve curve(Surface.Measured measured, int track) {
        double[][] points = measured.profile().points(track);
        if (measured.spikesRemoved()) {
            points = without(points, ProfileDefects.of(points[0], points[1]).spikes());
        }
        double origin = measured.profile().station(0);
        double begin = measured.stretch().begin();
        for (int i = 0; i < points[0].length; i++) {
            points[0][i] = begin + (points[0][i] - origin);
        }
        HeightCurve curve = new HeightCurve(points[0], points[1]);
        if (measured.spacing().isPresent()) {
            curve = curve.resampled(measured.spacing().get().value());
        }
        return treated(curve, measured.trend());
    }

    private static HeightCurve treated(HeightCurve curve, Surface.Measured.Trend trend) {
        if (trend instanceof Surface.Measured.HighPass highPass) {
            return curve.highPassed(highPass.length().value());
        }
        if (trend instanceof Surface.Measured.Detrended) {
            return curve.detrended();
        }
        double[] x = new double[curve.size()];
        double[] z = new double[curve.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = curve.station(i);
            z[i] = curve.height(i) - curve.height(0);
        }
        return new HeightCurve(x, z);
    }

    private static double[][] without(double[][] points, List<Integer> left) {
        double[][] kept = new double[2][points[0].length - left.size()];
        int n = 0;
        for (int i = 0; i < points[0].length; i++) {
            if (Collections.binarySearch(left, i) < 0) {
                kept[0][n] = points[0][i];
                kept[1][n++] = points[1][i];
            }
        }
        return n < 3 ? points : kept;
    }

    @Override
    public SurfaceTrack track(double y) {
        int last = curves.size() - 1;
        if (y == 0 && last > 0) {
            return new CurveTrack(curves.get(0).meanWith(curves.get(1)));
        }
        return new CurveTrack(curves.get(y > 0 ? 0 : last));
    }

    @Override
    public SurfaceTrack everySide() {
        return new CurveTrack(curves.get(0));
    }

    private final class CurveTrack implements SurfaceTrack {
        private final HeightCurve curve;
        private final int last;
        private final FadeIn fade;

        CurveTrack(HeightCurve curve) {
            this.curve = curve;
            int end = curve.size() - 1;
            while (end > 1 && curve.station(end) > stretchEnd) {
                end--;
            }
            last = end;
            fade = new FadeIn(curve.station(0), curve.station(last), runUp);
        }

        @Override
        public double begin() {
            return curve.station(0);
        }

        @Override
        public double end() {
            return curve.station(last);
        }

        @Override
        public void pieces(double from, double to, Pieces out) {
            int i = Math.max(0, curve.pieceAt(from) - 1);
            for (; i < last && curve.station(i) <= to; i++) {
                out.hermite(curve.station(i), curve.station(i + 1), height(i), slope(i), height(i + 1), slope(i + 1));
            }
        }

        private double height(int i) {
            return fade.share(curve.station(i)) * curve.height(i);
        }

        private double slope(int i) {
            double x = curve.station(i);
            return fade.share(x) * curve.slope(i) + fade.slope(x) * curve.height(i);
        }
    }
}
