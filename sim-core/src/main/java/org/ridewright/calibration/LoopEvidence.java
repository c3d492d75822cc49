package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.fieldwork.LoadDeflection;
import org.ridewright.fieldwork.LoadDeflection.Loaded;
import org.ridewright.fieldwork.LoadDeflection.Row;
import org.ridewright.fieldwork.Loading;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.LoadCase.Aboard;
import org.ridewright.vehicle.Place;

/**
 * Loading and unloading of a spring, a corner or an axle as two straight lines of one slope, {@code δ = a + F/k} for each way, by least squares: the
 * rate k, and half the height of the loop, {@code k (a_down − a_up)/2}. The vehicle's law gives its own deflections at the same loads, to which
 * the same lines are laid, so that a law that is not straight is compared with itself. The first reading after the turn, where leaves still
 * stick, is left out where four or more were taken on the way down.
 */
final class LoopEvidence implements Evidence {
    private static final int ENOUGH = 4;

    private final LoadDeflection fact;
    private final List<Row> rows;
    private final boolean[] unloading;
    private final List<Datum> data;

    private LoopEvidence(LoadDeflection fact, List<Row> rows, boolean[] unloading, List<Datum> data) {
        this.fact = fact;
        this.rows = rows;
        this.unloading = unloading;
        this.data = data;
    }

    static LoopEvidence of(LoadDeflection fact) {
        List<Row> all = fact.rows();
        int top = IntStream.range(0, all.size())
                .boxed()
                .max(Comparator.comparingDouble(i -> all.get(i).load().value()))
                .orElseThrow();
        List<Row> rows = new ArrayList<>(all.subList(0, top + 1));
        int skip = all.size() - top - 1 >= ENOUGH ? 1 : 0;
        rows.addAll(all.subList(top + 1 + skip, all.size()));
        boolean[] unloading = new boolean[rows.size()];
        for (int i = top + 1; i < unloading.length; i++) {
            unloading[i] = true;
        }
        double[] deflections =
                rows.stream().mapToDouble(r -> r.deflection().value()).toArray();
        Lines lines = Lines.of(rows, unloading, deflections);
        List<Datum> data = List.of(
                new Datum(
                        fact.label() + ": rate",
                        "kN/m",
                        lines.rate() / 1000,
                        lines.rateError() / 1000,
                        fact.keepBack(),
                        ""),
                new Datum(
                        fact.label() + ": half the loop's height",
                        "N",
                        lines.halfLoop(),
                        lines.halfLoopError(),
                        fact.keepBack(),
                        ""));
        return new LoopEvidence(fact, List.copyOf(rows), unloading, data);
    }

    @Override
    public LoadDeflection fact() {
        return fact;
    }

    @Override
    public List<Datum> data() {
        return data;
    }

    @Override
    public double[] predict(Trial trial, double[] circumstances) {
        double[] deflections = new double[rows.size()];
        for (int i = 0; i < deflections.length; i++) {
            deflections[i] = deflection(trial, rows.get(i).load().value(), unloading[i] ? -1 : 1);
        }
        Lines lines = Lines.of(rows, unloading, deflections);
        return new double[] {lines.rate() / 1000, lines.halfLoop()};
    }

    private double deflection(Trial trial, double load, int way) {
        if (fact.of() instanceof Loaded.OneSpring one) {
            return SpringUnderLoad.of(trial.vehicle(), one.axle(), one.spring()).compression(load, way);
        }
        Axle axle = BodyMarks.axle(trial.vehicle(), fact.of().axle());
        double y = fact.of() instanceof Loaded.OneCorner corner
                ? BodyMarks.place(
                                trial.vehicle(),
                                new org.ridewright.fieldwork.Heights.Mark.Corner(axle.name(), corner.side()))
                        .y()
                : 0;
        Place place = Place.of(axle.behindFrontAxle().value(), y, 0);
        Aboard sacks = new Aboard.Cargo(
                "load laid on", Measure.of(load / VehicleModel.GRAVITY, QuantityKind.MASS), place, Optional.empty());
        VehicleModel model = trial.standing(new Loading(lightest(trial), List.of(sacks)), way);
        return axle.springs().stream()
                .flatMap(spring -> SpringUnderLoad.elements(model, axle, spring.name()).stream())
                .filter(e -> y == 0 || acts(model, e, y))
                .mapToDouble(e -> model.rest().compression()[e])
                .average()
                .orElse(Double.NaN);
    }

    /** Whether a spring is on the side of y: it is pressed by the body's sinking there. */
    private static boolean acts(VehicleModel model, int element, double y) {
        int roll = model.coordinates().roll();
        return roll < 0 || model.equations().elements().get(element).row()[roll] * y <= 0;
    }

    private static String lightest(Trial trial) {
        return trial.vehicle().loadCases().stream()
                .min(Comparator.comparingDouble(c ->
                        c.aboard().stream().mapToDouble(a -> a.mass().value()).sum()))
                .map(LoadCase::name)
                .orElseThrow();
    }

    /** Two lines of one slope. */
    private record Lines(double rate, double rateError, double halfLoop, double halfLoopError) {
        private static final int PASSES = 3;

        static Lines of(List<Row> rows, boolean[] unloading, double[] deflections) {
            double slope = 0;
            Lines found = null;
            for (int pass = 0; pass < PASSES; pass++) {
                found = of(rows, unloading, deflections, slope);
                slope = 1 / found.rate;
            }
            return found;
        }

        /** With the errors of loads taken as errors of deflections by a slope. */
        private static Lines of(List<Row> rows, boolean[] unloading, double[] deflections, double slope) {
            int n = rows.size();
            RealMatrix design = new Array2DRowRealMatrix(n, 3);
            RealVector right = new ArrayRealVector(n);
            for (int i = 0; i < n; i++) {
                Row row = rows.get(i);
                double sigma = Math.hypot(
                        row.deflection().tolerance(), slope * row.load().tolerance());
                design.setEntry(i, unloading[i] ? 1 : 0, 1 / sigma);
                design.setEntry(i, 2, row.load().value() / sigma);
                right.setEntry(i, deflections[i] / sigma);
            }
            RealMatrix covariance = new CholeskyDecomposition(design.transposeMultiply(design), 1e-8, 1e-20)
                    .getSolver()
                    .getInverse();
            RealVector fit = covariance.operate(design.transpose().operate(right));
            double scatter = design.operate(fit).subtract(right).getNorm() / Math.sqrt(Math.max(1, n - 3));
            double wider = Math.max(1, scatter * scatter);
            double s = fit.getEntry(2);
            double gap = fit.getEntry(1) - fit.getEntry(0);
            RealVector half = new ArrayRealVector(new double[] {-1 / (2 * s), 1 / (2 * s), -gap / (2 * s * s)});
            return new Lines(
                    1 / s,
                    Math.sqrt(wider * covariance.getEntry(2, 2)) / (s * s),
                    gap / (2 * s),
                    Math.sqrt(wider * half.dotProduct(covariance.operate(half))));
        }
    }
}
