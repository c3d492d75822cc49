package org.ridewright.calibration;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.vehicle.Vehicle;

/**
 * A vehicle file after a fit.
 *
 * @param fit of all unknowns; the vehicle's values first, then the circumstances of facts
 * @param ofVehicle how many of the unknowns are values of the vehicle's file
 * @param before the vehicle as its file had it
 * @param after the vehicle with the most probable values
 * @param leftOut facts that were not fitted
 * @param held values with a tolerance that were not sought and that some datum feels, the most felt first
 * @param untouched paths of values that nothing measured depends on; they stay as they are
 * @param untied paths of values that an earlier calibration of the file ties to sought ones, but that were not sought themselves: that tie was not used
 * @param heldTogether held values with which errors of the sought ones are correlated
 * @param rides logged rides, fitted and kept back
 * @param addedLoads the quick check of counts with less and more aboard
 * @param riders what riders said, beside runs of the calibrated vehicle
 */
public record CalibratedVehicle(
        Calibration fit,
        int ofVehicle,
        Vehicle before,
        Vehicle after,
        List<LeftOut> leftOut,
        List<Held> held,
        List<String> untouched,
        List<String> untied,
        HeldTogether heldTogether,
        List<RideOverlay> rides,
        List<AddedLoadCheck> addedLoads,
        List<RiderSaid> riders) {
    public CalibratedVehicle {
        leftOut = List.copyOf(leftOut);
        held = List.copyOf(held);
        untouched = List.copyOf(untouched);
        untied = List.copyOf(untied);
        rides = List.copyOf(rides);
        addedLoads = List.copyOf(addedLoads);
        riders = List.copyOf(riders);
    }

    /** The vehicle's values with their standard errors, by path. */
    public Map<String, Measure> values() {
        Map<String, Measure> values = new LinkedHashMap<>();
        for (int j = 0; j < ofVehicle; j++) {
            Unknown unknown = fit.unknowns().get(j);
            values.put(
                    unknown.path(),
                    new Measure(
                            unknown.spread().kind(),
                            fit.value(j),
                            tolerance(j),
                            Provenance.CALIBRATED,
                            unknown.written(fit.posterior().z(j))));
        }
        return values;
    }

    /** The tolerance from which {@link org.ridewright.quantity.Spread} makes the same deviation again (SI). */
    private double tolerance(int j) {
        Unknown unknown = fit.unknowns().get(j);
        double deviation = unknown.spread().deviation() * fit.posterior().deviation(j);
        return unknown.spread().byFactors() ? fit.value(j) * Math.expm1(deviation) : deviation;
    }

    /** Correlation of the vehicle's values, in the order of {@link #values}, then of those that are {@link #heldTogether}. */
    public double[][] correlation() {
        int all = ofVehicle + heldTogether.paths().size();
        double[][] r = new double[all][all];
        for (int k = ofVehicle; k < all; k++) {
            for (int j = 0; j < ofVehicle; j++) {
                r[j][k] = heldTogether.withSought().get(k - ofVehicle).get(j);
                r[k][j] = r[j][k];
            }
            for (int l = ofVehicle; l < all; l++) {
                r[k][l] = heldTogether.among().get(k - ofVehicle).get(l - ofVehicle);
            }
        }
        for (int i = 0; i < ofVehicle; i++) {
            for (int j = 0; j < ofVehicle; j++) {
                r[i][j] = fit.posterior().correlation(i, j);
            }
        }
        return r;
    }
}
