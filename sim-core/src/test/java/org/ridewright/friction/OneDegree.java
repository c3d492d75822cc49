package org.ridewright.friction;

import java.util.Optional;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.ride.Fleet;
import org.ridewright.vehicle.Vehicle;

/** As good as a mass on a dry spring: 400 kg on 40 N/mm above a wheel so stiff and light that it follows the ground. */
final class OneDegree {
    static final double MASS = 400;
    static final double RATE = 40e3;

    private OneDegree() {}

    /** @param friction in the words of a vehicle file */
    static VehicleModel with(String friction) {
        Vehicle vehicle = Fleet.described("""
                vehicle: mass on a dry spring
                layout: quarter
                body: {mass: %s kg}
                axles:
                  - name: wheel
                    behind front axle: 0 m
                    unsprung mass: 2 kg
                    wheels: {diameter: 0.6 m, tyre: iron, path: disc, contact rate: 100000 N/mm, contact damping ratio: 0.3}
                    springs: [{name: spring, kind: half-elliptic leaf, rate: %s N/m, friction: %s}]
                load cases: [{name: empty, aboard: []}]
                """.formatted(MASS, RATE, friction));
        return VehicleModel.assemble(vehicle, vehicle.loadCases().get(0), Optional.empty(), true);
    }
}
