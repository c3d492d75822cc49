package org.ridewright.validation;

import java.util.List;
import java.util.Optional;
import org.ridewright.road.Coherence;
import org.ridewright.road.NamedSpectrum;
import org.ridewright.road.RoadTracks;
import org.ridewright.road.RoughnessClass;
import org.ridewright.road.RoughnessSpectrum;
import org.ridewright.road.Surfaces;
import org.ridewright.road.Track;
import org.ridewright.signal.Detrend;
import org.ridewright.signal.WelchAccumulator;
import org.ridewright.signal.WelchSpectra;

/**
 * Roads made from a spectrum, as a wheel meets them: height r.m.s. of each ISO 8608 class over 0.011 to 2.83 cycle/m on 80 km of road, and the
 * likeness of two tracks 1.5 m apart beside that of an isotropic surface.
 */
final class RandomRoads implements ReferenceProblem {
    private static final Source CLASSES =
            Source.standard("ISO 8608:2016 annex C, geometric mean; r.m.s. = √(Gd(n₀) n₀² (1/n₁ − 1/n₂))");
    private static final Source ISOTROPIC =
            Source.closedForm("g = x K₁(x), x = 2πnT, after Dodds & Robson 1973, Kamash & Robson 1978");
    private static final double STEP = 0.125;

    @Override
    public String title() {
        return "Random roads";
    }

    @Override
    public String statement() {
        return "Height r.m.s. over 0.011 to 2.83 cycle/m on 80 km of each class (chance leaves ±1.1 %), likeness g of two tracks "
                + "1.5 m apart as a formula and as estimated from 50 km of two tracks, and named spectra at 0.1 cycle/m.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        for (ReferenceTable.Row row : ReferenceTable.read("iso8608_classes.csv").rows()) {
            RoughnessClass roughness = RoughnessClass.valueOf(row.text("class"));
            Track track = RoadTracks.of(
                            Surfaces.road(Surfaces.spectral(
                                    roughness.geometricMean(),
                                    2,
                                    0.011,
                                    2.83,
                                    100 + row.text("class").charAt(0))),
                            0.75)
                    .get(0);
            double rms = Surfaces.rms(Surfaces.heights(track, 20, 0.5, 160_000));
            rows.relative(CLASSES, roughness + ": r.m.s. height", "m", row.number("rms_band_m"), rms, 0.05);
        }
        coherence(rows);
        named(rows);
        return rows.list();
    }

    private static void coherence(Rows rows) {
        List<Track> tracks = RoadTracks.of(Surfaces.road(Surfaces.spectral(256e-6, 2, 0.02, 2, 12)), 0.75, -0.75);
        double[] left = Surfaces.heights(tracks.get(0), 20, STEP, 400_000);
        double[] right = Surfaces.heights(tracks.get(1), 20, STEP, 400_000);
        WelchAccumulator welch =
                new WelchAccumulator(1 / STEP, WelchAccumulator.segmentFor(1 / STEP, 0.005), 2, Detrend.MEAN);
        for (int i = 0; i < left.length; i++) {
            welch.accept(left[i], right[i]);
        }
        WelchSpectra spectra = welch.result();
        for (ReferenceTable.Row row : ReferenceTable.read("track_coherence.csv").rows()) {
            double n = row.number("n_cycle_per_m");
            double expected = row.number("g");
            rows.relative(
                    ISOTROPIC,
                    "formula for g at " + n + " cycle/m",
                    "1",
                    expected,
                    new Coherence.Isotropic().ratio(n, 2, 1.5),
                    1e-5);
            int middle = (int) Math.round(n / spectra.power(0).resolution());
            double estimate = 0;
            for (int k = middle - 2; k <= middle + 2; k++) {
                estimate += spectra.transfer(0, 1).gain(k).getReal() / 5;
            }
            rows.absolute(ISOTROPIC, "g of walked tracks at " + n + " cycle/m", "1", expected, estimate, 0.05);
        }
    }

    private static void named(Rows rows) {
        for (ReferenceTable.Row row :
                ReferenceTable.read("road_spectra_other.csv").rows()) {
            String surface = row.text("surface");
            ground(surface).ifPresent(ground -> {
                RoughnessSpectrum spectrum = ground.over(RoughnessSpectrum.LOWEST, RoughnessSpectrum.HIGHEST);
                String status = row.text("status").equals("memory") ? " (from memory)" : "";
                rows.relative(
                        Source.book(row.text("source") + status),
                        "'" + ground.word() + "': Gd(0.1 cycle/m)",
                        "m³",
                        row.number("Gd_at_0p1_m3"),
                        spectrum.density(0.1),
                        1e-3);
            });
        }
        range(rows, NamedSpectrum.MOTORWAY, "motorway");
        range(rows, NamedSpectrum.PRINCIPAL_ROAD, "highway");
        range(rows, NamedSpectrum.MINOR_ROAD, "minor_highway");
    }

    private static void range(Rows rows, NamedSpectrum ground, String surface) {
        List<ReferenceTable.Row> table =
                ReferenceTable.read("road_spectra_other.csv").rows();
        double product = 1;
        for (ReferenceTable.Row row : table) {
            if (row.text("surface").equals(surface + "_low")
                    || row.text("surface").equals(surface + "_high")) {
                product *= row.number("C");
            }
        }
        rows.relative(
                Source.book("Kamash & Robson 1978, geometric mean of the range"),
                "'" + ground.word() + "': C of C n^−2.5",
                "1",
                Math.sqrt(product),
                ground.coefficient(),
                1e-6);
    }

    private static Optional<NamedSpectrum> ground(String surface) {
        return switch (surface) {
            case "smooth_runway" -> Optional.of(NamedSpectrum.SMOOTH_RUNWAY);
            case "rough_runway" -> Optional.of(NamedSpectrum.ROUGH_RUNWAY);
            case "smooth_highway" -> Optional.of(NamedSpectrum.SMOOTH_HIGHWAY);
            case "highway_with_gravel" -> Optional.of(NamedSpectrum.GRAVEL);
            case "pasture" -> Optional.of(NamedSpectrum.PASTURE);
            case "ploughed_field" -> Optional.of(NamedSpectrum.PLOUGHED_FIELD);
            default -> Optional.empty();
        };
    }
}
