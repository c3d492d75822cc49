package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.io.InputException;
import org.ridewright.io.InputProblem;
import org.ridewright.vehicle.Vehicle;

class StandingCheckTest {
    private static final String FLEET = Fleet.symmetrical("");

    private static List<InputProblem> problems(String yaml) {
        return catchThrowableOfType(InputException.class, () -> Fleet.described(yaml))
                .problems();
    }

    @Test
    void aVehicleThatStandsHasNoFault() {
        assertThat(StandingCheck.faults(Fleet.described(FLEET))).isEmpty();
    }

    /** Whichever axle has the slip of the unit, and whichever way the vehicle then tips over. */
    @ParameterizedTest
    @ValueSource(strings = {"rate: 30 kN/m", "rate: 34 kN/m"})
    void aSpringAThousandTimesTooSoftIsNamedAtItsRate(String rate) {
        assertThat(problems(FLEET.replace(rate, rate.replace("kN", "N"))))
                .isNotEmpty()
                .allSatisfy(problem -> {
                    assertThat(problem.path()).endsWith("springs[0].rate");
                    assertThat(problem.value())
                            .isEqualTo(rate.replace("kN", "N").replace("rate: ", ""));
                    assertThat(problem.line()).isPositive();
                });
    }

    @Test
    void anAxleWithoutANameIsCalledAnAxleOnce() {
        Vehicle cart = Fleet.described("""
                vehicle: cart
                layout: half in roll
                body: {mass: 300 kg, centre of mass: {above ground: 1 m}}
                axles:
                  - kind: beam
                    track: 1.4 m
                    unsprung mass: 90 kg
                    wheels: {diameter: 0.9 m, tyre: iron}
                    springs: [{kind: coil, apart: 0.9 m, rate: 30 kN/m}]
                """);
        VehicleModel model = VehicleModel.assemble(cart, cart.loadCases().get(0), Optional.empty(), false);
        assertThat(model.coordinates().names()).contains("axle heave", "axle roll");
    }
}
