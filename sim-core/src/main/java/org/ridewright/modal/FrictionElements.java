package org.ridewright.modal;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.StaticState;
import org.ridewright.suspension.FrictionLaw;

/** The elements of a vehicle that rub, each with its limit at rest. */
final class FrictionElements {
    private record Rubbing(int element, FrictionLaw law, double limit) {}

    private final LinearModel sliding;
    private final List<Rubbing> all = new ArrayList<>();

    /** @param sliding small motions with friction left out */
    FrictionElements(LinearModel sliding) {
        this.sliding = sliding;
        StaticState rest = sliding.rest();
        List<Element> elements = sliding.equations().elements();
        for (int e = 0; e < elements.size(); e++) {
            FrictionLaw law = elements.get(e).law().friction();
            if (law.states() > 0) {
                double limit = elements.get(e).law().frictionLimit(rest.compression()[e]);
                all.add(new Rubbing(e, law, limit));
            }
        }
    }

    boolean none() {
        return all.isEmpty();
    }

    int count() {
        return all.size();
    }

    int element(int i) {
        return all.get(i).element();
    }

    /**
     * The linear vehicle with friction as it acts at these amplitudes.
     *
     * @param amplitudes of the compression of each element that rubs (m)
     * @param omega at which it loses what it loses (rad/s)
     */
    LinearModel at(double[] amplitudes, double omega) {
        int n = sliding.equations().elements().size();
        double[] rates = new double[n];
        double[] dampings = new double[n];
        for (int e = 0; e < n; e++) {
            rates[e] = sliding.rate(e);
            dampings[e] = sliding.damping(e);
        }
        for (int i = 0; i < all.size(); i++) {
            Rubbing each = all.get(i);
            EquivalentFriction equivalent = EquivalentFriction.of(each.law(), each.limit(), amplitudes[i]);
            rates[each.element()] += equivalent.rate();
            dampings[each.element()] += equivalent.loss() / omega;
        }
        return sliding.with(rates, dampings);
    }
}
