package org.ridewright.road;

/** Lays out ruts: from one chosen depth to the next by a cubic that is level at both. */
final class RutsSurface implements SurfaceLayout {
    private final Surface.Ruts ruts;
    private final Noise left;
    private final Noise right;

    RutsSurface(Surface.Ruts ruts) {
        this.ruts = ruts;
        left = new Noise(ruts.seed(), Streams.RUTS_LEFT);
        right = new Noise(ruts.seed(), Streams.RUTS_RIGHT);
    }

    @Override
    public SurfaceTrack track(double y) {
        double aside = Math.abs(y) - ruts.apart().value() / 2;
        double cosine = StrictMath.cos(Math.PI * aside / ruts.width().value());
        boolean within = Math.abs(aside) < ruts.width().value() / 2;
        if (y == 0 && within) {
            // so close together that the centre line lies in both: they are one trough there, of the left one's depth
            return track(cosine * cosine, left);
        }
        return track(within ? cosine * cosine : 0, y > 0 ? left : right);
    }

    @Override
    public SurfaceTrack everySide() {
        return track(1, left);
    }

    private SurfaceTrack track(double share, Noise noise) {
        Rows nodes = new Rows(
                ruts.stretch().begin(), ruts.stretch().end(), ruts.length().value(), 0, noise);
        double end = nodes.last();
        return new RowTrack(nodes) {
            @Override
            void row(long k, double from, double to, Pieces out) {
                out.hermite(from, to, k == 0 ? 0 : height(k), 0, to >= end ? 0 : height(k + 1), 0);
            }

            private double height(long k) {
                double depth = 1 + ruts.variation().value() * noise.normal(k);
                return -share * ruts.depth().value() * Math.max(0, depth);
            }
        };
    }
}
