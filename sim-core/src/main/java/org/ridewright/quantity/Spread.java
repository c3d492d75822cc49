package org.ridewright.quantity;

/**
 * What is known of a value, as a distribution. A tolerance {@code ± t} is taken as the standard uncertainty (one standard deviation) of the
 * value. Lengths, angles and what is not positive are spread normally, {@code x = x₀ + t z}; everything else, which cannot be negative,
 * by factors, {@code ln x = ln x₀ + ln(1 + t/x₀) z}, so that ± 50 % goes as far as 1.5 times up as 1/1.5 times down; {@code z} is standard
 * normal. For small tolerances both are the same.
 *
 * <p>Source: JCGM 100:2008 (GUM), 3.3.5 and 4.3, a tolerance stated from experience as a type B standard uncertainty; the factors are our choice.
 *
 * @param kind of the value
 * @param central value {@code x₀}, in the SI unit of the kind
 * @param deviation {@code t}, > 0, or {@code ln(1 + t/x₀)}
 * @param byFactors whether it is spread by factors
 */
public record Spread(QuantityKind kind, double central, double deviation, boolean byFactors) {
    /** The spread of a value; of one without tolerance there is none, which {@link #deviation} 0 says. */
    public static Spread of(Measure measure) {
        boolean byFactors = measure.value() > 0
                && switch (measure.kind()) {
                    case LENGTH, ANGLE, ACCELERATION -> false;
                    default -> true;
                };
        double deviation = byFactors ? Math.log1p(measure.tolerance() / measure.value()) : measure.tolerance();
        return new Spread(measure.kind(), measure.value(), deviation, byFactors);
    }

    /** The value {@code z} standard deviations from the central one (SI unit of the kind). */
    public double at(double z) {
        return byFactors ? central * Math.exp(deviation * z) : central + deviation * z;
    }

    /** By how many standard deviations a value (SI) lies from the central one; NaN where there is no spread, or it cannot be. */
    public double standardised(double value) {
        return (byFactors ? Math.log(value / central) : value - central) / deviation;
    }

    /** The words with which a file states a value of the kind, to full precision (SI). */
    public static String written(QuantityKind kind, double value) {
        return kind == QuantityKind.RATIO ? Double.toString(value) : value + " " + kind.siUnit();
    }
}
