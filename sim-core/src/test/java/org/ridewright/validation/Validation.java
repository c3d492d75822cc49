package org.ridewright.validation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every reference problem, each solved once. */
final class Validation {
    private static final List<ReferenceProblem> PROBLEMS = List.of(
            new FreeOscillator(),
            new ForcedOscillator(),
            new BounceAndPitch(),
            new QuarterCarModes(),
            new WhiteRoad(),
            new CoulombRingDown(),
            new RigidForcedFriction(),
            new FiniteForcedFriction(),
            new ForcedStickSlip(),
            new FrictionLoops(),
            new ExponentialEnvelope(),
            new HelperSpring(),
            new BilinearDamper(),
            new GasSpring(),
            new Bouncing(),
            new WheelOverPlank(),
            new RetypedQuarterVehicle(),
            new IndependentIntegration(),
            new LeafSprings(),
            new Weightings(),
            new MeasuresOfVibration(),
            new KindsOfMotion(),
            new Exposures(),
            new Spectra(),
            new OccupantModels(),
            new RoadClasses(),
            new RoughnessIndices(),
            new RandomRoads(),
            new RoadToBody(),
            new HarmonicBalances());

    private static final Map<ReferenceProblem, List<Check>> SOLVED = new LinkedHashMap<>();

    private Validation() {}

    static List<ReferenceProblem> problems() {
        return PROBLEMS;
    }

    /** The checks of a problem. */
    static synchronized List<Check> checks(ReferenceProblem problem) {
        return SOLVED.computeIfAbsent(problem, ReferenceProblem::checks);
    }
}
