package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Band;
import org.ridewright.figure.Figure;
import org.ridewright.figure.Guide;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.Level;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.road.RoughnessClass;
import org.ridewright.road.RoughnessSpectrum;
import org.ridewright.roughness.SpectrumPoint;
import org.ridewright.roughness.StraightFit;
import org.ridewright.roughness.SurveyedRoad;
import org.ridewright.roughness.SurveyedRoad.SurveyedTrack;

/** Spectrum of a road's heights against the lines between the classes, twice: as the standard draws it, and with the classes level. */
final class RoadSpectrumFigure {
    private static final double MICRO = 1e6;

    /** Room above and below the curves, as a ratio: wide enough for the class limits next to them. */
    private static final double ABOVE = 3;

    private static final double BELOW = 12;

    private RoadSpectrumFigure() {}

    static Optional<Figure> of(SurveyedRoad road) {
        List<Series> heights = new ArrayList<>();
        List<Series> levelled = new ArrayList<>();
        for (SurveyedTrack track : road.tracks()) {
            List<SpectrumPoint> points = track.roughness().smoothed();
            if (points.size() >= 2) {
                double[] n =
                        points.stream().mapToDouble(SpectrumPoint::wavenumber).toArray();
                double[] g = points.stream().mapToDouble(SpectrumPoint::height).toArray();
                double[] level = points.stream()
                        .mapToDouble(p -> MICRO * p.atReference())
                        .toArray();
                heights.add(Series.line(heights.size(), track.name(), n, g));
                levelled.add(Series.line(levelled.size(), track.name(), n, level));
            }
        }
        if (heights.isEmpty()) {
            return Optional.empty();
        }
        AxisSpec wavenumber =
                AxisSpec.of("Wavenumber n (waves in a metre)", "cycle/m").logarithmic();
        Panel asStandard = Panel.of(
                        "As the standard draws it: the lower, the smoother; long waves to the left",
                        wavenumber,
                        span("Gd(n)", "m³", heights),
                        heights.toArray(Series[]::new))
                .withLegend(LegendPlace.NONE)
                .withGuides(limits())
                .withBands(fitted(road));
        Panel level = Panel.of(
                        "The same times (n/n_{0})², so that classes lie level",
                        wavenumber, span("Gd(n)·(n/n_{0})²", "10⁻⁶ m³", levelled), levelled.toArray(Series[]::new))
                .withLevels(levels())
                .withLegend(LegendPlace.BELOW);
        return Optional.of(Figure.stacked(
                RideName.slug(road.name()) + "-spectrum",
                RideFigures.upperFirst(road.name()) + ": spectrum of its heights and the classes of ISO 8608",
                caption(road),
                170,
                asStandard,
                level));
    }

    private static List<Guide> limits() {
        List<Guide> guides = new ArrayList<>();
        RoughnessClass below = null;
        for (RoughnessClass each : RoughnessClass.values()) {
            if (below != null) {
                double at = each.lower();
                guides.add(new Guide(
                        RoughnessSpectrum.REFERENCE,
                        at,
                        10 * RoughnessSpectrum.REFERENCE,
                        at / 100,
                        below + " | " + each));
            }
            below = each;
        }
        return guides;
    }

    private static List<Level> levels() {
        List<Level> levels = new ArrayList<>();
        RoughnessClass below = null;
        for (RoughnessClass each : RoughnessClass.values()) {
            if (below != null) {
                levels.add(new Level(MICRO * each.lower(), below + " | " + each));
            }
            below = each;
        }
        return levels;
    }

    private static List<Band> fitted(SurveyedRoad road) {
        return road.tracks().stream()
                .flatMap(t -> t.roughness().fit().stream())
                .findFirst()
                .map(f -> List.of(new Band(Band.Span.OF_X, f.from(), f.to(), "the class is fitted here")))
                .orElse(List.of());
    }

    private static AxisSpec span(String quantity, String unit, List<Series> lines) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (Series line : lines) {
            for (double y : line.y()) {
                if (y > 0) {
                    low = Math.min(low, y);
                    high = Math.max(high, y);
                }
            }
        }
        AxisSpec axis = AxisSpec.of(quantity, unit).logarithmic();
        return low <= high ? axis.between(low / BELOW, high * ABOVE) : axis;
    }

    private static String caption(SurveyedRoad road) {
        List<String> parts = new ArrayList<>();
        for (SurveyedTrack track : road.tracks()) {
            Optional<StraightFit> fit = track.roughness().fit();
            fit.ifPresent(f -> parts.add("%s: class %s, Gd(n₀) = %s·10⁻⁶ m³, waviness %s"
                    .formatted(
                            track.name(),
                            f.roadClass(),
                            Numbers.of(MICRO * f.atReference()),
                            Numbers.of(f.waviness()))));
        }
        String found = parts.isEmpty() ? "No class could be fitted." : String.join("; ", parts) + ".";
        return ("One-sided spectral density of the heights of %s, smoothed in bands of an octave to a twelfth of one, against the limits between "
                        + "the classes of road roughness, from A (very good) to H. %s n₀ = 0.1 cycle/m.")
                .formatted(road.name(), found);
    }
}
