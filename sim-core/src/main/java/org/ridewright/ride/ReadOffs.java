package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.Coordinates;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.PointMotion;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.ride.LinearReadOff.Source;
import org.ridewright.vehicle.Place;

/** The read-offs of a vehicle: of its coordinates, seats, named points, wheels and springs. */
final class ReadOffs {
    private final VehicleModel model;
    private final double[] rest;

    ReadOffs(VehicleModel model) {
        this.model = model;
        this.rest = model.rest().q();
    }

    /** Each coordinate from rest, its speed and acceleration. */
    List<ReadOff> coordinates() {
        List<ReadOff> list = new ArrayList<>();
        Coordinates coordinates = model.coordinates();
        for (int i = 0; i < coordinates.size(); i++) {
            String name = coordinates.names().get(i);
            String unit = coordinates.units().get(i);
            list.add(LinearReadOff.named(name, unit)
                    .plus(Source.DISPLACEMENT, i, 1)
                    .less(rest[i])
                    .build());
            list.add(LinearReadOff.named(name + " velocity", unit + "/s")
                    .plus(Source.VELOCITY, i, 1)
                    .build());
            list.add(LinearReadOff.named(name + " acceleration", unit + "/s²")
                    .plus(Source.ACCELERATION, i, 1)
                    .build());
        }
        return list;
    }

    /** Accelerations at a seat, x, y and z in this order. */
    List<ReadOff> seat(SeatPlace seat) {
        return accelerations(seat.name() + " seat", model.motionAt(seat.seat().place()), seat.rise());
    }

    /** Accelerations at the feet of a seat, x, y and z. */
    List<ReadOff> feet(SeatPlace seat) {
        Place place = seat.seat().feet().orElse(seat.seat().place());
        PointMotion motion = model.motionAt(place);
        return accelerations(seat.name() + " feet", motion, motion.rise());
    }

    /** Accelerations at the backrest of a seat, x, y and z, where its place is given. */
    Optional<List<ReadOff>> backrest(SeatPlace seat) {
        return seat.seat().backrest().map(place -> {
            PointMotion motion = model.motionAt(place);
            return accelerations(seat.name() + " backrest", motion, motion.rise());
        });
    }

    /** Vertical acceleration of the body below a seat. */
    ReadOff floor(SeatPlace seat) {
        return LinearReadOff.named(seat.name() + " floor vertical acceleration", "m/s²")
                .plusRow(
                        Source.ACCELERATION, model.motionAt(seat.seat().place()).rise())
                .build();
    }

    /** Motion at a named point: accelerations x, y, z, rise and its speed. */
    List<ReadOff> point(String name, Place place) {
        PointMotion motion = model.motionAt(place);
        List<ReadOff> list = new ArrayList<>(accelerations(name, motion, motion.rise()));
        list.add(LinearReadOff.named(name + " rise", "m")
                .plusRowFromRest(motion.rise(), rest)
                .build());
        list.add(LinearReadOff.named(name + " velocity", "m/s")
                .plusRow(Source.VELOCITY, motion.rise())
                .build());
        return list;
    }

    private List<ReadOff> accelerations(String name, PointMotion motion, double[] rise) {
        return List.of(
                LinearReadOff.named(name + " longitudinal acceleration", "m/s²")
                        .plusRow(Source.ACCELERATION, motion.longitudinal())
                        .plusRowFromRest(motion.longitudinalTilt(), rest)
                        .build(),
                LinearReadOff.named(name + " lateral acceleration", "m/s²")
                        .plusRow(Source.ACCELERATION, motion.lateral())
                        .plusRowFromRest(motion.lateralTilt(), rest)
                        .build(),
                LinearReadOff.named(name + " vertical acceleration", "m/s²")
                        .plusRow(Source.ACCELERATION, rise)
                        .build());
    }

    /** Of the body, as far as it rolls. */
    Optional<ReadOff> rollAcceleration() {
        return turn("body roll acceleration", model.coordinates().roll());
    }

    /** Of the body, as far as it pitches. */
    Optional<ReadOff> pitchAcceleration() {
        return turn("body pitch acceleration", model.coordinates().pitch());
    }

    private static Optional<ReadOff> turn(String name, int coordinate) {
        return coordinate < 0
                ? Optional.empty()
                : Optional.of(LinearReadOff.named(name, "rad/s²")
                        .plus(Source.ACCELERATION, coordinate, 1)
                        .build());
    }

    /** Speed of the undercarriage beyond that of steady travel; none where it travels steadily. */
    Optional<ReadOff> speedGained() {
        int surge = model.coordinates().surge();
        return surge < 0
                ? Optional.empty()
                : Optional.of(LinearReadOff.named("speed gained", "m/s")
                        .plus(Source.VELOCITY, surge, 1)
                        .build());
    }

    ReadOff wheelLoad(WheelPlace wheel) {
        return LinearReadOff.named(wheel.name() + " load", "N")
                .plus(Source.FORCE, wheel.element(), 1)
                .build();
    }

    ReadOff wheelPath(WheelPlace wheel) {
        return LinearReadOff.named(wheel.name() + " path", "m")
                .plus(Source.HEIGHT, wheel.input(), 1)
                .build();
    }

    /** Indices of the elements between axles, body and seats. */
    List<Integer> suspensionElements() {
        List<Integer> list = new ArrayList<>();
        for (int e = 0; e < model.equations().elements().size(); e++) {
            if (model.equations().elements().get(e).kind() != Element.Kind.CONTACT) {
                list.add(e);
            }
        }
        return list;
    }

    ReadOff travel(int element) {
        Element e = model.equations().elements().get(element);
        return LinearReadOff.named(e.name() + " travel", lengthUnit(e))
                .plus(Source.COMPRESSION, element, 1)
                .less(model.rest().compression()[element])
                .build();
    }

    ReadOff force(int element) {
        Element e = model.equations().elements().get(element);
        return LinearReadOff.named(e.name() + " force", forceUnit(e))
                .plus(Source.FORCE, element, 1)
                .build();
    }

    ReadOff friction(int element) {
        Element e = model.equations().elements().get(element);
        return LinearReadOff.named(e.name() + " friction", forceUnit(e))
                .plus(Source.FRICTION, element, 1)
                .build();
    }

    private static boolean turns(Element e) {
        return e.kind() == Element.Kind.ANTI_ROLL_BAR || e.kind() == Element.Kind.TWIST;
    }

    private static String lengthUnit(Element e) {
        return turns(e) ? "rad" : "m";
    }

    private static String forceUnit(Element e) {
        return turns(e) ? "N·m" : "N";
    }

    /** All that goes into the traces. */
    List<ReadOff> traces(List<Scenario.Point> points, Travel travel) {
        List<ReadOff> list = new ArrayList<>(coordinates());
        for (SeatPlace seat : model.seats()) {
            list.addAll(seat(seat));
            list.addAll(feet(seat));
        }
        for (Scenario.Point point : points) {
            list.addAll(point(point.name(), point.place()));
        }
        for (WheelPlace wheel : model.wheels()) {
            list.add(wheelLoad(wheel));
            list.add(wheelPath(wheel));
        }
        for (int e : suspensionElements()) {
            list.add(travel(e));
            list.add(force(e));
            if (model.equations().elements().get(e).law().friction().states() > 0) {
                list.add(friction(e));
            }
        }
        list.add(new Draught(model.wheels(), travel));
        return list;
    }
}
