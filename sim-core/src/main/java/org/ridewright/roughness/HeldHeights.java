package org.ridewright.roughness;

/** Heights that are at hand. */
final class HeldHeights implements HeightSource {
    private final double start;
    private final double spacing;
    private final double[] heights;

    HeldHeights(double start, double spacing, double[] heights) {
        this.start = start;
        this.spacing = spacing;
        this.heights = heights;
    }

    @Override
    public double spacing() {
        return spacing;
    }

    @Override
    public double start() {
        return start;
    }

    @Override
    public long size() {
        return heights.length;
    }

    @Override
    public void read(long first, double[] into) {
        for (int i = 0; i < into.length; i++) {
            into[i] = heights[(int) Math.max(0, Math.min(heights.length - 1L, first + i))];
        }
    }
}
