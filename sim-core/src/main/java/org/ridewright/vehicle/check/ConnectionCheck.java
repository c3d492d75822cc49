package org.ridewright.vehicle.check;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Attachment.Position;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.Connection;
import org.ridewright.vehicle.Connection.Interconnection;
import org.ridewright.vehicle.Connection.SideSpring;
import org.ridewright.vehicle.Connection.Term;
import org.ridewright.vehicle.Connection.Tip;
import org.ridewright.vehicle.Connection.UndercarriageTwist;
import org.ridewright.vehicle.Vehicle;

/** Judges the parts that join axles. */
record ConnectionCheck(Vehicle vehicle, Faults faults) {
    void run() {
        for (int i = 0; i < vehicle.connections().size(); i++) {
            Connection connection = vehicle.connections().get(i);
            String path = "connections[" + i + "]";
            if (connection instanceof UndercarriageTwist twist) {
                twist(twist, path);
            } else if (connection instanceof SideSpring side) {
                sideSpring(side, path);
            } else if (connection instanceof Interconnection joined) {
                interconnection(joined, path);
            }
        }
    }

    private void twist(UndercarriageTwist twist, String path) {
        axles(twist.frontAxle(), twist.rearAxle(), path);
        faults.positive(path + ".rate", twist.rate());
        DampingCheck.coefficientOnly(path, twist.damping(), faults);
        new FrictionCheck(path, faults).limits(twist.friction());
        if (!vehicle.layout().rolls()) {
            faults.add(
                    path,
                    "",
                    "twists, but nothing rolls in the layout "
                            + vehicle.layout().word(),
                    "",
                    "remove it",
                    "layout");
        }
        beam(twist.frontAxle(), path + ".front axle");
        beam(twist.rearAxle(), path + ".rear axle");
    }

    private void beam(String name, String at) {
        vehicle.axle(name)
                .filter(axle -> axle.kind() == AxleKind.SINGLE)
                .ifPresent(axle -> faults.add(
                        at,
                        name,
                        "is a single wheel, which has no roll to twist with",
                        "an axle with two wheels",
                        "remove the connection"));
    }

    private void axles(String front, String rear, String path) {
        List<String> names = AxlesCheck.names(vehicle);
        faults.known(path + ".front axle", front, names, "axle");
        faults.known(path + ".rear axle", rear, names, "axle");
        if (names.contains(front) && names.contains(rear) && names.indexOf(front) >= names.indexOf(rear)) {
            faults.add(
                    path + ".rear axle",
                    rear,
                    front.equals(rear) ? "is the front axle as well" : "is ahead of the front axle " + front,
                    "an axle behind " + front,
                    front.equals(rear) ? "write the axle at the other end" : "exchange the two",
                    "axles",
                    path + ".front axle");
        }
    }

    private void sideSpring(SideSpring side, String path) {
        axles(side.frontAxle(), side.rearAxle(), path);
        if (vehicle.layout().rolls()
                && side.attachment().position() != Position.CENTRE
                && side.attachment().apart().isEmpty()) {
            faults.add(
                    path + ".apart",
                    "",
                    "is missing",
                    "the distance from the left one to the right one",
                    "add 'apart: ...' to the side spring",
                    path + ".side",
                    "layout");
        }
        faults.positive(path + ".apart", side.attachment().apart());
        if (side.tips().isEmpty() || side.tips().size() > 2) {
            faults.add(
                    path + ".tips",
                    "",
                    "has " + side.tips().size() + " tips",
                    "one, or two of a spring clamped in its middle",
                    "leave out the others");
        }
        for (int i = 0; i < side.tips().size(); i++) {
            Tip tip = side.tips().get(i);
            String at = path + ".tips[" + i + "]";
            between(side, tip.behindFrontAxle(), path, at + ".behind front axle");
            new SpringLawCheck(at, faults, LoadCaseCheck.names(vehicle))
                    .run(tip.kind(), tip.elasticity(), tip.damping(), tip.friction(), tip.stages());
        }
    }

    private void between(SideSpring side, Measure place, String path, String at) {
        Optional<Axle> front = vehicle.axle(side.frontAxle());
        Optional<Axle> rear = vehicle.axle(side.rearAxle());
        if (front.isEmpty() || rear.isEmpty()) {
            return;
        }
        Measure from = front.get().behindFrontAxle();
        Measure to = rear.get().behindFrontAxle();
        if (place.value() < from.value() || place.value() > to.value()) {
            faults.add(
                    at,
                    place.written(),
                    "is not between the two axles",
                    "a place from " + from.written() + " to " + to.written() + " behind the front axle",
                    "measure from the front axle of the vehicle",
                    "axles",
                    path + ".front axle",
                    path + ".rear axle");
        }
    }

    private void interconnection(Interconnection joined, String path) {
        if (joined.terms().size() < 2) {
            faults.add(
                    path + ".terms",
                    "",
                    "has fewer than two terms",
                    "the travels that are joined",
                    "add the other travels, or make it a spring of an axle");
        }
        for (int i = 0; i < joined.terms().size(); i++) {
            term(joined.terms().get(i), path + ".terms[" + i + "]");
        }
        new SpringLawCheck(path, faults, LoadCaseCheck.names(vehicle))
                .law(joined.elasticity(), joined.damping(), joined.friction(), joined.stages());
    }

    private void term(Term term, String path) {
        if (term.weight() == 0) {
            faults.add(
                    path + ".weight",
                    "0",
                    "leaves the term without effect",
                    "a number other than 0",
                    "remove the term");
        }
        if (term instanceof Term.Corner corner) {
            end(corner.axle(), corner.side(), corner.apart(), path + ".corner");
        } else if (term instanceof Term.Unsprung unsprung) {
            end(unsprung.axle(), unsprung.side(), unsprung.apart(), path + ".unsprung");
        }
    }

    private void end(String axle, Position side, Optional<Measure> apart, String path) {
        faults.known(path + ".axle", axle, AxlesCheck.names(vehicle), "axle");
        faults.positive(path + ".apart", apart);
        if (side == Position.PAIR) {
            faults.add(
                    path + ".side",
                    side.word(),
                    "is two places",
                    "left, right or centre",
                    "write a term for each side");
        }
        boolean beam = vehicle.axle(axle).map(Axle::kind).orElse(AxleKind.SINGLE) == AxleKind.BEAM;
        if (beam && side != Position.CENTRE && apart.isEmpty()) {
            faults.add(
                    path + ".apart",
                    "",
                    "is missing",
                    "the distance from the left place to the right one",
                    "add 'apart: ...' to it",
                    path + ".side",
                    "axles");
        }
    }
}
