package org.ridewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.BodyFigures;
import org.ridewright.vehicle.Connection;
import org.ridewright.vehicle.MountHeights;
import org.ridewright.vehicle.Outline;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.SpringKind;
import org.ridewright.vehicle.Vehicle;

/**
 * What a sketch is drawn from, in metres: behind the front axle, left of the centre line, above the ground.
 *
 * @param axles one or more, from front to rear
 * @param seats each place once in side view
 * @param hitch where shafts or a drawbar hold the body
 * @param body box of the body
 */
record Proportions(List<Shape> axles, List<Sitting> seats, Optional<Place> hitch, Box body) {
    private static final double USUAL_TRACK = 1.3;
    private static final double BESIDE = 0.3;
    private static final double SAME_PLACE = 0.05;

    /** An axle; the track is 0 of a single wheel, and {@code springsApart} where each spring acts at its wheel. */
    record Shape(
            String name,
            double x,
            double track,
            double radius,
            double springsApart,
            double mounts,
            boolean ownSprings,
            SpringKind spring) {}

    /** A seat and where its feet rest. */
    record Sitting(String name, Place seat, Place feet) {}

    /** Length from {@code front}, width and height from {@code floor}. */
    record Box(double front, double rear, double width, double floor, double top) {}

    static Proportions of(Vehicle vehicle) {
        List<Shape> axles =
                vehicle.axles().stream().map(axle -> shape(vehicle, axle)).toList();
        List<Sitting> seats = new ArrayList<>();
        for (Seat seat : vehicle.seats()) {
            boolean known = seats.stream().anyMatch(s -> samePlace(s.seat(), seat.place()));
            if (!known) {
                Place feet = seat.feet().orElse(seat.place());
                seats.add(new Sitting(seat.name(), seat.place(), feet));
            }
        }
        Optional<Place> hitch = vehicle.hitches().stream().findFirst().map(h -> h.place());
        return new Proportions(axles, seats, hitch, box(vehicle, axles, seats));
    }

    private static boolean samePlace(Place a, Place b) {
        return Math.hypot(a.x() - b.x(), a.z() - b.z()) < SAME_PLACE;
    }

    /** A light four-wheeled vehicle, for a sheet without one. */
    static Proportions usual() {
        Shape front = new Shape("front", 0, 1.3, 0.5, 0.85, 0.72, true, SpringKind.FULL_ELLIPTIC);
        Shape rear = new Shape("rear", 1.7, 1.3, 0.6, 0.85, 0.82, true, SpringKind.FULL_ELLIPTIC);
        Sitting seat = new Sitting("driver", Place.of(0.95, -0.25, 1.42), Place.of(0.45, -0.25, 1.0));
        Place shafts = Place.of(-1.0, 0, 0.95);
        return new Proportions(
                List.of(front, rear), List.of(seat), Optional.of(shafts), new Box(-0.25, 2.0, 1.0, 0.9, 1.25));
    }

    private static Shape shape(Vehicle vehicle, Axle axle) {
        boolean single = axle.kind() == AxleKind.SINGLE || axle.track().isEmpty();
        double track = single ? 0 : axle.track().get().value();
        double apart = axle.springs().stream()
                .flatMap(s -> s.attachment().apart().stream())
                .mapToDouble(Measure::value)
                .findFirst()
                .orElseGet(() -> sideSpringsApart(vehicle).orElse(0));
        SpringKind kind = axle.springs().stream().map(Spring::kind).findFirst().orElse(SpringKind.HALF_ELLIPTIC);
        return new Shape(
                axle.name(),
                axle.behindFrontAxle().value(),
                track,
                axle.wheel().radius(),
                apart,
                MountHeights.at(axle).value(),
                !axle.springs().isEmpty(),
                kind);
    }

    private static OptionalDouble sideSpringsApart(Vehicle vehicle) {
        return vehicle.connections().stream()
                .filter(Connection.SideSpring.class::isInstance)
                .flatMap(c -> ((Connection.SideSpring) c).attachment().apart().stream())
                .mapToDouble(Measure::value)
                .findFirst();
    }

    private static Box box(Vehicle vehicle, List<Shape> axles, List<Sitting> seats) {
        BodyFigures figures = BodyFigures.of(vehicle);
        double first = axles.get(0).x();
        double last = axles.get(axles.size() - 1).x();
        double mounts = axles.stream().mapToDouble(Shape::mounts).max().orElseThrow();
        Optional<Outline> outline = vehicle.body().outline();
        double length = outline.map(o -> o.length().value()).orElse(last - first + 2 * BESIDE);
        double middle = axles.size() > 1
                ? (first + last) / 2
                : figures.behindFrontAxle().value();
        double width = outline.map(o -> o.width().value())
                .orElse(0.8 * axles.stream().mapToDouble(Shape::track).max().orElse(USUAL_TRACK));
        double height = outline.map(o -> o.height().value()).orElse(0.35);
        double feet = seats.stream().mapToDouble(s -> s.feet().z()).min().orElse(mounts + 0.1);
        double floor = Math.min(Math.max(feet - 0.05, 0.15), mounts + 0.15);
        return new Box(middle - length / 2, middle + length / 2, Math.max(width, 0.3), floor, floor + height);
    }

    /** Widest distance of two wheels. */
    double greatestTrack() {
        return axles.stream().mapToDouble(Shape::track).max().orElse(0);
    }

    /** From the foremost to the hindmost thing drawn. */
    double[] length() {
        double from = Math.min(body.front(), hitch.map(h -> -h.x()).orElse(body.front()));
        double to = body.rear();
        for (Shape axle : axles) {
            from = Math.min(from, axle.x() - axle.radius());
            to = Math.max(to, axle.x() + axle.radius());
        }
        for (Sitting sitting : seats) {
            from = Math.min(from, Math.min(-sitting.seat().x(), -sitting.feet().x()) - BESIDE);
            to = Math.max(to, -sitting.seat().x() + BESIDE);
        }
        return new double[] {from, to};
    }

    /** Height of the highest thing drawn. */
    double height() {
        double top = body.top();
        for (Shape axle : axles) {
            top = Math.max(top, 2 * axle.radius());
        }
        for (Sitting sitting : seats) {
            top = Math.max(top, sitting.seat().z() + 0.4);
        }
        return top;
    }
}
