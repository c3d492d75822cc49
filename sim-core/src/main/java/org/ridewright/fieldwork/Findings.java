package org.ridewright.fieldwork;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

/** What the facts of a file say directly: masses, centre of mass, rates, friction, inertias, frequencies. */
public final class Findings {
    /** Deflections that scatter this many times their tolerance do not follow the law. */
    private static final double STRANGE = 2;

    private final Measurements measurements;
    private final List<Finding> found = new ArrayList<>();

    private Findings(Measurements measurements) {
        this.measurements = measurements;
    }

    /** Everything that can be told, in the order of the facts. */
    public static List<Finding> of(Measurements measurements) {
        Findings findings = new Findings(measurements);
        measurements.facts().forEach(findings::tell);
        return List.copyOf(findings.found);
    }

    private void tell(Fact fact) {
        if (fact instanceof Weights weights) {
            weights(weights);
        } else if (fact instanceof LiftedAxle lifted) {
            lifted(lifted);
        } else if (fact instanceof SwingTest swing) {
            add(fact, swing.axis().word() + " inertia of the " + swing.partInWords(), SwungInertia.of(swing), "");
        } else if (fact instanceof LoadDeflection loop) {
            loop(loop);
        } else if (fact instanceof Heights heights) {
            new HeightFindings(heights, measurements.vehicle()).tell(found);
        } else if (fact instanceof Camber camber) {
            camber(camber);
        } else if (fact instanceof BounceCount count) {
            add(fact, "ride frequency", frequency(count), "");
        }
    }

    private void weights(Weights weights) {
        measurements.vehicle().ifPresent(vehicle -> {
            WeighedVehicle.total(weights, vehicle).ifPresent(mass -> add(weights, "mass of all", mass, ""));
            WeighedVehicle.behindFrontAxle(weights, vehicle)
                    .ifPresent(behind -> add(weights, "centre of mass of all, behind front axle", behind, ""));
            WeighedVehicle.leftOfCentre(weights, vehicle)
                    .ifPresent(left -> add(weights, "centre of mass of all, left of centre", left, ""));
        });
    }

    private void lifted(LiftedAxle lifted) {
        String remark = lifted.springs() == LiftedAxle.Springs.FREE
                ? "the body leaned back on its springs: rather too high"
                : "";
        measurements
                .vehicle()
                .flatMap(vehicle -> CentreHeight.of(lifted, vehicle, measurements.all(Weights.class)))
                .ifPresent(height -> add(lifted, "centre of mass of all, above ground", height, remark));
    }

    private void loop(LoadDeflection fact) {
        LoadLoop.of(fact.rows()).ifPresent(loop -> {
            String of = fact.of() instanceof LoadDeflection.Loaded.OneSpring
                    ? ""
                    : " of the " + fact.of().label();
            String remark = loop.scatter() > STRANGE
                    ? String.format(
                            Locale.ROOT,
                            "deflections lie %.1f times their tolerance off the law: a rate that is not constant?",
                            loop.scatter())
                    : "";
            add(fact, "rate" + of, loop.rate(), remark);
            add(fact, "friction, half the loop's height, in its middle", loop.halfHeight(), "");
            add(fact, "friction, share of load", loop.shareOfLoad(), "");
            add(fact, "friction, constant", loop.constant(), "");
            loop.lockedRate().ifPresent(rate -> add(fact, "locked rate", rate, ""));
        });
    }

    private void camber(Camber camber) {
        if (camber.load() instanceof Camber.Under.Known known) {
            Measure rate = Propagation.of(
                    QuantityKind.RATE,
                    "load over loss of camber",
                    x -> x[2] / (x[0] - x[1]),
                    camber.free(),
                    camber.loaded(),
                    known.force());
            add(camber, "rate", rate, "friction not counted: it may hang by its share of the load");
        }
    }

    /** {@code n/t} (Hz). */
    static Measure frequency(BounceCount count) {
        return Propagation.of(
                QuantityKind.FREQUENCY, "cycles over time", x -> x[0] / x[1], count.cycles(), count.time());
    }

    private void add(Fact fact, String what, Measure value, String remark) {
        found.add(new Finding(fact, what, value, remark));
    }
}
