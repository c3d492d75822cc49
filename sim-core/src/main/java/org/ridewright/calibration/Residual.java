package org.ridewright.calibration;

/**
 * A datum beside what the calibrated vehicle shows.
 *
 * @param datum what was measured
 * @param before prediction from the values before (unit of the datum); NaN where that vehicle shows no such thing
 * @param predicted prediction from the estimate
 * @param deviation standard deviation that the unknowns leave in the prediction
 * @param lower lower end of the interval in which the measurement lies nine times in ten, were it taken once more
 * @param upper upper end of it
 * @param normalised what the rest of the data and the tolerances, this datum left out, miss it by, over the standard deviation of that
 *     difference; of a datum that is kept back, the normal deviate of its place in what was predicted. Standard normal where all
 *     uncertainties are true
 */
public record Residual(
        Datum datum, double before, double predicted, double deviation, double lower, double upper, double normalised) {
    /** Beyond this a datum disagrees with the rest: by chance one in 370. */
    static final double DISAGREES = 3;

    static Residual keptBack(Datum datum, double before, double predicted, Predictive predictive) {
        return new Residual(
                datum,
                before,
                predicted,
                predictive.deviation(),
                predictive.quantile(0.05),
                predictive.quantile(0.95),
                predictive.normalised(datum.observed()));
    }

    static Residual fitted(Datum datum, double before, double predicted, double deviation, double normalised) {
        double half = Posterior.NINETY_PERCENT * Math.hypot(deviation, datum.uncertainty());
        return new Residual(datum, before, predicted, deviation, predicted - half, predicted + half, normalised);
    }

    /** Whether the measurement lies within the 90 % interval. */
    public boolean within() {
        return lower <= datum.observed() && datum.observed() <= upper;
    }

    /** Whether the rest of the data and the tolerances contradict it. */
    public boolean disagrees() {
        return Math.abs(normalised) > DISAGREES;
    }
}
