package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Road;
import org.ridewright.vehicle.AxleKind;

/** Says where a run came near the limits of the model. */
final class Remarks {
    /** Lean at rest that is not worth a word (degrees). */
    private static final double LEVEL = 1;

    private final Scenario scenario;
    private final VehicleModel model;
    private final Road road;
    private final SpeedPlan plan;

    Remarks(Scenario scenario, VehicleModel model, Road road, SpeedPlan plan) {
        this.scenario = scenario;
        this.model = model;
        this.road = road;
        this.plan = plan;
    }

    List<String> of(
            List<RideResult.SeatResult> seats,
            List<RideResult.WheelResult> wheels,
            TimeRecorder times,
            Optional<Liveliness> liveliness) {
        List<String> remarks = new ArrayList<>();
        topSpeed(remarks);
        standing(remarks);
        riders(remarks, seats);
        stops(remarks, times);
        wheels(remarks, wheels, liveliness);
        draught(remarks, times);
        sway(remarks);
        return remarks;
    }

    private void topSpeed(List<String> remarks) {
        model.vehicle()
                .topSpeed()
                .filter(top -> plan.greatest() > top.value() * (1 + 1e-9))
                .ifPresent(top -> remarks.add(text(
                        "The speed, %s, is above the vehicle's stated top speed of %s.",
                        plan.greatestWritten(), top.written())));
    }

    private void standing(List<String> remarks) {
        Equations equations = model.equations();
        boolean gas = equations.elements().stream().anyMatch(e -> e.law().gas().isPresent());
        int pitch = model.coordinates().pitch();
        double tilt = pitch < 0 || gas ? 0 : Math.toDegrees(model.rest().q()[pitch]);
        if (Math.abs(tilt) > LEVEL) {
            remarks.add(text(
                    "Standing still the body leans %.1f° nose %s from the attitude in which its springs are free, so hitch loads and the "
                            + "places measured on a level vehicle are a little off.",
                    Math.abs(tilt), tilt > 0 ? "down" : "up"));
        }
        for (int e = 0; e < equations.elements().size(); e++) {
            if (equations.elements().get(e).kind() == Element.Kind.HITCH
                    && model.rest().force()[e] < 0) {
                remarks.add(text(
                        "The vehicle tips back: standing still it pulls '%s' upward with %.0f N.",
                        equations.elements().get(e).name(), -model.rest().force()[e]));
            }
        }
    }

    private static void riders(List<String> remarks, List<RideResult.SeatResult> seats) {
        for (RideResult.SeatResult seat : seats) {
            if (seat.timeOff() > 0) {
                remarks.add(text("The rider on '%s' was off the seat for %.3f s.", seat.seat(), seat.timeOff()));
            } else if (seat.least().value() < -VehicleModel.GRAVITY) {
                remarks.add(text(
                        "At '%s' the acceleration fell below free fall (%.1f m/s² down): a rider would have left the seat, "
                                + "which a rigidly carried one cannot.",
                        seat.seat(), -seat.least().value()));
            }
        }
    }

    /** Stages beyond their gap: helpers belong to the ride, stops to its limits. */
    private void stops(List<String> remarks, TimeRecorder times) {
        for (int e = 0; e < model.equations().elements().size(); e++) {
            Element element = model.equations().elements().get(e);
            List<String> names = model.stageNames(element.name());
            for (int p = 0; p < names.size(); p++) {
                int stage = element.law().stages().count() - names.size() + p;
                if (names.get(p).endsWith("stop") && times.stageOn(e, stage) > 0) {
                    remarks.add(text(
                            "'%s' was on its %s for %.3f s.", element.name(), names.get(p), times.stageOn(e, stage)));
                }
            }
        }
    }

    private void wheels(List<String> remarks, List<RideResult.WheelResult> wheels, Optional<Liveliness> liveliness) {
        double least = Double.POSITIVE_INFINITY;
        for (int w = 0; w < wheels.size(); w++) {
            WheelPlace place = model.wheels().get(w);
            if (wheels.get(w).timeOff() > 0 && place.contact().isLively()) {
                least = Math.min(least, place.contact().dampingRatio());
            }
        }
        if (liveliness.isPresent() && Double.isFinite(least)) {
            Liveliness l = liveliness.get();
            boolean same = Math.abs(l.peakWhenCalmer() - l.peak()) < 0.02 * l.peak();
            String effect = same
                    ? text("the peak acceleration at '%s' would stay within 2 %%.", l.place())
                    : text(
                            "the peak acceleration at '%s' would be %.1f m/s² in place of %.1f m/s².",
                            l.place(), l.peakWhenCalmer(), l.peak());
            remarks.add(text(
                    "Wheels left the ground with a contact damping of only %.2f of critical, below which a wheel may bounce for long "
                            + "and its motion depend on every detail. With %.2f instead, %s",
                    least, Liveliness.CALMER_RATIO, effect));
        }
    }

    /** Surge: the change of speed that the draught alone would give the whole vehicle. */
    private void draught(List<String> remarks, TimeRecorder times) {
        double change = times.greatestImpulse() / model.totalMass();
        double speed = plan.greatest();
        if (change > 0.1 * speed) {
            remarks.add(text(
                    "The obstacles' draught would change the speed, %s, by about %.0f %% if nothing pulled harder: "
                            + "constant speed is a poor assumption here%s.",
                    plan.greatestWritten(),
                    100 * change / speed,
                    change >= speed ? ", and without a stronger pull the vehicle would stop" : ""));
        }
    }

    private void sway(List<String> remarks) {
        boolean oneSided = road.obstacles().stream()
                .anyMatch(o ->
                        o.lie().side() != Obstacle.Side.BOTH || o.lie().skew().value() != 0);
        boolean beam = model.vehicle().layout().rolls()
                && model.vehicle().axles().stream().anyMatch(a -> a.kind() == AxleKind.BEAM);
        if (oneSided && beam) {
            remarks.add(
                    "The obstacle tilts a beam axle, which throws the body sideways. Sway is not in this model, so roll and side "
                            + "acceleration are understated.");
        }
        if (scenario.braked() && road.obstacles().size() > 0) {
            remarks.add(
                    "The wheels are held by the brake in the pitching of the body, yet the vehicle keeps its speed.");
        }
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
