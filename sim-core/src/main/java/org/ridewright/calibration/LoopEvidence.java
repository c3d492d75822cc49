package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.fieldwork.LoadDeflection;
import org.ridewright.fieldwork.LoadDeflection.Loaded;
import org.ridewright.fieldwork.LoadLoop;
import org.ridewright.fieldwork.Loading;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.LoadCase.Aboard;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Spring;

/**
 * A loop of a spring, a corner or an axle: what {@link LoadLoop} finds in its rows, turning back or going round as often as they like. Rate, half height, share of
 * load and, where the rows tell it, the locked give λ have errors in common, of covariance {@code C = L Lᵀ}. As data they are made
 * independent: with p the vehicle's and p̂ the measured figures, datum i misses by {@code (L⁻¹(p − p̂))_i} of its standard deviation {@code L_ii}, so that
 * each says what it adds to those before it.
 *
 * <p>The vehicle's figures come from its own deflections at the same loads, straight lines laid through those where it slides:
 *
 * <pre>
 *   δ = i₊ + a₊ F loading, i₋ + a₋ F unloading      k = (1/a₊ + 1/a₋)/2      μ = (1/a₊ − 1/a₋)/(2k)      F_0 = (i₋ − i₊)/(a₊ + a₋)
 * </pre>
 *
 * <p>which is exact of the law {@code δ = δ_0 + (F ∓ F_0)/(k (1 ± μ))}; λ is that of the first motion after a reversal, of all sliders together.
 */
final class LoopEvidence implements Evidence {
    private static final int HALF = 1;
    private static final int SHARE = 2;
    private static final int GIVE = 3;
    private static final List<String> LABELS = List.of(
            "rate",
            "half the loop's height, beside the rate",
            "friction's share of load, beside these",
            "give before it slides over that while it slides, beside these");
    private static final List<String> UNITS = List.of("kN/m", "N", "%", "%");
    /** From SI to the units of the data. */
    private static final double[] SCALE = {1e-3, 1, 100, 100};

    private final LoadDeflection fact;
    private final double[] observed;
    private final RealMatrix factor;

    private LoopEvidence(LoadDeflection fact, double[] observed, RealMatrix factor) {
        this.fact = fact;
        this.observed = observed;
        this.factor = factor;
    }

    /** @throws CalibrationException if the rows make no loop */
    static LoopEvidence of(LoadDeflection fact) {
        LoadLoop loop = LoadLoop.of(fact.rows())
                .orElseThrow(
                        () -> new CalibrationException(
                                fact.label()
                                        + ": its rows make no loop; load and unload in three steps or more each, deflection growing with load"));
        int n = loop.covariance().getRowDimension();
        double[] observed = new double[n];
        observed[0] = loop.rate().value();
        observed[HALF] = loop.halfHeight().value();
        observed[SHARE] = loop.shareOfLoad().value();
        loop.lockedGive().ifPresent(give -> observed[GIVE] = give.value());
        RealMatrix covariance = loop.covariance().copy();
        for (int i = 0; i < n; i++) {
            observed[i] *= SCALE[i];
            for (int j = 0; j < n; j++) {
                covariance.multiplyEntry(i, j, SCALE[i] * SCALE[j]);
            }
        }
        return new LoopEvidence(fact, observed, new CholeskyDecomposition(covariance, 1e-8, 1e-14).getL());
    }

    @Override
    public LoadDeflection fact() {
        return fact;
    }

    @Override
    public List<Datum> data() {
        return IntStream.range(0, observed.length)
                .mapToObj(i -> new Datum(
                        fact.label() + ": " + LABELS.get(i),
                        UNITS.get(i),
                        observed[i],
                        factor.getEntry(i, i),
                        fact.keepBack(),
                        ""))
                .toList();
    }

    @Override
    public double[] predict(Trial trial, double[] circumstances) {
        double[] figures = figures(trial);
        RealVector miss = new ArrayRealVector(observed.length);
        for (int i = 0; i < observed.length; i++) {
            miss.setEntry(i, SCALE[i] * figures[i] - observed[i]);
        }
        MatrixUtils.solveLowerTriangularSystem(factor, miss);
        double[] predicted = new double[observed.length];
        for (int i = 0; i < predicted.length; i++) {
            predicted[i] = observed[i] + factor.getEntry(i, i) * miss.getEntry(i);
        }
        return predicted;
    }

    /** Rate (N/m), half height (N), share of load and λ of the vehicle. */
    double[] figures(Trial trial) {
        Line up = line(trial, 1);
        Line down = line(trial, -1);
        double rate = (1 / up.slope + 1 / down.slope) / 2;
        double share = (1 / up.slope - 1 / down.slope) / (2 * rate);
        double constant = (down.intercept - up.intercept) / (up.slope + down.slope);
        DoubleSummaryStatistics loads =
                fact.rows().stream().mapToDouble(r -> r.load().value()).summaryStatistics();
        double middle = (loads.getMin() + loads.getMax()) / 2;
        return new double[] {rate, constant + share * middle, share, give(trial, middle)};
    }

    /** Through deflections at the loads that were read on the way up or down. */
    private Line line(Trial trial, int way) {
        List<double[]> points = new ArrayList<>();
        for (int i = 1; i < fact.rows().size(); i++) {
            double load = fact.rows().get(i).load().value();
            if (way * (load - fact.rows().get(i - 1).load().value()) > 0) {
                points.add(new double[] {load, deflection(trial, load, way)});
            }
        }
        return Line.through(points);
    }

    /** λ at a load, of all springs of the axle that it presses. */
    private double give(Trial trial, double load) {
        if (fact.of() instanceof Loaded.OneSpring one) {
            SpringUnderLoad spring = SpringUnderLoad.of(trial.vehicle(), one.axle(), one.spring());
            double rate = spring.law().elasticRate(spring.compression(load, 0));
            return rate / (rate + locked(spring.law(), load));
        }
        Axle axle = BodyMarks.axle(trial.vehicle(), fact.of().axle());
        VehicleModel model = trial.standing(new Loading(lightest(trial), List.of()));
        double sliding = 0;
        double locked = 0;
        for (Spring spring : axle.springs()) {
            for (int e : SpringUnderLoad.elements(model, axle, spring.name())) {
                ForceLaw law = model.equations().elements().get(e).law();
                double compression = model.rest().compression()[e];
                sliding += law.elasticRate(compression);
                locked += locked(law, law.leafForce(compression));
            }
        }
        return sliding / (sliding + locked);
    }

    /** k_p (N/m); of the envelope from limit to limit, {@code 2S/β}. */
    private static double locked(ForceLaw law, double leafForce) {
        FrictionLaw friction = law.friction();
        return friction.isEnvelope()
                ? 2 * friction.limit(leafForce) / friction.envelopeLength()
                : friction.lockedRate();
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

    /** Deflection over load: intercept (m) and slope (m/N). */
    private record Line(double intercept, double slope) {
        /** By least squares. */
        static Line through(List<double[]> points) {
            double x = points.stream().mapToDouble(p -> p[0]).average().orElseThrow();
            double y = points.stream().mapToDouble(p -> p[1]).average().orElseThrow();
            double product = 0;
            double square = 0;
            for (double[] point : points) {
                product += (point[0] - x) * (point[1] - y);
                square += (point[0] - x) * (point[0] - x);
            }
            double slope = product / square;
            return new Line(y - slope * x, slope);
        }
    }
}
