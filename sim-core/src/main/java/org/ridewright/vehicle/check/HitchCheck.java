package org.ridewright.vehicle.check;

import java.util.List;
import org.ridewright.vehicle.Hitch;
import org.ridewright.vehicle.Hitch.Motion;
import org.ridewright.vehicle.Vehicle;

/** Judges shafts, drawbars and hitches. */
record HitchCheck(Vehicle vehicle, Faults faults) {
    private static final double GREATEST_AMPLITUDE = 0.5;
    private static final double QUICKEST = 20;

    void run() {
        for (int i = 0; i < vehicle.hitches().size(); i++) {
            Hitch hitch = vehicle.hitches().get(i);
            String path = "hitches[" + i + "]";
            faults.positive(path + ".rate", hitch.rate());
            DampingCheck.coefficientOnly(path, hitch.damping(), faults);
            level(hitch, path + ".level with");
            if (hitch.motion() instanceof Motion.Sinusoid gait) {
                faults.within(path + ".motion.amplitude", gait.amplitude(), 0, GREATEST_AMPLITUDE, "check the unit");
                faults.positive(path + ".motion.frequency", gait.frequency());
                if (gait.frequency().value() > QUICKEST) {
                    faults.within(path + ".motion.frequency", gait.frequency(), 0, QUICKEST, "check the unit");
                }
            } else if (hitch.motion() instanceof Motion.Recorded recorded) {
                recorded(recorded.points(), path + ".motion.record");
            }
        }
    }

    /** All hitches that are to make the body level do so together. */
    private void level(Hitch hitch, String at) {
        if (hitch.levelWith().isEmpty()) {
            return;
        }
        String name = hitch.levelWith().get();
        faults.known(at, name, LoadCaseCheck.names(vehicle), "load case");
        if (!vehicle.layout().pitches()) {
            faults.add(
                    at,
                    name,
                    "cannot be, as a vehicle of the layout " + vehicle.layout().word() + " does not pitch",
                    "a hitch without 'level with'",
                    "remove the key, or choose a layout that pitches");
        }
        String first = vehicle.hitches().stream()
                .flatMap(h -> h.levelWith().stream())
                .findFirst()
                .orElseThrow();
        if (!first.equals(name)) {
            faults.add(
                    at,
                    name,
                    "differs from that of another hitch, " + first,
                    "one load case with which the vehicle stands level",
                    "write the same load case for each, or remove one");
        }
    }

    private void recorded(List<Motion.Point> points, String at) {
        if (points.size() < 2) {
            faults.add(
                    at,
                    "",
                    "has fewer than two points",
                    "rows [time, height], such as [0 s, 0 mm]",
                    "add points, or remove motion");
        }
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).time().value() <= points.get(i - 1).time().value()) {
                faults.add(
                        at + "[" + i + "][0]",
                        points.get(i).time().written(),
                        "is not later than the time before it, "
                                + points.get(i - 1).time().written(),
                        "times that rise from row to row",
                        "put the rows in order",
                        at + "[" + (i - 1) + "]");
            }
        }
    }
}
