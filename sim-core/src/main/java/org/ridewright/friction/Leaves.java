package org.ridewright.friction;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;

/** The springs of a vehicle that rub; joints that twist are left as they are. */
public final class Leaves {
    /** Of the growth of the limit with travel that a locked rate can bear. */
    private static final double MOST_GROWTH = 0.9;

    private Leaves() {}

    /** Whether an element is a spring with dry friction. */
    public static boolean rubs(Element element) {
        return (element.kind() == Element.Kind.SPRING || element.kind() == Element.Kind.LINKAGE)
                && element.law().friction().states() > 0;
    }

    /** Indices of the springs that rub. */
    public static List<Integer> of(VehicleModel model) {
        List<Integer> leaves = new ArrayList<>();
        for (int e = 0; e < model.equations().elements().size(); e++) {
            if (rubs(model.equations().elements().get(e))) {
                leaves.add(e);
            }
        }
        return List.copyOf(leaves);
    }

    /** Limit of the friction of an element at rest (N). */
    public static double limit(VehicleModel model, int element) {
        ForceLaw law = model.equations().elements().get(element).law();
        return law.frictionLimit(model.rest().compression()[element]);
    }

    /** Load on an element at rest (N). */
    public static double load(VehicleModel model, int element) {
        return model.equations()
                .elements()
                .get(element)
                .law()
                .elasticForce(model.rest().compression()[element]);
    }

    /**
     * The vehicle with its springs oiled or rusted: the limit of their friction at rest is {@code factor} times what it was, and grows with the load
     * in the same measure. A limit that grows faster with travel than a slider's locked rate could not let go when the load falls; where a helper
     * would bring that about, the limit grows more slowly, being as asked at rest.
     *
     * @param factor of the limit of their friction, ≥ 0
     */
    public static VehicleModel greased(VehicleModel model, double factor) {
        if (factor == 1) {
            return model;
        }
        List<Element> elements = model.equations().elements();
        return model.withLaws(element -> rubs(element)
                ? element.withLaw(greased(element.law(), model.rest().compression()[elements.indexOf(element)], factor))
                : element);
    }

    private static ForceLaw greased(ForceLaw law, double atRest, double factor) {
        FrictionLaw friction = law.friction().times(factor);
        double most = MOST_GROWTH * friction.weakestLockedRate() / law.greatestLeafRate();
        if (friction.share() <= most) {
            return law.withFriction(friction);
        }
        double load = law.leafForce(atRest);
        double constant = friction.limit(load) - most * Math.max(0, load);
        return law.withFriction(new FrictionLaw(
                most, constant, friction.limitShares(), friction.lockedRates(), friction.envelopeLength()));
    }

    /**
     * The vehicle with a viscous damper in place of the friction of each spring, {@code d = scale · S}.
     *
     * @param scale of every damper (s/m)
     */
    public static VehicleModel damped(VehicleModel model, double scale) {
        List<Element> elements = model.equations().elements();
        return model.withLaws(element -> rubs(element)
                ? element.withLaw(element.law()
                        .withFriction(FrictionLaw.NONE)
                        .withDamping(element.law().damping() + scale * limit(model, elements.indexOf(element))))
                : element);
    }
}
