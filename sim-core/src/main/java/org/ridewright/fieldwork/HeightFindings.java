package org.ridewright.fieldwork;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.fieldwork.Heights.Mark;
import org.ridewright.fieldwork.Heights.Settled;
import org.ridewright.fieldwork.Heights.Step;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.LoadCase.Aboard;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.Vehicle;

/**
 * What heights say of the springs of a vehicle with two axles, of which both corners of an axle were measured.
 *
 * <p>Of mass that comes aboard at x behind the front axle the rear axle takes {@code x/L}, the front axle the rest, whatever the springs. The rate of
 * the springs of an axle together is that weight over the mean sinking of its corners. A body that settled from above stands {@code S/k} higher
 * than without friction, from below as much lower: half the difference of the two is {@code S/k}, their mean is free of it, to first order. Where
 * neither is known, friction may be in the rate.
 *
 * <p>Source: statics; wheels and ground are taken as rigid.
 */
record HeightFindings(Heights heights, Optional<Vehicle> vehicle) {
    void tell(List<Finding> found) {
        List<Axle> axles = vehicle.map(Vehicle::axles).orElse(List.of());
        if (axles.size() != 2) {
            return;
        }
        for (Axle axle : axles) {
            corners(axle).ifPresent(marks -> tell(axle, marks, found));
        }
    }

    private void tell(Axle axle, List<Integer> marks, List<Finding> found) {
        for (Step step : heights.steps()) {
            band(step, marks)
                    .ifPresent(band -> found.add(new Finding(
                            heights,
                            axle.name() + " corners hang by friction, "
                                    + step.load().label(),
                            band,
                            "")));
        }
        Step first = heights.steps().get(0);
        for (Step step : heights.steps().subList(1, heights.steps().size())) {
            Measure before = mean(first, marks);
            Measure after = mean(step, marks);
            Measure added = added(axle, first, step);
            double sunk = before.value() - after.value();
            // what lies within the reading error says nothing
            if (sunk > 2 * Math.hypot(before.tolerance(), after.tolerance()) && added.value() > 0) {
                Measure rate = Propagation.of(
                        QuantityKind.RATE,
                        "added weight over sinking",
                        x -> SwungInertia.GRAVITY * x[2] / (x[0] - x[1]),
                        before,
                        after,
                        added);
                boolean free = frictionFree(first) && frictionFree(step);
                found.add(new Finding(
                        heights,
                        "rate of the " + axle.title() + "'s springs together, "
                                + step.load().label(),
                        rate,
                        free ? "" : "friction not counted: settle from above and from below"));
            }
        }
    }

    /** Left and right mark of an axle. */
    private Optional<List<Integer>> corners(Axle axle) {
        List<Integer> marks = new ArrayList<>();
        for (int i = 0; i < heights.marks().size(); i++) {
            if (heights.marks().get(i) instanceof Mark.Corner corner
                    && corner.axle().equals(axle.name())) {
                marks.add(i);
            }
        }
        return marks.size() == 2 ? Optional.of(marks) : Optional.empty();
    }

    /** {@code S/k}: half of what lies between settled from above and from below (m). */
    private static Optional<Measure> band(Step step, List<Integer> marks) {
        return step.settled(Settled.FROM_ABOVE)
                .flatMap(above -> step.settled(Settled.FROM_BELOW)
                        .map(below -> Propagation.of(
                                QuantityKind.LENGTH,
                                "half of settled from above less from below",
                                x -> (x[0] - x[1]) / 2,
                                mean(above, marks),
                                mean(below, marks))));
    }

    /** Settled both ways, so that the mean is free of friction, or else however it was. */
    private static boolean frictionFree(Step step) {
        return step.settled(Settled.FROM_ABOVE).isPresent()
                && step.settled(Settled.FROM_BELOW).isPresent();
    }

    private static Measure mean(Step step, List<Integer> marks) {
        if (frictionFree(step)) {
            return middle(List.of(
                    mean(step.settled(Settled.FROM_ABOVE).orElseThrow(), marks),
                    mean(step.settled(Settled.FROM_BELOW).orElseThrow(), marks)));
        }
        return mean(step.readings().get(0).heights(), marks);
    }

    private static Measure mean(List<Measure> all, List<Integer> marks) {
        return middle(marks.stream().map(all::get).toList());
    }

    private static Measure middle(List<Measure> values) {
        return Propagation.of(QuantityKind.LENGTH, "mean", x -> (x[0] + x[1]) / 2, values.get(0), values.get(1));
    }

    /** Mass that the axle bears more in one step than in the other (kg). */
    private Measure added(Axle axle, Step from, Step to) {
        List<Measure> shares = new ArrayList<>();
        for (Aboard aboard : without(aboard(to), aboard(from))) {
            shares.add(share(aboard, axle, 1));
        }
        for (Aboard aboard : without(aboard(from), aboard(to))) {
            shares.add(share(aboard, axle, -1));
        }
        return shares.isEmpty() ? Measure.of(0, QuantityKind.MASS) : Propagation.sum("added mass", shares);
    }

    /** What is in one list and not in the other: the same person in both weighs nothing more. */
    private static List<Aboard> without(List<Aboard> these, List<Aboard> those) {
        List<Aboard> left = new ArrayList<>(these);
        those.forEach(left::remove);
        return left;
    }

    private List<Aboard> aboard(Step step) {
        return vehicle.map(step.load()::on).map(LoadCase::aboard).orElse(List.of());
    }

    private Measure share(Aboard aboard, Axle axle, int sign) {
        Vehicle standing = vehicle.orElseThrow();
        double length = standing.axles().get(1).behindFrontAxle().value();
        double rear = behind(aboard, standing) / length;
        double share = sign * (standing.axles().indexOf(axle) == 1 ? rear : 1 - rear);
        Measure mass = UsualTolerance.ofScales(aboard.mass());
        return new Measure(
                QuantityKind.MASS,
                share * mass.value(),
                Math.abs(share) * mass.tolerance(),
                mass.provenance(),
                Measures.format(mass));
    }

    private static double behind(Aboard aboard, Vehicle vehicle) {
        if (aboard instanceof Aboard.Cargo cargo) {
            return cargo.place().behindFrontAxle().value();
        }
        Seat seat = vehicle.seat(((Aboard.Person) aboard).seat()).orElseThrow();
        double seated = seat.place().behindFrontAxle().value();
        double feet = seat.feet().map(p -> p.behindFrontAxle().value()).orElse(seated);
        double onSeat = seat.shareOnSeat().value();
        return onSeat * seated + (1 - onSeat) * feet;
    }
}
