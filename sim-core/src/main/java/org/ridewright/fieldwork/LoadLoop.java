package org.ridewright.fieldwork;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.ridewright.fieldwork.LoadDeflection.Row;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;

/**
 * What a load–deflection loop says of the spring, each with its standard error.
 *
 * <p>Loads are taken as exact among each other, since they come off one pair of scales: what those are wrong by goes into the rate as a whole,
 * deflections scatter by their tolerances or, if that is more, by what they do. The law is that of {@link LoopFit}.
 *
 * @param rate k while it slides, between loading and unloading (N/m)
 * @param shareOfLoad μ
 * @param constant F_0 (N); with it, friction of a load that lay on the spring before the first row and was not counted
 * @param halfHeight S in the middle of the loads (N)
 * @param middle that load (N)
 * @param lockedRate k_p, what friction adds just after a reversal (N/m); absent where the rows do not tell it
 * @param lockedGive λ, how much it gives for a little load while locked, over the same while it slides, {@code k/(k + k_p)} (1); absent likewise
 * @param covariance of rate, half height, share of load and, where there is one, λ, in SI units; not to be modified
 * @param scatter of deflections about the law over their tolerances; above about 2 the law does not fit
 */
public record LoadLoop(
        Measure rate,
        Measure shareOfLoad,
        Measure constant,
        Measure halfHeight,
        Measure middle,
        Optional<Measure> lockedRate,
        Optional<Measure> lockedGive,
        RealMatrix covariance,
        double scatter) {
    /** Fewest rows of loading, and of unloading. */
    public static final int FEWEST = 3;

    /**
     * Works a loop out.
     *
     * @return empty where the rows do not make a loop: too few up or down, or a load that does not grow with deflection
     */
    public static Optional<LoadLoop> of(List<Row> rows) {
        if (rising(rows) < FEWEST || falling(rows) < FEWEST) {
            return Optional.empty();
        }
        double[] load = rows.stream().mapToDouble(row -> row.load().value()).toArray();
        double[] deflection =
                rows.stream().mapToDouble(row -> row.deflection().value()).toArray();
        double[] tolerance =
                rows.stream().mapToDouble(row -> row.deflection().tolerance()).toArray();
        try {
            LoopFit.Found found = new LoopFit(load, deflection, tolerance).find();
            return isKnown(found) ? Optional.of(of(found, rows)) : Optional.empty();
        } catch (MathRuntimeException noLoop) {
            return Optional.empty();
        }
    }

    /** Rows whose deflection hardly depends on the load fit a rate of any size. */
    private static boolean isKnown(LoopFit.Found found) {
        boolean spread = IntStream.range(0, found.covariance().getRowDimension())
                .mapToDouble(i -> found.covariance().getEntry(i, i))
                .allMatch(variance -> variance >= 0 && Double.isFinite(variance));
        return found.rate() > 0 && Double.isFinite(found.rate()) && spread;
    }

    private static LoadLoop of(LoopFit.Found found, List<Row> rows) {
        Measure greatest = rows.get(0).load();
        double most = greatest.value();
        double least = most;
        for (Row row : rows) {
            greatest = Math.abs(row.load().value()) > Math.abs(greatest.value()) ? row.load() : greatest;
            most = Math.max(most, row.load().value());
            least = Math.min(least, row.load().value());
        }
        double ofScales = greatest.tolerance() / Math.abs(greatest.value());
        double middle = (most + least) / 2;
        // S = F_0 + μ f_e where loading and unloading lie S to either side of f_e = F
        double half = found.constant() + found.share() * middle;
        RealMatrix covariance = covariance(found, middle, half, ofScales);
        return new LoadLoop(
                measure(QuantityKind.RATE, found.rate(), Math.sqrt(covariance.getEntry(0, 0))),
                measure(QuantityKind.RATIO, found.share(), error(found, 1)),
                measure(QuantityKind.FORCE, found.constant(), error(found, 2)),
                measure(QuantityKind.FORCE, half, Math.sqrt(Math.max(0, covariance.getEntry(1, 1)))),
                measure(QuantityKind.FORCE, middle, Math.abs(middle) * ofScales),
                lockedRate(found),
                found.tellsLocked()
                        ? Optional.of(measure(QuantityKind.RATIO, found.compliance(), error(found, 4)))
                        : Optional.empty(),
                covariance,
                found.scatter());
    }

    /** What the scales are wrong by goes into rate and half height alike. */
    private static RealMatrix covariance(LoopFit.Found found, double middle, double half, double ofScales) {
        double[][] told = {{1, 0, 0, 0, 0}, {0, middle, 1, 0, 0}, {0, 1, 0, 0, 0}, {0, 0, 0, 0, 1}};
        double[] byScales = {found.rate() * ofScales, half * ofScales, 0, 0};
        int n = found.tellsLocked() ? told.length : told.length - 1;
        RealMatrix of = new Array2DRowRealMatrix(Arrays.copyOf(told, n));
        RealVector scales = new ArrayRealVector(Arrays.copyOf(byScales, n));
        return of.multiply(found.covariance()).multiplyTransposed(of).add(scales.outerProduct(scales));
    }

    /** {@code k_p = k (1/λ − 1)}. */
    private static Optional<Measure> lockedRate(LoopFit.Found found) {
        if (!found.tellsLocked()) {
            return Optional.empty();
        }
        double lambda = found.compliance();
        double byRate = 1 / lambda - 1;
        double byLambda = -found.rate() / (lambda * lambda);
        double variance = byRate * byRate * found.covariance().getEntry(0, 0)
                + byLambda * byLambda * found.covariance().getEntry(4, 4)
                + 2 * byRate * byLambda * found.covariance().getEntry(0, 4);
        return Optional.of(measure(QuantityKind.RATE, found.rate() * byRate, Math.sqrt(Math.max(0, variance))));
    }

    /**
     * Energy that one round of the rows takes up, the area of the closed polygon through them (J); for a loop that ends where it began.
     */
    public static double area(List<Row> rows) {
        double twice = 0;
        for (int i = 0; i < rows.size(); i++) {
            Row a = rows.get(i);
            Row b = rows.get((i + 1) % rows.size());
            twice += (b.deflection().value() - a.deflection().value())
                    * (a.load().value() + b.load().value());
        }
        return twice / 2;
    }

    /** Rows whose load is above that of the row before. */
    static int rising(List<Row> rows) {
        return steps(rows, 1);
    }

    /** Rows whose load is below that of the row before. */
    static int falling(List<Row> rows) {
        return steps(rows, -1);
    }

    private static int steps(List<Row> rows, int sign) {
        int count = 0;
        for (int i = 1; i < rows.size(); i++) {
            double change = rows.get(i).load().value() - rows.get(i - 1).load().value();
            count += sign * change > 0 ? 1 : 0;
        }
        return count;
    }

    private static double error(LoopFit.Found found, int i) {
        return Math.sqrt(Math.max(0, found.covariance().getEntry(i, i)));
    }

    private static Measure measure(QuantityKind kind, double value, double error) {
        return new Measure(kind, value, error, Provenance.COMPUTED, "least squares over the loop");
    }
}
