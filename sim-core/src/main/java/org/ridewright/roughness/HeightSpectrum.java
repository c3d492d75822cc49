package org.ridewright.roughness;

import java.util.List;
import org.ridewright.signal.PowerSpectrum;

/**
 * One-sided spectral density of heights, by way of that of their slope.
 *
 * <pre>
 *   s(i) = (y(i+1) − y(i))/Δ      Gd(n) = Gs(n) / [2 sin(π n Δ)/Δ]²
 * </pre>
 *
 * <p>Heights of a road fall off like n^−2, so that their own estimate is filled from below by leakage; slopes are nearly white and are not.
 * A constant and a steady climb drop out.
 */
public final class HeightSpectrum {
    /** Lines whose estimate the removed mean and the window touch. */
    private static final double SPOILT_LINES = 1.5;

    /** A slope below this part of the middle one is none. */
    private static final double NOTHING = 0.01;

    /** Share of half the sampling rate up to which heights are looked at: beyond, a profile is mostly what lay between the samples. */
    private static final double TRUSTED = 0.8;

    private final PowerSpectrum slope;
    private final double spacing;

    /** @param differences spectrum of s (m, that is 1 per cycle/m) */
    HeightSpectrum(PowerSpectrum differences, double spacing) {
        this.slope = differences.filtered(n -> sincInverse(Math.PI * n * spacing));
        this.spacing = spacing;
    }

    /** x/sin x: turns the slope between two heights into that at their middle. */
    private static double sincInverse(double x) {
        return x < 1e-9 ? 1 : x / Math.sin(x);
    }

    /** Lowest wavenumber of a band that can be trusted (cycle/m). */
    public double lowest() {
        return SPOILT_LINES * slope.resolution();
    }

    /** Highest wavenumber of a band that can be trusted (cycle/m). */
    public double highest() {
        return TRUSTED * slope.highestFrequency();
    }

    /** Whether a band lies within what can be trusted; its ends in cycle/m. */
    public boolean holds(double from, double to) {
        return from >= lowest() * (1 - 1e-9) && to <= highest() * (1 + 1e-9);
    }

    /**
     * Gd at the middle √(n₁n₂) of a band (m³): exact for waviness 2 whatever the band's width.
     *
     * @param from n₁ (cycle/m), within what can be trusted
     * @param to n₂ (cycle/m), &gt; n₁
     */
    public double height(double from, double to) {
        return slope(from, to) / (4 * Math.PI * Math.PI * from * to);
    }

    /**
     * Gd in the smoothing bands that can be trusted, from long waves to short. Bands in which the slope's density is less than a hundredth of
     * that in the middle one hold nothing of the road, only what the window lets over from others; they are left out.
     */
    public List<SpectrumPoint> smoothed() {
        List<Band> bands = Band.smoothing(lowest(), highest());
        double[] slopes = bands.stream()
                .mapToDouble(b -> slope(b.from(), b.to()))
                .sorted()
                .toArray();
        double least = slopes.length == 0 ? 0 : NOTHING * slopes[slopes.length / 2];
        return bands.stream()
                .filter(b -> slope(b.from(), b.to()) > least)
                .map(b -> new SpectrumPoint(b, height(b.from(), b.to()), degreesOfFreedom(b.from(), b.to())))
                .toList();
    }

    /** Upper end of the last band that holds anything of the road (cycle/m); 0 for a level road. */
    public double end() {
        List<SpectrumPoint> points = smoothed();
        return points.isEmpty() ? 0 : points.get(points.size() - 1).band().to();
    }

    /** Mean density of the slope over a band (m). */
    public double slope(double from, double to) {
        return slope.meanSquare(from, to) / (to - from);
    }

    /** Root mean square of the slope in a band (1). */
    public double rmsSlope(double from, double to) {
        return Math.sqrt(slope.meanSquare(from, to));
    }

    /** Degrees of freedom of the estimate over a band. */
    public double degreesOfFreedom(double from, double to) {
        return slope.degreesOfFreedom(from, to);
    }

    /** Number of lines. */
    public int lines() {
        return slope.size();
    }

    /** Distance of the lines (cycle/m). */
    public double resolution() {
        return slope.resolution();
    }

    /** Δ (m). */
    public double spacing() {
        return spacing;
    }

    /** Number of half-overlapping stretches averaged. */
    public int averages() {
        return slope.averages();
    }
}
