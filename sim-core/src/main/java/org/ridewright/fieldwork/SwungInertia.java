package org.ridewright.fieldwork;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.fieldwork.SwingTest.Hung;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;

/**
 * Moment of inertia about the centre of mass, from the period {@code T = t/n} of small swings.
 *
 * <pre>
 *     pendulum     I = m a (g T²/4π² − a)                    a from the pivot to the centre of mass
 *     two wires    I = m g d_1 d_2 T²/(16 π² H)              d apart, above and below; H upright between the ends
 *     three wires  I = m g r_1 r_2 T²/(4 π² H)               r from the middle, above and below
 * </pre>
 *
 * On wires that are d_1 and d_2 apart a turn by φ raises the part by {@code d_1 d_2 φ²/8H}, on three at radii r_1 and r_2 by
 * {@code r_1 r_2 φ²/2H}; {@code I φ̇²/2} against m g times that gives the period. A swing of 10° to either side lengthens it by 0.2 %, I
 * by 0.4 %. The pendulum takes a small difference of two large figures where a is much more than the radius of gyration.
 *
 * <p>Source: textbook mechanics (from memory), derived as above.
 */
final class SwungInertia {
    /** Standard gravity (m/s²), exact by definition (3rd CGPM 1901). */
    static final double GRAVITY = 9.80665;

    private SwungInertia() {}

    /** The moment of inertia (kg·m²); not above zero where the figures cannot be. */
    static Measure of(SwingTest test) {
        Hung hung = test.hung();
        List<Measure> readings = new ArrayList<>(List.of(test.mass(), test.time()));
        readings.addAll(hung.lengths());
        int swings = test.swings();
        return Propagation.of(
                QuantityKind.INERTIA,
                "period of a swing, " + hung.word(),
                x -> inertia(hung, x, x[1] / swings),
                readings.toArray(Measure[]::new));
    }

    private static double inertia(Hung hung, double[] x, double period) {
        double mass = x[0];
        double perTurn = period * period / (4 * Math.PI * Math.PI);
        if (hung instanceof Hung.OnPivot) {
            double arm = x[2];
            return mass * arm * (GRAVITY * perTurn - arm);
        }
        double above = x[3];
        double below = x.length > 4 ? x[4] : above;
        double share = hung instanceof Hung.OnTwoWires ? 0.25 : 1;
        double aside = hung instanceof Hung.OnTwoWires ? (above - below) / 2 : above - below;
        double upright = Math.sqrt(x[2] * x[2] - aside * aside);
        return share * mass * GRAVITY * above * below * perTurn / upright;
    }
}
