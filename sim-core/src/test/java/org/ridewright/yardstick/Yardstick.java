package org.ridewright.yardstick;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.solver.Solution;

/**
 * Measures the regime solver beside two programs in C on the same equations: a general multistep integrator with root finding, and a
 * Runge-Kutta method of fixed step written by hand for this one vehicle. Arguments: the folder that holds {@code data} and the two
 * programs' sources, and a folder to build them in. What the first must hold stands in {@code docs/speed.md}; it is no part of the
 * project.
 */
public final class Yardstick {
    /** Error at which the three are compared. */
    private static final double COMPARED_AT = 1e-5;

    private static final double[] TOLERANCES = {1e-2, 1e-3, 1e-4, 1e-6, 1e-8, 1e-10, RegimeSolver.TOLERANCE};
    private static final int RUNS = 15;
    private static final double WARM_UP_SECONDS = 3;
    private static final double FIRST_CROSSING = 3;
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;
    private static final double INTERVAL = 1e-3;

    private Yardstick() {}

    private record Outcome(double speed, double error, Solution solution) {}

    public static void main(String[] args) throws IOException, InterruptedException {
        refuseUnless(args.length == 2 && !args[0].isBlank(), "No folder of the yardstick is named.");
        Path home = Path.of(args[0]).toAbsolutePath().normalize();
        for (String problem : List.of("plank", "gravel")) {
            Path file = home.resolve("data").resolve(problem + ".bin");
            refuseUnless(Files.isRegularFile(file), "There is no file " + file + ".");
        }
        tellFirstCrossing(home);
        Rivals rivals = new Rivals(home, Path.of(args[1]));
        System.out.println(rivals.state());
        System.out.printf(
                Locale.ROOT,
                "Simulated seconds per second, one thread, warmed up, median of %d runs; error: r.m.s. of the difference over "
                        + "r.m.s. of the body's accelerations, the worst of z, roll and pitch.%n",
                RUNS);
        tellOwnRoads(home);
        measure(home, "plank", rivals, 1);
        measure(home, "gravel", rivals, 8);
    }

    private static void refuseUnless(boolean given, String fault) {
        if (!given) {
            System.err.println(
                    fault + " Run mvn -q -Pyardstick -pl sim-core -Dyardstick=FOLDER with a folder that holds what "
                            + "docs/speed.md describes; it is not supplied with the project.");
            System.exit(3);
        }
    }

    /** Before anything is warm: what one crossing costs whoever starts the program for it. */
    private static void tellFirstCrossing(Path home) throws IOException {
        Problem whole = YardstickProblem.read(home.resolve("data/plank.bin")).problem();
        Problem crossing =
                new Problem(whole.equations(), whole.heights(), whole.q(), whole.v(), whole.friction(), FIRST_CROSSING);
        long start = System.nanoTime();
        Solution solution = RegimeSolver.solve(crossing, step -> {});
        System.out.printf(
                Locale.ROOT,
                "A plank crossing of %.0f s, the first run in this process, at the usual tolerance: %.0f ms (%d steps, %d switches).%n",
                FIRST_CROSSING,
                (System.nanoTime() - start) * 1e-6,
                solution.statistics().steps(),
                solution.statistics().switches());
    }

    /** The same vehicle where the road is cubic between joints 8 ms apart, as our own roads are: a minute, then an hour. */
    private static void tellOwnRoads(Path home) throws IOException {
        Problem carriage =
                YardstickProblem.read(home.resolve("data/gravel.bin")).problem();
        for (double duration : new double[] {MINUTE, MINUTE, MINUTE, HOUR}) {
            Problem problem = new Problem(
                    carriage.equations(),
                    CubicGravel.heights(duration, 1),
                    carriage.q(),
                    carriage.v(),
                    carriage.friction(),
                    duration);
            double[] trace = new double[(int) Math.round(duration / INTERVAL) + 1];
            SampledAcceleration sampled = new SampledAcceleration(trace, INTERVAL);
            long start = System.nanoTime();
            Solution solution = RegimeSolver.solve(problem, sampled);
            double seconds = (System.nanoTime() - start) * 1e-9;
            tellOwnRoad(problem, solution, seconds);
            if (Double.isNaN(trace[trace.length - 1])) {
                throw new IllegalStateException("the trace ends in no number");
            }
        }
    }

    private static void tellOwnRoad(Problem problem, Solution solution, double seconds) {
        System.out.printf(
                Locale.ROOT,
                "%.0f s of gravel, cubic between joints, one trace at 1 kHz, usual tolerance: %.0f simulated s/s; %.0f steps a "
                        + "simulated second, %d switches, energy residual %.0e; heap limited to %.0f MB.%n",
                problem.duration(),
                problem.duration() / seconds,
                solution.statistics().steps() / problem.duration(),
                solution.statistics().switches(),
                solution.energy().relativeResidual(),
                Runtime.getRuntime().maxMemory() * 1e-6);
    }

    private static void measure(Path home, String name, Rivals rivals, int refinement)
            throws IOException, InterruptedException {
        YardstickProblem problem = YardstickProblem.read(home.resolve("data").resolve(name + ".bin"));
        System.out.printf(Locale.ROOT, "%n%s, %.0f s%n", name, problem.problem().duration());
        Optional<Rivals.Speed> multistep = rivals.multistep(name);
        Optional<Rivals.Speed> rungeKutta = rivals.rungeKutta(name, refinement);
        multistep.ifPresent(x -> row("multistep, rtol 1e-6", x.speed(), x.error(), ""));
        rungeKutta.ifPresent(x -> row("hand-written Runge-Kutta, 1 ms", x.speed(), x.error(), ""));
        Outcome chosen = null;
        for (double tolerance : TOLERANCES) {
            Outcome x = run(problem, tolerance);
            Solution.Statistics s = x.solution().statistics();
            row(
                    String.format(Locale.ROOT, "regime solver, tolerance %.0e", tolerance),
                    x.speed(),
                    x.error(),
                    String.format(
                            Locale.ROOT,
                            "  %d steps, %d switches, mean order %.1f, energy residual %.0e",
                            s.steps(),
                            s.switches(),
                            s.meanOrder(),
                            x.solution().energy().relativeResidual()));
            if (x.error() <= COMPARED_AT && (chosen == null || x.speed() > chosen.speed())) {
                chosen = x;
            }
        }
        if (chosen != null && multistep.isPresent() && rungeKutta.isPresent()) {
            System.out.printf(
                    Locale.ROOT,
                    "  fastest with an error of 1e-5 or better: %.1f times the multistep integrator, %.2f times the "
                            + "hand-written Runge-Kutta%n",
                    chosen.speed() / multistep.get().speed(),
                    chosen.speed() / rungeKutta.get().speed());
        }
    }

    private static void row(String label, double speed, double error, String more) {
        System.out.printf(Locale.ROOT, "  %-36s %8.1f   error %.1e%s%n", label, speed, error, more);
    }

    private static Outcome run(YardstickProblem problem, double tolerance) {
        BodyAccelerations trace = new BodyAccelerations(problem);
        long until = System.nanoTime() + (long) (WARM_UP_SECONDS * 1e9);
        while (System.nanoTime() < until) {
            trace.begin();
            RegimeSolver.solve(problem.problem(), tolerance, trace);
        }
        double[] seconds = new double[RUNS];
        Solution solution = null;
        for (int i = 0; i < RUNS; i++) {
            long start = System.nanoTime();
            trace.begin();
            solution = RegimeSolver.solve(problem.problem(), tolerance, trace);
            seconds[i] = (System.nanoTime() - start) * 1e-9;
        }
        Arrays.sort(seconds);
        return new Outcome(problem.problem().duration() / seconds[RUNS / 2], trace.error(), solution);
    }
}
