package org.ridewright.dynamics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.ridewright.vehicle.BodyFigures;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.LoadCase.Aboard;
import org.ridewright.vehicle.Outline;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.RearBody;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.Vehicle;

/**
 * The sprung body with everything that a load case puts rigidly aboard: masses, centres and inertias by the parallel-axis theorem.
 *
 * @param front the body, or its part ahead of the joint
 * @param rear the part behind the joint, if the body twists
 * @param occupants on sprung seats and rigid ones
 */
record LoadedBody(RigidPart front, Optional<RigidPart> rear, List<Occupant> occupants) {

    /** A rigid part: mass (kg), centre of mass (m), inertias about it (kg·m²). */
    record RigidPart(
            double mass, double x, double y, double z, double rollInertia, double pitchInertia, double product) {}

    static LoadedBody of(Vehicle vehicle, LoadCase load) {
        BodyFigures body = BodyFigures.of(vehicle);
        Sum front = new Sum();
        front.add(
                body.mass().value(),
                -body.behindFrontAxle().value(),
                body.leftOfCentre().value(),
                body.aboveGround().value(),
                body.rollInertia().value(),
                body.pitchInertia().value(),
                body.productOfInertia().value());
        Optional<RearBody> rearBody = vehicle.body().rearBody();
        Sum rear = new Sum();
        rearBody.ifPresent(r -> rear.add(
                r.mass().value(),
                r.centre().x(),
                r.centre().y(),
                r.centre().z(),
                r.rollInertia().value(),
                r.pitchInertia().value(),
                0));
        List<Occupant> occupants = new ArrayList<>();
        for (Aboard aboard : load.aboard()) {
            if (aboard instanceof Aboard.Cargo cargo) {
                part(front, rear, rearBody, cargo.place()).addBox(cargo.mass().value(), cargo.place(), cargo.outline());
            } else if (aboard instanceof Aboard.Person person) {
                Seat seat = vehicle.seat(person.seat())
                        .orElseThrow(() -> new IllegalArgumentException("no seat named '" + person.seat() + "'"));
                Occupant occupant = Occupant.of(person.name(), person.mass().value(), seat);
                occupants.add(occupant);
                if (occupant.rigidMass() > 0) {
                    part(front, rear, rearBody, seat.place()).addPoint(occupant.rigidMass(), seat.place());
                }
                Place feet = seat.feet().orElse(seat.place());
                part(front, rear, rearBody, feet).addPoint(occupant.feetMass(), feet);
            }
        }
        addEmptySeats(vehicle, occupants, place -> part(front, rear, rearBody, place));
        return new LoadedBody(front.part(), rearBody.map(r -> rear.part()), List.copyOf(occupants));
    }

    private static void addEmptySeats(Vehicle vehicle, List<Occupant> occupants, Function<Place, Sum> part) {
        for (Seat seat : vehicle.seats()) {
            if (occupants.stream().noneMatch(o -> o.seat().name().equals(seat.name()))) {
                double mass = seat.stages().stream()
                        .mapToDouble(s -> s.mass().value())
                        .sum();
                part.apply(seat.place()).addPoint(mass, seat.place());
            }
        }
    }

    private static Sum part(Sum front, Sum rear, Optional<RearBody> rearBody, Place place) {
        return rearBody.isPresent()
                        && place.behindFrontAxle().value()
                                > rearBody.get().joint().value()
                ? rear
                : front;
    }

    List<RigidPart> parts() {
        return rear.map(r -> List.of(front, r)).orElse(List.of(front));
    }

    double mass() {
        return parts().stream().mapToDouble(RigidPart::mass).sum();
    }

    double x() {
        return parts().stream().mapToDouble(p -> p.mass() * p.x()).sum() / mass();
    }

    double y() {
        return parts().stream().mapToDouble(p -> p.mass() * p.y()).sum() / mass();
    }

    double z() {
        return parts().stream().mapToDouble(p -> p.mass() * p.z()).sum() / mass();
    }

    /** Moments of mass about the origin, from which centre and inertias follow. */
    private static final class Sum {
        private double m;
        private double mx;
        private double my;
        private double mz;
        private double xx;
        private double yy;
        private double zz;
        private double xy;
        private double ownRoll;
        private double ownPitch;

        void addPoint(double mass, Place place) {
            add(mass, place.x(), place.y(), place.z(), 0, 0, 0);
        }

        void addBox(double mass, Place place, Optional<Outline> outline) {
            double l = outline.map(o -> o.length().value()).orElse(0.0);
            double w = outline.map(o -> o.width().value()).orElse(0.0);
            double h = outline.map(o -> o.height().value()).orElse(0.0);
            add(mass, place.x(), place.y(), place.z(), mass * (w * w + h * h) / 12, mass * (l * l + h * h) / 12, 0);
        }

        void add(double mass, double x, double y, double z, double roll, double pitch, double product) {
            m += mass;
            mx += mass * x;
            my += mass * y;
            mz += mass * z;
            xx += mass * x * x;
            yy += mass * y * y;
            zz += mass * z * z;
            xy += mass * x * y + product;
            ownRoll += roll;
            ownPitch += pitch;
        }

        RigidPart part() {
            double x = mx / m;
            double y = my / m;
            double z = mz / m;
            double vertical = zz - m * z * z;
            return new RigidPart(
                    m,
                    x,
                    y,
                    z,
                    ownRoll + yy - m * y * y + vertical,
                    ownPitch + xx - m * x * x + vertical,
                    xy - m * x * y);
        }
    }
}
