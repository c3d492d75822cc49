package org.ridewright.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.io.VehicleDocument;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

class LeavesTest {
    private static final VehicleDocument DRAY = VehicleDocument.read(Path.of("../scenarios/vehicles/dray.yaml"));

    private static VehicleModel dray(String load) {
        Vehicle vehicle = DRAY.asWritten();
        return VehicleModel.assemble(vehicle, vehicle.loadCase(load).orElseThrow(), Ground.UNYIELDING, false);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.4, 1.4, 2.5})
    void oilAndRustMultiplyTheLimitAtRestOfEverySpringAndNothingElse(double factor) {
        VehicleModel written = dray("half laden");
        VehicleModel greased = Leaves.greased(written, factor);
        assertThat(Leaves.of(greased)).isEqualTo(Leaves.of(written)).hasSize(4);
        for (int e = 0; e < written.equations().elements().size(); e++) {
            Element before = written.equations().elements().get(e);
            Element after = greased.equations().elements().get(e);
            if (Leaves.rubs(before)) {
                assertThat(Leaves.limit(greased, e)).isCloseTo(factor * Leaves.limit(written, e), within(1e-6));
                assertThat(after.law().friction().lockedRates())
                        .isEqualTo(before.law().friction().lockedRates());
            } else {
                assertThat(after).isEqualTo(before);
            }
        }
        assertThat(greased.rest().q()).containsExactly(written.rest().q(), within(1e-12));
    }

    @Test
    void aRustedSpringCanStillLetGo() {
        VehicleModel rusted = Leaves.greased(dray("laden"), 2.5);
        for (int e : Leaves.of(rusted)) {
            var law = rusted.equations().elements().get(e).law();
            assertThat(law.friction().weakestLockedRate())
                    .isGreaterThan(law.friction().share() * law.greatestLeafRate());
        }
    }

    @Test
    void withoutFrictionNoSpringRubs() {
        assertThat(Leaves.of(Leaves.greased(dray("empty"), 0))).isEmpty();
    }

    @Test
    void drawnVehiclesKeepTheFrictionOfTheirSpringsAndVaryInTheRest() {
        VehicleDraws draws = new VehicleDraws(DRAY, DRAY.spread());
        assertThat(draws.vehicle(0)).isEqualTo(DRAY.asWritten());
        Vehicle third = draws.vehicle(3);
        assertThat(third).isEqualTo(draws.vehicle(3)).isNotEqualTo(draws.vehicle(4));
        List<Double> written = shares(DRAY.asWritten());
        for (int i = 0; i < written.size(); i++) {
            assertThat(shares(third).get(i)).isCloseTo(written.get(i), within(1e-12));
        }
        assertThat(third.axles().get(0).unsprungMass().value())
                .isNotEqualTo(DRAY.asWritten().axles().get(0).unsprungMass().value());
    }

    private static List<Double> shares(Vehicle vehicle) {
        return vehicle.axles().stream()
                .flatMap(axle -> axle.springs().stream())
                .map(spring -> spring.friction().shareOfLoad().value())
                .toList();
    }
}
