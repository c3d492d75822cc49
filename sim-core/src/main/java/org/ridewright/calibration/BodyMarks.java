package org.ridewright.calibration;

import org.ridewright.fieldwork.Heights.Mark;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.Vehicle;

/** Where marks are on a body. */
final class BodyMarks {
    private BodyMarks() {}

    static Place place(Vehicle vehicle, Mark mark) {
        if (mark instanceof Mark.At at) {
            return at.place();
        }
        Mark.Corner corner = (Mark.Corner) mark;
        Axle axle = axle(vehicle, corner.axle());
        return Place.of(axle.behindFrontAxle().value(), corner.side().sign() * halfSpread(axle), 0);
    }

    static Axle axle(Vehicle vehicle, String name) {
        return vehicle.axles().stream()
                .filter(a -> a.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no axle named '" + name + "'"));
    }

    /** Half the distance of the springs that stand furthest apart, or of the wheels where they stand there (m). */
    private static double halfSpread(Axle axle) {
        double apart = axle.springs().stream()
                .map(Spring::attachment)
                .flatMap(a -> a.apart().stream())
                .mapToDouble(Measure::value)
                .max()
                .orElseGet(() -> axle.track().map(Measure::value).orElse(0.0));
        return apart / 2;
    }
}
