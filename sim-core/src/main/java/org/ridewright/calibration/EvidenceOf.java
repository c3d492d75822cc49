package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ridewright.fieldwork.BounceCount;
import org.ridewright.fieldwork.BounceLog;
import org.ridewright.fieldwork.Camber;
import org.ridewright.fieldwork.Fact;
import org.ridewright.fieldwork.Heights;
import org.ridewright.fieldwork.LiftedAxle;
import org.ridewright.fieldwork.LoadDeflection;
import org.ridewright.fieldwork.Loading;
import org.ridewright.fieldwork.MeasuredRide;
import org.ridewright.fieldwork.MeasuredRide.Horse;
import org.ridewright.fieldwork.Measurements;
import org.ridewright.fieldwork.RidersWords;
import org.ridewright.fieldwork.SwingTest;
import org.ridewright.fieldwork.Weights;
import org.ridewright.measurement.UnusableLogException;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.vehicle.LoadCase;

/** Makes evidence of facts, and says of those that cannot be any why not. */
final class EvidenceOf {
    private final Measurements measurements;
    private final Sources sources;
    private final Trial before;
    private final List<Evidence> evidence = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();

    EvidenceOf(Measurements measurements, Sources sources, Trial before) {
        this.measurements = measurements;
        this.sources = sources;
        this.before = before;
        measurements.facts().forEach(this::take);
    }

    /** Everything that is fitted, and what is kept back but rides. */
    List<Evidence> evidence() {
        return evidence;
    }

    /** Facts that were not fitted, with the reason. */
    List<LeftOut> leftOut() {
        return leftOut;
    }

    private void take(Fact fact) {
        try {
            if (fact instanceof MeasuredRide ride && ride.keepBack() && ride.isFit()) {
                return;
            }
            fact.loading().ifPresent(loading -> refuseUnknown(fact, loading));
            of(fact).ifPresent(evidence::add);
        } catch (CalibrationException | UnusableLogException unfit) {
            leftOut.add(new LeftOut(fact.label(), unfit.getMessage()));
        }
    }

    /** The vehicle may be another than the one that the measurements name. */
    private void refuseUnknown(Fact fact, Loading loading) {
        if (before.vehicle().loadCase(loading.loadCase()).isEmpty()) {
            throw new UnfitValueException(fact.label() + ": the vehicle has no load case '" + loading.loadCase()
                    + "', but "
                    + before.vehicle().loadCases().stream().map(LoadCase::name).collect(Collectors.joining(", ")));
        }
    }

    private Optional<Evidence> of(Fact fact) {
        if (fact instanceof Weights weights) {
            return Optional.of(WeightEvidence.of(weights, before));
        } else if (fact instanceof LiftedAxle lifted) {
            return Optional.of(LiftedAxleEvidence.of(lifted, levelOfItsOwn(lifted), before));
        } else if (fact instanceof SwingTest swing) {
            return Optional.of(SwingEvidence.of(swing));
        } else if (fact instanceof LoadDeflection loop) {
            return Optional.of(LoopEvidence.of(loop));
        } else if (fact instanceof Heights heights) {
            return Optional.of(HeightEvidence.of(heights, before));
        } else if (fact instanceof Camber camber) {
            return Optional.of(CamberEvidence.of(camber, before));
        } else if (fact instanceof BounceCount bounce) {
            return Optional.of(BounceEvidence.of(bounce, before));
        } else if (fact instanceof BounceLog log) {
            return Optional.of(BounceLogEvidence.of(log, sources));
        } else if (fact instanceof MeasuredRide ride) {
            if (ride.horse() instanceof Horse.Unfit unfit) {
                leftOut.add(new LeftOut(ride.label(), "Marked unfit: " + unfit.reason()));
                return Optional.empty();
            }
            return Optional.of(RideEvidence.of(ride, sources, before));
        } else if (fact instanceof RidersWords) {
            // set beside a run, not fitted
            return Optional.empty();
        }
        throw new IllegalArgumentException("no such fact: " + fact);
    }

    /**
     * The level weight that only this fact states. One that stands among the weights as well is a datum by itself: taken off the raised weight, its error
     * would count twice.
     */
    private Optional<Measure> levelOfItsOwn(LiftedAxle lifted) {
        return lifted.level().filter(level -> weighedElsewhere(lifted).noneMatch(w -> w.value() == level.value()));
    }

    /** What is kept back stays out of it, unless the lifted axle is kept back too. */
    private Stream<Measure> weighedElsewhere(LiftedAxle lifted) {
        return before.vehicle().axles().stream()
                .filter(axle -> !axle.name().equals(lifted.lifted()))
                .flatMap(axle -> measurements.all(Weights.class).stream()
                        .filter(weights -> weights.load().equals(lifted.load()))
                        .filter(weights -> lifted.keepBack() || !weights.keepBack())
                        .flatMap(weights -> weights.axleLoad(axle).stream()));
    }
}
