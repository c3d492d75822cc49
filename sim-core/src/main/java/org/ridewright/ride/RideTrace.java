package org.ridewright.ride;

import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.road.Road;
import org.ridewright.signal.Channel;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;

/**
 * Accelerations of one ride and nothing else, for comparison with a log. The vehicle starts at rest with no friction held, its front axle at
 * station 0; time begins there.
 *
 * @param firstContact when the first axle meets the road's roughness (s); none on a flat road
 * @param lastContact when the last axle leaves it (s); +∞ on an endless one
 * @param vertical accelerations, one for each place asked for (m/s²)
 */
public record RideTrace(Optional<Double> firstContact, Optional<Double> lastContact, List<Channel> vertical) {
    /**
     * A place where vertical acceleration is wanted.
     *
     * @param name for the channel
     * @param rise row of its rise over the coordinates; not modified
     */
    public record Spot(String name, double[] rise) {}

    /** Run-out after the last contact (s). */
    private static final double AFTER = 3;

    private static final double ON_FLAT = 5;

    /**
     * Rides.
     *
     * @param rate samples per second (Hz)
     * @param longest run (s), where the road goes on for longer
     * @throws RideException if the vehicle cannot ride so
     */
    public static RideTrace of(
            VehicleModel model, Road road, SpeedPlan plan, List<Spot> spots, double rate, double longest) {
        Travel travel = new Travel(plan);
        Heights heights = new Heights(model, road, travel);
        List<RideResult.AxleTimes> axles = heights.axleTimes();
        Optional<Double> last = Heights.lastContact(axles);
        double duration = Math.min(longest, last.map(t -> t + AFTER).orElse(ON_FLAT));
        List<? extends ReadOff> readOffs = spots.stream()
                .map(spot -> LinearReadOff.named(spot.name(), "m/s²")
                        .plusRow(LinearReadOff.Source.ACCELERATION, spot.rise())
                        .build())
                .toList();
        SampleRecorder recorder = new SampleRecorder(readOffs, rate, duration);
        Problem problem = new Problem(
                model.equations(),
                heights.all(duration),
                model.rest().q(),
                new double[model.equations().size()],
                model.rest().friction(),
                duration);
        RegimeSolver.solve(problem, recorder);
        return new RideTrace(Heights.firstContact(axles), last, recorder.channels());
    }
}
