package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Obstacle.Side;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;

/**
 * The regime solver against the reference solver at tight tolerance, every vehicle of the fleet with each load over every kind of obstacle.
 * A wider choice of speeds and heights is in {@link FleetSweepTest}.
 */
class FleetAgreementTest {
    /** Greatest relative r.m.s. difference of any read-off. */
    static final double AGREED = 1e-7;

    static Stream<Vehicle> fleet() {
        return Fleet.all().stream();
    }

    /**
     * At a walk, between and at top speed. Where iron wheels bounce on so long that two runs of one solver, begun a hundredth of a nanometre
     * apart, part as far, peaks and levels are compared.
     */
    @ParameterizedTest
    @MethodSource("fleet")
    void bothSolversAgreeForEveryVehicleOverEveryObstacle(Vehicle vehicle) {
        double top = vehicle.topSpeed().orElseThrow().value();
        for (LoadCase load : vehicle.loadCases()) {
            for (Obstacle obstacle : Obstacles.everyKind(1)) {
                for (double speed : new double[] {1.37, Math.sqrt(top) * 1.01, 0.97 * top}) {
                    Trial trial = Trial.of(vehicle, load, Trial.road(obstacle), speed, 1, 0);
                    Agreement agreement = Agreement.of(trial);
                    if (agreement.worst() >= AGREED && agreement.mayPart(Agreement.sensitivity(trial))) {
                        continue;
                    }
                    assertThat(agreement.worst())
                            .as(
                                    "%s, %s at %.2f m/s: %s",
                                    load.name(), Obstacles.name(obstacle), speed, agreement.readOff())
                            .isLessThan(AGREED);
                }
            }
        }
    }

    /**
     * Iron wheels on an undamped contact bounce on after a sharp plank until two runs of one solver, begun a hundredth of a nanometre
     * apart, have nothing more in common. Two solvers then part likewise, at the same rate and no sooner; how hard it struck and how
     * much it bounced they still agree on.
     */
    @Test
    void whereAWheelBouncesForLongBothSolversPartAsTwoRunsOfOneDo() {
        String lively = Fleet.symmetrical(", friction: {share of load: 6 %, constant: 40 N}")
                .replace("contact damping ratio: 0.2", "contact damping: 0 N s/m")
                .replace("2 MN/m", "4 MN/m");
        Obstacle edge = Obstacles.plank(GeneratedRoad.lie(2, Side.LEFT, 0), 0.04, 0.1);
        for (double speed : new double[] {2.1, 4.3}) {
            Trial early = Trial.of(Fleet.described(lively), Trial.road(edge), speed, 0.1);
            Trial late = Trial.of(Fleet.described(lively), Trial.road(edge), speed, 3);
            assertThat(Agreement.sensitivity(late))
                    .isGreaterThan(1e-2)
                    .isGreaterThan(10 * Agreement.sensitivity(early));
            Agreement agreement = Agreement.of(late);
            assertThat(agreement.worst()).isBetween(1e-2, 2.0);
            assertThat(agreement.peaks()).isLessThan(1e-4);
            assertThat(agreement.levels()).isLessThan(0.15);
            assertThat(Agreement.of(early).worst()).isLessThan(1e3 * Agreement.sensitivity(early));
        }
    }
}
