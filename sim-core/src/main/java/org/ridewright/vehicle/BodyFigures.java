package org.ridewright.vehicle;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;

/**
 * The sprung body's figures after everything that was not measured has been worked out or estimated, each estimate by the rule in
 * its {@link Measure#written()}.
 *
 * <p>Rules: inertias from the outline as a uniform box, {@code I_xx = m (w² + h²)/12}, {@code I_yy = m (l² + h²)/12}; without outline,
 * radius of gyration in pitch {@code √(a b)} from the distances a, b of the centre of mass to the first and last axle (common practice: a
 * dynamic index of one) and in roll 0.35 of the mean track (common practice). Height of the centre of mass: half the outline's
 * height above the spring mounts, or 0.3 m (common practice). Spring mounts: at wheel centre height (common practice).
 *
 * @param mass (kg)
 * @param behindFrontAxle of the centre of mass (m)
 * @param leftOfCentre of the centre of mass (m)
 * @param aboveGround of the centre of mass (m)
 * @param rollInertia about the centre of mass (kg·m²)
 * @param pitchInertia about the centre of mass (kg·m²)
 * @param productOfInertia {@code I_xy} (kg·m²)
 */
public record BodyFigures(
        Measure mass,
        Measure behindFrontAxle,
        Measure leftOfCentre,
        Measure aboveGround,
        Measure rollInertia,
        Measure pitchInertia,
        Measure productOfInertia) {
    private static final double ROLL_RADIUS_OVER_TRACK = 0.35;
    private static final double HEIGHT_OVER_MOUNTS = 0.3;
    private static final double LONE_PITCH_RADIUS = 0.7;

    /**
     * Works the figures out.
     *
     * @throws IllegalArgumentException if neither mass and centre nor a weighbridge is given, or the weighbridge leaves no sprung
     *     mass
     */
    public static BodyFigures of(Vehicle vehicle) {
        SprungBody body = vehicle.body();
        Measure mass;
        Measure behind;
        if (body.weighbridge().isPresent()) {
            Weighed weighed = Weighed.of(vehicle, body.weighbridge().get());
            mass = weighed.mass();
            behind = weighed.behindFrontAxle();
        } else {
            mass = body.mass().orElseThrow(() -> new IllegalArgumentException("body.mass is missing"));
            behind = body.centreBehindFrontAxle().orElseGet(() -> Measure.of(0, QuantityKind.LENGTH));
        }
        Measure height = body.centreAboveGround().orElseGet(() -> estimatedHeight(vehicle));
        Measure roll = inertia(body.rollInertia(), body.rollRadius(), mass, () -> rollEstimate(vehicle, mass));
        Measure pitch = inertia(
                body.pitchInertia(), body.pitchRadius(), mass, () -> pitchEstimate(vehicle, mass, behind.value()));
        return new BodyFigures(mass, behind, body.centreLeftOfCentre(), height, roll, pitch, body.productOfInertia());
    }

    private static Measure inertia(
            Optional<Measure> given, Optional<Measure> radius, Measure mass, Supplier<Measure> estimate) {
        if (given.isPresent()) {
            return given.get();
        }
        if (radius.isPresent()) {
            double r = radius.get().value();
            double value = mass.value() * r * r;
            double tolerance = value * Math.hypot(2 * radius.get().tolerance() / r, mass.tolerance() / mass.value());
            return new Measure(
                    QuantityKind.INERTIA,
                    value,
                    tolerance,
                    radius.get().provenance(),
                    "mass × (radius of gyration " + radius.get().written() + ")²");
        }
        return estimate.get();
    }

    private static Measure rollEstimate(Vehicle vehicle, Measure mass) {
        if (!vehicle.layout().rolls()) {
            return Measure.of(0, QuantityKind.INERTIA);
        }
        if (vehicle.body().outline().isPresent()) {
            Outline box = vehicle.body().outline().get();
            double w = box.width().value();
            double h = box.height().value();
            return Measure.estimated(
                    mass.value() * (w * w + h * h) / 12, QuantityKind.INERTIA, "uniform box, m (w² + h²)/12");
        }
        double track = meanTrack(vehicle);
        double r = ROLL_RADIUS_OVER_TRACK * track;
        return Measure.estimated(mass.value() * r * r, QuantityKind.INERTIA, "m (0.35 track)² (common practice)");
    }

    private static Measure pitchEstimate(Vehicle vehicle, Measure mass, double behind) {
        if (!vehicle.layout().pitches()) {
            return Measure.of(0, QuantityKind.INERTIA);
        }
        if (vehicle.body().outline().isPresent()) {
            Outline box = vehicle.body().outline().get();
            double l = box.length().value();
            double h = box.height().value();
            return Measure.estimated(
                    mass.value() * (l * l + h * h) / 12, QuantityKind.INERTIA, "uniform box, m (l² + h²)/12");
        }
        List<Axle> axles = vehicle.axles();
        double first = axles.get(0).behindFrontAxle().value();
        double last = axles.get(axles.size() - 1).behindFrontAxle().value();
        double product = Math.abs((behind - first) * (last - behind));
        double square = axles.size() > 1 && product > 0 ? product : LONE_PITCH_RADIUS * LONE_PITCH_RADIUS;
        String rule = axles.size() > 1 && product > 0
                ? "m a b, a dynamic index of one (common practice)"
                : "radius of gyration 0.7 m (common practice)";
        return Measure.estimated(mass.value() * square, QuantityKind.INERTIA, rule);
    }

    private static double meanTrack(Vehicle vehicle) {
        return vehicle.axles().stream()
                .flatMap(a -> a.track().stream())
                .mapToDouble(Measure::value)
                .average()
                .orElse(1.4);
    }

    private static Measure estimatedHeight(Vehicle vehicle) {
        double mounts = vehicle.axles().stream()
                .mapToDouble(a -> MountHeights.at(a).value())
                .average()
                .orElse(0.5);
        if (vehicle.body().outline().isPresent()) {
            double half = vehicle.body().outline().get().height().value() / 2;
            return Measure.estimated(
                    mounts + half,
                    QuantityKind.LENGTH,
                    "half the body's height above the spring mounts (common practice)");
        }
        return Measure.estimated(
                mounts + HEIGHT_OVER_MOUNTS, QuantityKind.LENGTH, "0.3 m above the spring mounts (common practice)");
    }

    /** Sprung mass and its place from what scales showed under the axles. */
    private record Weighed(Measure mass, Measure behindFrontAxle) {
        static Weighed of(Vehicle vehicle, Weighbridge bridge) {
            double total = bridge.hitchLoad().value();
            double moment = 0;
            double variance = Math.pow(bridge.hitchLoad().tolerance(), 2);
            if (!vehicle.hitches().isEmpty()) {
                moment += bridge.hitchLoad().value()
                        * vehicle.hitches().get(0).place().behindFrontAxle().value();
            }
            for (int i = 0; i < vehicle.axles().size(); i++) {
                Axle axle = vehicle.axles().get(i);
                Measure load = bridge.axleLoads().get(i);
                double sprung = load.value() - axle.unsprungMass().value();
                total += sprung;
                moment += sprung * axle.behindFrontAxle().value();
                variance += Math.pow(load.tolerance(), 2)
                        + Math.pow(axle.unsprungMass().tolerance(), 2);
            }
            for (var aboard :
                    vehicle.loadCase(bridge.loadCase()).map(LoadCase::aboard).orElse(List.of())) {
                total -= aboard.mass().value();
                moment -= aboard.mass().value() * behind(vehicle, aboard);
            }
            for (Seat seat : vehicle.seats()) {
                double parts = seat.stages().stream()
                        .mapToDouble(stage -> stage.mass().value())
                        .sum();
                total -= parts;
                moment -= parts * seat.place().behindFrontAxle().value();
            }
            if (!(total > 0)) {
                throw new IllegalArgumentException("the axle loads leave no sprung mass: " + total
                        + " kg after unsprung masses and what was aboard");
            }
            String rule = "axle loads less unsprung masses" + (bridge.loadCase().isEmpty() ? "" : " and load");
            return new Weighed(
                    new Measure(QuantityKind.MASS, total, Math.sqrt(variance), Provenance.WEIGHED, rule),
                    Measure.computed(moment / total, QuantityKind.LENGTH, "moments of the axle loads"));
        }

        private static double behind(Vehicle vehicle, LoadCase.Aboard aboard) {
            if (aboard instanceof LoadCase.Aboard.Cargo cargo) {
                return cargo.place().behindFrontAxle().value();
            }
            LoadCase.Aboard.Person person = (LoadCase.Aboard.Person) aboard;
            Seat seat = vehicle.seat(person.seat()).orElseThrow();
            double share = seat.shareOnSeat().value();
            double seated = seat.place().behindFrontAxle().value();
            double feet = seat.feet().map(p -> p.behindFrontAxle().value()).orElse(seated);
            return share * seated + (1 - share) * feet;
        }
    }
}
