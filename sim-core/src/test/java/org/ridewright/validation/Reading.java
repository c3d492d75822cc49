package org.ridewright.validation;

import java.util.Arrays;
import org.ridewright.solver.Step;

/** A quantity that is a polynomial in τ on every step. */
@FunctionalInterface
interface Reading {
    /** More coefficients than any step has. */
    int ROOM = 40;

    /** Adds its coefficients, lowest power first, to {@code out}. */
    void addTo(Step step, double[] out);

    static Reading displacement(int coordinate) {
        return (step, out) -> step.addDisplacement(coordinate, 1, out);
    }

    static Reading velocity(int coordinate) {
        return (step, out) -> step.addVelocity(coordinate, 1, out);
    }

    static Reading acceleration(int coordinate) {
        return (step, out) -> step.addAcceleration(coordinate, 1, out);
    }

    static Reading compression(int element) {
        return (step, out) -> step.addCompression(element, 1, out);
    }

    static Reading force(int element) {
        return (step, out) -> step.addForce(element, 1, out);
    }

    /** Overwrites {@code out} with the coefficients on a step. */
    default void read(Step step, double[] out) {
        Arrays.fill(out, 0);
        addTo(step, out);
    }

    /** Value of a polynomial of this degree at τ. */
    static double at(double[] a, int degree, double tau) {
        double sum = 0;
        for (int k = degree; k >= 0; k--) {
            sum = sum * tau + a[k];
        }
        return sum;
    }
}
