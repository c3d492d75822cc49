package org.ridewright.ride;

import java.util.Arrays;
import java.util.List;
import org.ridewright.math.PolynomialRange;
import org.ridewright.solver.Step;
import org.ridewright.solver.StepListener;

/** Extremes of read-offs, those of the polynomials and not of samples. */
final class RangeRecorder implements StepListener {
    private final List<? extends ReadOff> readOffs;
    private final PolynomialRange[] ranges;
    private final double[] work = new double[SampleRecorder.ROOM];

    RangeRecorder(List<? extends ReadOff> readOffs) {
        this.readOffs = List.copyOf(readOffs);
        ranges = new PolynomialRange[readOffs.size()];
        for (int i = 0; i < ranges.length; i++) {
            ranges[i] = new PolynomialRange(SampleRecorder.ROOM - 1);
        }
    }

    @Override
    public void step(Step step) {
        for (int r = 0; r < ranges.length; r++) {
            Arrays.fill(work, 0);
            int degree = readOffs.get(r).polynomial(step, work);
            ranges[r].include(work, degree, step.end(), step.start(), step.h());
        }
    }

    PolynomialRange range(int readOff) {
        return ranges[readOff];
    }
}
