package org.ridewright.solver;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.ridewright.dynamics.Equations;
import org.ridewright.math.PiecewisePolynomial;

/** Whole rides at the usual tolerance. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class RideBenchmark {
    private static final double MINUTE = 60;
    private static final double CROSSING = 3;
    private Problem plank;
    private Problem cubic;
    private Problem straight;

    /** Two axles with four seats over a plank, and over gravel. */
    @Setup
    public void prepare() {
        Equations equations = BenchVehicles.vehicle(2, 4);
        Problem level = BenchVehicles.gravel(equations, CROSSING, true);
        PiecewisePolynomial front = bump(1);
        PiecewisePolynomial rear = bump(2);
        plank = new Problem(
                equations, List.of(front, front, rear, rear), level.q(), level.v(), level.friction(), CROSSING);
        cubic = BenchVehicles.gravel(equations, MINUTE, true);
        straight = BenchVehicles.gravel(equations, MINUTE, false);
    }

    /** Up and down by 40 mm, cubic, in 60 ms each. */
    private static PiecewisePolynomial bump(double at) {
        double ramp = 0.06;
        double height = 0.04;
        double a = 3 * height / (ramp * ramp);
        double b = -2 * height / (ramp * ramp * ramp);
        return new PiecewisePolynomial(
                new double[] {0, at, at + ramp, at + 2 * ramp},
                new double[][] {{0}, {0, 0, a, b}, {height, 0, -a, -b}},
                0);
    }

    /** 3 s with a plank under both axles. */
    @Benchmark
    public Solution crossing() {
        return RegimeSolver.solve(plank, step -> {});
    }

    /** 60 s of gravel, cubic between joints 8 ms apart. */
    @Benchmark
    public Solution gravelOfCubics() {
        return RegimeSolver.solve(cubic, step -> {});
    }

    /** 60 s of gravel, straight between joints 1 ms apart. */
    @Benchmark
    public Solution gravelOfStraights() {
        return RegimeSolver.solve(straight, step -> {});
    }

    /** Growth with the size of the vehicle. */
    @State(Scope.Thread)
    public static class Size {
        @Param({"quarter", "1 axle", "2 axles", "2 axles 4 seats", "3 axles 8 seats"})
        public String vehicle;

        private Problem problem;

        /** Ten seconds of the same gravel. */
        @Setup
        public void prepare() {
            problem = BenchVehicles.gravel(equations(vehicle), 10, true);
        }

        static Equations equations(String vehicle) {
            return switch (vehicle) {
                case "quarter" -> BenchVehicles.quarter();
                case "1 axle" -> BenchVehicles.vehicle(1, 0);
                case "2 axles" -> BenchVehicles.vehicle(2, 0);
                case "2 axles 4 seats" -> BenchVehicles.vehicle(2, 4);
                case "3 axles 8 seats" -> BenchVehicles.vehicle(3, 8);
                default -> throw new IllegalArgumentException(vehicle);
            };
        }
    }

    /** 10 s of gravel for vehicles of several sizes. */
    @Benchmark
    public Solution growth(Size size) {
        return RegimeSolver.solve(size.problem, step -> {});
    }
}
