package org.ridewright.ringdown;

/**
 * The straight line {@code a − b j} and the exponential {@code a e^(−c j)} that pass closest to the sizes of the half cycles, for the eye; the kind of
 * decay is told by the fit to the record.
 */
final class SizeLines {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final double FASTEST = 5;
    private static final int STEPS = 60;

    private SizeLines() {}

    /** Of the straight line at each half cycle; sizes that are NaN do not count. */
    static double[] straight(double[] sizes) {
        double n = 0;
        double j1 = 0;
        double j2 = 0;
        double y1 = 0;
        double jy = 0;
        for (int j = 0; j < sizes.length; j++) {
            if (Double.isFinite(sizes[j])) {
                n++;
                j1 += j;
                j2 += (double) j * j;
                y1 += sizes[j];
                jy += j * sizes[j];
            }
        }
        double determinant = n * j2 - j1 * j1;
        double slope = determinant > 0 ? (n * jy - j1 * y1) / determinant : 0;
        double start = n > 0 ? (y1 - slope * j1) / n : 0;
        double[] line = new double[sizes.length];
        for (int j = 0; j < line.length; j++) {
            line[j] = Math.max(0, start + slope * j);
        }
        return line;
    }

    /** Of the exponential, its rate c by golden section. */
    static double[] exponential(double[] sizes) {
        double low = 0;
        double high = FASTEST;
        for (int step = 0; step < STEPS; step++) {
            double left = high - GOLDEN * (high - low);
            double right = low + GOLDEN * (high - low);
            if (left(sizes, left) < left(sizes, right)) {
                high = right;
            } else {
                low = left;
            }
        }
        double rate = (low + high) / 2;
        double start = start(sizes, rate);
        double[] line = new double[sizes.length];
        for (int j = 0; j < line.length; j++) {
            line[j] = start * Math.exp(-rate * j);
        }
        return line;
    }

    private static double start(double[] sizes, double rate) {
        double product = 0;
        double square = 0;
        for (int j = 0; j < sizes.length; j++) {
            if (Double.isFinite(sizes[j])) {
                product += sizes[j] * Math.exp(-rate * j);
                square += Math.exp(-2 * rate * j);
            }
        }
        return square > 0 ? product / square : 0;
    }

    private static double left(double[] sizes, double rate) {
        double start = start(sizes, rate);
        double sum = 0;
        for (int j = 0; j < sizes.length; j++) {
            sum += Double.isFinite(sizes[j]) ? Math.pow(sizes[j] - start * Math.exp(-rate * j), 2) : 0;
        }
        return sum;
    }
}
