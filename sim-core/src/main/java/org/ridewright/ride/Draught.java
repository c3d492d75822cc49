package org.ridewright.ride;

import java.util.Arrays;
import java.util.List;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.solver.Step;

/** Horizontal force of the road on the wheels, positive backward: {@code Σ N u′ = Σ N u̇/v}. */
final class Draught implements ReadOff {
    private static final int HEIGHT_DEGREE = 6;

    private final List<WheelPlace> wheels;
    private final double speed;
    private final double[] load = new double[SampleRecorder.ROOM];
    private final double[] slope = new double[SampleRecorder.ROOM];

    Draught(List<WheelPlace> wheels, double speed) {
        this.wheels = wheels;
        this.speed = speed;
    }

    @Override
    public String name() {
        return "draught";
    }

    @Override
    public String unit() {
        return "N";
    }

    @Override
    public int polynomial(Step step, double[] out) {
        for (WheelPlace wheel : wheels) {
            if (step.isOff(wheel.element())) {
                continue;
            }
            Arrays.fill(load, 0);
            Arrays.fill(slope, 0);
            step.addForce(wheel.element(), 1, load);
            step.addHeightSpeed(wheel.input(), 1 / speed, slope);
            for (int j = 0; j < HEIGHT_DEGREE && j <= step.degree(); j++) {
                if (slope[j] != 0) {
                    for (int i = 0; i <= step.degree(); i++) {
                        out[i + j] += load[i] * slope[j];
                    }
                }
            }
        }
        return step.degree() + HEIGHT_DEGREE - 1;
    }
}
