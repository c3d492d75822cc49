package org.ridewright.vehicle;

import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

/** Figures of an axle after what was not measured has been estimated. */
public final class AxleFigures {
    private AxleFigures() {}

    /**
     * Roll inertia of a beam axle with its wheels (kg·m²): as given, or two thirds of the mass at the wheels and one third spread evenly
     * between them, {@code I = 7/36 m T²} (common practice).
     */
    public static Measure rollInertia(Axle axle) {
        return axle.rollInertia().orElseGet(() -> {
            double track = axle.track().orElseThrow().value();
            return Measure.estimated(
                    axle.unsprungMass().value() * track * track * 7 / 36,
                    QuantityKind.INERTIA,
                    "7/36 × mass × track², two thirds of the mass at the wheels (common practice)");
        });
    }
}
