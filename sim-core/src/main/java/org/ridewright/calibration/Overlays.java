package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ridewright.fieldwork.MeasuredRide.Horse;
import org.ridewright.vehicle.Vehicle;

/**
 * Lays logged rides beside simulated ones.
 *
 * @param before the vehicle as its file had it
 * @param after the calibrated one
 */
record Overlays(Vehicle before, Vehicle after) {
    /**
     * One for each log of a ride.
     *
     * @param fitted circumstances
     * @param speedError standard error of the speed (m/s)
     */
    List<RideOverlay> of(RideEvidence ride, double[] fitted, double speedError) {
        double[] asMeasured = ride.circumstances().stream()
                .mapToDouble(u -> u.spread().central())
                .toArray();
        List<double[]> first = ride.ridden(new Trial(before), asMeasured);
        Trial calibrated = new Trial(after);
        List<double[]> last = ride.ridden(calibrated, fitted);
        List<double[]> added = ride.added(calibrated, fitted);
        List<Scatter> scatters = ride.rescattered(calibrated, fitted).scatters();
        List<RideOverlay> list = new ArrayList<>();
        for (int l = 0; l < ride.logs().size(); l++) {
            AlignedLog log = ride.logs().get(l);
            double began = fitted[1 + l];
            Scatter scatter = scatters.get(l);
            list.add(new RideOverlay(
                    ride.fact().label(),
                    ride.fact().logs().get(l).sensor().label(),
                    ride.fact().keepBack(),
                    ride.fact().horse() instanceof Horse.Steps,
                    list(Arrays.stream(log.times()).map(t -> t - began).toArray()),
                    list(log.values()),
                    list(first.get(l)),
                    list(last.get(l)),
                    list(added.get(l)),
                    fitted[0],
                    speedError,
                    scatter.deviation(),
                    scatter.likeness(),
                    scatter.worth(log.times().length)));
        }
        return list;
    }

    private static List<Double> list(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }
}
