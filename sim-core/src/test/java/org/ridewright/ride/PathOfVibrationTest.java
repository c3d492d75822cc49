package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ridewright.comfort.Weighting;
import org.ridewright.comfort.Window;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Road;
import org.ridewright.signal.ThirdOctaveSpectrum;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Vehicle;

/** Where the way from the road to a place begins, and how low its bands reach. */
class PathOfVibrationTest {
    private static final Vehicle TWIN = Fleet.described(Fleet.symmetrical(""));

    @Test
    void theWayBeginsAtTheWheelNearestAlongAndAcross() {
        VehicleModel model = VehicleModel.assemble(TWIN, new LoadCase("empty", List.of()), Optional.empty(), false);
        assertThat(model.wheels()).hasSize(4);
        for (WheelPlace wheel : model.wheels()) {
            Place at = Place.of(-0.9 * wheel.x() + 0.05, 0.2 * wheel.y(), 1);
            PathOfVibration way = PathOfVibration.of(
                            model, List.of(new Scenario.Point("floor", Optional.empty(), at)), new Window(0, 30), 30)
                    .get(0);
            assertThat(way.wheel().name()).isEqualTo(wheel.name());
        }
    }

    /** Half-overlapping segments of 8.2 s in the shortest window, of 32.8 s in a long one. */
    @ParameterizedTest
    @CsvSource({"22.2, 2", "36, 0.8", "90, 0.5"})
    void bandsReachAsLowAsTheRideIsLong(double duration, double lowest) {
        RideSpectra spectra = ride(duration).spectra().get(0);

        ThirdOctaveSpectrum bands = spectra.thirdOctaves(0.5, 80);

        assertThat(bands.bands().get(0).nominal()).isEqualTo(lowest, within(1e-9));
        assertThat(bands.isResolved(0)).isTrue();
        double fromLines = Weighting.WK.rms(spectra.acceleration(spectra.links().indexOf("body")));
        // the humps come about once a second and hardly move the body any slower
        assertThat(bands.times(Weighting.WK::factor).total()).isEqualTo(fromLines, within(0.08 * fromLines));
    }

    private static RideResult ride(double duration) {
        Road humps = new Road(
                "humps",
                List.of(new Obstacle.Hump(
                        new Obstacle.Lie(
                                length(0.5),
                                Obstacle.Side.BOTH,
                                Measure.of(0, QuantityKind.ANGLE),
                                400,
                                Optional.of(length(1))),
                        length(0.02),
                        length(1))),
                Optional.empty());
        Scenario scenario = new Scenario(
                "humps",
                "",
                List.of(new Scenario.Entrant(
                        TWIN,
                        "",
                        List.of(TWIN.loadCases().get(0).name()),
                        List.of(SpeedPlan.steady(Measure.of(3, QuantityKind.SPEED))))),
                List.of(humps),
                Optional.of(Measure.of(duration, QuantityKind.TIME)),
                Optional.empty(),
                Measure.of(200, QuantityKind.FREQUENCY),
                Scenario.Start.UNSTRESSED,
                false,
                List.of(new Scenario.Point("floor", Optional.empty(), Place.of(0.5, 0, 0.7))),
                Optional.empty());
        return RideRunner.run(scenario, r -> {}).get(0);
    }

    private static Measure length(double metres) {
        return Measure.of(metres, QuantityKind.LENGTH);
    }
}
