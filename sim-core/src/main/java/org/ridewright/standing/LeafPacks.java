package org.ridewright.standing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.quantity.Measure;
import org.ridewright.suspension.LeafRate;
import org.ridewright.suspension.LeafStress;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Connection;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.Elasticity.LeafPack;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.SpringKind;
import org.ridewright.vehicle.Vehicle;

/** Packs of leaves by the name of their force element. */
final class LeafPacks {
    private static final List<String> SIDES = List.of("", " left", " right");

    private record Pack(SpringKind kind, LeafPack leaves) {}

    private final Map<String, Pack> packs = new HashMap<>();

    LeafPacks(Vehicle vehicle) {
        for (Axle axle : vehicle.axles()) {
            for (Spring spring : axle.springs()) {
                put(Element.nameOf(axle.name(), spring.name()), spring.kind(), spring.elasticity());
            }
        }
        for (Connection connection : vehicle.connections()) {
            if (connection instanceof Connection.SideSpring side) {
                for (int t = 0; t < side.tips().size(); t++) {
                    Connection.Tip tip = side.tips().get(t);
                    String end = side.tips().size() == 1 ? "" : t == 0 ? " front tip" : " rear tip";
                    put(side.name() + end, tip.kind(), tip.elasticity());
                }
            }
        }
    }

    private void put(String name, SpringKind kind, Elasticity elasticity) {
        if (elasticity instanceof LeafPack leaves) {
            SIDES.forEach(side -> packs.put(name + side, new Pack(kind, leaves)));
        }
    }

    /** Stress of the leaves alone: a helper or stop beside them carries its own. */
    Optional<LeafLoad> of(Element element, double c, VehicleModel model) {
        Pack pack = packs.get(element.name());
        if (pack == null) {
            return Optional.empty();
        }
        double rate = LeafRate.of(pack.kind(), pack.leaves());
        return Optional.of(new LeafLoad(
                LeafStress.of(pack.kind(), pack.leaves(), rate * c),
                Stages.bumpStop(model, element, c).map(stop -> LeafStress.of(pack.kind(), pack.leaves(), rate * stop)),
                pack.leaves().allowableStress().map(Measure::value)));
    }
}
