package org.ridewright.fieldwork;

import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.check.Faults;

/** Bounds beyond which a reading is a slip of the pen or of the unit. */
record Bounds(Faults faults) {
    /** Of anything weighed here (kg), hung, laid on (N), timed (s), measured by tape (m). */
    private static final double HEAVIEST = 100e3;

    private static final double GREATEST_LOAD = 1e6;
    private static final double LONGEST_TIME = 3600;
    private static final double LONGEST = 50;
    private static final String FIX = "check the unit";

    /** A mass above zero; gives whether it is, and not beyond all bounds. */
    boolean mass(String path, Measure mass) {
        return positive(path, mass, HEAVIEST);
    }

    /** As the other, where there is one. */
    void mass(String path, Optional<Measure> mass) {
        mass.ifPresent(value -> mass(path, value));
    }

    /** A time above zero, as the other. */
    boolean time(String path, Measure time) {
        return positive(path, time, LONGEST_TIME);
    }

    /** A length above zero, as the others. */
    boolean length(String path, Measure length) {
        return positive(path, length, LONGEST);
    }

    /** A load in either direction, or what a hitch shows that may be pulled up. */
    void load(String path, Measure load) {
        faults.within(path, load, -GREATEST_LOAD, GREATEST_LOAD, FIX);
    }

    private boolean positive(String path, Measure measure, double most) {
        faults.positive(path, measure);
        if (measure.value() > most) {
            faults.within(path, measure, 0, most, FIX);
        }
        return measure.value() > 0 && measure.value() <= most;
    }
}
