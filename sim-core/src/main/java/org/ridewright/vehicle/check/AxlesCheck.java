package org.ridewright.vehicle.check;

import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Connection;
import org.ridewright.vehicle.Connection.Interconnection;
import org.ridewright.vehicle.Connection.SideSpring;
import org.ridewright.vehicle.Connection.Term;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.Vehicle;

/** Judges how many axles there are and how they follow one another, then each. */
record AxlesCheck(Vehicle vehicle, Faults faults) {
    /** Wheels on tracks that differ by more than their width can pass one another (m). */
    private static final double WIDEST_WHEEL = 0.3;

    void run() {
        List<Axle> axles = vehicle.axles();
        if (axles.isEmpty()) {
            faults.add("axles", "", "has no axle", "at least one", "describe each after a dash: - unsprung mass: ...");
            return;
        }
        number(axles);
        order(axles);
        for (int i = 0; i < axles.size(); i++) {
            new AxleCheck(vehicle, axles.get(i), "axles[" + i + "]", faults).run();
            carried(axles.get(i), i);
        }
    }

    private void number(List<Axle> axles) {
        Layout layout = vehicle.layout();
        if (axles.size() > 1 && !layout.pitches()) {
            faults.add(
                    "axles",
                    "",
                    "has " + axles.size() + " axles in the layout " + layout.word(),
                    "one axle",
                    layout == Layout.QUARTER
                            ? "leave one of them, or write layout: half in pitch"
                            : "leave one of them, or write layout: full",
                    "layout");
        }
        if (axles.size() == 1 && layout.pitches() && vehicle.hitches().isEmpty()) {
            faults.add(
                    "axles",
                    "",
                    "has one axle, and nothing holds the vehicle in pitch",
                    "a second axle or a hitch",
                    "describe its shafts, drawbar or hitch under hitches, or write layout: "
                            + (layout == Layout.FULL ? "half in roll" : "quarter"),
                    "layout",
                    "hitches");
        }
    }

    private void order(List<Axle> axles) {
        Measure first = axles.get(0).behindFrontAxle();
        if (first.value() != 0) {
            faults.add(
                    "axles[0].behind front axle",
                    first.written(),
                    "is not 0, but the first axle is the front axle",
                    "0 m",
                    "measure all places from the first axle");
        }
        for (int i = 1; i < axles.size(); i++) {
            double gap = axles.get(i).behindFrontAxle().value()
                    - axles.get(i - 1).behindFrontAxle().value();
            if (gap <= 0) {
                faults.add(
                        "axles[" + i + "].behind front axle",
                        axles.get(i).behindFrontAxle().written(),
                        gap == 0 ? "is the place of the axle before it" : "is ahead of the axle before it",
                        "axles from front to rear, each behind the one before",
                        gap == 0 ? "measure the distance between the two" : "put the axles in order from front to rear",
                        "axles[" + (i - 1) + "].behind front axle");
            } else {
                clear(axles.get(i - 1), axles.get(i), i);
            }
        }
    }

    /**
     * Wheels of one track cannot stand closer than their radii allow: centres on one ground at heights r, r' clear each other at a
     * distance of {@code 2 √(r r')}.
     */
    private void clear(Axle front, Axle rear, int i) {
        double least = 2 * Math.sqrt(front.wheel().radius() * rear.wheel().radius());
        Measure gap = rear.behindFrontAxle();
        double between = gap.value() - front.behindFrontAxle().value();
        boolean besideOneAnother = front.track().isPresent()
                && rear.track().isPresent()
                && Math.abs(front.track().get().value() - rear.track().get().value()) > 2 * WIDEST_WHEEL;
        if (between < least && !besideOneAnother) {
            faults.add(
                    "axles[" + i + "].behind front axle",
                    gap.written(),
                    "puts the wheels of this axle into those of the one before it, " + Faults.plain(between)
                            + " m ahead",
                    "at least " + Faults.plain(least) + " m between axles with such wheels",
                    "check the unit and the decimal point of the distance, and the diameters",
                    "axles[" + (i - 1) + "].behind front axle",
                    "axles[" + (i - 1) + "].wheels.diameter",
                    "axles[" + i + "].wheels.diameter",
                    "axles[" + (i - 1) + "].track",
                    "axles[" + i + "].track");
        }
    }

    /** Something must bear on each axle. */
    private void carried(Axle axle, int index) {
        if (axle.springs().isEmpty() && vehicle.connections().stream().noneMatch(c -> bearsOn(c, axle.name()))) {
            faults.add(
                    "axles[" + index + "].springs",
                    "",
                    "has no spring, and no connection bears on the axle",
                    "at least one spring",
                    "add springs: ... to the axle",
                    "axles[" + index + "].name",
                    "connections");
        }
    }

    private static boolean bearsOn(Connection connection, String axle) {
        if (connection instanceof SideSpring side) {
            return side.frontAxle().equals(axle) || side.rearAxle().equals(axle);
        }
        return connection instanceof Interconnection joined
                && joined.terms().stream().anyMatch(term -> axleOf(term).equals(axle));
    }

    private static String axleOf(Term term) {
        if (term instanceof Term.Corner corner) {
            return corner.axle();
        }
        return term instanceof Term.Unsprung unsprung ? unsprung.axle() : "";
    }

    static List<String> names(Vehicle vehicle) {
        return IntStream.range(0, vehicle.axles().size())
                .mapToObj(i -> vehicle.axles().get(i).name())
                .toList();
    }
}
