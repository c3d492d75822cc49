package org.ridewright.ride;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.RandomDistribution;

/** A row of numbers from 0 to 1, taken one after the other to choose figures; 0 is the plainest choice of each. */
final class Knobs {
    private final List<Double> settings;
    private int next;

    private Knobs(List<Double> settings) {
        this.settings = settings;
    }

    /** Rows long enough for {@code count} choices. */
    static Arbitrary<List<Double>> settings(int count) {
        return Arbitraries.doubles()
                .between(0, 1)
                .ofScale(6)
                .withDistribution(RandomDistribution.uniform())
                .list()
                .ofSize(count);
    }

    static Knobs of(List<Double> settings) {
        return new Knobs(settings);
    }

    private double take() {
        return settings.get(next++ % settings.size());
    }

    /** A number from {@code plain} to {@code other}. */
    double between(double plain, double other) {
        return plain + take() * (other - plain);
    }

    /** The same, evenly spread over the logarithm. */
    double spread(double plain, double other) {
        return plain * Math.pow(other / plain, take());
    }

    /** True with the given chance. */
    boolean chance(double share) {
        return take() > 1 - share;
    }

    /** A whole number from 0 to count − 1. */
    int choice(int count) {
        return Math.min(count - 1, (int) (count * take()));
    }

    /** One of several. */
    <T> T oneOf(List<T> kinds) {
        return kinds.get(choice(kinds.size()));
    }
}
