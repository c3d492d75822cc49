package org.ridewright.road;

import java.util.*;

final class Scratch {
    public static void main(String[] a) {
        RoughnessSpectrum s = RoughnessSpectrum.of(256e-6, 2);
        LaneOrder lanes = LaneOrder.of(new double[] {0.75, -0.75, 0.7, -0.7});
        long t0 = System.nanoTime();
        SpectralSurface surf = new SpectralSurface(
                new Surface.Spectral(Surface.Stretch.ALL, s, new Coherence.Isotropic(), 1), lanes, 10);
        System.out.println("made " + (System.nanoTime() - t0) / 1e6 + " ms");
        for (double n : new double[] {
            0.009, 0.0095, 0.01, 0.0105, 0.011, 0.0115, 0.012, 0.0125, 0.013, 0.014, 0.02, 0.05, 0.1, 0.2, 0.25, 0.3,
            0.33, 0.4, 0.45, 0.5, 1, 2, 5, 8, 9, 9.5, 10, 10.5, 11, 11.5
        }) {
            System.out.printf(
                    Locale.ROOT,
                    "%8.4f  %.4f  g %.6f want %.6f%n",
                    n,
                    surf.realised(0.75, 0.75, n) / s.density(n),
                    surf.realised(0.75, -0.75, n) / surf.realised(0.75, 0.75, n),
                    new Coherence.Isotropic().ratio(n, 2, 1.5));
        }
        for (int rep = 0; rep < 2; rep++) {
            t0 = System.nanoTime();
            Road road = new Road(
                    "x",
                    List.of(),
                    List.of(new Surface.Spectral(Surface.Stretch.ALL, s, new Coherence.Isotropic(), 1)),
                    Road.RUN_UP,
                    Optional.empty());
            List<Track> tr = RoadTracks.of(road, 0.75, -0.75, 0.7, -0.7);
            double sum = 0;
            long pieces = 0;
            for (double x = 0; x < 10000; x += 20)
                for (Track t : tr) {
                    RoadProfile p = t.window(x, x + 20);
                    pieces += p.sections();
                    sum += p.height(x + 10);
                }
            System.out.println("walk " + (System.nanoTime() - t0) / 1e6 + " ms pieces " + pieces + " " + sum);
        }
        double m = 0;
        int c = 0;
        Road road = new Road(
                "x",
                List.of(),
                List.of(new Surface.Spectral(Surface.Stretch.ALL, s, new Coherence.Isotropic(), 1)),
                Road.RUN_UP,
                Optional.empty());
        Track t = RoadTracks.of(road, 0.75).get(0);
        for (double x = 20; x < 100020; x += 20) {
            RoadProfile p = t.window(x, x + 20);
            for (int i = 0; i < 200; i++) {
                double z = p.height(x + i * 0.1);
                m += z * z;
                c++;
            }
        }
        System.out.println("rms " + Math.sqrt(m / c) + " want 0.015226");
    }
}
