package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.ridewright.fieldwork.MeasuredRide;
import org.ridewright.fieldwork.Measurements;
import org.ridewright.fieldwork.Unknowns;
import org.ridewright.quantity.Adjustable;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.Provenance;
import org.ridewright.vehicle.Vehicle;

/** Calibrates a vehicle file by what was measured on the vehicle. */
public final class VehicleCalibration {
    /** Bounce tests and rides are simulated anew at each step of the search, from this many starts. */
    private static final int STARTS = 3;
    /** Fits of logged rides, each with the scatter that the one before found. */
    private static final int PASSES = 2;

    private final Adjustable<Vehicle> file;
    private final Measurements measurements;
    private final Sources sources;

    private VehicleCalibration(Adjustable<Vehicle> file, Measurements measurements, Sources sources) {
        this.file = file;
        this.measurements = measurements;
        this.sources = sources;
    }

    /**
     * The calibrated vehicle.
     *
     * @throws CalibrationException if nothing can be told from these measurements
     * @throws org.ridewright.quantity.UnfitValueException if the measurements name an unknown that the file does not have
     * @throws org.ridewright.dynamics.RideException if the vehicle cannot stand as its file has it
     */
    public static CalibratedVehicle of(Adjustable<Vehicle> file, Measurements measurements, Sources sources) {
        return new VehicleCalibration(file, measurements, sources).run();
    }

    private CalibratedVehicle run() {
        Vehicle before = file.asWritten();
        EvidenceOf facts = new EvidenceOf(measurements, sources, new Trial(before));
        List<Unknown> candidates = candidates();
        boolean listed = measurements.unknowns() instanceof Unknowns.Listed;
        PriorKnowledge prior = new PriorKnowledge(file.spread());
        Screening screening = Screening.of(file, candidates, facts.evidence(), prior, listed);
        YardModel model = new YardModel(file, screening.sought(), facts.evidence());
        List<Unknown> others = others(screening);
        RealMatrix effects = effects(others, model);
        RealMatrix together = prior.factor(model.unknowns());
        RealMatrix apart = others.isEmpty() ? MatrixUtils.createRealIdentityMatrix(1) : prior.factor(others);
        Calibration fit =
                Calibrator.calibrate(model.unknowns(), model.data(), model, STARTS, effects.multiply(apart), together);
        for (int pass = 1; pass < PASSES && hasRides(model); pass++) {
            model = rescattered(model, fit);
            effects = effects(others, model);
            fit = Calibrator.calibrate(model.unknowns(), model.data(), model, 1, effects.multiply(apart), together);
        }
        Vehicle after = model.vehicle(estimate(fit));
        return new CalibratedVehicle(
                fit,
                screening.sought().size(),
                before,
                after,
                facts.leftOut(),
                held(others, effects, model.data()),
                screening.untouched(),
                prior.tied(others, screening.sought()).stream()
                        .map(Unknown::path)
                        .toList(),
                HeldTogether.of(fit, screening.sought(), others, apart, prior),
                rides(model, fit, before, after),
                AddedLoadCheck.of(measurements, after),
                RiderSaid.of(measurements, after, sources));
    }

    /** Values that are sought, in the order of the file; of a list in its own. */
    private List<Unknown> candidates() {
        if (measurements.unknowns() instanceof Unknowns.Listed listed) {
            return listed.paths().stream()
                    .map(path -> Unknown.of(file.value(path)))
                    .toList();
        }
        boolean estimatedOnly = measurements.unknowns() instanceof Unknowns.EverythingEstimated;
        return file.values().stream()
                .filter(VehicleCalibration::isUncertain)
                .filter(value -> !estimatedOnly || isEstimated(value))
                .map(Unknown::of)
                .toList();
    }

    private static boolean isUncertain(NamedValue value) {
        return value.measure().map(Measure::tolerance).filter(t -> t > 0).isPresent();
    }

    private static boolean isEstimated(NamedValue value) {
        return value.measure()
                .map(Measure::provenance)
                .filter(p -> p == Provenance.ESTIMATED)
                .isPresent();
    }

    private static boolean hasRides(YardModel model) {
        return model.evidence().stream().anyMatch(RideEvidence.class::isInstance);
    }

    private static double[] estimate(Calibration fit) {
        double[] z = new double[fit.unknowns().size()];
        for (int j = 0; j < z.length; j++) {
            z[j] = fit.posterior().z(j);
        }
        return z;
    }

    private YardModel rescattered(YardModel model, Calibration fit) {
        double[] z = estimate(fit);
        Trial trial = new Trial(model.vehicle(z));
        List<Evidence> next = new ArrayList<>();
        for (Evidence one : model.evidence()) {
            next.add(one instanceof RideEvidence ride ? ride.rescattered(trial, model.circumstances(ride, z)) : one);
        }
        return new YardModel(file, model.unknownsOfVehicle(), next);
    }

    /** Values that are uncertain, but were not sought. */
    private List<Unknown> others(Screening screening) {
        List<String> sought = screening.sought().stream().map(Unknown::path).toList();
        return file.values().stream()
                .filter(VehicleCalibration::isUncertain)
                .filter(value -> !sought.contains(value.path()))
                .filter(value -> !screening.untouched().contains(value.path()))
                .map(Unknown::of)
                .toList();
    }

    /** What one tolerance of each does to the data, at the values before. */
    private RealMatrix effects(List<Unknown> others, YardModel model) {
        if (others.isEmpty()) {
            return new Array2DRowRealMatrix(Math.max(1, model.data().size()), 1);
        }
        YardModel moved = new YardModel(file, others, model.evidence());
        FitProblem problem = new FitProblem(moved.unknowns().size(), moved.data(), moved);
        RealMatrix all = problem.cautiousJacobian(new double[problem.unknowns()]);
        return all.getSubMatrix(0, all.getRowDimension() - 1, 0, others.size() - 1);
    }

    private static List<Held> held(List<Unknown> others, RealMatrix effects, List<Datum> data) {
        List<Held> held = new ArrayList<>();
        for (int j = 0; j < others.size(); j++) {
            int most = Screening.most(effects.getColumn(j));
            if (effects.getColumnVector(j).getNorm() > Held.NOTHING) {
                held.add(new Held(
                        others.get(j).path(),
                        Math.abs(effects.getEntry(most, j)),
                        data.get(most).label()));
            }
        }
        held.sort(Comparator.comparingDouble(Held::effect).reversed());
        return held;
    }

    private List<RideOverlay> rides(YardModel model, Calibration fit, Vehicle before, Vehicle after) {
        Overlays overlays = new Overlays(before, after);
        double[] z = estimate(fit);
        List<RideOverlay> list = new ArrayList<>();
        for (Evidence one : model.evidence()) {
            if (one instanceof RideEvidence ride) {
                double speedError = fit.standardError(model.place(ride));
                list.addAll(overlays.of(ride, model.circumstances(ride, z), speedError));
            }
        }
        for (MeasuredRide ride : measurements.all(MeasuredRide.class)) {
            if (ride.keepBack() && ride.isFit()) {
                RideEvidence predicted = RideEvidence.of(ride, sources, new Trial(after));
                double[] middle = predicted.circumstances().stream()
                        .mapToDouble(u -> u.spread().central())
                        .toArray();
                list.addAll(overlays.of(predicted, middle, ride.speed().tolerance()));
            }
        }
        return list;
    }
}
