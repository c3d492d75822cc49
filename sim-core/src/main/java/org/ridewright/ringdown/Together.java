package org.ridewright.ringdown;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Several releases of one kind taken together: means weighted by the standard errors, whose own error is enlarged where the releases scatter more
 * than their errors say,
 *
 * <pre>
 *   x̄ = Σ w_i x_i / Σ w_i      w_i = 1/s_i²      s² = (1/Σ w_i) · max(1, χ²/(n − 1))      χ² = Σ w_i (x_i − x̄)²
 * </pre>
 *
 * <p>with Student's t of n − 1 degrees of freedom where it was enlarged. Source: Birge's ratio, common practice in combining measurements.
 *
 * @param releases how many
 * @param frequency ride frequency (Hz)
 * @param naturalFrequency ω/2π (Hz); the same for all however far each was pushed
 * @param dampingRatio ζ (1)
 * @param friction f (m/s²)
 * @param frictionLength F/k (m)
 * @param kind by the joint intervals
 */
public record Together(
        int releases,
        Estimate frequency,
        Estimate naturalFrequency,
        Estimate dampingRatio,
        Estimate friction,
        Estimate frictionLength,
        DampingKind kind) {
    /** Frequencies further apart than this factor are taken to be of other ends or other loads (our choice). */
    private static final double ALIKE = 1.12;

    private static final double NORMAL = 1.645;

    /** Whether releases may be of one end and one load, by their frequencies. */
    public static boolean alike(List<RingDown> releases) {
        double least =
                releases.stream().mapToDouble(r -> r.frequency().value()).min().orElse(1);
        double most =
                releases.stream().mapToDouble(r -> r.frequency().value()).max().orElse(1);
        return most <= ALIKE * least;
    }

    /** Of two releases or more whose frequencies are alike. */
    static Optional<Together> of(List<RingDown> releases) {
        if (releases.size() < 2 || !alike(releases)) {
            return Optional.empty();
        }
        Estimate damping = mean(releases, RingDown::dampingRatio);
        Estimate friction = mean(releases, RingDown::friction);
        return Optional.of(new Together(
                releases.size(),
                mean(releases, RingDown::frequency),
                mean(releases, RingDown::naturalFrequency),
                damping,
                friction,
                mean(releases, RingDown::frictionLength),
                DampingKind.of(friction, damping)));
    }

    private static Estimate mean(List<RingDown> releases, Function<RingDown, Estimate> of) {
        double weights = 0;
        double sum = 0;
        for (RingDown release : releases) {
            Estimate x = of.apply(release);
            double weight = 1 / (x.standardError() * x.standardError());
            weights += weight;
            sum += weight * x.value();
        }
        double mean = sum / weights;
        double square = 0;
        for (RingDown release : releases) {
            Estimate x = of.apply(release);
            square += Math.pow((x.value() - mean) / x.standardError(), 2);
        }
        double ratio = square / (releases.size() - 1);
        double quantile = ratio > 1
                ? new TDistribution(releases.size() - 1.0).inverseCumulativeProbability(0.5 + Estimate.CONFIDENCE / 2)
                : NORMAL;
        return Estimate.of(mean, Math.sqrt(Math.max(1, ratio) / weights), quantile);
    }
}
