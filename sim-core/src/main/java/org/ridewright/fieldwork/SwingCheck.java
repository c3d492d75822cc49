package org.ridewright.fieldwork;

import org.ridewright.fieldwork.SwingTest.Axis;
import org.ridewright.fieldwork.SwingTest.Hung;
import org.ridewright.fieldwork.SwingTest.Part;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.check.Faults;

/** Judges what was hung up and swung. */
record SwingCheck(Names names, Faults faults) {
    void run(String path, SwingTest swing) {
        if (swing.of() instanceof Part.WholeAxle whole) {
            names.axle(path + ".axle", whole.axle());
        } else if (swing.of() instanceof Part.OneWheel wheel) {
            names.axle(path + ".axle", wheel.axle());
        }
        boolean wheel = swing.of() instanceof Part.OneWheel;
        if (swing.axis() == Axis.SPIN && !wheel) {
            faults.add(
                    path + ".about",
                    swing.axis().word(),
                    "is an axis of a wheel",
                    "roll, pitch or yaw",
                    "choose one of these",
                    path + ".of");
        }
        Bounds bounds = new Bounds(faults);
        boolean good = bounds.mass(path + ".mass", swing.mass());
        good &= bounds.time(path + ".in", swing.time());
        if (lengths(path, swing.hung()) && good) {
            possible(path, swing);
        }
    }

    /** A pendulum of that arm cannot swing faster than a point at its end; nothing on wires can be without inertia. */
    private void possible(String path, SwingTest swing) {
        Measure inertia = SwungInertia.of(swing);
        if (!(inertia.value() > 0)) {
            double least = 2
                    * Math.PI
                    * Math.sqrt(swing.hung().lengths().get(0).value() / SwungInertia.GRAVITY)
                    * swing.swings();
            faults.add(
                    path + ".in",
                    swing.time().written(),
                    "is too short: even a point at the end of that arm takes longer",
                    "more than " + Faults.plain(least) + " s",
                    "count there and back as one swing",
                    path + ".swings",
                    path + ".arm");
        }
    }

    private boolean lengths(String path, Hung hung) {
        if (hung instanceof Hung.OnPivot pivot) {
            return positive(path + ".arm", pivot.arm());
        } else if (hung instanceof Hung.OnTwoWires wires) {
            boolean good = positive(path + ".wire", wires.wire());
            good &= positive(path + ".apart", wires.apart());
            good &= wires.apartBelow()
                    .map(d -> positive(path + ".apart below", d))
                    .orElse(true);
            double aside = (wires.apart().value()
                            - wires.apartBelow().orElse(wires.apart()).value())
                    / 2;
            return good && reaches(path, wires.wire(), aside);
        }
        Hung.OnThreeWires wires = (Hung.OnThreeWires) hung;
        boolean good = positive(path + ".wire", wires.wire());
        good &= positive(path + ".radius", wires.radius());
        good &= wires.radiusBelow()
                .map(r -> positive(path + ".radius below", r))
                .orElse(true);
        return good
                && reaches(
                        path,
                        wires.wire(),
                        wires.radius().value()
                                - wires.radiusBelow().orElse(wires.radius()).value());
    }

    private boolean positive(String path, Measure length) {
        return new Bounds(faults).length(path, length);
    }

    private boolean reaches(String path, Measure wire, double aside) {
        boolean reaches = wire.value() > Math.abs(aside);
        if (!reaches) {
            faults.add(
                    path + ".wire",
                    wire.written(),
                    "does not reach from above to below",
                    "more than " + Faults.plain(Math.abs(aside)) + " m",
                    "check the unit");
        }
        return reaches;
    }
}
