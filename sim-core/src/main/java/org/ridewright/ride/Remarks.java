package org.ridewright.ride;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
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
import org.ridewright.vehicle.FurtherMotions.Motion;
import org.ridewright.vehicle.SwayFigures;

/** Says where a run came near the limits of the model. */
final class Remarks {
    /** Lean at rest that is not worth a word (degrees). */
    private static final double LEVEL = 1;
    /** Change of speed, as a share of it, beyond which a steady speed is a poor assumption. */
    private static final double POOR_SPEED = 0.1;
    /** Share of a contact's force beyond which what its law leaves out is worth a word. */
    private static final double POOR_LAW = 0.1;

    private static final String[] DIRECTIONS = {"fore and aft", "sideways", "up and down"};

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
            Optional<Liveliness> liveliness,
            Optional<RideResult.Peak> speedGained,
            List<Missed> missed) {
        List<String> remarks = new ArrayList<>(road.remarks());
        topSpeed(remarks);
        standing(remarks);
        riders(remarks, seats);
        stops(remarks, times);
        wheels(remarks, wheels, liveliness);
        ground(remarks);
        if (speedGained.isPresent()) {
            surge(remarks, speedGained.get());
        } else {
            draught(remarks, times);
        }
        sway(remarks);
        missed(remarks, missed);
        braked(remarks);
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
                        seat.effectiveness().isPresent()
                                ? "At '%s' the acceleration fell below free fall (%.1f m/s² down): the cushion pulls no one down, so the "
                                        + "rider was about to leave the seat."
                                : "At '%s' the acceleration fell below free fall (%.1f m/s² down): a rider would have left the seat, "
                                        + "which a rigidly carried one cannot.",
                        seat.seat(),
                        -seat.least().value()));
            }
        }
    }

    /** Stages beyond their gap: helpers belong to the ride, stops to its limits. */
    private void stops(List<String> remarks, TimeRecorder times) {
        for (int e = 0; e < model.equations().elements().size(); e++) {
            Element element = model.equations().elements().get(e);
            List<String> names = model.stageNames(element.name());
            for (int p = 0; p < names.size(); p++) {
                int stage = element.law().allStages().count() - names.size() + p;
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
        if (change > POOR_SPEED * speed) {
            remarks.add(text(
                    "The road's draught would within 2 s change the speed, %s, by about %.0f %% if nothing pulled harder: "
                            + "constant speed is a poor assumption here%s.",
                    plan.greatestWritten(),
                    100 * change / speed,
                    change >= speed ? ", and without a stronger pull the vehicle would stop" : ""));
        }
    }

    private void surge(List<String> remarks, RideResult.Peak gained) {
        double change = Math.abs(gained.value());
        double speed = plan.greatest();
        if (change > POOR_SPEED * speed) {
            remarks.add(text(
                    "Surge changes the speed, %s, by %.0f %%: the wheels would come to what follows at another time, which this "
                            + "model leaves out.",
                    plan.greatestWritten(), 100 * change / speed));
        }
    }

    private void ground(List<String> remarks) {
        model.wheels().stream()
                .filter(wheel -> wheel.contact().lawError() > POOR_LAW)
                .findFirst()
                .ifPresent(wheel -> remarks.add(text(
                        "Wheel and ground are damped so unlike each other that what '%s' makes of both leaves out %.0f %% of their force at "
                                + "the frequency at which it bounces on them.",
                        wheel.name(), 100 * wheel.contact().lawError())));
    }

    private void sway(List<String> remarks) {
        boolean oneSided = road.obstacles().stream()
                .anyMatch(o ->
                        o.lie().side() != Obstacle.Side.BOTH || o.lie().skew().value() != 0);
        boolean beam = model.vehicle().layout().rolls()
                && model.vehicle().axles().stream().anyMatch(a -> a.kind() == AxleKind.BEAM);
        if (oneSided && beam && model.coordinates().sway() < 0) {
            remarks.add(
                    "The obstacle tilts a beam axle, which throws the body sideways. Sway is not among the coordinates of this vehicle, "
                            + "so roll and side acceleration are understated.");
        }
    }

    /** What a short run with surge and sway says, where it says much else. */
    private void missed(List<String> remarks, List<Missed> missed) {
        Optional<Missed> worst = missed.stream()
                .filter(m -> m.matters(0) || m.matters(1) || m.matters(2))
                .max(Comparator.comparingDouble(Missed::whole));
        if (worst.isEmpty()) {
            return;
        }
        List<Motion> lacking = FreerRun.lacking(model, scenario.braked());
        List<String> terms = new ArrayList<>();
        List<String> differences = new ArrayList<>();
        for (Motion motion : lacking) {
            terms.add(term(motion));
        }
        for (int axis = 0; axis < DIRECTIONS.length; axis++) {
            if (worst.get().matters(axis)) {
                differences.add(text(
                        "%s %.2f in place of %.2f",
                        DIRECTIONS[axis],
                        worst.get().with().get(axis).rms(),
                        worst.get().without().get(axis).rms()));
            }
        }
        String words = String.join(" and ", lacking.stream().map(Motion::word).toList());
        remarks.add(text(
                "Leaving out %s matters here: a short run with %s reads at '%s', in m/s² r.m.s., %s. Write 'coordinates: [%s]' in the "
                        + "vehicle file where that is of interest.",
                words,
                String.join(" and ", terms),
                worst.get().place(),
                String.join(", ", differences),
                String.join(", ", allMotions(lacking))));
    }

    private List<String> allMotions(List<Motion> lacking) {
        return Arrays.stream(Motion.values())
                .filter(m -> lacking.contains(m) || model.vehicle().further().has(m))
                .map(Motion::word)
                .toList();
    }

    private static String term(Motion motion) {
        return motion == Motion.SURGE ? "surge free" : text("sway at %.0f Hz (estimated)", SwayFigures.USUAL);
    }

    private void braked(List<String> remarks) {
        if (scenario.braked() && road.obstacles().size() > 0) {
            remarks.add(
                    "The wheels are held by the brake in the pitching of the body, yet the vehicle keeps its speed.");
        }
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
