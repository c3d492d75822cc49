package org.ridewright.calibration;

import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.fieldwork.LiftedAxle;
import org.ridewright.fieldwork.LiftedAxle.Springs;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Axle;

/**
 * What the scales under one axle show with the other raised, less what they showed before where that is not fitted by itself. Wheels and blocks do not matter but for where their centres are:
 *
 * <pre>    W' = m (p·e)/L'        p = from the raised centre to the centre of mass, e along the ground, L' distance of the centres along the ground</pre>
 *
 * <p>with the vehicle turned as one piece about the wheel centres. Springs that are free let the body lean back by {@code ΔW g (1/K_1 + 1/K_2)/L}
 * more, K the rate of all springs of an axle.
 */
record LiftedAxleEvidence(LiftedAxle fact, List<Datum> data) implements Evidence {
    private static final int PASSES = 20;

    /** @param level what the other axle bore before, if that reading is no datum of its own; the difference is fitted then, else the raised weight */
    static LiftedAxleEvidence of(LiftedAxle fact, Optional<Measure> level, Trial before) {
        double slope = (shown(fact, before, fact.by().value() * 1.01)
                        - shown(fact, before, fact.by().value()))
                / (0.01 * fact.by().value());
        double rise = slope * fact.by().tolerance();
        Measure raised = fact.raised();
        double observed = level.map(l -> raised.value() - l.value()).orElse(raised.value());
        double deviation = Math.sqrt(raised.tolerance() * raised.tolerance()
                + level.map(l -> l.tolerance() * l.tolerance()).orElse(0.0)
                + rise * rise);
        String what = level.isPresent() ? ": the other axle bears more by" : ": the other axle bears";
        return new LiftedAxleEvidence(
                fact, List.of(new Datum(fact.label() + what, "kg", observed, deviation, fact.keepBack(), "")));
    }

    @Override
    public double[] predict(Trial trial, double[] circumstances) {
        double raised = shown(fact, trial, fact.by().value());
        boolean difference = data.get(0).label().endsWith("more by");
        return new double[] {difference ? raised - shown(fact, trial, 0) : raised};
    }

    /** Mass under the axle that stays on the ground (kg). */
    private static double shown(LiftedAxle fact, Trial trial, double by) {
        VehicleModel model = trial.standing(fact.load());
        Axle lifted = BodyMarks.axle(trial.vehicle(), fact.lifted());
        Axle other = trial.vehicle().axles().stream()
                .filter(a -> !a.name().equals(fact.lifted()))
                .findFirst()
                .orElseThrow();
        // distances from the centre of the wheels that stay, along the level vehicle and upward
        double reach = lifted.x() - other.x();
        double centres = lifted.wheel().radius() - other.wheel().radius();
        double length = Math.hypot(reach, centres);
        double tilt = Math.asin(Math.min(1, (centres + by) / length)) - Math.asin(centres / length);
        double lean = 0;
        double level = WeightEvidence.axleMass(model, other.name());
        double shown = level;
        for (int pass = 0; pass < PASSES; pass++) {
            shown = turned(model, lifted, other, tilt, lean);
            lean = fact.springs() == Springs.FREE
                    ? (shown - level)
                            * VehicleModel.GRAVITY
                            * (1 / rate(model, lifted) + 1 / rate(model, other))
                            / Math.abs(reach)
                    : 0;
        }
        return shown;
    }

    private static double turned(VehicleModel model, Axle lifted, Axle other, double tilt, double lean) {
        double whole = model.totalMass();
        double reach = lifted.x() - other.x();
        double centres = lifted.wheel().radius() - other.wheel().radius();
        // what hangs at the wheel centres turns with their line, the rest leans further
        double own = lifted.unsprungMass().value();
        double bodyMass = whole - own - other.unsprungMass().value();
        double moment = WeightEvidence.axleMass(model, lifted.name()) * Math.abs(reach) - own * Math.abs(reach);
        double along = moment / bodyMass;
        double up = MassHeight.of(model) - other.wheel().radius();
        double angle = tilt + lean;
        double arm = along * Math.cos(angle) - up * Math.sin(angle);
        double axleArm = Math.abs(reach) * Math.cos(tilt) - centres * Math.sin(tilt);
        double onLifted = (bodyMass * arm + own * axleArm) / axleArm;
        return whole - onLifted;
    }

    /** Of all springs of an axle at rest, sliding (N/m). */
    private static double rate(VehicleModel model, Axle axle) {
        double sum = 0;
        List<Element> elements = model.equations().elements();
        for (var spring : axle.springs()) {
            for (int e : SpringUnderLoad.elements(model, axle, spring.name())) {
                sum += elements.get(e).law().elasticRate(model.rest().compression()[e]);
            }
        }
        return sum > 0 ? sum : Double.POSITIVE_INFINITY;
    }
}
