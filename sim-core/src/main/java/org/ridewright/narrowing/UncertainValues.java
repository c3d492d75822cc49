package org.ridewright.narrowing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ridewright.quantity.Adjustable;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.Spread;
import org.ridewright.vehicle.Vehicle;

/** All values of a vehicle file that are not known exactly. */
public final class UncertainValues {
    /** Not a property of the vehicle but a warning. */
    private static final String TOP_SPEED = "top speed";

    private UncertainValues() {}

    /** Values that the file gives as estimated or with a tolerance, in its order, then those that it leaves out and the program estimates. */
    public static List<UncertainValue> of(Adjustable<Vehicle> file) {
        List<UncertainValue> all = new ArrayList<>();
        for (NamedValue value : file.values()) {
            value.measure()
                    .filter(measure -> isUncertain(measure) && !value.path().equals(TOP_SPEED))
                    .ifPresent(measure -> all.add(written(file, value.path(), measure)));
        }
        Set<String> given = file.values().stream().map(NamedValue::path).collect(Collectors.toSet());
        all.addAll(LeftOut.of(file.asWritten(), given));
        return List.copyOf(all);
    }

    private static boolean isUncertain(Measure measure) {
        boolean guess = measure.provenance() == Provenance.ESTIMATED && measure.value() != 0;
        return measure.tolerance() > 0 || guess;
    }

    private static UncertainValue written(Adjustable<Vehicle> file, String path, Measure measure) {
        boolean usual = measure.tolerance() == 0;
        Measure known = usual ? UsualTolerance.of(measure) : measure;
        Spread spread = Spread.of(known);
        return new UncertainValue(
                path,
                known,
                measure.provenance() == Provenance.ESTIMATED
                        ? UncertainValue.Knowledge.ESTIMATED
                        : UncertainValue.Knowledge.STATED,
                usual,
                z -> file.with(Map.of(path, Spread.written(known.kind(), spread.at(z)))));
    }
}
