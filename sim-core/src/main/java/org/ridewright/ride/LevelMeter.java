package org.ridewright.ride;

import java.util.Arrays;
import java.util.List;
import org.ridewright.math.PolynomialRange;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** R.m.s. and greatest size of read-offs over the steps that begin within a stretch of time; integrals are those of the polynomials. */
final class LevelMeter implements StepListener {
    private final List<ReadOff> readOffs;
    private final double from;
    private final double to;
    private final double[] square;
    private final PolynomialRange[] ranges;
    private final double[] work = new double[SampleRecorder.ROOM];
    private double time;

    /**
     * @param from beginning of the stretch (s)
     * @param to its end (s)
     */
    LevelMeter(List<ReadOff> readOffs, double from, double to) {
        this.readOffs = List.copyOf(readOffs);
        this.from = from;
        this.to = to;
        square = new double[readOffs.size()];
        ranges = new PolynomialRange[readOffs.size()];
        Arrays.setAll(ranges, i -> new PolynomialRange(SampleRecorder.ROOM - 1));
    }

    @Override
    public void step(Step step) {
        if (step.start() < from || step.start() >= to) {
            return;
        }
        time += step.duration();
        for (int r = 0; r < square.length; r++) {
            Arrays.fill(work, 0);
            int degree = readOffs.get(r).polynomial(step, work);
            square[r] += step.h() * squareIntegral(degree, step.end());
            ranges[r].include(work, degree, step.end(), step.start(), step.h());
        }
    }

    /** {@code ∫₀^end a² dτ}. */
    private double squareIntegral(int degree, double end) {
        double sum = 0;
        for (int i = degree; i >= 0; i--) {
            double inner = 0;
            for (int j = degree; j >= 0; j--) {
                inner = inner * end + work[j] / (i + j + 1);
            }
            sum = sum * end + work[i] * inner;
        }
        return sum * end;
    }

    double rms(int readOff) {
        return time == 0 ? 0 : Math.sqrt(square[readOff] / time);
    }

    /** Greatest size. */
    double peak(int readOff) {
        return time == 0 ? 0 : ranges[readOff].greatestSize();
    }
}
