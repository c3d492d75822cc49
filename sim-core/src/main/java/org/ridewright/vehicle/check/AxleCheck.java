package org.ridewright.vehicle.check;

import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Attachment;
import org.ridewright.vehicle.Attachment.Position;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.Damper;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.Vehicle;

/** Judges one axle. */
record AxleCheck(Vehicle vehicle, Axle axle, String path, Faults faults) {
    private static final double LEAST_TRACK = 0.3;
    private static final double GREATEST_TRACK = 4;
    private static final double WIDEST_OF_TRACK = 1.5;
    private static final double HIGHEST = 5;

    void run() {
        kind();
        track();
        faults.positive(path + ".unsprung mass", axle.unsprungMass());
        if (axle.unsprungMass().value() > BodyCheck.HEAVIEST) {
            faults.within(path + ".unsprung mass", axle.unsprungMass(), 0, BodyCheck.HEAVIEST, "check the unit");
        }
        rollInertia();
        axle.rollAxisHeight()
                .ifPresent(height -> faults.within(
                        path + ".roll axis height", height, -1, HIGHEST, "give the height above the ground"));
        antiRollBar();
        new WheelCheck(axle, path + ".wheels", faults).run();
        for (int i = 0; i < axle.springs().size(); i++) {
            spring(axle.springs().get(i), path + ".springs[" + i + "]");
        }
        for (int i = 0; i < axle.dampers().size(); i++) {
            damper(axle.dampers().get(i), path + ".dampers[" + i + "]");
        }
        VehicleCheck.distinct(axle.springs().stream().map(Spring::name).toList(), path + ".springs", "spring", faults);
        VehicleCheck.distinct(axle.dampers().stream().map(Damper::name).toList(), path + ".dampers", "damper", faults);
    }

    private void kind() {
        Layout layout = vehicle.layout();
        boolean single = axle.kind() == AxleKind.SINGLE;
        if (!layout.rolls() && !single) {
            faults.add(
                    path + ".kind",
                    axle.kind().word(),
                    "has two wheels, but each axle of the layout " + layout.word() + " is one wheel",
                    AxleKind.SINGLE.word(),
                    "remove kind and track, and describe one wheel with what it carries",
                    "layout");
        }
        if (layout == Layout.HALF_IN_ROLL && single) {
            faults.add(
                    path + ".kind",
                    axle.kind().word(),
                    "cannot hold a body that rolls",
                    "beam or independent",
                    "write layout: quarter",
                    "layout");
        }
    }

    private void track() {
        String key = path + ".track";
        if (axle.kind() == AxleKind.SINGLE) {
            axle.track()
                    .ifPresent(track -> faults.add(
                            key,
                            track.written(),
                            "belongs to an axle with two wheels",
                            "",
                            "remove it",
                            path + ".kind"));
        } else if (axle.track().isEmpty()) {
            if (vehicle.layout().rolls()) {
                faults.add(
                        key,
                        "",
                        "is missing",
                        "the distance between the centre planes of the two wheels, such as 1.35 m, 4 ft 8 in",
                        "add 'track: ...' to the axle",
                        path + ".kind",
                        "layout");
            }
        } else {
            faults.within(key, axle.track().get(), LEAST_TRACK, GREATEST_TRACK, "check the unit");
        }
    }

    private void rollInertia() {
        axle.rollInertia().ifPresent(inertia -> {
            String key = path + ".roll inertia";
            faults.positive(key, inertia);
            if (axle.kind() != AxleKind.BEAM) {
                faults.add(key, inertia.written(), "belongs to a beam axle", "", "remove it", path + ".kind");
            } else if (axle.track().isPresent() && axle.unsprungMass().value() > 0) {
                radius(key, inertia, axle.track().get());
            }
        });
    }

    private void radius(String key, Measure inertia, Measure track) {
        double radius =
                Math.sqrt(Math.max(0, inertia.value()) / axle.unsprungMass().value());
        if (radius > track.value()) {
            faults.add(
                    key,
                    inertia.written(),
                    "with an unsprung mass of " + axle.unsprungMass().written() + " is a radius of gyration of "
                            + Faults.plain(radius) + " m",
                    "less than the track of " + track.written(),
                    "check the unit",
                    path + ".unsprung mass",
                    path + ".track");
        }
    }

    private void antiRollBar() {
        axle.antiRollBar().ifPresent(bar -> {
            String key = path + ".anti-roll bar";
            faults.positive(key, bar);
            if (axle.kind() == AxleKind.SINGLE || !vehicle.layout().rolls()) {
                faults.add(key, bar.written(), "needs two wheels", "", "remove it", path + ".kind", "layout");
            }
        });
    }

    private void spring(Spring spring, String at) {
        attachment(spring.attachment(), at);
        motionRatio(spring.motionRatio(), at);
        spring.mountHeight()
                .ifPresent(height ->
                        faults.within(at + ".mount height", height, 0, HIGHEST, "give the height above the ground"));
        SpringLawCheck law = new SpringLawCheck(at, faults, LoadCaseCheck.names(vehicle));
        law.run(spring.kind(), spring.elasticity(), spring.damping(), spring.friction(), spring.stages());
    }

    private void damper(Damper damper, String at) {
        attachment(damper.attachment(), at);
        motionRatio(damper.motionRatio(), at);
        DamperCheck.run(damper, at, faults);
    }

    private void attachment(Attachment attachment, String at) {
        Optional<Measure> apart = attachment.apart();
        boolean beam = axle.kind() == AxleKind.BEAM;
        boolean onCentre = attachment.position() == Position.CENTRE;
        if ((axle.kind() == AxleKind.SINGLE && !onCentre) || (axle.kind() == AxleKind.INDEPENDENT && onCentre)) {
            faults.add(
                    at + ".side",
                    attachment.position().word(),
                    "has no meaning at " + (onCentre ? "independent wheels" : "a single wheel"),
                    onCentre ? "pair, left or right" : "centre",
                    onCentre ? "remove it" : "remove it, and give the figures of both together",
                    path + ".kind",
                    "layout");
        } else if (beam && !onCentre && apart.isEmpty()) {
            faults.add(
                    at + ".apart",
                    "",
                    "is missing",
                    "the distance from the left one to the right one, such as 0.9 m, 3 ft",
                    "add 'apart: ...' to it",
                    path + ".kind",
                    at + ".side",
                    "layout");
        } else if (apart.isPresent() && (!beam || onCentre)) {
            faults.add(
                    at + ".apart",
                    apart.get().written(),
                    beam ? "has no meaning on the centre line" : "has no meaning here, since each acts at its wheel",
                    "",
                    beam ? "remove it" : "remove it; motion ratio says where between wheel and pivot it stands",
                    path + ".kind",
                    at + ".side",
                    "layout");
        }
        apart.ifPresent(value -> apart(value, at + ".apart"));
    }

    private void apart(Measure apart, String at) {
        faults.positive(at, apart);
        axle.track()
                .filter(track -> apart.value() > WIDEST_OF_TRACK * track.value())
                .ifPresent(track -> faults.add(
                        at,
                        apart.written(),
                        "is more than one and a half times the track of " + track.written(),
                        "the distance from the left one to the right one",
                        "check the unit",
                        path + ".track"));
    }

    private void motionRatio(Optional<Measure> ratio, String at) {
        ratio.ifPresent(value -> {
            String key = at + ".motion ratio";
            faults.positive(key, value);
            if (value.value() > 3) {
                faults.within(key, value, 0, 3, "give spring travel over wheel travel, not the reverse");
            }
            if (axle.kind() == AxleKind.BEAM) {
                faults.add(
                        key,
                        value.written(),
                        "has no meaning on a beam axle",
                        "",
                        "remove it; apart says where the spring stands",
                        path + ".kind");
            }
        });
    }
}
