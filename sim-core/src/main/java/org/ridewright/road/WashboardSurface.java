package org.ridewright.road;

/** Lays out washboard: sixteen cubics a wave, within 3e-5 of its height. */
final class WashboardSurface implements SurfaceLayout {
    private static final int PIECES = 16;

    private final double height;
    private final Rows crests;

    WashboardSurface(Surface.Washboard washboard) {
        height = washboard.height().value();
        crests = new Rows(
                washboard.stretch().begin(),
                washboard.stretch().end(),
                washboard.pitch().value(),
                washboard.drift().value(),
                new Noise(washboard.seed(), Streams.WASHBOARD));
    }

    @Override
    public SurfaceTrack track(double y) {
        return new RowTrack(crests) {
            @Override
            void row(long k, double from, double to, Pieces out) {
                double wave = 2 * Math.PI / PIECES;
                double steepest = Math.PI * height / (to - from);
                double x = from;
                for (int i = 0; i < PIECES; i++) {
                    double next = i == PIECES - 1 ? to : from + (to - from) * (i + 1) / PIECES;
                    out.hermite(
                            x,
                            next,
                            -height / 2 * (1 - StrictMath.cos(wave * i)),
                            -steepest * StrictMath.sin(wave * i),
                            -height / 2 * (1 - StrictMath.cos(wave * (i + 1))),
                            -steepest * StrictMath.sin(wave * (i + 1)));
                    x = next;
                }
            }
        };
    }
}
