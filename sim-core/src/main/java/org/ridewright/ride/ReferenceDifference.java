package org.ridewright.ride;

import java.util.Arrays;
import java.util.List;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.signal.Channel;
import org.ridewright.solver.Problem;
import org.ridewright.solver.ReferenceSolver;
import org.ridewright.solver.RegimeSolver;

/** How far the coordinates' accelerations of a ride lie from those by the reference solver. */
final class ReferenceDifference {
    private static final double REFERENCE_TOLERANCE = 1e-11;
    /** A coordinate that moves by a smaller share of the one that moves most stirs by round-off. */
    private static final double LEAST_SHARE = 1e-9;

    private ReferenceDifference() {}

    /**
     * Of a problem, at an even rate.
     *
     * @param rate (Hz)
     * @return greatest over the coordinates of the r.m.s. difference over the r.m.s. of each, of which a billionth of the greatest is the least;
     *     infinite where only this solver moves, NaN where there is nothing to compare
     */
    static double of(VehicleModel model, Problem problem, double rate, double duration) {
        int count = model.coordinates().size();
        SampleRecorder recorder = new SampleRecorder(new ReadOffs(model).coordinates(), rate, duration);
        RegimeSolver.solve(problem, recorder);
        List<Channel> channels = recorder.channels();
        double[] error = new double[count];
        double[] whole = new double[count];
        int[] samples = {0};
        ReferenceSolver.solve(problem, REFERENCE_TOLERANCE, rate, (t, q, v, a) -> {
            int i = (int) Math.round(t * rate);
            samples[0]++;
            for (int j = 0; j < count; j++) {
                double own = channels.get(3 * j + 2).sample(i);
                error[j] += (own - a[j]) * (own - a[j]);
                whole[j] += a[j] * a[j];
            }
        });
        double least = LEAST_SHARE * LEAST_SHARE * Arrays.stream(whole).max().orElse(Double.NaN);
        double worst = samples[0] > 0 ? 0 : Double.NaN;
        for (int j = 0; j < count; j++) {
            worst = Math.max(worst, error[j] == 0 ? 0 : Math.sqrt(error[j] / Math.max(least, whole[j])));
        }
        return worst;
    }
}
