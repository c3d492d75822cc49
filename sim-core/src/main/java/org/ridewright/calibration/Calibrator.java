package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/** Fits unknowns to data. */
public final class Calibrator {
    /** An unknown whose spread shrinks by less than this share is not narrowed. */
    static final double LEAST_SHRINKAGE = 0.05;

    private static final int STARTS = 5;

    private Calibrator() {}

    /**
     * The most probable unknowns, and how well they are known.
     *
     * @param unknowns what is sought; at least one
     * @param data what was measured; at least one that is not kept back
     * @param model what predicts the data
     * @throws CalibrationException if there is nothing to fit, nothing can be told of any unknown, or no such vehicle can be
     */
    public static Calibration calibrate(List<Unknown> unknowns, List<Datum> data, ForwardModel model) {
        return calibrate(
                unknowns,
                data,
                model,
                STARTS,
                new Array2DRowRealMatrix(Math.max(1, data.size()), 1),
                MatrixUtils.createRealIdentityMatrix(Math.max(1, unknowns.size())));
    }

    /**
     * @param held as {@link FitProblem} takes it
     * @param prior likewise
     */
    static Calibration calibrate(
            List<Unknown> unknowns,
            List<Datum> data,
            ForwardModel model,
            int starts,
            RealMatrix held,
            RealMatrix prior) {
        if (unknowns.isEmpty()) {
            throw new CalibrationException("no value is sought: give values of the vehicle file tolerances (± 10 %), "
                    + "or name them under 'unknowns' in the measurements file");
        }
        if (data.stream().allMatch(Datum::keptBack)) {
            throw new CalibrationException(
                    "nothing was measured that could be fitted: every datum is kept back, left out, "
                            + "or there is none");
        }
        FitProblem problem = new FitProblem(unknowns.size(), data, model, held, prior);
        MostProbable.Search search = new MostProbable(problem, starts).search();
        Posterior posterior = Posterior.of(problem, search.best());
        refuseUnidentifiable(unknowns, posterior);
        return new Calibration(
                unknowns,
                posterior,
                residuals(problem, search.best(), posterior),
                Together.of(unknowns, problem, search.best(), posterior),
                search.best().objective(),
                search.tried(),
                search.agreeing(),
                search.best().byEvolution(),
                search.best().atRest(),
                search.other().map(MostProbable.Found::z));
    }

    private static void refuseUnidentifiable(List<Unknown> unknowns, Posterior posterior) {
        double least = 1;
        int most = 0;
        for (int j = 0; j < posterior.size(); j++) {
            if (posterior.deviation(j) < least) {
                least = posterior.deviation(j);
                most = j;
            }
        }
        if (least > 1 - LEAST_SHRINKAGE) {
            throw new CalibrationException(String.format(
                    Locale.ROOT,
                    "these measurements tell nothing of what is sought: no value becomes known better by more than %.0f %% "
                            + "(most: %s, by %.1f %%). Measure something that depends on it, or more exactly; "
                            + "'ridewright fieldsheet' lists what would help most",
                    100 * LEAST_SHRINKAGE,
                    unknowns.get(most).path(),
                    100 * (1 - least)));
        }
    }

    private static List<Residual> residuals(FitProblem problem, MostProbable.Found found, Posterior posterior) {
        double[] now = problem.residuals(found.z());
        double[] start = problem.residuals(new double[problem.unknowns()]);
        RealMatrix jacobian = found.jacobian();
        boolean keptBack = problem.data().stream().anyMatch(Datum::keptBack);
        double[][] draws = keptBack ? Predictive.draws(problem, posterior) : new double[0][];
        double[] leftOut = LeftOutResiduals.of(problem, found, posterior);
        List<Residual> list = new ArrayList<>();
        int fitted = 0;
        for (int i = 0; i < problem.data().size(); i++) {
            Datum datum = problem.data().get(i);
            double sigma = datum.uncertainty();
            double before = start == null ? Double.NaN : datum.observed() + sigma * start[i];
            double predicted = datum.observed() + sigma * now[i];
            double ofHeld = problem.heldVariance(i);
            if (datum.keptBack()) {
                Predictive predictive = Predictive.of(draws, i, datum, Math.sqrt(1 + ofHeld));
                list.add(Residual.keptBack(datum, before, predicted, predictive));
            } else {
                double variance = posterior.variance(jacobian.getRow(i)) + ofHeld;
                list.add(Residual.fitted(datum, before, predicted, sigma * Math.sqrt(variance), leftOut[fitted++]));
            }
        }
        return list;
    }
}
