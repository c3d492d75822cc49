package org.ridewright.bounce;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.modal.Condition;
import org.ridewright.modal.Modes;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

/**
 * The bounce tests of a vehicle under one load, beside what the springs would do if their friction held nothing, or everything.
 *
 * @param results in the order front, rear, pitch, roll, as far as they suit the vehicle
 * @param modes about rest, of both conditions
 */
public record LoadCaseBounces(VehicleModel model, List<BounceResult> results, Map<Condition, Modes> modes) {
    public LoadCaseBounces {
        results = List.copyOf(results);
        modes = Map.copyOf(modes);
    }

    /**
     * Does the usual tests under every load.
     *
     * @param tests the test of each kind
     * @param braked whether the wheels are held still
     * @param samplingRate of the traces (Hz)
     * @throws RideException if the vehicle cannot stand so, or be tested so
     */
    public static List<LoadCaseBounces> of(
            Vehicle vehicle,
            List<LoadCase> loads,
            Function<BounceKind, BounceTest> tests,
            boolean braked,
            double samplingRate) {
        List<LoadCaseBounces> all = new ArrayList<>();
        for (LoadCase load : loads) {
            VehicleModel model = VehicleModel.assemble(vehicle, load, Ground.UNYIELDING, braked);
            List<BounceResult> results = BounceKind.usual(vehicle).stream()
                    .map(kind -> tests.apply(kind).run(model, samplingRate))
                    .toList();
            all.add(new LoadCaseBounces(
                    model,
                    results,
                    Map.of(
                            Condition.SLIDING,
                            Modes.of(model, Condition.SLIDING),
                            Condition.LOCKED,
                            Modes.of(model, Condition.LOCKED))));
        }
        return List.copyOf(all);
    }

    /** The mode that a test shows most if the springs are in that condition. */
    public NaturalPartner partner(BounceKind kind, Condition condition) {
        return NaturalPartner.of(kind, model, modes.get(Condition.SLIDING), modes.get(Condition.LOCKED))
                .get(condition);
    }
}
