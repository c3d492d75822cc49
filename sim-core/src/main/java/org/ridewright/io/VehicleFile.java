package org.ridewright.io;

import java.nio.file.Path;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.vehicle.check.VehicleCheck;

/** Vehicle files; their language is laid down in {@code docs/vehicle-file.md}. */
public final class VehicleFile {
    private VehicleFile() {}

    /**
     * The vehicle that a file describes.
     *
     * @param file YAML, or JSON if its name ends in {@code .json}
     * @throws InputException if it cannot be read, is not a vehicle file, or describes what no vehicle can be; with everything found
     *     wrong
     */
    public static Vehicle read(Path file) {
        Reading reading = new Reading(file.toString());
        Vehicle vehicle = VehicleReader.read(TreeFile.read(file, reading), reading);
        reading.faults(VehicleCheck.faults(vehicle));
        reading.throwIfAny();
        return vehicle;
    }
}
