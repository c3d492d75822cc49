package org.ridewright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.friction.ForcedPoint;
import org.ridewright.friction.ForcedRun;
import org.ridewright.ride.Fleet;
import org.ridewright.vehicle.Vehicle;

/**
 * A vehicle of one degree of freedom on a sinusoidal road: 400 kg on 40 N/mm with friction F as good as rigid, above a wheel so stiff and light that it follows the
 * ground. Its motion against the ground is that of {@code m ẍ + k x + F sgn ẋ = F₀ cos ωt}, {@code F₀ = m ω² Y}, for which Den Hartog gives the amplitude while
 * it never stops. Source: {@link DenHartog#PAPER}. Tolerance: what the locked rate of 20000 times the elastic one leaves of rigid friction, and the settling of the run.
 */
class ForcedFrictionTest {
    private static final double MASS = 400;
    private static final double RATE = 40e3;
    private static final double FRICTION = 100;

    private static VehicleModel model() {
        Vehicle vehicle = Fleet.described("""
                vehicle: mass on a dry spring
                layout: quarter
                body: {mass: %s kg}
                axles:
                  - name: wheel
                    behind front axle: 0 m
                    unsprung mass: 1 kg
                    wheels: {diameter: 0.6 m, tyre: iron, path: disc, contact rate: 1000000 N/mm, contact damping ratio: 0.3}
                    springs: [{name: spring, kind: half-elliptic leaf, rate: %s N/m, friction: {constant: %s N, locked rate: 20000 times}}]
                load cases: [{name: empty, aboard: []}]
                """.formatted(MASS, RATE, FRICTION));
        return VehicleModel.assemble(vehicle, vehicle.loadCases().get(0), Optional.empty(), false);
    }

    @Test
    void aDrySpringOnASinusoidalRoadMovesByDenHartogsAmplitude() {
        VehicleModel model = model();
        double natural = Math.sqrt(RATE / MASS);
        int compared = 0;
        for (ReferenceTable.Row row : ReferenceTable.read("friction_oscillator_forced.csv").rows()) {
            double share = row.number("F_over_F0");
            if (row.given("X_closed").isEmpty() || share < 0.15) {
                continue;
            }
            double omega = row.number("r") * natural;
            double force = FRICTION / share;
            double road = force / (MASS * omega * omega);
            ForcedPoint point = new ForcedRun(
                            model.equations(), model.rest(), new double[] {1, -1}, road, omega / (2 * Math.PI))
                    .run();
            if (point.settled()) {
                double amplitude = point.amplitude() * road * RATE / force;
                assertThat(amplitude)
                        .as("r %s, F/F₀ %s", row.number("r"), share)
                        .isCloseTo(row.number("X_closed"), withinPercentage(1.5));
                compared++;
            }
        }
        assertThat(compared).isGreaterThanOrEqualTo(8);
    }
}
