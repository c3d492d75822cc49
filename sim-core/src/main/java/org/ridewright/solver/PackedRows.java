package org.ridewright.solver;

import java.util.stream.IntStream;

/**
 * Rows {@code B_i} and columns {@code w_i = −M⁻¹B_iᵀ} of all elements. The rows are packed by {@link RowShape}, the zeros of a run
 * included, so that the inner loops are straight lines of arithmetic over elements that follow each other; the columns, without their
 * zeros, are gathered by coordinate. Expects the elements in the order of {@link ElementOrder}; immutable.
 */
final class PackedRows {
    private static final int TRIPLE = RowShape.TRIPLE;
    private static final int PAIR = RowShape.PAIR;
    private static final int WIDE = TRIPLE + PAIR;
    private static final int NARROW = PAIR;

    private final int wides;
    private final int narrows;
    private final int others;
    private final int[] triple;
    private final int[] pair;
    private final double[] wideValues;
    private final double[] narrowValues;
    private final int[] otherFrom;
    private final int[] otherColumn;
    private final double[] otherRow;
    /** Entries of the columns by coordinate: of coordinate i those from {@code columnFrom[i]} on. */
    private final int[] columnFrom;

    private final int[] columnElement;
    private final double[] columnW;
    private final int coordinates;

    PackedRows(FlatLaws laws) {
        RowShape[] shapes = IntStream.range(0, laws.ne)
                .mapToObj(e -> RowShape.of(laws.equations, e))
                .toArray(RowShape[]::new);
        wides = count(shapes, RowShape.Kind.WIDE);
        narrows = count(shapes, RowShape.Kind.NARROW);
        others = count(shapes, RowShape.Kind.OTHER);
        triple = new int[wides];
        pair = new int[wides + narrows];
        wideValues = new double[WIDE * wides];
        narrowValues = new double[NARROW * narrows];
        otherFrom = new int[others + 1];
        for (int i = 0; i < others; i++) {
            otherFrom[i + 1] = otherFrom[i] + shapes[wides + narrows + i].columns().length;
        }
        otherColumn = new int[otherFrom[others]];
        otherRow = new double[otherColumn.length];
        for (int e = 0; e < laws.ne; e++) {
            fill(laws, e, shapes[e]);
        }
        coordinates = laws.n;
        columnFrom = new int[laws.n + 1];
        columnElement = new int[laws.ne * laws.n];
        columnW = new double[laws.ne * laws.n];
        int count = 0;
        for (int i = 0; i < laws.n; i++) {
            for (int e = 0; e < laws.ne; e++) {
                if (laws.w[e * laws.n + i] != 0) {
                    columnElement[count] = e;
                    columnW[count++] = laws.w[e * laws.n + i];
                }
            }
            columnFrom[i + 1] = count;
        }
    }

    private static int count(RowShape[] shapes, RowShape.Kind kind) {
        int count = 0;
        for (int e = 0; e < shapes.length; e++) {
            if (shapes[e].kind() == kind) {
                count++;
            }
            if (e > 0 && shapes[e].kind().compareTo(shapes[e - 1].kind()) < 0) {
                throw new IllegalArgumentException("elements must be ordered by shape");
            }
        }
        return count;
    }

    private void fill(FlatLaws laws, int e, RowShape shape) {
        switch (shape.kind()) {
            case WIDE -> {
                triple[e] = shape.triple();
                pair[e] = shape.pair();
                System.arraycopy(laws.row, e * laws.n + shape.triple(), wideValues, e * WIDE, TRIPLE);
                System.arraycopy(laws.row, e * laws.n + shape.pair(), wideValues, e * WIDE + TRIPLE, PAIR);
            }
            case NARROW -> {
                pair[e] = shape.pair();
                System.arraycopy(laws.row, e * laws.n + shape.pair(), narrowValues, (e - wides) * NARROW, PAIR);
            }
            case OTHER -> {
                int from = otherFrom[e - wides - narrows];
                for (int i = 0; i < shape.columns().length; i++) {
                    otherColumn[from + i] = shape.columns()[i];
                    otherRow[from + i] = laws.row[e * laws.n + shape.columns()[i]];
                }
            }
        }
    }

    /** {@code out[outAt + e] = B_e x} for every element, x from {@code x[xAt]} on. */
    void compress(double[] x, int xAt, double[] out, int outAt) {
        double[] wide = wideValues;
        for (int i = 0; i < wides; i++) {
            int p = i * WIDE;
            int t = xAt + triple[i];
            int d = xAt + pair[i];
            out[outAt + i] = wide[p] * x[t]
                    + wide[p + 1] * x[t + 1]
                    + wide[p + 2] * x[t + 2]
                    + (wide[p + 3] * x[d] + wide[p + 4] * x[d + 1]);
        }
        double[] narrow = narrowValues;
        for (int i = 0; i < narrows; i++) {
            int d = xAt + pair[wides + i];
            out[outAt + wides + i] = narrow[i * NARROW] * x[d] + narrow[i * NARROW + 1] * x[d + 1];
        }
        for (int i = 0; i < others; i++) {
            double sum = 0;
            for (int p = otherFrom[i]; p < otherFrom[i + 1]; p++) {
                sum += otherRow[p] * x[xAt + otherColumn[p]];
            }
            out[outAt + wides + narrows + i] = sum;
        }
    }

    /** {@code out[i] = Σ_e w_{e,i} f_e} for every coordinate, f from {@code f[fAt]} on. */
    void accelerate(double[] f, int fAt, double[] out) {
        int p = 0;
        for (int i = 0; i < coordinates; i++) {
            double even = 0;
            double odd = 0;
            int end = columnFrom[i + 1];
            for (; p + 1 < end; p += 2) {
                even += columnW[p] * f[fAt + columnElement[p]];
                odd += columnW[p + 1] * f[fAt + columnElement[p + 1]];
            }
            if (p < end) {
                even += columnW[p] * f[fAt + columnElement[p]];
                p++;
            }
            out[i] = even + odd;
        }
    }

    /**
     * One coefficient of a regime without input: for every element {@code ċ_k = B v_k}, {@code c_k = ċ_{k−1}·share},
     * {@code f_k = stiffness·c_k + damping·ċ_k}.
     *
     * @param share step/k (s)
     * @param vAt beginning of row k of v
     * @param at beginning of row k of speed, c and force, each {@code width} wide
     * @param reach {@code Σ |ċ_k|} of each element, added to
     */
    void term(
            double share,
            double[] v,
            int vAt,
            double[] speed,
            double[] c,
            double[] force,
            int at,
            int width,
            double[] stiffness,
            double[] damping,
            double[] reach) {
        int before = at - width;
        double[] wide = wideValues;
        for (int i = 0; i < wides; i++) {
            int p = i * WIDE;
            int t = vAt + triple[i];
            int d = vAt + pair[i];
            double rate = (wide[p] * v[t] + wide[p + 1] * v[t + 1])
                    + (wide[p + 2] * v[t + 2] + (wide[p + 3] * v[d] + wide[p + 4] * v[d + 1]));
            double compression = share * speed[before + i];
            speed[at + i] = rate;
            c[at + i] = compression;
            force[at + i] = stiffness[i] * compression + damping[i] * rate;
            reach[i] += Math.abs(rate);
        }
        double[] narrow = narrowValues;
        int first = wides;
        for (int i = 0; i < narrows; i++) {
            int p = i * NARROW;
            int e = first + i;
            int d = vAt + pair[e];
            double rate = narrow[p] * v[d] + narrow[p + 1] * v[d + 1];
            double compression = share * speed[before + e];
            speed[at + e] = rate;
            c[at + e] = compression;
            force[at + e] = stiffness[e] * compression + damping[e] * rate;
            reach[e] += Math.abs(rate);
        }
        for (int i = 0; i < others; i++) {
            int e = wides + narrows + i;
            double rate = 0;
            for (int p = otherFrom[i]; p < otherFrom[i + 1]; p++) {
                rate += otherRow[p] * v[vAt + otherColumn[p]];
            }
            double compression = share * speed[before + e];
            speed[at + e] = rate;
            c[at + e] = compression;
            force[at + e] = stiffness[e] * compression + damping[e] * rate;
            reach[e] += Math.abs(rate);
        }
    }
}
