package org.ridewright.calibration;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A fit, and how far to trust it.
 *
 * @param unknowns what was sought
 * @param posterior what is known of them now
 * @param residuals each datum beside its prediction, in the order of the data
 * @param together what the data know only of several unknowns together
 * @param objective the least Q
 * @param tried starts of the search
 * @param agreeing starts that ended at the estimate
 * @param byEvolution whether CMA-ES was needed
 * @param atRest whether the search came to rest; if not, the estimate is rough
 * @param other another estimate that explains the data as well, if one was found
 */
public record Calibration(
        List<Unknown> unknowns,
        Posterior posterior,
        List<Residual> residuals,
        List<Together> together,
        double objective,
        int tried,
        int agreeing,
        boolean byEvolution,
        boolean atRest,
        Optional<double[]> other) {
    /** An unknown of which less than this is known from the data says nothing of the file. */
    private static final double LEAST_REST = 0.1;

    public Calibration {
        unknowns = List.copyOf(unknowns);
        residuals = List.copyOf(residuals);
        together = List.copyOf(together);
    }

    /** Most probable value of an unknown (SI). */
    public double value(int j) {
        return unknowns.get(j).spread().at(posterior.z(j));
    }

    /** Standard error of an unknown's value (SI). */
    public double standardError(int j) {
        return unknowns.get(j).standardError(posterior.z(j), posterior.deviation(j));
    }

    /** Lower end of an unknown's 90 % interval (SI). */
    public double lower(int j) {
        return unknowns.get(j).spread().at(posterior.z(j) - Posterior.NINETY_PERCENT * posterior.deviation(j));
    }

    /** Upper end of an unknown's 90 % interval (SI). */
    public double upper(int j) {
        return unknowns.get(j).spread().at(posterior.z(j) + Posterior.NINETY_PERCENT * posterior.deviation(j));
    }

    /** Share by which an unknown's spread has shrunk, 0 to 1. */
    public double shrinkage(int j) {
        return Math.max(0, 1 - posterior.deviation(j));
    }

    /** Unknowns of which the data say nothing worth telling. */
    public List<Integer> notNarrowed() {
        return IntStream.range(0, unknowns.size())
                .filter(j -> shrinkage(j) < Calibrator.LEAST_SHRINKAGE)
                .boxed()
                .toList();
    }

    /**
     * How far an unknown has moved, over what it may: {@code z/√(1 − C_jj)}, C not widened, standard normal where the tolerance and the data are true; of one that the data
     * hardly know, understated. Beyond 3 the file's value contradicts the data.
     */
    public double move(int j) {
        double rest = 1 - posterior.curvature().getEntry(j, j);
        return posterior.z(j) / Math.sqrt(Math.max(LEAST_REST, rest));
    }

    /** Fitted data that stand alone. */
    public List<Residual> fitted() {
        return residuals.stream()
                .filter(r -> !r.datum().keptBack() && r.datum().group().isBlank())
                .toList();
    }

    /** Data that were kept back. */
    public List<Residual> keptBack() {
        return residuals.stream().filter(r -> r.datum().keptBack()).toList();
    }

    /** Number of fitted data. */
    public int dataFitted() {
        return (int) residuals.stream().filter(r -> !r.datum().keptBack()).count();
    }
}
