package org.ridewright.io;

import java.util.Arrays;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.PathKind;
import org.ridewright.vehicle.Tyre;
import org.ridewright.vehicle.Wheel;

/** Reads {@code wheels}, or {@code wheel} of an axle that has but one. */
final class WheelReader {
    private static final String[] KEYS = {
        "diameter",
        "tyre",
        "path",
        "footprint",
        "contact rate",
        "contact damping",
        "contact damping ratio",
        "restitution",
        "spin inertia"
    };
    private static final Words<Tyre> TYRES = Words.of("a tyre", Arrays.asList(Tyre.values()), Tyre::word);
    private static final Words<PathKind> PATHS =
            Words.of("a wheel path", Arrays.asList(PathKind.values()), PathKind::word);
    private static final double FOOTPRINT_SHARE = 0.3;

    private WheelReader() {}

    static Wheel read(Part axle) {
        if (axle.has("wheel")) {
            axle.reading().alias(axle.path("wheels"), axle.path("wheel"));
        }
        Part wheel = axle.partOrMissing(axle.atMostOneOf("wheels", "wheel").orElse("wheels"), "a wheel", KEYS);
        Measure diameter = wheel.measure("diameter", QuantityKind.LENGTH);
        Tyre tyre = wheel.word("tyre", TYRES);
        PathKind path =
                wheel.wordIfAny("path", PATHS).orElse(tyre == Tyre.PNEUMATIC ? PathKind.FOOTPRINT : PathKind.DISC);
        return new Wheel(
                diameter,
                tyre,
                path,
                footprint(wheel, tyre, path, diameter),
                wheel.measureIfAny("contact rate", QuantityKind.RATE),
                new DampingReader("contact damping", "contact damping ratio", "restitution").read(wheel),
                wheel.measureOrZero("spin inertia", QuantityKind.INERTIA));
    }

    /** The length of the footprint; of a pneumatic tyre estimated where it is needed and not given. */
    private static Optional<Measure> footprint(Part wheel, Tyre tyre, PathKind path, Measure diameter) {
        boolean needed = path == PathKind.FOOTPRINT || path == PathKind.DISC_AND_FOOTPRINT;
        if (wheel.has("footprint") || !needed || tyre != Tyre.PNEUMATIC) {
            return wheel.measureIfAny("footprint", QuantityKind.LENGTH);
        }
        return Optional.of(Measure.estimated(
                FOOTPRINT_SHARE * diameter.value(),
                QuantityKind.LENGTH,
                "0.3 of the wheel diameter (common practice)"));
    }
}
