package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ridewright.bounce.AddedLoad;
import org.ridewright.bounce.AddedLoad.Uncertain;
import org.ridewright.fieldwork.BounceCount;
import org.ridewright.fieldwork.BounceKind;
import org.ridewright.fieldwork.Loading;
import org.ridewright.fieldwork.Measurements;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.Vehicle;

/**
 * The added-load method beside the calibrated vehicle: two counts of the same end with less and more aboard.
 *
 * @param label what was counted
 * @param load by how much more the axle bears the second time (kg), of the calibrated vehicle
 * @param result rate and mass that the two counts imply
 * @param rate of all springs of the axle together, while they slide, of the calibrated vehicle (N/m)
 * @param mass that the axle's springs bear the first time, of the calibrated vehicle (kg)
 */
public record AddedLoadCheck(String label, double load, AddedLoad result, double rate, double mass) {
    /**
     * Uncertainty of the load, as its share (our choice): people who sit a tenth of the wheelbase further forward or back shift about as much of their weight
     * between the axles.
     */
    private static final double OF_LOAD = 0.1;

    /**
     * Below this the load tells nothing (kg; our choice): of a carriage end of 200 kg it shifts the frequency by 1 %, no more than a stopwatch errs.
     */
    private static final double LEAST = 5;

    static List<AddedLoadCheck> of(Measurements measurements, Vehicle vehicle) {
        Trial trial = new Trial(vehicle);
        List<AddedLoadCheck> checks = new ArrayList<>();
        for (BounceKind end : List.of(BounceKind.FRONT, BounceKind.REAR)) {
            int last = vehicle.axles().size() - 1;
            Axle axle = vehicle.axles().get(end == BounceKind.FRONT ? 0 : last);
            List<BounceCount> counts = measurements.all(BounceCount.class).stream()
                    .filter(count -> count.test() == end)
                    .sorted(Comparator.comparingDouble(count -> borne(trial, axle, count.load())))
                    .toList();
            for (int i = 1; last > 0 && i < counts.size(); i++) {
                double less = borne(trial, axle, counts.get(0).load());
                double more = borne(trial, axle, counts.get(i).load()) - less;
                if (more > LEAST) {
                    checks.add(of(trial, axle, counts.get(0), counts.get(i), more, less));
                }
            }
        }
        return List.copyOf(checks);
    }

    private static AddedLoadCheck of(
            Trial trial, Axle axle, BounceCount first, BounceCount second, double load, double less) {
        AddedLoad result = AddedLoad.of(frequency(first), frequency(second), new Uncertain(load, OF_LOAD * load));
        double rate = 0;
        var model = trial.standing(first.load());
        for (Spring spring : axle.springs()) {
            for (int e : SpringUnderLoad.elements(model, axle, spring.name())) {
                rate += model.equations()
                        .elements()
                        .get(e)
                        .law()
                        .elasticRate(model.rest().compression()[e]);
            }
        }
        return new AddedLoadCheck(first.label() + " and " + second.label(), load, result, rate, less);
    }

    private static Uncertain frequency(BounceCount count) {
        Measure cycles = count.cycles();
        Measure time = count.time();
        double value = cycles.value() / time.value();
        return new Uncertain(
                value, value * Math.hypot(cycles.tolerance() / cycles.value(), time.tolerance() / time.value()));
    }

    /** Mass that an axle's springs bear (kg). */
    private static double borne(Trial trial, Axle axle, Loading loading) {
        return WeightEvidence.axleMass(trial.standing(loading), axle.name())
                - axle.unsprungMass().value();
    }
}
