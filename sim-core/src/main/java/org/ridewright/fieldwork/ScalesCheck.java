package org.ridewright.fieldwork;

import java.util.HashSet;
import java.util.Set;
import org.ridewright.fieldwork.Weights.Under;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Measures;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.vehicle.check.Faults;

/** Judges what scales showed. */
record ScalesCheck(Names names, Faults faults) {
    void weights(String path, Weights weights) {
        if (weights.scales().isEmpty()) {
            faults.add(path + ".scales", "", "has none", "at least one", "write {axle: , shows: }");
        }
        Set<Under> seen = new HashSet<>();
        for (int i = 0; i < weights.scales().size(); i++) {
            String at = path + ".scales[" + i + "]";
            Under under = weights.scales().get(i).under();
            Measure shown = weights.scales().get(i).shown();
            if (under instanceof Under.AtHitch hitch) {
                names.hitch(at + ".hitch", hitch.hitch());
                new Bounds(faults).load(at + ".shows", shown);
            } else {
                new Bounds(faults).mass(at + ".shows", shown);
                axle(at, under);
            }
            boolean twice = !seen.add(under)
                    || under instanceof Under.OneWheel wheel && seen.contains(new Under.WholeAxle(wheel.axle()));
            if (twice) {
                faults.add(
                        at,
                        under.label(),
                        "was weighed already",
                        "one scale for each",
                        "make a second weighing a fact of its own");
            }
        }
    }

    private void axle(String at, Under under) {
        if (under instanceof Under.OneWheel wheel) {
            names.axle(at + ".axle", wheel.axle());
            names.side(at + ".side", wheel.axle());
        } else if (under instanceof Under.WholeAxle whole) {
            names.axle(at + ".axle", whole.axle());
        }
    }

    void lifted(String path, LiftedAxle lifted, Measurements measurements) {
        names.axle(path + ".lifted", lifted.lifted());
        faults.positive(path + ".by", lifted.by());
        Bounds bounds = new Bounds(faults);
        bounds.mass(path + ".other axle then", lifted.raised());
        bounds.mass(path + ".other axle level", lifted.level());
        bounds.mass(path + ".total", lifted.total());
        names.vehicle().filter(v -> v.axle(lifted.lifted()).isPresent()).ifPresent(vehicle -> {
            if (vehicle.axles().size() != 2) {
                faults.add(
                        path + ".lifted",
                        lifted.lifted(),
                        "needs a vehicle with two axles, of which there are "
                                + vehicle.axles().size(),
                        "",
                        "estimate the height from the outline instead",
                        "vehicle");
                return;
            }
            length(path, lifted, vehicle);
            weights(path, lifted, vehicle, measurements);
        });
    }

    private void length(String path, LiftedAxle lifted, Vehicle vehicle) {
        double most =
                CentreHeight.STEEPEST * vehicle.axles().get(1).behindFrontAxle().value();
        if (lifted.by().value() > most) {
            faults.add(
                    path + ".by",
                    lifted.by().written(),
                    "is more than the axles' distance allows",
                    "at most " + Faults.plain(most) + " m",
                    "check the unit");
        }
    }

    private void weights(String path, LiftedAxle lifted, Vehicle vehicle, Measurements measurements) {
        Axle raised = vehicle.axle(lifted.lifted()).orElseThrow();
        Axle other = vehicle.axles().get(vehicle.axles().indexOf(raised) == 0 ? 1 : 0);
        var all = measurements.all(Weights.class);
        String fix = "write it, or a fact 'weights' of all axles with the same load that is not kept back";
        if (CentreHeight.level(lifted, other, all).isEmpty()) {
            faults.add(
                    path + ".other axle level",
                    "",
                    "is missing",
                    "the mass under the " + other.title() + " with both axles down",
                    fix,
                    "facts");
        }
        var total = CentreHeight.total(lifted, vehicle, all);
        if (total.isEmpty()) {
            faults.add(path + ".total", "", "is missing", "the mass of all", fix, "facts");
        }
        total.filter(mass -> lifted.raised().value() >= mass.value())
                .ifPresent(mass -> faults.add(
                        path + ".other axle then",
                        lifted.raised().written(),
                        "is not less than the mass of all, " + Measures.format(mass),
                        "the mass under the " + other.title() + " alone",
                        "check both weights",
                        path + ".total"));
    }
}
