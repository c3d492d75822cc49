package org.ridewright.ringdown;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Two sensors of one body at the same instants: their mean is how the middle between them moves, half their difference how far each end moves by
 * turning about it.
 *
 * @param first the first sensor's stretches, where the second has values too
 * @param second the second's values at the same instants
 * @param shift by which the second's clock was put back (s)
 * @param likeness correlation of the sizes of both at that shift; 1 where they share a clock
 */
public record SensorPair(List<Stretch> first, List<Stretch> second, double shift, double likeness) {
    private static final double GRID = 0.01;
    private static final double LEAST_LIKENESS = 0.4;
    private static final int COARSE = 10;
    private static final int FEWEST = 16;

    public SensorPair {
        first = List.copyOf(first);
        second = List.copyOf(second);
    }

    /**
     * Of one clock.
     *
     * @throws NoRingDownException if they have no time in common
     */
    public static SensorPair of(List<Stretch> first, List<Stretch> second) {
        return joined(first, second, 0, 1);
    }

    /**
     * Of clocks of their own: the second is shifted to where sudden changes in both coincide best, as at a release or a knock.
     *
     * @throws NoRingDownException if they are not alike anywhere
     */
    public static SensorPair aligned(List<Stretch> first, List<Stretch> second) {
        double[] a = sizes(first);
        double[] b = sizes(second);
        int coarse = best(coarse(a), coarse(b), -b.length / COARSE, a.length / COARSE) * COARSE;
        int best = best(a, b, coarse - 2 * COARSE, coarse + 2 * COARSE);
        double most = correlation(a, b, best);
        if (most < LEAST_LIKENESS) {
            throw new NoRingDownException(
                    "the two logs do not shake alike at any shift of their clocks",
                    "two logs of the same bounce tests",
                    "check that both are of one session; a knock on the body while both run helps to align them");
        }
        double before = correlation(a, b, best - 1);
        double after = correlation(a, b, best + 1);
        double bend = before - 2 * most + after;
        double shift = (best + (bend < 0 ? 0.5 * (before - after) / bend : 0)) * GRID
                + first.get(0).start()
                - second.get(0).start();
        return joined(first, second, shift, most);
    }

    /** Motion of the middle. */
    public List<Stretch> mean() {
        return combined(0.5, 0.5);
    }

    /** Motion of the first end by turning. */
    public List<Stretch> halfDifference() {
        return combined(0.5, -0.5);
    }

    private List<Stretch> combined(double ofFirst, double ofSecond) {
        List<Stretch> combined = new ArrayList<>();
        for (int s = 0; s < first.size(); s++) {
            double[] values = first.get(s).values().clone();
            for (int i = 0; i < values.length; i++) {
                values[i] = ofFirst * values[i] + ofSecond * second.get(s).values()[i];
            }
            combined.add(new Stretch(first.get(s).times(), values));
        }
        return combined;
    }

    private static SensorPair joined(List<Stretch> first, List<Stretch> second, double shift, double likeness) {
        List<Stretch> ones = new ArrayList<>();
        List<Stretch> others = new ArrayList<>();
        for (Stretch one : first) {
            for (Stretch other : second) {
                double from = Math.max(one.start(), other.start() + shift);
                double to = Math.min(one.end(), other.end() + shift);
                int begin = one.from(from);
                int end = one.from(Math.nextUp(to));
                if (end - begin < FEWEST) {
                    continue;
                }
                double[] times = Arrays.copyOfRange(one.times(), begin, end);
                double[] values = new double[times.length];
                for (int i = 0; i < times.length; i++) {
                    values[i] = at(other, times[i] - shift);
                }
                ones.add(new Stretch(times, Arrays.copyOfRange(one.values(), begin, end)));
                others.add(new Stretch(times, values));
            }
        }
        if (ones.isEmpty()) {
            throw new NoRingDownException(
                    "the two sensors have no time in common", "two sensors that ran together", "record both at once");
        }
        return new SensorPair(ones, others, shift, likeness);
    }

    private static double at(Stretch stretch, double time) {
        double[] t = stretch.times();
        int after = Math.max(1, Math.min(t.length - 1, stretch.from(time)));
        double share = Math.max(0, Math.min(1, (time - t[after - 1]) / (t[after] - t[after - 1])));
        return stretch.values()[after - 1] + share * (stretch.values()[after] - stretch.values()[after - 1]);
    }

    /** Sizes of the second differences on a grid that begins with the first stretch, in which a release or a knock stands out; zero in gaps. */
    private static double[] sizes(List<Stretch> stretches) {
        double start = stretches.get(0).start();
        double end = stretches.get(stretches.size() - 1).end();
        double[] sizes = new double[(int) ((end - start) / GRID) + 1];
        for (Stretch stretch : stretches) {
            int from = (int) Math.ceil((stretch.start() - start) / GRID);
            for (int i = from; i < sizes.length && start + i * GRID <= stretch.end(); i++) {
                double time = start + i * GRID;
                sizes[i] = Math.abs(at(stretch, time + GRID) - 2 * at(stretch, time) + at(stretch, time - GRID));
            }
        }
        return sizes;
    }

    private static int best(double[] a, double[] b, int from, int to) {
        int best = from;
        double most = -1;
        for (int lag = from; lag <= to; lag++) {
            double r = correlation(a, b, lag);
            if (r > most) {
                most = r;
                best = lag;
            }
        }
        return best;
    }

    private static double[] coarse(double[] sizes) {
        double[] means = new double[sizes.length / COARSE + 1];
        for (int i = 0; i < sizes.length; i++) {
            means[i / COARSE] += sizes[i] / COARSE;
        }
        return means;
    }

    private static double correlation(double[] a, double[] b, int lag) {
        double ab = 0;
        for (int i = Math.max(0, lag); i < Math.min(a.length, b.length + lag); i++) {
            ab += a[i] * b[i - lag];
        }
        double size = Math.sqrt(square(a) * square(b));
        return size > 0 ? ab / size : 0;
    }

    private static double square(double[] values) {
        double sum = 0;
        for (double v : values) {
            sum += v * v;
        }
        return sum;
    }
}
