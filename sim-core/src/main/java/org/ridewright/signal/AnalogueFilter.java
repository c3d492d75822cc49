package org.ridewright.signal;

import java.util.List;
import org.hipparchus.complex.Complex;

/**
 * A gain and second-order sections in series: {@code H(s) = gain · Π_i H_i(s)}.
 *
 * @param gain factor on the whole, finite
 * @param sections at least one; the output of each is the input of the next
 */
public record AnalogueFilter(double gain, List<FilterSection> sections) {
    /** @throws IllegalArgumentException if the gain is not finite or there is no section */
    public AnalogueFilter {
        sections = List.copyOf(sections);
        if (!Double.isFinite(gain)) {
            throw new IllegalArgumentException("gain must be finite, got " + gain);
        }
        if (sections.isEmpty()) {
            throw new IllegalArgumentException("need at least 1 filter section, got 0");
        }
    }

    /** Complex gain at a frequency (Hz). */
    public Complex response(double frequency) {
        Complex product = new Complex(gain);
        for (FilterSection section : sections) {
            product = product.multiply(section.response(frequency));
        }
        return product;
    }

    /** |H| at a frequency (Hz). */
    public double magnitude(double frequency) {
        return response(frequency).norm();
    }

    /**
     * Time in which the slowest pole decays to the given fraction (s).
     *
     * <p>A filter starts at rest. If the signal did not (an offset, a record begun in mid-ride), the output carries a
     * start-up error that fades at about this pace; statistics should begin after it.
     *
     * @param fraction what may be left, between 0 and 1, both excluded
     */
    public double settlingTime(double fraction) {
        if (!(fraction > 0 && fraction < 1)) {
            throw new IllegalArgumentException("fraction left must lie between 0 and 1, got " + fraction);
        }
        double slowest =
                sections.stream().mapToDouble(FilterSection::decayRate).min().orElseThrow();
        return -Math.log(fraction) / slowest;
    }

    /** This filter made ready for one sampling rate (Hz); to be kept where many channels share it. */
    public SampledFilter at(double sampleRate) {
        return new SampledFilter(this, sampleRate);
    }

    /** The filtered channel, same instants, name and unit; see {@link SampledFilter#apply}. */
    public Channel apply(Channel input) {
        return at(input.sampleRate()).apply(input);
    }
}
