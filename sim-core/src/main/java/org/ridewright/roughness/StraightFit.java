package org.ridewright.roughness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;
import org.ridewright.road.RoughnessClass;
import org.ridewright.road.RoughnessSpectrum;

/**
 * A straight line through a road's spectrum on logarithmic axes, {@code Gd(n) = Gd(n₀) (n/n₀)^−w}, twice: with w = 2, by which the
 * road's class is told, and with w of its own.
 *
 * <p>Least squares of ln Gd over the smoothed bands from 0.011 to 2.83 cycle/m, as far as the spectrum reaches. Every octave counts alike:
 * each band has its width in octaves as weight p, since otherwise the forty narrow bands above 0.28 cycle/m would outvote the rest. An estimate
 * with ν degrees of freedom is χ²(ν)/ν times the true value, its logarithm too low by ln(ν/2) − ψ(ν/2) on the average, which is
 * added, and spread by ψ′(ν/2).
 *
 * <p>Confidence: the larger of two standard errors, that of the estimates, from ψ′(ν/2), and that of the distances of the bands from the
 * line, which also tells how far the road is from a straight line.
 *
 * @param atReference Gd(n₀) with w = 2 (m³)
 * @param logError standard error of ln Gd(n₀), w = 2
 * @param freeAtReference Gd(n₀) with w free (m³)
 * @param waviness w
 * @param wavinessError standard error of w
 * @param from lower end of the bands used (cycle/m)
 * @param to upper end of the bands used (cycle/m)
 */
public record StraightFit(
        double atReference,
        double logError,
        double freeAtReference,
        double waviness,
        double wavinessError,
        double from,
        double to) {
    /** Octaves without which no line is fitted. */
    private static final double LEAST_OCTAVES = 2;

    private static final int LEAST_BANDS = 4;
    private static final double CLASS_WAVINESS = 2;

    /** Half-width of an interval of 95 % in standard errors. */
    private static final double NINETY_FIVE = 1.96;

    private record Point(double x, double y, double weight, double variance) {}

    /** The fit, if the spectrum holds n₀ and two octaves of the standard's range and is nowhere zero there. */
    static Optional<StraightFit> of(HeightSpectrum spectrum) {
        List<Point> points = new ArrayList<>();
        double from = Double.POSITIVE_INFINITY;
        double to = 0;
        double octaves = 0;
        for (Band band : Band.smoothing(Math.max(Band.FIT_FROM, spectrum.lowest()), Band.FIT_TO)) {
            if (spectrum.holds(band.from(), band.to())) {
                double height = spectrum.height(band.from(), band.to());
                if (!(height > 0)) {
                    return Optional.empty();
                }
                double half = spectrum.degreesOfFreedom(band.from(), band.to()) / 2;
                double low = Gamma.digamma(half) - Math.log(half);
                points.add(new Point(
                        Math.log(band.centre() / RoughnessSpectrum.REFERENCE),
                        Math.log(height) - low,
                        band.octaves(),
                        Gamma.trigamma(half)));
                from = Math.min(from, band.from());
                to = Math.max(to, band.to());
                octaves += band.octaves();
            }
        }
        boolean reaches = from <= RoughnessSpectrum.REFERENCE && to >= RoughnessSpectrum.REFERENCE;
        return !reaches || octaves < LEAST_OCTAVES || points.size() < LEAST_BANDS
                ? Optional.empty()
                : Optional.of(of(points, from, to));
    }

    private static StraightFit of(List<Point> points, double from, double to) {
        double weight = 0;
        double meanX = 0;
        double meanY = 0;
        for (Point p : points) {
            weight += p.weight;
            meanX += p.weight * p.x;
            meanY += p.weight * p.y;
        }
        meanX /= weight;
        meanY /= weight;
        double xx = 0;
        double xy = 0;
        for (Point p : points) {
            xx += p.weight * (p.x - meanX) * (p.x - meanX);
            xy += p.weight * (p.x - meanX) * (p.y - meanY);
        }
        double slope = xy / xx;
        double level = meanY + CLASS_WAVINESS * meanX;
        Spread fixed = new Spread();
        Spread free = new Spread();
        for (Point p : points) {
            double offFixed = p.y - (level - CLASS_WAVINESS * p.x);
            double offFree = p.y - (meanY + slope * (p.x - meanX));
            fixed.add(p.weight / weight, p.variance, offFixed);
            free.add(p.weight * (p.x - meanX) / xx, p.variance, offFree);
        }
        int n = points.size();
        return new StraightFit(
                Math.exp(level),
                fixed.error(n, 1),
                Math.exp(meanY - slope * meanX),
                -slope,
                free.error(n, 2),
                from,
                to);
    }

    /** Variance of a weighted sum of band values, Σ a² var, by the estimates' own spread and by their distance from the line. */
    private static final class Spread {
        private double expected;
        private double found;

        void add(double factor, double variance, double off) {
            expected += factor * factor * variance;
            found += factor * factor * off * off;
        }

        double error(int points, int fitted) {
            return Math.sqrt(Math.max(expected, found * points / (points - fitted)));
        }
    }

    /** The class, by w = 2. */
    public RoughnessClass roadClass() {
        return RoughnessClass.of(atReference);
    }

    /** Lower end of the interval that holds Gd(n₀), w = 2, with 95 % confidence (m³). */
    public double lower() {
        return atReference * Math.exp(-NINETY_FIVE * logError);
    }

    /** Upper end of that interval (m³). */
    public double upper() {
        return atReference * Math.exp(NINETY_FIVE * logError);
    }

    /** Confidence that the road is of a class, 0 to 1: share of the distribution of ln Gd(n₀) within its limits. */
    public double confidence(RoughnessClass candidate) {
        return below(candidate.upper()) - below(candidate.lower());
    }

    private double below(double limit) {
        if (limit == 0) {
            return 0;
        }
        double z = Math.log(limit / atReference) / logError;
        return Double.isInfinite(limit) ? 1 : 0.5 * Erf.erfc(-z / Math.sqrt(2));
    }
}
