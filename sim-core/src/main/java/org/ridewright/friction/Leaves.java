package org.ridewright.friction;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;

/** The springs of a vehicle that rub; joints that twist are left as they are. */
public final class Leaves {
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
        return law.friction().limit(load(model, element));
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
     * The vehicle with its springs oiled or rusted.
     *
     * @param factor of the limit of their friction, ≥ 0
     * @throws RideException if a spring so rusted could not let go when its load falls
     */
    public static VehicleModel greased(VehicleModel model, double factor) {
        if (factor == 1) {
            return model;
        }
        return model.withLaws(element -> rubs(element) ? element.withLaw(greased(element, factor)) : element);
    }

    private static ForceLaw greased(Element element, double factor) {
        FrictionLaw friction = element.law().friction().times(factor);
        double needed = friction.share() * element.law().greatestRate();
        if (friction.weakestLockedRate() <= needed) {
            throw new RideException(String.format(
                    Locale.ROOT,
                    "'%s' with %.3g times its friction could not let go when its load falls: its locked rate, %.3g N/m, has to exceed "
                            + "%.3g N/m; ask for less rust, or state a greater locked rate",
                    element.name(),
                    factor,
                    friction.weakestLockedRate(),
                    needed));
        }
        return element.law().withFriction(friction);
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
