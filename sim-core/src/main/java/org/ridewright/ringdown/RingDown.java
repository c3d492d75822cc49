package org.ridewright.ringdown;

import java.util.List;
import java.util.Optional;

/**
 * One release of a bounce test, measured. Frequencies and damping are those of {@code ẍ + 2ζω ẋ + ω² x + f sgn ẋ = 0}; of every estimate the
 * standard error and the 90 % interval are given.
 *
 * @param at instant of the release (s): the first turn that was fitted
 * @param end of what was fitted (s)
 * @param kind what takes the energy out
 * @param frequency ride frequency (Hz), as cycles are counted: damped, and with the locked parts of each half cycle where those could be told
 * @param naturalFrequency ω/2π (Hz)
 * @param dampingRatio ζ (1), with friction beside it in the fit
 * @param friction f = F/m (m/s²), with damping beside it
 * @param frictionLength F/k = f/ω² (m)
 * @param halfCycles how many stand out of the noise
 * @param counted time that they take (s)
 * @param depth distance of the first turn from the middle, about which it slides by itself were there no friction (m)
 * @param firstAcceleration just after the first turn, signed (m/s²)
 * @param noise r.m.s. of what the curve leaves (m/s²)
 * @param samples that counted
 * @param independent how many independent samples they are worth
 * @param dryOnly the best fit without damping
 * @param viscousOnly the best fit without friction
 * @param softness k/k_p (1), where the record tells that friction turns over gradually
 * @param second where two modes beat
 * @param curve record and fit, sample by sample
 * @param amplitudes of each half cycle
 * @param remarks whole sentences
 */
public record RingDown(
        double at,
        double end,
        DampingKind kind,
        Estimate frequency,
        Estimate naturalFrequency,
        Estimate dampingRatio,
        Estimate friction,
        Estimate frictionLength,
        int halfCycles,
        double counted,
        double depth,
        double firstAcceleration,
        double noise,
        int samples,
        double independent,
        OneKind dryOnly,
        OneKind viscousOnly,
        Optional<Estimate> softness,
        Optional<SecondMode> second,
        Curve curve,
        List<Amplitude> amplitudes,
        List<String> remarks) {
    public RingDown {
        amplitudes = List.copyOf(amplitudes);
        remarks = List.copyOf(remarks);
    }

    /** Cycles that stand out of the noise, in halves. */
    public double cycles() {
        return halfCycles / 2.0;
    }

    /**
     * A fit with one kind of damping alone.
     *
     * @param value ζ or f (m/s²), with its standard error and interval, were that the only kind
     * @param noise r.m.s. of what it leaves (m/s²)
     */
    public record OneKind(Estimate value, double noise) {}

    /**
     * A second mode in the same record.
     *
     * @param frequency (Hz)
     * @param dampingRatio ζ of it (1)
     * @param share amplitude at the beginning of the fit over that of the first
     */
    public record SecondMode(Estimate frequency, Estimate dampingRatio, double share) {}

    /**
     * Sample by sample. Immutable by agreement: the arrays are not copied.
     *
     * @param times (s)
     * @param recorded acceleration less the straight line of the fit (m/s²)
     * @param fitted acceleration (m/s²)
     * @param counted which samples the fit weighed
     */
    public record Curve(double[] times, double[] recorded, double[] fitted, boolean[] counted) {}

    /**
     * Size of a half cycle: of the acceleration just after the turn that begins it.
     *
     * @param time of that turn (s)
     * @param recorded what of the fitted half cycle's shape is in the record (m/s²); NaN where too few samples count
     * @param fitted (m/s²)
     * @param straight by the straight line closest to the sizes of all half cycles (m/s²)
     * @param exponential by the exponential closest to them (m/s²)
     * @param left way from this turn to the next, over that of the first half cycle (1)
     */
    public record Amplitude(
            double time, double recorded, double fitted, double straight, double exponential, Estimate left) {}
}
