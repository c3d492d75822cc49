package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ridewright.road.Obstacle;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Vehicle;

/** {@link FleetAgreementTest} over more speeds and heights, and over generated vehicles; prints the worst of each vehicle. */
@Tag("sweep")
class FleetSweepTest {
    private static final double[] SPEEDS = {0.1, 0.3, 0.7, 1.5, 3.1, 6.3, 12.7, 25, 60};

    /** The rides of one vehicle so far. */
    private static final class Tally {
        private final String name;
        private int rides;
        private double worst;
        private String where = "";
        private final List<String> parted = new ArrayList<>();
        private final List<String> faults = new ArrayList<>();

        Tally(String name) {
            this.name = name;
        }

        void add(Trial trial, String what) {
            rides++;
            Agreement agreement = Agreement.of(trial);
            if (agreement.worst() < FleetAgreementTest.AGREED) {
                if (agreement.worst() > worst) {
                    worst = agreement.worst();
                    where = what + ": " + agreement.readOff();
                }
                return;
            }
            double sensitivity = Agreement.sensitivity(trial);
            String line = String.format(
                    Locale.ROOT,
                    "%s: %.1e (%s), a nudge of %.0e m gives %.1e; peaks %.1e, levels %.1e apart",
                    what,
                    agreement.worst(),
                    agreement.readOff(),
                    Agreement.NUDGE,
                    sensitivity,
                    agreement.peaks(),
                    agreement.levels());
            (agreement.mayPart(sensitivity) ? parted : faults).add(line);
        }

        void print() {
            System.out.printf(
                    Locale.ROOT,
                    "%s: %d rides, worst %.1e (%s), %d parted%n",
                    name,
                    rides,
                    worst,
                    where,
                    parted.size());
            parted.forEach(line -> System.out.println("   parted: " + line));
            faults.forEach(line -> System.out.println("   FAULT: " + line));
        }
    }

    @Test
    void everyVehicleOverEveryObstacleAtEverySpeed() {
        List<String> faults = new ArrayList<>();
        for (Vehicle vehicle : Fleet.all()) {
            Tally tally = new Tally(vehicle.name());
            for (LoadCase load : vehicle.loadCases()) {
                for (double size : new double[] {0.3, 1, 2}) {
                    for (Obstacle obstacle : Obstacles.everyKind(size)) {
                        for (double speed : SPEEDS) {
                            tally.add(
                                    Trial.of(vehicle, load, Trial.road(obstacle), speed, 1, 0),
                                    load.name() + ", " + Obstacles.name(obstacle) + " × " + size + " at " + speed
                                            + " m/s");
                        }
                    }
                }
            }
            tally.print();
            faults.addAll(tally.faults);
        }
        assertThat(faults).isEmpty();
    }

    /** None exactly alike left and right, whose switches would coincide: of two at one instant the reference solver may miss one. */
    @Test
    void generatedVehiclesToo() {
        long first = Long.getLong("sweep.seed", 1000);
        int count = Integer.getInteger("sweep.count", 500);
        Tally tally = new Tally("generated vehicles");
        for (long seed = first; seed < first + count; seed++) {
            Random random = new Random(seed);
            GeneratedVehicle vehicle = GeneratedVehicle.any(random);
            GeneratedRoad road = GeneratedRoad.any(random);
            tally.add(Trial.of(vehicle.offCentre().vehicle(), road.road(), road.speed(), 1), "seed " + seed);
        }
        tally.print();
        assertThat(tally.faults).isEmpty();
    }
}
