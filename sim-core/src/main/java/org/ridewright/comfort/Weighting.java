package org.ridewright.comfort;

import java.util.List;
import org.ridewright.signal.AnalogueFilter;
import org.ridewright.signal.Channel;
import org.ridewright.signal.FilterSection;
import org.ridewright.signal.PowerSpectrum;

/**
 * A frequency weighting: band limits, an acceleration–velocity transition and an upward step, in series,
 *
 * <pre>
 *   H(s) = K · HP(f1) · LP(f2) · (1 + s/ω3)/(1 + s/(Q4 ω4) + (s/ω4)²) · (s² + s ω5/Q5 + ω5²)/(s² + s ω6/Q6 + ω6²)
 * </pre>
 *
 * HP and LP of second order after Butterworth, ω = 2πf.
 *
 * <p>Source: ISO 2631-1:1997 annex A; Wb: ISO 2631-4:2001 and ISO 8041. The analogue gain agrees with tables 3 and 4 of
 * ISO 2631-1 at the nominal one-third-octave centres within their rounding.
 */
public enum Weighting {
    /** Vertical at the seat, all directions at the feet. */
    WK("Wk", 1, highPass(0.4), lowPass(100), transition(12.5, 12.5, 0.63), step(2.37, 0.91, 3.35, 0.91)),
    /** Horizontal at the seat. */
    WD("Wd", 1, highPass(0.4), lowPass(100), transition(2, 2, 0.63)),
    /** Vertical, motion sickness. */
    WF("Wf", 1, highPass(0.08), lowPass(0.63), FilterSection.lowPass(0.25, 0.86), step(0.0625, 0.8, 0.1, 0.8)),
    /** Fore-and-aft at the backrest. */
    WC("Wc", 1, highPass(0.4), lowPass(100), transition(8, 8, 0.63)),
    /** Rotation at the seat. */
    WE("We", 1, highPass(0.4), lowPass(100), transition(1, 1, 0.63)),
    /** Vertical under the head of a lying person. */
    WJ("Wj", 1, highPass(0.4), lowPass(100), step(3.75, 0.91, 5.32, 0.91)),
    /** Vertical at the seat, railway practice. */
    WB("Wb", 1.024, highPass(0.4), lowPass(100), transition(16, 16, 0.55), step(2.5, 0.9, 4, 0.95));

    private final String symbol;

    @SuppressWarnings("ImmutableEnumChecker") // a record of numbers in an unmodifiable list
    private final AnalogueFilter filter;

    Weighting(String symbol, double gain, FilterSection... sections) {
        this.symbol = symbol;
        this.filter = new AnalogueFilter(gain, List.of(sections));
    }

    /** What may be left of a start-up error when a window begins. */
    private static final double START_UP_LEFT = 0.01;

    /** As the standard writes it, such as Wk. */
    public String symbol() {
        return symbol;
    }

    /** The analogue filter. */
    public AnalogueFilter filter() {
        return filter;
    }

    /** Weighting factor |H(f)| of the analogue filter at a frequency (Hz). */
    public double factor(double frequency) {
        return filter.magnitude(frequency);
    }

    /**
     * What BS 6841 uses in its place: Wb for Wk, at the seat and at the feet; the others are common to both standards, factors k
     * included.
     *
     * <p>Source: BS 6841:1987 (from memory).
     */
    public Weighting british() {
        return this == WK ? WB : this;
    }

    /**
     * Time that a window should leave before it begins in a record that does not start at rest (s): all but 1 % of the start-up
     * error is gone by then. 2.6 s; Wf 13 s.
     */
    public double settlingTime() {
        return filter.settlingTime(START_UP_LEFT);
    }

    /** a_w of a signal with this power spectrum, {@code {∫ |H|² G df}^½} (m/s² or rad/s²): the frequency-domain route. */
    public double rms(PowerSpectrum acceleration) {
        return Math.sqrt(acceleration.filtered(this::factor).meanSquare());
    }

    /**
     * The weighted channel: same instants and unit, the symbol appended to the name.
     *
     * <p>The signal counts as zero before its first sample. An offset (gravity, drift) therefore enters as a step and takes
     * {@link AnalogueFilter#settlingTime} to fade: for 1 % left, 2.6 s, with Wf 13 s. Take it off first, or begin the
     * window later. Accuracy: see {@link org.ridewright.signal.SampledFilter}.
     */
    public Channel apply(Channel acceleration) {
        Channel weighted = filter.apply(acceleration);
        return weighted.with(acceleration.name() + " " + symbol, acceleration.unit(), weighted.samples());
    }

    private static FilterSection highPass(double frequency) {
        return FilterSection.highPass(frequency, Math.sqrt(0.5));
    }

    private static FilterSection lowPass(double frequency) {
        return FilterSection.lowPass(frequency, Math.sqrt(0.5));
    }

    private static FilterSection transition(double f3, double f4, double q4) {
        return FilterSection.transition(f3, f4, q4);
    }

    private static FilterSection step(double f5, double q5, double f6, double q6) {
        return FilterSection.step(f5, q5, f6, q6);
    }
}
