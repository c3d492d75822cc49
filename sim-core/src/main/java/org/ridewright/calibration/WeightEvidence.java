package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.fieldwork.Side;
import org.ridewright.fieldwork.Weights;
import org.ridewright.fieldwork.Weights.Scale;
import org.ridewright.fieldwork.Weights.Under;
import org.ridewright.vehicle.Axle;

/**
 * Scales under wheels, axles and hitches. Under a single wheel of several the springs' friction may hold part of the load from side to side; it is
 * taken as an even band between what the scale would show with the body settled from either side.
 */
record WeightEvidence(Weights fact, List<Datum> data) implements Evidence {
    static WeightEvidence of(Weights fact, Trial before) {
        List<Datum> data = new ArrayList<>();
        for (Scale scale : fact.scales()) {
            double band = Math.abs(shown(before.standing(fact.load(), 1), scale.under())
                            - shown(before.standing(fact.load(), -1), scale.under()))
                    / 2;
            data.add(new Datum(
                    fact.label() + ": " + scale.under().label(),
                    "kg",
                    scale.shown().value(),
                    Math.hypot(scale.shown().tolerance(), band / EVEN),
                    fact.keepBack(),
                    ""));
        }
        return new WeightEvidence(fact, List.copyOf(data));
    }

    @Override
    public double[] predict(Trial trial, double[] circumstances) {
        VehicleModel model = trial.standing(fact.load());
        return fact.scales().stream()
                .mapToDouble(scale -> shown(model, scale.under()))
                .toArray();
    }

    /** Mass that a scale shows (kg). */
    private static double shown(VehicleModel model, Under under) {
        double force = 0;
        if (under instanceof Under.AtHitch hitch) {
            List<Element> elements = model.equations().elements();
            for (int e = 0; e < elements.size(); e++) {
                if (elements.get(e).kind() == Element.Kind.HITCH
                        && elements.get(e).name().startsWith(hitch.hitch())) {
                    force += model.rest().force()[e];
                }
            }
        } else {
            for (WheelPlace wheel : model.wheels()) {
                Axle axle = model.vehicle().axles().get(wheel.axle());
                if (stands(under, axle.name(), wheel.y())) {
                    force += model.rest().force()[wheel.element()];
                }
            }
        }
        return force / VehicleModel.GRAVITY;
    }

    private static boolean stands(Under under, String axle, double y) {
        if (under instanceof Under.OneWheel wheel) {
            Side side = wheel.side();
            return wheel.axle().equals(axle) && side.sign() * y >= 0;
        }
        return under instanceof Under.WholeAxle whole && whole.axle().equals(axle);
    }

    /** The mass under a whole axle (kg). */
    static double axleMass(VehicleModel model, String axle) {
        return shown(model, new Under.WholeAxle(axle));
    }
}
