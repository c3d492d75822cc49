package org.ridewright.bounce;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/**
 * Finds where a motion turns: roots of the polynomial of its speed, refined to round-off. Two turns within an eighth of a step (at most
 * 12 ms) may be missed, between which nothing moves visibly.
 */
final class TurnFinder implements StepListener {
    private static final int PLACES = 8;
    private static final int MOST_HALVINGS = 60;

    private final BodyReading reading;
    private final double[] speed = new double[BodyReading.ROOM];
    private final double[] value = new double[BodyReading.ROOM];
    private final List<TurningPoint> turns = new ArrayList<>();
    private double sense;

    TurnFinder(BodyReading reading, double[] q) {
        this.reading = reading;
        turns.add(new TurningPoint(0, reading.at(q)));
    }

    private double offset;

    /** Time of the next run's beginning, which its steps count from. */
    void beginAt(double time) {
        offset = time;
    }

    @Override
    public void step(Step step) {
        int degree = reading.speed(step, speed);
        double before = 0;
        for (int i = 0; i <= PLACES; i++) {
            double tau = step.end() * i / PLACES;
            double now = Math.signum(BodyReading.polynomial(speed, degree, tau));
            if (now != 0 && sense != 0 && now != sense) {
                double at = i == 0 ? 0 : root(degree, before, tau);
                int valueDegree = reading.value(step, value);
                turns.add(new TurningPoint(
                        offset + step.start() + at * step.h(), BodyReading.polynomial(value, valueDegree, at)));
            }
            sense = now == 0 ? sense : now;
            before = tau;
        }
    }

    private double root(int degree, double from, double to) {
        double low = from;
        double high = to;
        for (int i = 0; i < MOST_HALVINGS && high - low > 0; i++) {
            double middle = 0.5 * (low + high);
            if (Math.signum(BodyReading.polynomial(speed, degree, middle)) == sense) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** The letting go, and all turning points. */
    List<TurningPoint> turns() {
        return List.copyOf(turns);
    }
}
