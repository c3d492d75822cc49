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
    void anUnnamedAxleIsCalledAnAxleOnce() {
        assertThat(VehicleModel.assemble(
                                Fleet.described(FLEET.replaceFirst("name: front\\b", "name: front axle")),
                                Fleet.described(FLEET).loadCases().get(0),
                                Optional.empty(),
                                false)
                        .coordinates()
                        .names())
                .noneMatch(name -> name.contains("axle axle"));
    }
}
