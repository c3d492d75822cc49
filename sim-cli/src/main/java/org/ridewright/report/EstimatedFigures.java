package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.report.DescriptionRows.Entry;
import org.ridewright.suspension.SpringLaws;
import org.ridewright.vehicle.AxisHeight;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleFigures;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.BodyFigures;
import org.ridewright.vehicle.Connection;
import org.ridewright.vehicle.Damper;
import org.ridewright.vehicle.Damping;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.Friction;
import org.ridewright.vehicle.FurtherMotions.Motion;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.MountHeights;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.SpringKind;
import org.ridewright.vehicle.SwayFigures;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Contact;

/** What the run took for figures that a vehicle's file does not give, each with its rule. */
final class EstimatedFigures {
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
        vehicle.connections().forEach(connection -> connection(rows, connection));
        if (vehicle.further().has(Motion.SWAY) && !SwayFigures.byAxles(vehicle)) {
            if (vehicle.further().swayFrequency().isEmpty()) {
                add(rows, "sway as used › frequency", SwayFigures.frequency(vehicle));
            }
            if (vehicle.further().swayDampingRatio().isEmpty()) {
                add(rows, "sway as used › damping ratio", SwayFigures.dampingRatio(vehicle));
            }
        }
        return rows;
    }

    private static void axle(List<Entry> rows, Vehicle vehicle, Axle axle) {
        String path = axle.title() + " as used › ";
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
        if (vehicle.layout() != Layout.QUARTER) {
            add(rows, path + "height of spring mounts", MountHeights.at(axle));
        }
        if (vehicle.layout().rolls() && vehicle.body().rollAxis() instanceof AxisHeight.AtAxles) {
            add(rows, path + "height of roll axis", MountHeights.rollAxisAt(axle));
        }
        for (Spring spring : axle.springs()) {
            spring(rows, path + spring.name(), spring.kind(), spring.elasticity(), spring.friction());
        }
        for (Damper damper : axle.dampers()) {
            if (damper.friction().value() > 0 && damper.lockedRate().isEmpty()) {
                add(rows, path + damper.name() + " › locked rate", SpringLaws.defaultLockedRate(damper));
            }
        }
    }

    private static void connection(List<Entry> rows, Connection connection) {
        String path = connection.name() + " as used";
        if (connection instanceof Connection.UndercarriageTwist twist) {
            lockedMultiple(rows, path, twist.friction());
        } else if (connection instanceof Connection.SideSpring side) {
            for (int i = 0; i < side.tips().size(); i++) {
                Connection.Tip tip = side.tips().get(i);
                spring(rows, path + " › tip " + (i + 1), tip.kind(), tip.elasticity(), tip.friction());
            }
        } else if (connection instanceof Connection.Interconnection sum) {
            spring(rows, path, SpringKind.COIL, sum.elasticity(), sum.friction());
        }
    }

    /** The rate that dimensions or a gas come to, and the locked rate that was not measured. */
    private static void spring(
            List<Entry> rows, String path, SpringKind kind, Elasticity elasticity, Friction friction) {
        if (!(elasticity instanceof Elasticity.Rate) && !(elasticity instanceof Elasticity.Table)) {
            String rule = elasticity instanceof Elasticity.GasColumn
                    ? "rate of the gas at its stated load"
                    : "rate from the spring's dimensions";
            add(
                    rows,
                    path + " › rate",
                    Measure.computed(SpringLaws.workingRate(kind, elasticity), QuantityKind.RATE, rule));
        }
        lockedMultiple(rows, path, friction);
    }

    private static void lockedMultiple(List<Entry> rows, String path, Friction friction) {
        boolean slides = friction.present() && friction.envelopeLength().isEmpty();
        if (slides && friction.lockedRate() instanceof Friction.LockedRate.NotGiven) {
            add(rows, path + " › locked rate over elastic rate", SpringLaws.defaultLockedMultiple());
        }
    }

    private static void add(List<Entry> rows, String path, Measure measure) {
        rows.add(new Entry(path, measure, measure.written()));
    }
}
