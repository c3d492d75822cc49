package org.ridewright.calibration;

import java.util.HashMap;
import java.util.Map;
import org.ridewright.bounce.BounceResult;
import org.ridewright.bounce.BounceTest;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.fieldwork.Loading;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

/** One vehicle of the search, with what was worked out for it, so that facts of one load share it. Mutable, of one thread. */
final class Trial {
    private final Vehicle vehicle;
    private final Map<Standing, VehicleModel> models = new HashMap<>();
    private final Map<Bounced, BounceResult> bounces = new HashMap<>();

    private record Standing(Loading loading, int settled, boolean braked) {}

    private record Bounced(Loading loading, BounceTest test) {}

    Trial(Vehicle vehicle) {
        this.vehicle = vehicle;
    }

    Vehicle vehicle() {
        return vehicle;
    }

    /** Standing on firm ground without friction held. */
    VehicleModel standing(Loading loading) {
        return standing(loading, 0);
    }

    /**
     * Standing on firm ground.
     *
     * @param settled +1 if it settled from above, −1 from below, 0 without friction held
     */
    VehicleModel standing(Loading loading, int settled) {
        return model(new Standing(loading, settled, false));
    }

    private VehicleModel model(Standing standing) {
        VehicleModel known = models.get(standing);
        if (known == null) {
            known = standing.settled == 0
                    ? VehicleModel.assemble(vehicle, standing.loading.on(vehicle), Ground.UNYIELDING, standing.braked)
                    : model(new Standing(standing.loading, 0, standing.braked)).settled(standing.settled);
            models.put(standing, known);
        }
        return known;
    }

    /** A bounce test with the wheels chocked, as the sheet for the yard asks. */
    BounceResult bounce(Loading loading, BounceTest test) {
        Bounced bounced = new Bounced(loading, test);
        BounceResult known = bounces.get(bounced);
        if (known == null) {
            known = test.run(model(new Standing(loading, 0, true)));
            bounces.put(bounced, known);
        }
        return known;
    }
}
