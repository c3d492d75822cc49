package org.ridewright.vehicle.check;

import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.PathKind;
import org.ridewright.vehicle.Wheel;

/** Judges the wheels of one axle. */
record WheelCheck(Axle axle, String path, Faults faults) {
    private static final double LEAST_DIAMETER = 0.1;
    private static final double GREATEST_DIAMETER = 3.5;
    /** A tyre that touches less ground than this is a point, and makes walls of a road's edges (m). */
    private static final double LEAST_FOOTPRINT = 1e-3;

    void run() {
        Wheel wheel = axle.wheel();
        faults.within(
                path + ".diameter",
                wheel.diameter(),
                LEAST_DIAMETER,
                GREATEST_DIAMETER,
                "give the outer diameter; check the unit");
        footprint(wheel);
        faults.positive(path + ".contact rate", wheel.contactRate());
        DampingCheck.run(path, "contact damping", "contact damping ratio", wheel.contactDamping(), faults);
        spinInertia(wheel);
    }

    private void footprint(Wheel wheel) {
        String key = path + ".footprint";
        boolean needed = wheel.path() == PathKind.FOOTPRINT || wheel.path() == PathKind.DISC_AND_FOOTPRINT;
        if (wheel.footprintLength().isEmpty()) {
            if (needed) {
                faults.add(
                        key,
                        "",
                        "is missing",
                        "the length of ground that the tyre touches, such as 120 mm",
                        "add the line footprint: ..., or write path: disc",
                        path + ".path",
                        path + ".tyre");
            }
            return;
        }
        Measure footprint = wheel.footprintLength().get();
        if (footprint.provenance() == Provenance.ESTIMATED) {
            return; // follows from the diameter
        }
        faults.positive(key, footprint);
        if (footprint.value() > 0 && footprint.value() < LEAST_FOOTPRINT) {
            faults.add(
                    key,
                    footprint.written(),
                    "is less than 1 mm",
                    "the length of ground that the tyre touches, such as 120 mm",
                    "check the unit, or write path: disc");
        }
        if (footprint.value() >= wheel.diameter().value()) {
            faults.add(
                    key,
                    footprint.written(),
                    "is not shorter than the diameter of " + wheel.diameter().written(),
                    "the length of ground that the tyre touches",
                    "check the unit",
                    path + ".diameter");
        }
    }

    /** No wheel has more than a hoop of its axle's whole unsprung mass. */
    private void spinInertia(Wheel wheel) {
        String key = path + ".spin inertia";
        faults.notNegative(key, wheel.spinInertia());
        double share = axle.kind() == AxleKind.SINGLE ? 1 : 0.5;
        double most = share * axle.unsprungMass().value() * wheel.radius() * wheel.radius();
        if (wheel.spinInertia().value() > most && most > 0) {
            faults.add(
                    key,
                    wheel.spinInertia().written(),
                    "is more than a hoop of the whole unsprung mass would have",
                    "at most " + Faults.plain(most) + " kg·m² for one wheel",
                    "check the unit, and that it is of one wheel",
                    path + ".diameter",
                    path.substring(0, path.length() - ".wheels".length()) + ".unsprung mass");
        }
    }
}
