package org.ridewright.dynamics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.SpringLaws;
import org.ridewright.vehicle.Attachment;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Connection;
import org.ridewright.vehicle.Damping;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.Friction;
import org.ridewright.vehicle.SpringKind;
import org.ridewright.vehicle.Vehicle;

/** Elements that join more than one axle. */
final class ConnectionAssembly {
    private final Vehicle vehicle;
    private final Geometry geometry;
    private final ElementAssembly elements;

    ConnectionAssembly(Vehicle vehicle, Geometry geometry, ElementAssembly elements) {
        this.vehicle = vehicle;
        this.geometry = geometry;
        this.elements = elements;
    }

    void addAll() {
        for (Connection connection : vehicle.connections()) {
            if (connection instanceof Connection.UndercarriageTwist twist) {
                addTwist(twist);
            } else if (connection instanceof Connection.SideSpring spring) {
                addSideSpring(spring);
            } else if (connection instanceof Connection.Interconnection sum) {
                addInterconnection(sum);
            }
        }
        if (vehicle.layout().rolls()) {
            vehicle.body().rearBody().ifPresent(rear -> {
                double damping = rear.twistDamping().map(Measure::value).orElse(0.0);
                double[] front = geometry.bodyRoll(Double.POSITIVE_INFINITY);
                double[] back = geometry.bodyRoll(Double.NEGATIVE_INFINITY);
                elements.add(new Element(
                        "body twist",
                        Element.Kind.TWIST,
                        Geometry.combine(1, back, -1, front),
                        -1,
                        ForceLaw.spring(rear.twistRate().value()).withDamping(damping)));
            });
        }
    }

    private void addTwist(Connection.UndercarriageTwist twist) {
        if (!vehicle.layout().rolls()) {
            return;
        }
        double[] row = Geometry.combine(
                1, geometry.unsprungRoll(index(twist.frontAxle())), -1, geometry.unsprungRoll(index(twist.rearAxle())));
        ForceLaw law = SpringLaws.withDamping(ForceLaw.spring(twist.rate().value()), twist.damping());
        elements.add(new Element(
                twist.name(),
                Element.Kind.TWIST,
                row,
                -1,
                SpringLaws.withFriction(law, twist.rate().value(), twist.friction())));
    }

    /** {@code c = (1−λ)(z_f + y φ_f) + λ (z_r + y φ_r) − z_P(x_e, y)}, the tip at λ between the axles. */
    private void addSideSpring(Connection.SideSpring spring) {
        int front = index(spring.frontAxle());
        int rear = index(spring.rearAxle());
        Axle frontAxle = vehicle.axles().get(front);
        double xf = frontAxle.x();
        double xr = vehicle.axles().get(rear).x();
        for (int t = 0; t < spring.tips().size(); t++) {
            Connection.Tip tip = spring.tips().get(t);
            double x = -tip.behindFrontAxle().value();
            double lambda = (x - xf) / (xr - xf);
            ForceLaw law = law(tip.kind(), tip.elasticity(), tip.damping(), tip.friction());
            for (double y : lateral(spring.attachment())) {
                double[] ends = Geometry.combine(
                        1 - lambda, geometry.unsprungRise(front, y), lambda, geometry.unsprungRise(rear, y));
                String end = spring.tips().size() == 1 ? "" : t == 0 ? " front tip" : " rear tip";
                elements.addStaged(
                        spring.name() + end + ElementAssembly.side(y),
                        Element.Kind.SPRING,
                        Geometry.combine(1, ends, -1, geometry.bodyRise(x, y)),
                        law,
                        SpringLaws.workingRate(tip.kind(), tip.elasticity()),
                        tip.stages());
            }
        }
    }

    private double[] lateral(Attachment attachment) {
        double half = vehicle.layout().rolls()
                ? attachment.apart().map(a -> a.value() / 2).orElse(0.0)
                : 0;
        if (half == 0) {
            return new double[] {0};
        }
        return switch (attachment.position()) {
            case CENTRE -> new double[] {0};
            case LEFT -> new double[] {half};
            case RIGHT -> new double[] {-half};
            case PAIR -> new double[] {half, -half};
        };
    }

    private void addInterconnection(Connection.Interconnection sum) {
        double[] row = new double[geometry.unit(0).length];
        for (Connection.Term term : sum.terms()) {
            row = Geometry.combine(1, row, term.weight(), travel(term));
        }
        refuseBootstraps(sum);
        ForceLaw law = law(SpringKind.COIL, sum.elasticity(), sum.damping(), sum.friction());
        Element.Kind kind = allShorten(sum) ? Element.Kind.SPRING : Element.Kind.LINKAGE;
        double rate = SpringLaws.workingRate(SpringKind.COIL, sum.elasticity());
        elements.addStaged(sum.name(), kind, row, law, rate, sum.stages());
    }

    /** Whether every travel of a sum shortens it as the vehicle sinks: corners and axles push it up, points of the body down. */
    private static boolean allShorten(Connection.Interconnection sum) {
        return sum.terms().stream()
                .allMatch(term -> term instanceof Connection.Term.BodyPoint ? term.weight() < 0 : term.weight() > 0);
    }

    private double[] travel(Connection.Term term) {
        if (term instanceof Connection.Term.Corner corner) {
            int axle = index(corner.axle());
            return geometry.cornerCompression(axle, side(axle, corner.side(), corner.apart()));
        } else if (term instanceof Connection.Term.Unsprung unsprung) {
            int axle = index(unsprung.axle());
            return geometry.unsprungRise(axle, side(axle, unsprung.side(), unsprung.apart()));
        }
        Connection.Term.BodyPoint point = (Connection.Term.BodyPoint) term;
        return geometry.bodyRise(point.place().x(), point.place().y());
    }

    private double side(int axle, Attachment.Position position, Optional<Measure> apart) {
        double[] wheels = geometry.wheelPlaces(axle);
        double half = apart.map(a -> a.value() / 2).orElse(wheels[0]);
        return switch (position) {
            case LEFT -> half;
            case RIGHT -> -half;
            case CENTRE, PAIR -> 0;
        };
    }

    /**
     * A sum of travels must vanish when the whole vehicle rises, rolls or pitches as one piece, or it would lift the vehicle by
     * itself.
     */
    private void refuseBootstraps(Connection.Interconnection sum) {
        double heave = 0;
        double roll = 0;
        double pitch = 0;
        List<String> loose = new ArrayList<>();
        for (Connection.Term term : sum.terms()) {
            if (term instanceof Connection.Term.Unsprung unsprung) {
                int axle = index(unsprung.axle());
                heave += unsprung.weight();
                roll += unsprung.weight() * side(axle, unsprung.side(), unsprung.apart());
                pitch -= unsprung.weight() * vehicle.axles().get(axle).x();
            } else if (term instanceof Connection.Term.BodyPoint point) {
                heave += point.weight();
                roll += point.weight() * point.place().y();
                pitch -= point.weight() * point.place().x();
            }
        }
        if (Math.abs(heave) > 1e-9) {
            loose.add("rise");
        }
        if (vehicle.layout().rolls() && Math.abs(roll) > 1e-9) {
            loose.add("roll");
        }
        if (vehicle.layout().pitches() && Math.abs(pitch) > 1e-9) {
            loose.add("pitch");
        }
        if (!loose.isEmpty()) {
            throw RideException.at(
                    sum.name(),
                    "interconnection '" + sum.name()
                            + "' would push against nothing: its travel changes when the whole vehicle moves as one piece in "
                            + String.join(", ", loose)
                            + "; balance the weights so that axle and body terms cancel");
        }
    }

    private static ForceLaw law(SpringKind kind, Elasticity elasticity, Damping damping, Friction friction) {
        return SpringLaws.withFriction(
                SpringLaws.withDamping(SpringLaws.elastic(kind, elasticity), damping), elasticity, friction);
    }

    private int index(String axle) {
        for (int i = 0; i < vehicle.axles().size(); i++) {
            if (vehicle.axles().get(i).name().equals(axle)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no axle named '" + axle + "'");
    }
}
