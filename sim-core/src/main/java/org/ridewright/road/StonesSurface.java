package org.ridewright.road;

import java.util.ArrayList;
import java.util.List;

/**
 * Lays out scattered stones. The road is divided into cells of one metre; a cell's number of stones is of Poisson's distribution, their
 * places are even over cell and strip, and all of it depends on the cell's number alone.
 */
final class StonesSurface implements SurfaceLayout {
    private static final double CELL = 1;
    /** Room for numbers of one cell in the numbering of places: four a stone. */
    private static final long PLACES = 1L << 12;

    private static final int MOST_STONES = 1000;
    private static final double CUT = 2;

    private final Surface.Stones stones;
    private final Noise noise;
    private final double origin;
    private final long cells;

    /** What one stone shows along a track: a parabola of height h and half length b about x. */
    private record Cut(double x, double b, double h) {
        double height(double at) {
            double s = (at - x) / b;
            return h * (1 - s * s);
        }
    }

    StonesSurface(Surface.Stones stones) {
        this.stones = stones;
        noise = new Noise(stones.seed(), Streams.STONES);
        double largest = stones.largest() / 2;
        origin = stones.stretch().begin() + largest;
        double end = stones.stretch().end();
        cells = end == Double.POSITIVE_INFINITY ? Long.MAX_VALUE : (long) Math.max(0, (end - largest - origin) / CELL);
    }

    @Override
    public SurfaceTrack track(double y) {
        return new Line(y);
    }

    private final class Line implements SurfaceTrack {
        private final double y;
        private final double reach = stones.largest() / 2;

        Line(double y) {
            this.y = y;
        }

        @Override
        public double begin() {
            return origin - reach;
        }

        @Override
        public double end() {
            return cells == Long.MAX_VALUE ? Double.POSITIVE_INFINITY : origin + cells * CELL + reach;
        }

        /** Joints lie at the cells' ends, at the ends of stones, and at the two ends of all. */
        @Override
        public void pieces(double from, double to, Pieces out) {
            long first = Math.max(-1, (long) Math.floor((from - origin) / CELL) - 1);
            long last = Math.min(cells, (long) Math.floor((to - origin) / CELL) + 1);
            double begin = Math.max(begin(), origin + first * CELL);
            double end = Math.min(end(), origin + (last + 1) * CELL);
            List<Cut> cuts = new ArrayList<>();
            List<Double> joints = new ArrayList<>(List.of(begin, end));
            long wider = (long) Math.ceil(reach / CELL) + 1;
            for (long cell = Math.max(0, first - wider); cell < cells && cell <= last + wider; cell++) {
                addCuts(cell, cuts);
                joints.add(origin + cell * CELL);
            }
            joints.add(origin + Math.min(cells, last + wider) * CELL);
            for (Cut cut : cuts) {
                joints.add(cut.x - cut.b);
                joints.add(cut.x + cut.b);
            }
            double[] sorted = joints.stream()
                    .mapToDouble(Double::doubleValue)
                    .filter(x -> x >= begin && x <= end)
                    .sorted()
                    .distinct()
                    .toArray();
            for (int i = 0; i + 1 < sorted.length; i++) {
                piece(sorted[i], sorted[i + 1], cuts, out);
            }
        }

        private void piece(double from, double to, List<Cut> cuts, Pieces out) {
            double middle = from + (to - from) / 2;
            double c0 = 0;
            double c1 = 0;
            double c2 = 0;
            for (Cut cut : cuts) {
                if (Math.abs(middle - cut.x) < cut.b) {
                    double curve = cut.h / (cut.b * cut.b);
                    c0 += cut.height(from);
                    c1 -= 2 * curve * (from - cut.x);
                    c2 -= curve;
                }
            }
            out.add(from, to, c0, c1, c2, 0);
        }

        private void addCuts(long cell, List<Cut> cuts) {
            long place = cell * PLACES;
            int count = poisson(noise.uniform(place));
            for (int i = 1; i <= count; i++) {
                long at = place + 4L * i;
                double a = size(noise.normal(at)) / 2;
                double aside = (noise.uniform(at + 2) - 0.5) * stones.strip().value() - y;
                if (Math.abs(aside) < a) {
                    double x = origin + (cell + noise.uniform(at + 3)) * CELL;
                    double square = a * a - aside * aside;
                    double h = 2 * a * stones.proud().value() * square / (a * a);
                    cuts.add(new Cut(x, Math.sqrt(square), h));
                }
            }
        }

        private double size(double deviate) {
            double cut = Math.max(-CUT, Math.min(CUT, deviate));
            return stones.size().value() * StrictMath.pow(stones.spread().value(), cut);
        }
    }

    /** The number whose share of all smaller ones first exceeds u. */
    private int poisson(double u) {
        double mean = stones.perMetre().value() * CELL;
        double term = StrictMath.exp(-mean);
        double sum = term;
        int n = 0;
        while (u > sum && n < MOST_STONES) {
            n++;
            term *= mean / n;
            sum += term;
        }
        return n;
    }
}
