package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.report.DescriptionRows.Entry;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleFigures;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.BodyFigures;
import org.ridewright.vehicle.Damper;
import org.ridewright.vehicle.Damping;
import org.ridewright.vehicle.Friction;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Contact;

/** What the run took for figures that a vehicle's file does not give, each with its rule. */
final class EstimatedFigures {
    private static final double LOCKED_MULTIPLE = 2;
    private static final double LOCKED_TRAVEL = 1e-3;

    private EstimatedFigures() {}

    static List<Entry> of(Vehicle vehicle) {
        List<Entry> rows = new ArrayList<>();
        for (Entry entry : DescriptionRows.measures(BodyFigures.of(vehicle), "body as used")) {
            boolean asked = vehicle.layout().rolls() || !entry.path().endsWith("roll inertia");
            boolean pitches = vehicle.layout().pitches() || !entry.path().endsWith("pitch inertia");
            if (asked && pitches) {
                rows.add(entry);
            }
        }
        vehicle.axles().forEach(axle -> axle(rows, vehicle, axle));
        return rows;
    }

    private static void axle(List<Entry> rows, Vehicle vehicle, Axle axle) {
        String path = axle.name() + " axle as used › ";
        boolean beam = vehicle.layout().rolls() && axle.kind() == AxleKind.BEAM;
        if (beam && axle.rollInertia().isEmpty()) {
            add(rows, path + "roll inertia", AxleFigures.rollInertia(axle));
        }
        if (axle.wheel().contactRate().isEmpty()) {
            add(rows, path + "contact rate", Contact.defaultRate(axle.wheel().tyre()));
        }
        if (axle.wheel().contactDamping() instanceof Damping.NotGiven) {
            add(
                    rows,
                    path + "contact damping ratio",
                    Contact.defaultDampingRatio(axle.wheel().tyre()));
        }
        for (Spring spring : axle.springs()) {
            if (spring.friction().present() && spring.friction().lockedRate() instanceof Friction.LockedRate.NotGiven) {
                add(
                        rows,
                        path + spring.name() + " › locked rate over elastic rate",
                        Measure.estimated(
                                LOCKED_MULTIPLE,
                                QuantityKind.RATIO,
                                "friction adds twice the elastic rate until the leaves slide; 0.5 to 6 occur"));
            }
        }
        for (Damper damper : axle.dampers()) {
            if (damper.friction().value() > 0 && damper.lockedRate().isEmpty()) {
                add(
                        rows,
                        path + damper.name() + " › locked rate",
                        Measure.estimated(
                                damper.friction().value() / LOCKED_TRAVEL,
                                QuantityKind.RATE,
                                "friction reached after 1 mm"));
            }
        }
    }

    private static void add(List<Entry> rows, String path, Measure measure) {
        rows.add(new Entry(path, measure, measure.written()));
    }
}
