package org.ridewright.roughness;

/**
 * A long profile drawn small: lowest and highest height in each of so many equal columns. Immutable by habit: arrays are not copied.
 *
 * @param start station of the left end of the first column (m)
 * @param width of a column (m)
 * @param low lowest height in each column (m)
 * @param high highest height in each column (m)
 */
public record Outline(double start, double width, double[] low, double[] high) {

    /** Collects an outline as heights come in. */
    static final class Builder {
        /** More columns than a printed figure can show. */
        private static final int MOST_COLUMNS = 1500;

        private final double start;
        private final double spacing;
        private final long each;
        private final double[] low;
        private final double[] high;
        private long taken;

        Builder(HeightSource source) {
            start = source.start();
            spacing = source.spacing();
            each = Math.max(1, (source.size() + MOST_COLUMNS - 1) / MOST_COLUMNS);
            int columns = (int) ((source.size() + each - 1) / each);
            low = new double[columns];
            high = new double[columns];
        }

        void accept(double height) {
            int column = (int) (taken / each);
            boolean first = taken % each == 0;
            low[column] = first ? height : Math.min(low[column], height);
            high[column] = first ? height : Math.max(high[column], height);
            taken++;
        }

        Outline build() {
            return new Outline(start, each * spacing, low, high);
        }
    }
}
