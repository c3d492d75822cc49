package org.ridewright.friction;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ridewright.bounce.BounceKind;
import org.ridewright.bounce.BounceResult;
import org.ridewright.bounce.BounceTest;
import org.ridewright.bounce.Handling;
import org.ridewright.dynamics.VehicleModel;

/**
 * One place of the body pressed down as far each time and let go: with springs oiled, as written and rusted, and with dampers in place of the
 * friction that take as much of the first cycle.
 *
 * @param kind where it is pressed
 * @param rungs oiled, as written, rusted, in this order
 * @param damper whose scale is found for the friction as written; absent where the body does not swing so far as to lose anything visible
 */
public record RingDowns(BounceKind kind, double depth, List<Rung> rungs, Optional<Rung> damper) {
    /** Depth from which the body is let go unless another is asked for (m). */
    public static final double USUAL_DEPTH = 0.025;

    private static final double SAMPLING_RATE = 200;

    public RingDowns {
        rungs = List.copyOf(rungs);
    }

    /**
     * One release.
     *
     * @param word for the condition
     * @param scale factor of the friction; of the damper, its damping over the limit of the friction that it stands for (s/m)
     */
    public record Rung(String word, double scale, BounceResult result) {}

    /**
     * Front, rear and roll, as far as they suit the vehicle.
     *
     * @param model with the friction as written
     * @param depth by which it is pressed (m), > 0
     */
    public static List<RingDowns> of(VehicleModel model, List<Greasing> greasings, double depth) {
        return Stream.of(BounceKind.FRONT, BounceKind.REAR, BounceKind.ROLL)
                .filter(kind -> kind.suits(model.vehicle()))
                .map(kind -> of(model, greasings, kind, depth))
                .toList();
    }

    private static RingDowns of(VehicleModel model, List<Greasing> greasings, BounceKind kind, double depth) {
        BounceTest test = new BounceTest(kind, Handling.pushTo(depth));
        List<Rung> rungs = new ArrayList<>();
        Optional<Rung> damper = Optional.empty();
        for (Greasing greasing : greasings) {
            VehicleModel greased = Leaves.greased(model, greasing.factor());
            BounceResult result = test.run(greased, SAMPLING_RATE);
            rungs.add(new Rung(greasing.word(), greasing.factor(), result));
            if (greasing.factor() == 1) {
                damper = EqualDamper.find(model, test, result)
                        .map(scale -> new Rung(
                                "damper of equal loss", scale, test.run(Leaves.damped(model, scale), SAMPLING_RATE)));
            }
        }
        return new RingDowns(kind, depth, rungs, damper);
    }
}
