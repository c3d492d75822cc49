package org.ridewright.vehicle.check;

import java.util.List;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.FurtherMotions;
import org.ridewright.vehicle.FurtherMotions.Hold;
import org.ridewright.vehicle.FurtherMotions.Motion;
import org.ridewright.vehicle.FurtherMotions.Pull;
import org.ridewright.vehicle.Vehicle;

/** Judges surge and sway, and what holds and drives them: figures that would have no effect are no figures. */
record FurtherMotionsCheck(Vehicle vehicle, Faults faults) {
    private static final double HIGHEST = 5;
    private static final double QUICKEST = 20;
    private static final double QUICKEST_SWAY = 50;

    void run() {
        FurtherMotions further = vehicle.further();
        if (further.has(Motion.SWAY) && !vehicle.layout().rolls()) {
            faults.add(
                    "coordinates",
                    Motion.SWAY.word(),
                    "has no meaning in the layout " + vehicle.layout().word() + ", which has no left and right",
                    Motion.SURGE.word(),
                    "remove it, or describe both sides",
                    "layout");
        }
        for (int i = 0; i < further.holds().size(); i++) {
            hold(further.holds().get(i), "held fore and aft[" + i + "]");
        }
        VehicleCheck.distinct(
                further.holds().stream().map(Hold::name).toList(), "held fore and aft", "thing that holds it", faults);
        further.pull().ifPresent(this::pull);
        sway(further);
        for (int i = 0; i < vehicle.axles().size(); i++) {
            axle(vehicle.axles().get(i), "axles[" + i + "]");
        }
    }

    private void hold(Hold hold, String path) {
        needs(Motion.SURGE, path);
        faults.positive(path + ".rate", hold.rate());
        DampingCheck.coefficientOnly(path, hold.damping(), faults);
        hold.aboveGround().ifPresent(h -> faults.within(path + ".above ground", h, 0, HIGHEST, "check the unit"));
    }

    private void pull(Pull pull) {
        needs(Motion.SURGE, "pull");
        faults.positive("pull.amplitude", pull.amplitude());
        faults.positive("pull.frequency", pull.frequency());
        if (pull.frequency().value() > QUICKEST) {
            faults.within("pull.frequency", pull.frequency(), 0, QUICKEST, "check the unit");
        }
        pull.aboveGround().ifPresent(h -> faults.within("pull.above ground", h, 0, HIGHEST, "check the unit"));
    }

    private void sway(FurtherMotions further) {
        further.swayFrequency().ifPresent(frequency -> {
            needs(Motion.SWAY, "sway frequency");
            faults.positive("sway frequency", frequency);
            if (frequency.value() > QUICKEST_SWAY) {
                faults.within("sway frequency", frequency, 0, QUICKEST_SWAY, "check the unit");
            }
        });
        further.swayDampingRatio().ifPresent(ratio -> {
            needs(Motion.SWAY, "sway damping ratio");
            DampingCheck.ratio("sway damping ratio", ratio, faults);
        });
    }

    private void axle(Axle axle, String path) {
        axle.swayRate().ifPresent(rate -> {
            needs(Motion.SWAY, path + ".sway rate");
            faults.positive(path + ".sway rate", rate);
            for (String other : List.of("sway frequency", "sway damping ratio")) {
                boolean given = other.endsWith("ratio")
                        ? vehicle.further().swayDampingRatio().isPresent()
                        : vehicle.further().swayFrequency().isPresent();
                if (given) {
                    faults.add(
                            path + ".sway rate",
                            rate.written(),
                            "is given beside '" + other + "' of the whole vehicle",
                            "one of them",
                            "remove one of them",
                            other);
                }
            }
        });
        axle.swayDamping().ifPresent(damping -> {
            faults.notNegative(path + ".sway damping", damping);
            if (axle.swayRate().isEmpty()) {
                faults.add(
                        path + ".sway damping",
                        damping.written(),
                        "stands without a sway rate",
                        "both, or neither",
                        "add 'sway rate: ...' to the axle");
            }
        });
        if (axle.swayRate().isEmpty()
                && vehicle.axles().stream().anyMatch(other -> other.swayRate().isPresent())) {
            faults.add(
                    path + ".sway rate",
                    "",
                    "is missing, while another axle has one",
                    "the rate with which this axle holds the body sideways, or 'sway frequency' of the whole vehicle",
                    "add 'sway rate: ...' to the axle, or remove it from the others",
                    "axles");
        }
    }

    private void needs(Motion motion, String path) {
        if (!vehicle.further().has(motion)) {
            faults.add(
                    path,
                    "",
                    "has no effect, as " + motion.word() + " is not among the coordinates",
                    "coordinates: [" + motion.word() + "]",
                    "add " + motion.word() + " to 'coordinates', or remove this",
                    "coordinates");
        }
    }
}
