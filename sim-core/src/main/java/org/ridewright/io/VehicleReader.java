package org.ridewright.io;

import java.util.Arrays;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.Vehicle;

/** Reads the top of a vehicle file. */
final class VehicleReader {
    private static final String[] KEYS = {
        "vehicle",
        "about",
        "layout",
        "top speed",
        "body",
        "axles",
        "connections",
        "hitches",
        "seats",
        "load cases",
        "coordinates",
        "held fore and aft",
        "pull",
        "sway frequency",
        "sway damping ratio",
        CalibrationBlock.KEY
    };
    private static final Words<Layout> LAYOUTS = Words.of("a layout", Arrays.asList(Layout.values()), Layout::word);

    /** Stands for a layout that could not be read, so that nothing is missed for its sake. */
    private static final Layout LEAST_DEMANDING = Layout.QUARTER;

    private VehicleReader() {}

    static Vehicle read(Node top, Reading reading) {
        Part vehicle = Part.of(reading, top, "a vehicle file", KEYS);
        Layout layout =
                vehicle.wordIfAny("layout", LAYOUTS).orElse(vehicle.has("layout") ? LEAST_DEMANDING : Layout.FULL);
        return new Vehicle(
                vehicle.text("vehicle", "its name"),
                vehicle.textIfAny("about", "a text").orElse(""),
                layout,
                vehicle.measureIfAny("top speed", QuantityKind.SPEED),
                new BodyReader(layout).read(vehicle),
                new AxleReader(layout).read(vehicle),
                new ConnectionReader(layout).read(vehicle),
                new HitchReader(layout).read(vehicle),
                new SeatReader(layout).read(vehicle),
                new LoadCaseReader(layout).read(vehicle),
                FurtherMotionsReader.read(vehicle));
    }
}
