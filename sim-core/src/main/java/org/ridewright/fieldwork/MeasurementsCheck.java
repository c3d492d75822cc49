package org.ridewright.fieldwork;

import java.util.List;
import org.ridewright.vehicle.check.Fault;
import org.ridewright.vehicle.check.Faults;

/** Looks for facts that cannot be, and for names that the vehicle does not have. */
public final class MeasurementsCheck {
    private MeasurementsCheck() {}

    /** Everything wrong with the measurements, as far as can be told without working them out. */
    public static List<Fault> faults(Measurements measurements) {
        Faults faults = new Faults();
        return faults.found();
    }
}
