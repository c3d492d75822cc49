package org.ridewright.vehicle.check;

import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Connection;
import org.ridewright.vehicle.Hitch;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.Vehicle;

/**
 * Looks for values no vehicle can have, for references to nothing, and for parts that a layout needs or cannot have. What shows
 * itself only once the vehicle stands on its springs is not judged here.
 */
public final class VehicleCheck {
    private static final double FASTEST = 70;

    private VehicleCheck() {}

    /** Everything wrong with the vehicle; none if it can be simulated as far as can be told from its description. */
    public static List<Fault> faults(Vehicle vehicle) {
        Faults faults = new Faults();
        vehicle.topSpeed().ifPresent(speed -> {
            faults.positive("top speed", speed);
            if (speed.value() > 0) {
                faults.within("top speed", speed, 0, FASTEST, "check the unit");
            }
        });
        names(vehicle, faults);
        new BodyCheck(vehicle, faults).run();
        new AxlesCheck(vehicle, faults).run();
        new ConnectionCheck(vehicle, faults).run();
        new HitchCheck(vehicle, faults).run();
        new SeatCheck(vehicle, faults).run();
        new LoadCaseCheck(vehicle, faults).run();
        new FurtherMotionsCheck(vehicle, faults).run();
        return faults.found();
    }

    private static void names(Vehicle vehicle, Faults faults) {
        distinct(vehicle.axles().stream().map(Axle::name).toList(), "axles", "axle", faults);
        distinct(vehicle.connections().stream().map(Connection::name).toList(), "connections", "connection", faults);
        distinct(vehicle.hitches().stream().map(Hitch::name).toList(), "hitches", "hitch", faults);
        distinct(vehicle.seats().stream().map(Seat::name).toList(), "seats", "seat", faults);
        distinct(vehicle.loadCases().stream().map(LoadCase::name).toList(), "load cases", "load case", faults);
    }

    /** Names of the items of a list must differ. */
    static void distinct(List<String> names, String list, String called, Faults faults) {
        List<String> paths = IntStream.range(0, names.size())
                .mapToObj(i -> list + "[" + i + "].name")
                .toList();
        faults.distinct(names, paths, called);
    }
}
