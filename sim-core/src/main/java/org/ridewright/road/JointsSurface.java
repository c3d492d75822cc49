package org.ridewright.road;

/** Lays out slabs: each row a gap, then the slab, a parabola of the station. */
final class JointsSurface implements SurfaceLayout {
    private final Surface.Joints joints;

    JointsSurface(Surface.Joints joints) {
        this.joints = joints;
    }

    @Override
    public SurfaceTrack track(double y) {
        double shift = y * StrictMath.tan(joints.skew().value());
        Rows rows = new Rows(
                joints.stretch().begin() + shift,
                joints.stretch().end() + shift,
                joints.every().value(),
                0,
                new Noise(0, Streams.JOINTS));
        double lip = joints.lip().value();
        double sag = joints.sag().value();
        return new RowTrack(rows) {
            @Override
            void row(long k, double from, double to, Pieces out) {
                double start = from + joints.gap().value();
                out.add(from, start, -joints.depth().value(), 0, 0, 0);
                // lip·s − 4 sag·s(1 − s), s from 0 to 1 along the slab
                double length = to - start;
                out.add(start, to, 0, (lip - 4 * sag) / length, 4 * sag / (length * length), 0);
            }
        };
    }
}
