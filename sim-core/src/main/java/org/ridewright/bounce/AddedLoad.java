package org.ridewright.bounce;

/**
 * The added-load method: the same spring carries m, then m + Δm, and is counted both times. With {@code k = m ω₁² = (m + Δm) ω₂²}
 *
 * <pre>
 *   k = Δm ω₁² ω₂² / (ω₁² − ω₂²)        m = Δm ω₂² / (ω₁² − ω₂²)
 * </pre>
 *
 * or, with the periods T = 1/f, {@code 1/k = (T₂² − T₁²)/(4π² Δm)} and {@code Δm/m = (T₂/T₁)² − 1}: both are small differences of nearly equal
 * squares. Their uncertainties are carried by first order to 1/k and Δm/m, in which the periods enter singly, and the interval is turned over as a
 * whole: where 1/k may be nought there is no upper bound for k.
 *
 * <p>It holds for a motion of one degree of freedom, with Δm the part of the load that moves with it, and a rate that is the same in both
 * counts.
 *
 * @param rate k (N/m)
 * @param mass m before the load (kg)
 */
public record AddedLoad(Interval rate, Interval mass) {
    /** Standard deviations of a 90 % interval of a normal distribution. */
    private static final double NINETY = 1.6448536269514722;

    /**
     * A value with its standard uncertainty.
     *
     * @param uncertainty one standard deviation, ≥ 0
     */
    public record Uncertain(double value, double uncertainty) {
        /** @throws IllegalArgumentException if the value is not > 0 or the uncertainty < 0 */
        public Uncertain {
            if (!(value > 0) || !(uncertainty >= 0)) {
                throw new IllegalArgumentException(
                        "need a value > 0 with an uncertainty ≥ 0, got " + value + " ± " + uncertainty);
            }
        }

        private double relative() {
            return uncertainty / value;
        }
    }

    /**
     * A value and its 90 % interval.
     *
     * @param low end, ≥ 0
     * @param high end; infinite where nothing bounds it
     */
    public record Interval(double value, double low, double high) {
        /** Whether a value lies in it. */
        public boolean holds(double x) {
            return x >= low && x <= high;
        }

        private static Interval over(double inverse, double uncertainty) {
            double greatest = inverse + NINETY * uncertainty;
            double least = inverse - NINETY * uncertainty;
            return new Interval(
                    inverse > 0 ? 1 / inverse : Double.NaN,
                    greatest > 0 ? 1 / greatest : Double.NaN,
                    least > 0 ? 1 / least : Double.POSITIVE_INFINITY);
        }
    }

    /**
     * From two counts.
     *
     * @param first frequency before (Hz)
     * @param second frequency with the load (Hz)
     * @param load Δm that moves with the counted motion (kg)
     * @return NaN values where the frequency does not fall with the load, which no load brings about
     */
    public static AddedLoad of(Uncertain first, Uncertain second, Uncertain load) {
        double t1 = 1 / first.value();
        double t2 = 1 / second.value();
        double difference = t2 * t2 - t1 * t1;
        double spread = 2 * Math.hypot(t1 * t1 * first.relative(), t2 * t2 * second.relative());
        double compliance = difference / (4 * Math.PI * Math.PI * load.value());
        double ofCompliance = Math.hypot(spread / (4 * Math.PI * Math.PI * load.value()), compliance * load.relative());
        double ratio = t2 * t2 / (t1 * t1);
        double share = (ratio - 1) / load.value();
        double ofShare = Math.hypot(
                2 * ratio * Math.hypot(first.relative(), second.relative()) / load.value(), share * load.relative());
        return new AddedLoad(Interval.over(compliance, ofCompliance), Interval.over(share, ofShare));
    }

    /** Whether the counts bound the rate from above at all: they differ by more than their errors. */
    public boolean isTold() {
        return Double.isFinite(rate.high());
    }
}
