package org.ridewright.fieldwork;

import org.ridewright.fieldwork.LoadDeflection.Loaded;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.check.Faults;

/** Judges what was measured on springs. */
record SpringFactCheck(Names names, Faults faults) {
    private static final double LONGEST = 1;

    void loop(String path, LoadDeflection fact) {
        names.axle(path + ".axle", fact.of().axle());
        if (fact.of() instanceof Loaded.OneSpring one) {
            names.spring(path + ".spring", one.axle(), one.spring());
        } else if (fact.of() instanceof Loaded.OneCorner corner) {
            names.side(path + ".side", corner.axle());
        }
        for (int i = 0; i < fact.rows().size(); i++) {
            Measure deflection = fact.rows().get(i).deflection();
            new Bounds(faults)
                    .load(path + ".rows[" + i + "]", fact.rows().get(i).load());
            if (Math.abs(deflection.value()) > LONGEST) {
                faults.within(path + ".rows[" + i + "]", deflection, -LONGEST, LONGEST, "check the unit");
            }
        }
        int rising = LoadLoop.rising(fact.rows());
        int falling = LoadLoop.falling(fact.rows());
        if (rising < LoadLoop.FEWEST || falling < LoadLoop.FEWEST) {
            faults.add(
                    path + ".rows",
                    "",
                    "has " + rising + " steps of loading and " + falling + " of unloading",
                    "at least " + LoadLoop.FEWEST + " of each, since friction shows between the two",
                    "go on reading while the load is taken off again, row after row");
        } else if (LoadLoop.of(fact.rows()).isEmpty()) {
            faults.add(
                    path + ".rows",
                    "",
                    "makes no loop: deflection does not grow with load",
                    "deflection counted in the direction of the load, rows in the order in which they were read",
                    "check the signs, and that loads and deflections stand in the same order in each row");
        }
    }

    void camber(String path, Camber camber) {
        names.axle(path + ".axle", camber.axle());
        names.spring(path + ".spring", camber.axle(), camber.spring());
        names.vehicle()
                .flatMap(v -> v.axle(camber.axle()))
                .flatMap(a -> a.springs().stream()
                        .filter(s -> s.name().equals(camber.spring()))
                        .findFirst())
                .filter(s -> !s.kind().isLeaf())
                .ifPresent(s -> faults.add(
                        path + ".spring",
                        camber.spring(),
                        "is no leaf spring and has no camber",
                        "a leaf spring",
                        "write its length free and loaded as a load deflection",
                        "vehicle"));
        new Bounds(faults).length(path + ".free", camber.free());
        if (camber.loaded().value() < -LONGEST) {
            faults.within(path + ".loaded", camber.loaded(), -LONGEST, LONGEST, "check the unit");
        }
        if (camber.loaded().value() >= camber.free().value()) {
            faults.add(
                    path + ".loaded",
                    camber.loaded().written(),
                    "is not less than the free camber, " + camber.free().written(),
                    "the height of the bow under load, negative if it is bent through",
                    "check which is which",
                    path + ".free");
        }
        if (camber.load() instanceof Camber.Under.Known known) {
            faults.positive(path + ".load", known.force());
            new Bounds(faults).load(path + ".load", known.force());
        }
    }
}
