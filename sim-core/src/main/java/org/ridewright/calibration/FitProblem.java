package org.ridewright.calibration;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.ridewright.dynamics.RideException;
import org.ridewright.quantity.UnfitValueException;

/** Data, what predicts them, and the sum (1) of the package that is to be least. */
final class FitProblem {
    /**
     * Step of the finite differences, in standard deviations of what was known before: a few thousandths to a few hundredths of a value, far
     * above what counting and root finding leave as noise, and so small that curvature costs less than a thousandth.
     */
    static final double STEP = 0.05;
    /** A step that looks over the kinks of counted cycles. */
    static final double WIDE_STEP = 0.4;
    /** Residual, in σ, of a vehicle that cannot be: no step towards it is ever taken. */
    private static final double REFUSED = 1e4;

    private final int unknowns;
    private final List<Datum> data;
    private final ForwardModel model;
    private final RealMatrix held;
    private final RealMatrix factor;
    private final RealMatrix prior;

    FitProblem(int unknowns, List<Datum> data, ForwardModel model) {
        this(
                unknowns,
                data,
                model,
                new Array2DRowRealMatrix(data.size(), 1),
                MatrixUtils.createRealIdentityMatrix(Math.max(1, unknowns)));
    }

    /**
     * @param held H, what one tolerance of each value that is uncertain but not sought does to each datum, in σ: the data then have errors in common,
     *     of covariance {@code R = I + H Hᵀ}; not modified
     * @param prior lower triangular P, the correlation of the unknowns before being {@code P Pᵀ}; not modified
     */
    FitProblem(int unknowns, List<Datum> data, ForwardModel model, RealMatrix held, RealMatrix prior) {
        this.unknowns = unknowns;
        this.data = List.copyOf(data);
        this.model = model;
        this.held = held;
        this.prior = prior;
        RealMatrix rows = rows(held, fitted());
        RealMatrix covariance = rows.multiplyTransposed(rows);
        for (int i = 0; i < covariance.getRowDimension(); i++) {
            covariance.addToEntry(i, i, 1);
        }
        factor = covariance.getRowDimension() == 0
                ? covariance
                : new CholeskyDecomposition(covariance, 1e-8, 1e-12).getL();
    }

    private static RealMatrix rows(RealMatrix all, int[] wanted) {
        RealMatrix rows = new Array2DRowRealMatrix(Math.max(1, wanted.length), all.getColumnDimension());
        for (int i = 0; i < wanted.length; i++) {
            rows.setRow(i, all.getRow(wanted[i]));
        }
        return rows;
    }

    /** Variance that values which are not sought bring into a datum, in σ². */
    double heldVariance(int datum) {
        return held.getRowVector(datum).dotProduct(held.getRowVector(datum));
    }

    /** {@code L⁻¹ H} of the fitted data. */
    RealMatrix whitenedHeld() {
        RealMatrix own = rows(held, fitted());
        for (int k = 0; k < own.getColumnDimension(); k++) {
            own.setColumnVector(k, whitened(own.getColumnVector(k)));
        }
        return own;
    }

    /** {@code L⁻¹ x} with {@code L Lᵀ = R}: independent again, of standard deviation 1. */
    RealVector whitened(RealVector x) {
        RealVector white = x.copy();
        MatrixUtils.solveLowerTriangularSystem(factor, white);
        return white;
    }

    /** {@code L⁻ᵀ x}. */
    RealVector whitenedBack(RealVector x) {
        RealVector white = x.copy();
        MatrixUtils.solveUpperTriangularSystem(factor.transpose(), white);
        return white;
    }

    int unknowns() {
        return unknowns;
    }

    List<Datum> data() {
        return data;
    }

    /** Indices of the data that are fitted. */
    int[] fitted() {
        return IntStream.range(0, data.size())
                .filter(i -> !data.get(i).keptBack())
                .toArray();
    }

    /** (f − y)/σ of all data; {@code null} where there can be no such vehicle, or a fitted datum has no prediction. */
    double[] residuals(double[] z) {
        try {
            double[] predicted = model.predict(z.clone());
            double[] residuals = new double[data.size()];
            for (int i = 0; i < residuals.length; i++) {
                Datum datum = data.get(i);
                residuals[i] = (predicted[i] - datum.observed()) / datum.uncertainty();
                if (!datum.keptBack() && !Double.isFinite(residuals[i])) {
                    return null;
                }
            }
            return residuals;
        } catch (UnfitValueException | RideException none) {
            return null;
        }
    }

    /** Residuals of the fitted data, then {@code P⁻¹ z}: the vector whose squared length is (1). */
    double[] stacked(double[] z) {
        double[] all = residuals(z);
        int[] fitted = fitted();
        double[] result = new double[fitted.length + unknowns];
        if (all == null) {
            Arrays.fill(result, 0, fitted.length, REFUSED);
        } else {
            RealVector own = new ArrayRealVector(fitted.length);
            for (int i = 0; i < fitted.length; i++) {
                own.setEntry(i, all[fitted[i]]);
            }
            System.arraycopy(whitened(own).toArray(), 0, result, 0, fitted.length);
        }
        RealVector departures = new ArrayRealVector(z);
        MatrixUtils.solveLowerTriangularSystem(prior, departures);
        System.arraycopy(departures.toArray(), 0, result, fitted.length, unknowns);
        return result;
    }

    /** Q of (1). */
    double objective(double[] z) {
        return Arrays.stream(stacked(z)).map(r -> r * r).sum();
    }

    /** J of all data at z, by central differences, one-sided at the edge of what can be; columns in parallel. */
    RealMatrix jacobian(double[] z) {
        return jacobian(z, STEP);
    }

    /** The same with another step. */
    RealMatrix jacobian(double[] z, double step) {
        double[][] columns = IntStream.range(0, unknowns)
                .parallel()
                .mapToObj(j -> column(z, j, step))
                .toArray(double[][]::new);
        RealMatrix matrix = new Array2DRowRealMatrix(data.size(), unknowns);
        for (int j = 0; j < unknowns; j++) {
            matrix.setColumn(j, columns[j]);
        }
        return matrix;
    }

    /**
     * J where what is counted may jump: of a datum on its own the smaller of the slopes over the usual step and over the wide one, nought where
     * they contradict one another, so that a jump is not taken for knowledge. Samples of a record, which do not jump, by the usual step.
     */
    RealMatrix cautiousJacobian(double[] z) {
        RealMatrix narrow = jacobian(z, STEP);
        RealMatrix wide = jacobian(z, WIDE_STEP);
        for (int i = 0; i < data.size(); i++) {
            for (int j = 0; data.get(i).group().isBlank() && j < unknowns; j++) {
                double near = narrow.getEntry(i, j);
                double far = wide.getEntry(i, j);
                narrow.setEntry(i, j, near * far <= 0 ? 0 : Math.abs(near) < Math.abs(far) ? near : far);
            }
        }
        return narrow;
    }

    private double[] column(double[] z, int j, double step) {
        double[] up = residuals(moved(z, j, step));
        double[] down = residuals(moved(z, j, -step));
        double width = 2 * step;
        if (up == null || down == null) {
            double[] here = residuals(z);
            up = up == null ? here : up;
            down = down == null ? here : down;
            width = step;
        }
        double[] column = new double[data.size()];
        for (int i = 0; up != null && down != null && i < column.length; i++) {
            double slope = (up[i] - down[i]) / width;
            column[i] = Double.isFinite(slope) ? slope : 0;
        }
        return column;
    }

    private static double[] moved(double[] z, int j, double by) {
        double[] other = z.clone();
        other[j] += by;
        return other;
    }

    /** Rows of the fitted data, then {@code P⁻¹}: the derivative of {@link #stacked}. */
    RealMatrix stackedJacobian(RealMatrix jacobian) {
        int[] fitted = fitted();
        RealMatrix matrix = new Array2DRowRealMatrix(fitted.length + unknowns, unknowns);
        RealMatrix own = rows(jacobian, fitted);
        for (int j = 0; j < unknowns; j++) {
            matrix.setSubMatrix(column(whitened(own.getColumnVector(j))), 0, j);
        }
        for (int j = 0; j < unknowns; j++) {
            RealVector unit = new ArrayRealVector(unknowns);
            unit.setEntry(j, 1);
            MatrixUtils.solveLowerTriangularSystem(prior, unit);
            matrix.setSubMatrix(column(unit), fitted.length, j);
        }
        return matrix;
    }

    private static double[][] column(RealVector values) {
        double[][] column = new double[values.getDimension()][1];
        for (int i = 0; i < column.length; i++) {
            column[i][0] = values.getEntry(i);
        }
        return column;
    }
}
