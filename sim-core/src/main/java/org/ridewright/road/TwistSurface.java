package org.ridewright.road;

/** Lays out an undulation that differs from left to right: sixteen cubics a wave. */
final class TwistSurface implements SurfaceLayout {
    private static final int PIECES = 16;

    private final Surface.Twist twist;
    private final Rows rows;
    private final FadeIn fade;

    TwistSurface(Surface.Twist twist) {
        this.twist = twist;
        double length = twist.length().value();
        rows = new Rows(
                twist.stretch().begin(), twist.stretch().end(), length / PIECES, 0, new Noise(0, Streams.TWIST));
        fade = new FadeIn(rows.at(0), rows.last(), length);
    }

    @Override
    public SurfaceTrack track(double y) {
        double share = y / twist.across().value();
        return track(0.5 + share, 0.5 - share);
    }

    @Override
    public SurfaceTrack everySide() {
        return track(1, 0);
    }

    /** The two edges' waves, each with its share. */
    private SurfaceTrack track(double left, double right) {
        double k = 2 * Math.PI / twist.length().value();
        double half = twist.height().value() / 2;
        double lag = twist.lag().value();
        double begin = rows.at(0);
        return new RowTrack(rows) {
            @Override
            void row(long i, double from, double to, Pieces out) {
                out.hermite(from, to, height(from), slope(from), height(to), slope(to));
            }

            private double wave(double x) {
                double phase = k * (x - begin);
                return half * (left * StrictMath.sin(phase) + right * StrictMath.sin(phase - lag));
            }

            private double height(double x) {
                return fade.share(x) * wave(x);
            }

            private double slope(double x) {
                double phase = k * (x - begin);
                double rise = half * k * (left * StrictMath.cos(phase) + right * StrictMath.cos(phase - lag));
                return fade.share(x) * rise + fade.slope(x) * wave(x);
            }
        };
    }
}
