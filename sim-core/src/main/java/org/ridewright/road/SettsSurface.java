package org.ridewright.road;

/** Lays out setts: each row a joint, then the top of a stone, a parabola of the station. */
final class SettsSurface implements SurfaceLayout {
    /** Room for stones side by side in the numbering of places. */
    private static final long MOST_ACROSS = 1L << 20;

    private static final double HIGHEST = 3;

    private final Surface.Setts setts;
    private final Rows rows;
    private final Noise heights;

    SettsSurface(Surface.Setts setts) {
        this.setts = setts;
        rows = new Rows(
                setts.stretch().begin(),
                setts.stretch().end(),
                setts.length().value(),
                setts.irregularity().value(),
                new Noise(setts.seed(), Streams.SETT_LENGTHS));
        heights = new Noise(setts.seed(), Streams.SETT_HEIGHTS);
    }

    @Override
    public SurfaceTrack track(double y) {
        double crown = setts.crown().value();
        double joint = setts.joint().value();
        double bottom = -crown - setts.jointDepth().value();
        return new RowTrack(rows) {
            @Override
            void row(long k, double from, double to, Pieces out) {
                double start = from + joint;
                out.add(from, start, bottom, 0, 0, 0);
                double half = (to - start) / 2;
                out.add(start, to, height(k, y) - crown, 2 * crown / half, -crown / (half * half), 0);
            }
        };
    }

    /** Height of the crown of the stone of row k that lies under y (m). */
    private double height(long k, double y) {
        double sigma = setts.unevenness().value();
        if (sigma == 0) {
            return 0;
        }
        double brokenJoint = k % 2 == 0 ? 0 : 0.5;
        long across = (long) Math.floor(y / setts.width().value() + brokenJoint);
        double deviate = heights.normal(k * MOST_ACROSS + MOST_ACROSS / 2 + across);
        return sigma * Math.max(-HIGHEST, Math.min(HIGHEST, deviate));
    }
}
