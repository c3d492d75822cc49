package org.ridewright.ride;

import java.util.Arrays;
import java.util.Locale;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** Stops a run in which the body tilts so far from its attitude at rest that small angles no longer hold. */
final class TiltWatch implements StepListener {
    /** Greatest tilt for which the sine differs from the angle by less than 1 % (rad). */
    static final double GREATEST = 0.2;

    private final VehicleModel model;
    private final int[] angles;
    private final double[] work = new double[SampleRecorder.ROOM];

    TiltWatch(VehicleModel model) {
        this.model = model;
        this.angles = new int[] {model.coordinates().roll(), model.coordinates().pitch()};
    }

    @Override
    public void step(Step step) {
        for (int angle : angles) {
            if (angle < 0) {
                continue;
            }
            Arrays.fill(work, 0);
            step.addDisplacement(angle, 1, work);
            double rest = model.rest().q()[angle];
            double tilt = work[0] - rest;
            double last = valueAt(step.end(), step.degree()) - rest;
            if (Math.abs(last) > Math.abs(tilt)) {
                tilt = last;
            }
            if (!(Math.abs(tilt) <= GREATEST)) {
                throw new RideException(String.format(
                        Locale.ROOT,
                        "'%s', load case '%s': the run was stopped at %.3f s: %s reached %.3f rad, and the model holds up to "
                                + "%.1f rad. Lower the speed or the obstacle, or check springs and inertias",
                        model.vehicle().name(),
                        model.loadCase().name(),
                        step.start(),
                        model.coordinates().names().get(angle),
                        tilt,
                        GREATEST));
            }
        }
    }

    private double valueAt(double tau, int degree) {
        double sum = 0;
        for (int k = degree; k >= 0; k--) {
            sum = sum * tau + work[k];
        }
        return sum;
    }
}
