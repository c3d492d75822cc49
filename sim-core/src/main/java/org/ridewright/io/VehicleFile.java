package org.ridewright.io;

import java.nio.file.Path;
import java.util.Optional;
import org.ridewright.ride.StandingCheck;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.vehicle.check.VehicleCheck;

/** Vehicle files; their language is laid down in {@code docs/vehicle-file.md}. */
public final class VehicleFile {
    private VehicleFile() {}

    /**
     * The vehicle that a file describes.
     *
     * @param file YAML, or JSON if its name ends in {@code .json}
     * @throws InputException if it cannot be read, is not a vehicle file, or describes what no vehicle can be, or none that can stand on
     *     its springs; with everything found wrong
     */
    public static Vehicle read(Path file) {
        return VehicleDocument.read(file).asWritten();
    }

    /** @throws InputException if the file cannot be read, or is no vehicle file */
    static Node tree(Path file, Reading reading) {
        Node top = TreeFile.read(file, reading, FileKind.VEHICLE);
        if (FileKind.told(top).equals(Optional.of(FileKind.SCENARIO))) {
            reading.problem(
                    top,
                    "",
                    "this is a scenario file",
                    "a vehicle file",
                    "name one of the vehicle files that it names");
            throw new InputException(reading.problems());
        }
        if (FileKind.told(top).equals(Optional.of(FileKind.MEASUREMENTS))) {
            reading.problem(
                    top, "", "this is a measurements file", "a vehicle file", "name the vehicle file that it names");
            throw new InputException(reading.problems());
        }
        return top;
    }

    /** @throws InputException if the tree describes no vehicle, or one that cannot be */
    static Vehicle described(Node top, Reading reading) {
        Vehicle vehicle = VehicleReader.read(top, reading);
        reading.faults(VehicleCheck.faults(vehicle));
        reading.throwIfAny();
        reading.faults(StandingCheck.faults(vehicle));
        reading.throwIfAny();
        return vehicle;
    }
}
