package org.ridewright.validation;

import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** Mean square of a reading from some time on, integrated exactly on each step. */
final class MeanSquare implements StepListener {
    private final Reading reading;
    private final double from;
    private final double[] a = new double[Reading.ROOM];
    private double integral;
    private double time;

    /**
     * @param from steps that begin earlier are left out (s)
     */
    MeanSquare(Reading reading, double from) {
        this.reading = reading;
        this.from = from;
    }

    @Override
    public void step(Step step) {
        if (step.start() < from) {
            return;
        }
        reading.read(step, a);
        int degree = step.degree();
        double sum = 0;
        double power = step.end();
        for (int n = 0; n <= 2 * degree; n++) {
            double coefficient = 0;
            for (int i = Math.max(0, n - degree); i <= Math.min(n, degree); i++) {
                coefficient += a[i] * a[n - i];
            }
            sum += coefficient * power / (n + 1);
            power *= step.end();
        }
        integral += sum * step.h();
        time += step.duration();
    }

    double value() {
        return integral / time;
    }
}
