package org.ridewright.ride;

import java.util.Arrays;
import java.util.List;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.solver.Step;

/** Horizontal force of the road on the wheels, positive backward: {@code Σ N u′ = Σ N u̇/v}; while v changes by division of series. */
final class Draught implements ReadOff {
    /** Powers of the slope kept; the speed hardly changes within a step. */
    private static final int HEIGHT_DEGREE = 8;

    private final List<WheelPlace> wheels;
    private final Travel travel;
    private final double[] load = new double[SampleRecorder.ROOM];
    private final double[] slope = new double[SampleRecorder.ROOM];
    private final double[] speed = new double[4];

    Draught(List<WheelPlace> wheels, Travel travel) {
        this.wheels = wheels;
        this.travel = travel;
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
        travel.expandSpeed(step.start(), step.h(), speed);
        for (WheelPlace wheel : wheels) {
            if (step.isOff(wheel.element())) {
                continue;
            }
            Arrays.fill(load, 0);
            Arrays.fill(slope, 0);
            step.addForce(wheel.element(), 1, load);
            step.addHeightSpeed(wheel.input(), 1, slope);
            divideBySpeed();
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

    private void divideBySpeed() {
        for (int k = 0; k < HEIGHT_DEGREE; k++) {
            for (int j = 1; j <= Math.min(k, 3); j++) {
                slope[k] -= speed[j] * slope[k - j];
            }
            slope[k] /= speed[0];
        }
    }
}
