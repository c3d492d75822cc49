package org.ridewright.solver;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.ridewright.math.FirstCrossing;

/** The parts of a step, on two axles with four springs. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class KernelBenchmark {
    private static final int MOST = 24;
    private static final double STEP = 1e-3;
    private final double[] falling = {1, -1.5, 0.2, -0.1, 0.05, -0.02, 0.01, -0.003, 0.001};
    private final double[] safe = {1, -0.4, 0.2, -0.1, 0.05, -0.02, 0.01, -0.003, 0.001};
    private final FirstCrossing crossing = new FirstCrossing(MOST);
    private TaylorSeries series;
    private Guards guards;
    private EnergyAudit audit;
    private PackedRows rows;
    private HeldLaws held;
    private double[] acceleration;
    private int degree;

    /** A vehicle at the beginning of a rough road. */
    @Setup
    public void prepare() {
        Problem problem = BenchVehicles.gravel(BenchVehicles.vehicle(2, 0), 1, false);
        ElementOrder order = new ElementOrder(problem.equations());
        FlatLaws laws = new FlatLaws(order.equations());
        GuardTable table = new GuardTable(laws);
        Regime regime = new Regime(laws, table);
        held = new HeldLaws(laws, table, regime);
        CurvedTerms curved = new CurvedTerms(laws, regime, held, MOST + 3);
        rows = new PackedRows(laws);
        series = new TaylorSeries(laws, regime, held, rows, curved, MOST, RegimeSolver.TOLERANCE);
        guards = new Guards(laws, table, held, series, MOST);
        audit = new EnergyAudit(laws, regime, held, series, curved, MOST);
        acceleration = new double[laws.n];
        for (int i = 0; i < laws.n; i++) {
            series.q[i] = -0.03;
            series.v[i] = 0.1 * Math.sin(i);
        }
        degree = new HeightCursor(problem.heights(), MOST).expand(0, STEP, series.u);
        series.locate(STEP, degree);
        double[] c = series.c.clone();
        regime.classify(c, series.speed.clone());
        for (int j = 0; j < laws.sliders(); j++) {
            held.lock(j, 0, c[laws.sliderElement[j]]);
        }
        for (int e = 0; e < laws.ne; e++) {
            held.refresh(e);
        }
        audit.begin(c);
        series.converge(STEP, degree);
    }

    /** One coefficient of every element and coordinate. */
    @Benchmark
    public double coefficient() {
        int n = acceleration.length;
        int ne = held.stiffness.length;
        rows.term(
                STEP, series.v, n, series.speed, series.c, series.force, ne, ne, held.stiffness, held.damping,
                series.reach);
        rows.accelerate(series.force, ne, acceleration);
        return acceleration[0];
    }

    /** One step of 1 ms: series, guards and energy. */
    @Benchmark
    public int step() {
        series.converge(STEP, degree);
        int crossed = guards.search();
        audit.step(1);
        return crossed;
    }

    /** Isolating and refining the first crossing of one guard of degree 8. */
    @Benchmark
    public double event() {
        return crossing.find(falling, falling.length - 1, 1);
    }

    /** Ruling out a crossing of one guard of degree 8. */
    @Benchmark
    public double noEvent() {
        return crossing.find(safe, safe.length - 1, 1);
    }
}
