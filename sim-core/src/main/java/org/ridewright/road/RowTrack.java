package org.ridewright.road;

/** A surface whose pieces go row by row. */
abstract class RowTrack implements SurfaceTrack {
    private final Rows rows;
    private final double end;

    RowTrack(Rows rows) {
        this.rows = rows;
        this.end = rows.last();
    }

    /** Gives the pieces of row k, which fill it from end to end. */
    abstract void row(long k, double from, double to, Pieces out);

    @Override
    public double begin() {
        return rows.at(0);
    }

    @Override
    public double end() {
        return end;
    }

    @Override
    public void pieces(double from, double to, Pieces out) {
        // one row more on either side, for a window that ends on a joint
        long k = Math.max(0, rows.rowAt(from) - 1);
        double left = rows.at(k);
        while (left <= to && left < end) {
            double right = rows.at(k + 1);
            row(k, left, right, out);
            left = right;
            k++;
        }
    }
}
