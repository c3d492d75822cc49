package org.ridewright.road;

import static org.ridewright.road.Roads.m;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Surface.Stretch;

/** Surfaces and roads of them for tests, in metres and radians. */
public final class Surfaces {
    private Surfaces() {}

    public static Road road(Surface... surfaces) {
        return new Road("test", List.of(), List.of(surfaces), Road.RUN_UP, Optional.empty());
    }

    public static Stretch stretch(double from, double to) {
        return new Stretch(Optional.of(m(from)), Optional.of(m(to)));
    }

    public static Measure ratio(double value) {
        return Measure.of(value, QuantityKind.RATIO);
    }

    public static Measure perMetre(double value) {
        return Measure.of(value, QuantityKind.WAVENUMBER);
    }

    /** One slope over the usual band. */
    public static Surface.Spectral spectral(double roughness, double waviness, long seed) {
        return new Surface.Spectral(
                Stretch.ALL, RoughnessSpectrum.of(roughness, waviness), new Coherence.Isotropic(), seed);
    }

    /** One slope over a band. */
    public static Surface.Spectral spectral(
            double roughness, double waviness, double lowest, double highest, long seed) {
        RoughnessSpectrum spectrum = new RoughnessSpectrum(
                Measure.of(roughness, QuantityKind.VOLUME),
                waviness,
                Optional.empty(),
                perMetre(lowest),
                perMetre(highest),
                "");
        return new Surface.Spectral(Stretch.ALL, spectrum, new Coherence.Isotropic(), seed);
    }

    /** Heights at {@code from, from + step, …}, walked in windows of 50 m. */
    public static double[] heights(Track track, double from, double step, int count) {
        double[] z = new double[count];
        RoadProfile window = null;
        double end = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            double x = from + i * step;
            if (x >= end) {
                window = track.window(x, x + 50);
                end = x + 50;
            }
            z[i] = window.height(x);
        }
        return z;
    }

    public static double rms(double[] values) {
        return Math.sqrt(Arrays.stream(values).map(v -> v * v).average().orElseThrow());
    }
}
