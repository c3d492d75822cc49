package org.ridewright.calibration;

import java.util.List;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.fieldwork.Camber;
import org.ridewright.fieldwork.Camber.Under;
import org.ridewright.quantity.Measure;

/**
 * By how much a spring's bow goes down under its load: the compression, whose two readings have independent errors, with an even band
 * for what the leaves' friction may hold.
 */
record CamberEvidence(Camber fact, List<Datum> data) implements Evidence {
    static CamberEvidence of(Camber fact, Trial before) {
        double band = Math.abs(compression(fact, before, 1) - compression(fact, before, -1)) / 2;
        double reading = Math.hypot(fact.free().tolerance(), fact.loaded().tolerance());
        double load = 0;
        if (fact.load() instanceof Under.Known known) {
            Measure force = known.force();
            SpringUnderLoad spring = SpringUnderLoad.of(before.vehicle(), fact.axle(), fact.spring());
            load = spring.compression(force.value() + force.tolerance(), 0) - spring.compression(force.value(), 0);
        }
        double deviation = Math.sqrt(reading * reading + load * load + band * band / (EVEN * EVEN));
        return new CamberEvidence(
                fact,
                List.of(new Datum(
                        fact.label() + ": goes down by",
                        "mm",
                        1000 * (fact.free().value() - fact.loaded().value()),
                        1000 * deviation,
                        fact.keepBack(),
                        "")));
    }

    @Override
    public double[] predict(Trial trial, double[] circumstances) {
        return new double[] {1000 * compression(fact, trial, 0)};
    }

    private static double compression(Camber fact, Trial trial, int settled) {
        if (fact.load() instanceof Under.Known known) {
            return SpringUnderLoad.of(trial.vehicle(), fact.axle(), fact.spring())
                    .compression(known.force().value(), settled);
        }
        VehicleModel model = trial.standing(((Under.Standing) fact.load()).loading(), settled);
        List<Integer> elements =
                SpringUnderLoad.elements(model, BodyMarks.axle(trial.vehicle(), fact.axle()), fact.spring());
        return elements.stream()
                .mapToDouble(e -> model.rest().compression()[e])
                .average()
                .orElseThrow(() -> new IllegalArgumentException("no spring named '" + fact.spring() + "'"));
    }
}
