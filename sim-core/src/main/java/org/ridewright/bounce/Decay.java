package org.ridewright.bounce;

import java.util.List;
import java.util.Optional;

/**
 * How swings get smaller from one half cycle to the next: {@code s_{j+1} = ratio · s_j − loss}. Dry friction alone has ratio 1 and loses the same
 * each time, {@code 4F/k} of swing to a half cycle, {@code 4F/k} of height to a cycle: the tops lie on a straight line. Viscous damping alone
 * loses nothing but by its ratio {@code exp(−π ζ/√(1−ζ²))}: the tops lie on an exponential.
 *
 * @param shape which of the two explains the swings better
 * @param straightLoss of height from one top to the next on the same side, by a straight line alone (m or rad per cycle)
 * @param ratio of a swing to the one before, by an exponential alone
 * @param straightMisfit r.m.s. of what the straight line leaves of the swings, over their mean
 * @param exponentialMisfit the same of the exponential
 */
public record Decay(Shape shape, double straightLoss, double ratio, double straightMisfit, double exponentialMisfit) {
    /** What the envelope looks like. */
    public enum Shape {
        STRAIGHT("straight"),
        EXPONENTIAL("exponential"),
        /** Neither is half as far off as the other. */
        MIXED("mixed");

        private final String word;

        Shape(String word) {
            this.word = word;
        }

        /** The word for it. */
        public String word() {
            return word;
        }
    }

    /** One misfit is so much less than the other that the eye would tell. */
    private static final double CLEARLY = 0.5;

    private static final int FEWEST = 3;

    /** Of swings in order of time; none of fewer than three, which any envelope fits. */
    static Optional<Decay> of(List<Double> swings) {
        int n = swings.size();
        if (n < FEWEST) {
            return Optional.empty();
        }
        double[] straight = line(swings);
        double[] logs = line(swings.stream().map(Math::log).toList());
        double mean = swings.stream().mapToDouble(s -> s).average().orElseThrow();
        double offStraight = 0;
        double offExponential = 0;
        for (int j = 0; j < n; j++) {
            offStraight += square(swings.get(j) - straight[0] - straight[1] * j);
            offExponential += square(swings.get(j) - Math.exp(logs[0] + logs[1] * j));
        }
        offStraight = Math.sqrt(offStraight / n) / mean;
        offExponential = Math.sqrt(offExponential / n) / mean;
        Shape shape = offStraight < CLEARLY * offExponential
                ? Shape.STRAIGHT
                : offExponential < CLEARLY * offStraight ? Shape.EXPONENTIAL : Shape.MIXED;
        // a swing shrinks in half a cycle by what a top loses in a whole one
        return Optional.of(new Decay(shape, -straight[1], Math.exp(logs[1]), offStraight, offExponential));
    }

    /** Least-squares line over 0, 1, 2 …: its value at 0 and its slope. */
    private static double[] line(List<Double> y) {
        int n = y.size();
        double mean = y.stream().mapToDouble(v -> v).average().orElseThrow();
        double sum = 0;
        double squares = 0;
        for (int j = 0; j < n; j++) {
            double x = j - (n - 1) / 2.0;
            sum += x * y.get(j);
            squares += x * x;
        }
        double slope = sum / squares;
        return new double[] {mean - slope * (n - 1) / 2.0, slope};
    }

    private static double square(double x) {
        return x * x;
    }

    /** Damping ratio of an exponential envelope, from its ratio. */
    public double dampingRatio() {
        double delta = -Math.log(ratio) / Math.PI;
        return delta / Math.sqrt(1 + delta * delta);
    }
}
