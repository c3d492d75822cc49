package org.ridewright.validation;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** Instants at which one reading changes sign, to round-off, and what another reading is then. */
final class Crossings implements StepListener {
    /** Parts of a step in which a sign is looked for; no motion here turns twice in a sixteenth of a converged step. */
    private static final int PARTS = 16;

    private static final int HALVINGS = 60;

    private final Reading crossing;
    private final Reading value;
    private final double nil;
    private final double[] a = new double[Reading.ROOM];
    private final double[] b = new double[Reading.ROOM];
    private final List<Event> events = new ArrayList<>();
    private double lastSign;

    /** A crossing: time (s), the other reading, whether the sign becomes positive. */
    record Event(double time, double value, boolean rising) {}

    /**
     * @param nil size below which the crossing reading counts as zero, so that round-off about a switch is no crossing
     */
    Crossings(Reading crossing, Reading value, double nil) {
        this.crossing = crossing;
        this.value = value;
        this.nil = nil;
    }

    /** Turning points of a coordinate. */
    static Crossings turns(int coordinate) {
        return new Crossings(Reading.velocity(coordinate), Reading.displacement(coordinate), 1e-11);
    }

    @Override
    public void step(Step step) {
        crossing.read(step, a);
        value.read(step, b);
        int degree = step.degree();
        double before = 0;
        for (int i = 0; i <= PARTS; i++) {
            double tau = step.end() * i / PARTS;
            double x = Reading.at(a, degree, tau);
            if (Math.abs(x) > nil) {
                if (lastSign != 0 && x * lastSign < 0) {
                    double root = root(degree, before, tau);
                    events.add(new Event(step.start() + root * step.h(), Reading.at(b, degree, root), x > 0));
                }
                lastSign = Math.signum(x);
            }
            before = tau;
        }
    }

    /** Where the sign becomes the one at {@code to}; {@code from} itself if it has it there already. */
    private double root(int degree, double from, double to) {
        double sign = Math.signum(Reading.at(a, degree, to));
        double left = from;
        double right = to;
        if (Reading.at(a, degree, left) * sign > 0) {
            return left;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (left + right);
            if (Reading.at(a, degree, middle) * sign > 0) {
                right = middle;
            } else {
                left = middle;
            }
        }
        return 0.5 * (left + right);
    }

    /** All so far, in order. */
    List<Event> events() {
        return List.copyOf(events);
    }

    /** Those of one direction, in order. */
    List<Event> events(boolean rising) {
        return events.stream().filter(e -> e.rising() == rising).toList();
    }
}
