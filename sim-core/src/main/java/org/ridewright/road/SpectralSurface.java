package org.ridewright.road;

import java.util.ArrayList;
import java.util.List;

/**
 * Lays out a random surface along several tracks. Its band is divided into layers of at most a decade and a half, each on a grid with five
 * points to its shortest wave; between points the height is a cubic with the value and slope of the surface at both. The error of such a
 * cubic is at most {@code (kd)⁴/384} of a wave's amplitude, 0.7 % at the top of the band and falling with the fourth power below it.
 */
final class SpectralSurface implements SurfaceLayout {
    private static final double POINTS_PER_WAVE = 5;
    private static final double WIDEST_LAYER = 40;
    private static final int KEPT_BLOCKS = 4;

    private final LaneOrder lanes;
    private final List<NoiseLayer> layers = new ArrayList<>();
    /** Grid of each layer over that of the last, the finest. */
    private final List<Integer> multiples = new ArrayList<>();

    private final double d;
    private final long first;
    private final long last;
    private final FadeIn fade;

    /** @param runUp over which it fades in, and out where it ends (m), > 0 */
    SpectralSurface(Surface.Spectral surface, LaneOrder lanes, double runUp) {
        this.lanes = lanes;
        RoughnessSpectrum spectrum = surface.spectrum();
        double lowest = spectrum.lowest().value();
        double highest = spectrum.highest().value();
        d = 1 / (POINTS_PER_WAVE * highest);
        int count = (int) Math.max(1, Math.ceil(StrictMath.log(highest / lowest) / StrictMath.log(WIDEST_LAYER)));
        for (int i = 0; i < count; i++) {
            SpectrumBand band = new SpectrumBand(
                    end(lowest, highest, i, count), end(lowest, highest, i + 1, count), i == 0, i == count - 1);
            int multiple = i == count - 1 ? 1 : (int) Math.max(1, 1 / (POINTS_PER_WAVE * band.top() * d));
            layers.add(new NoiseLayer(
                    spectrum, surface.coherence(), band, lanes, surface.seed(), i, multiple * d, KEPT_BLOCKS));
            multiples.add(multiple);
        }
        first = (long) Math.ceil(surface.stretch().begin() / d);
        double end = surface.stretch().end();
        last = end == Double.POSITIVE_INFINITY ? Long.MAX_VALUE : Math.max(first, (long) Math.floor(end / d));
        fade = new FadeIn(station(first), last == Long.MAX_VALUE ? end : station(last), runUp);
    }

    private static double end(double lowest, double highest, int i, int count) {
        return i == 0 ? lowest : i == count ? highest : lowest * StrictMath.pow(highest / lowest, (double) i / count);
    }

    @Override
    public SurfaceTrack track(double y) {
        return new Lane(lanes.placeOf(y));
    }

    /** Spectrum that the surface has in truth, between two of its tracks, at wavenumber n (m³). */
    double realised(double ya, double yb, double n) {
        return layers.stream()
                .mapToDouble(layer -> layer.realised(lanes.placeOf(ya), lanes.placeOf(yb), n))
                .sum();
    }

    private double station(long i) {
        return i * d;
    }

    private final class Lane implements SurfaceTrack {
        private final int place;

        Lane(int place) {
            this.place = place;
        }

        @Override
        public double begin() {
            return station(first);
        }

        @Override
        public double end() {
            return last == Long.MAX_VALUE ? Double.POSITIVE_INFINITY : station(last);
        }

        @Override
        public void pieces(double from, double to, Pieces out) {
            long i0 = Math.max(first, (long) Math.floor(from / d) - 1);
            long i1 = Math.min(last, (long) Math.ceil(to / d) + 1);
            double[] left = new double[2];
            double[] right = new double[2];
            if (i0 < i1) {
                node(i0, left);
            }
            for (long i = i0; i < i1; i++) {
                node(i + 1, right);
                out.hermite(station(i), station(i + 1), left[0], left[1], right[0], right[1]);
                left[0] = right[0];
                left[1] = right[1];
            }
        }

        /** Height and slope at a point of the finest grid. */
        private void node(long i, double[] out) {
            double height = 0;
            double slope = 0;
            for (int l = 0; l < layers.size(); l++) {
                NoiseLayer layer = layers.get(l);
                int multiple = multiples.get(l);
                long m = Math.floorDiv(i, multiple);
                double t = (double) (i - m * multiple) / multiple;
                double z0 = layer.height(place, m);
                double s0 = layer.slope(place, m) * layer.spacing();
                if (t == 0) {
                    height += z0;
                    slope += s0 / layer.spacing();
                } else {
                    double rise = layer.height(place, m + 1) - z0;
                    double s1 = layer.slope(place, m + 1) * layer.spacing();
                    double c2 = 3 * rise - 2 * s0 - s1;
                    double c3 = s0 + s1 - 2 * rise;
                    height += z0 + t * (s0 + t * (c2 + t * c3));
                    slope += (s0 + t * (2 * c2 + 3 * t * c3)) / layer.spacing();
                }
            }
            double x = station(i);
            double share = fade.share(x);
            out[0] = share * height;
            out[1] = share * slope + fade.slope(x) * height;
        }
    }
}
