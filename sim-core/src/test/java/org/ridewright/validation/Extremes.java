package org.ridewright.validation;

import org.ridewright.math.PolynomialRange;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** Greatest and least value of a reading from some time on. */
final class Extremes implements StepListener {
    private final Reading reading;
    private final double from;
    private final PolynomialRange range = new PolynomialRange(Reading.ROOM - 1);
    private final double[] a = new double[Reading.ROOM];

    /**
     * @param from steps that begin earlier are left out (s)
     */
    Extremes(Reading reading, double from) {
        this.reading = reading;
        this.from = from;
    }

    @Override
    public void step(Step step) {
        if (step.start() >= from) {
            reading.read(step, a);
            range.include(a, step.degree(), step.end(), step.start(), step.h());
        }
    }

    double greatest() {
        return range.greatest();
    }

    double least() {
        return range.least();
    }

    /** Half of greatest less least. */
    double amplitude() {
        return (range.greatest() - range.least()) / 2;
    }

    double middle() {
        return (range.greatest() + range.least()) / 2;
    }
}
