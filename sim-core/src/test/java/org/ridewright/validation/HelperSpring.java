package org.ridewright.validation;

import java.util.List;
import org.ridewright.solver.Oscillator;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.SpringLaws;

/**
 * A mass on a spring k₁ with a helper k₂ that touches after a gap g, no damping; let go at the tension A on the far side.
 *
 * <pre>
 *   ½ k₁ A² = ½ k₁ C² + ½ k₂ (C − g)²                         C greatest compression
 *   ω₁² = k₁/m,  ω₂² = (k₁ + k₂)/m,  c_m = k₂ g/(k₁ + k₂)      middle of the motion with the helper on
 *   T = 2 (π/2 + arcsin(g/A))/ω₁ + 2 arccos((g − c_m)/(C − c_m))/ω₂
 *   touches at (π/2 + arcsin(g/A))/ω₁ at the speed ω₁ √(A² − g²)
 * </pre>
 */
final class HelperSpring implements ReferenceProblem {
    private static final double MASS = 400;
    private static final double MAIN = 30_000;
    private static final double HELPER = 90_000;
    private static final double GAP = 0.02;
    private static final Source CLOSED = Source.closedForm("two quarter motions joined at the gap");

    @Override
    public String title() {
        return "Helper spring with gap";
    }

    @Override
    public String statement() {
        return "400 kg on 30 N/mm with a helper of 90 N/mm after 20 mm, let go 50 mm on the far side.";
    }

    @Override
    public List<Check> checks() {
        double a = 0.05;
        double omega1 = Math.sqrt(MAIN / MASS);
        double omega2 = Math.sqrt((MAIN + HELPER) / MASS);
        double middle = HELPER * GAP / (MAIN + HELPER);
        double whole = (MAIN * a * a - HELPER * GAP * GAP) / (MAIN + HELPER);
        double greatest = middle + Math.sqrt(whole + middle * middle);
        double touch = (Math.PI / 2 + Math.asin(GAP / a)) / omega1;
        double period = 2 * touch + 2 * Math.acos((GAP - middle) / (greatest - middle)) / omega2;
        ForceLaw law = SpringLaws.withStage(ForceLaw.spring(MAIN), HELPER, GAP, 1);
        Extremes compression = new Extremes(Reading.compression(0), 0);
        Crossings turns = Crossings.turns(0);
        double[] touched = {Double.NaN};
        double[] speed = new double[Reading.ROOM];
        RegimeSolver.solve(Oscillator.free(MASS, law, a, 0, 10.2 * period), step -> {
            compression.step(step);
            turns.step(step);
            if (Double.isNaN(touched[0]) && step.isStageOn(0, 0)) {
                touched[0] = step.start();
                Reading.velocity(0).read(step, speed);
            }
        });
        return new Rows(this)
                .relative(CLOSED, "greatest compression", "mm", 1000 * greatest, 1000 * compression.greatest(), 1e-10)
                .relative(CLOSED, "the helper touches after", "s", touch, touched[0], 1e-10)
                .relative(CLOSED, "at the speed", "m/s", omega1 * Math.sqrt(a * a - GAP * GAP), -speed[0], 1e-10)
                .relative(
                        CLOSED,
                        "ten periods",
                        "s",
                        10 * period,
                        turns.events().get(19).time(),
                        1e-10)
                .list();
    }
}
