package org.ridewright.ride;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.ridewright.io.VehicleFile;
import org.ridewright.vehicle.Vehicle;

/** Vehicles for tests: the demonstration fleet, and descriptions written in place. */
public final class Fleet {
    private static final Path FOLDER = Path.of("..", "scenarios", "vehicles");

    private Fleet() {}

    /** Every vehicle of the demonstration fleet. */
    public static List<Vehicle> all() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(f -> f.toString().endsWith(".yaml"))
                    .sorted()
                    .map(VehicleFile::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One vehicle of the demonstration fleet, by the name of its file. */
    public static Vehicle called(String name) {
        return VehicleFile.read(FOLDER.resolve(name + ".yaml"));
    }

    /** A vehicle described in YAML. */
    public static Vehicle described(String yaml) {
        try {
            Path file = Files.createTempFile("vehicle", ".yaml");
            try {
                Files.write(file, yaml.getBytes(StandardCharsets.UTF_8));
                return VehicleFile.read(file);
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Quarter vehicle of Automotive Chassis Engineering p. 209: 317.5 kg on 22 N/mm, 45.4 kg on 192 N/mm. */
    public static String quarter(double damping) {
        return """
                vehicle: quarter
                layout: quarter
                body: {mass: 317.5 kg}
                axles:
                  - name: wheel
                    behind front axle: 0 m
                    unsprung mass: 45.4 kg
                    wheels: {diameter: 0.6 m, tyre: pneumatic, path: disc, contact rate: 192 kN/m, contact damping: 0 N s/m}
                    springs: [{name: coil, kind: coil, rate: 22 kN/m}]
                    dampers: [{name: damper, bump: %s N s/m, rebound: %s N s/m}]
                load cases: [{name: empty, aboard: []}]
                """.formatted(damping, damping);
    }

    /** A vehicle on two beam axles that is the same left and right. */
    public static String symmetrical(String frictionOfSprings) {
        return """
                vehicle: twin
                body:
                  mass: 600 kg
                  centre of mass: {behind front axle: 0.9 m, above ground: 0.9 m}
                  roll inertia: 120 kg m2
                  pitch inertia: 350 kg m2
                  roll axis: 0.6 m
                  spring mount height: 0.6 m
                axles:
                  - name: front
                    kind: beam
                    behind front axle: 0 m
                    track: 1.4 m
                    unsprung mass: 90 kg
                    roll inertia: 30 kg m2
                    wheels: {diameter: 0.9 m, tyre: iron, path: disc, contact rate: 2 MN/m, contact damping ratio: 0.2}
                    springs: [{name: springs, kind: full-elliptic leaf, apart: 0.9 m, rate: 30 kN/m%s}]
                  - name: rear
                    kind: beam
                    behind front axle: 1.7 m
                    track: 1.4 m
                    unsprung mass: 110 kg
                    roll inertia: 36 kg m2
                    wheels: {diameter: 1.1 m, tyre: iron, path: disc, contact rate: 2 MN/m, contact damping ratio: 0.2}
                    springs: [{name: springs, kind: full-elliptic leaf, apart: 0.9 m, rate: 34 kN/m%s}]
                seats: [{name: box, at: {behind front axle: 0.3 m, above ground: 1.4 m}}]
                load cases:
                  - {name: driver, aboard: [{person: driver, mass: 75 kg, seat: box}]}
                """.formatted(frictionOfSprings, frictionOfSprings);
    }
}
