package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Trace;
import org.ridewright.roughness.Outline;
import org.ridewright.roughness.RoughnessIndex;
import org.ridewright.roughness.SurveyedRoad;
import org.ridewright.roughness.SurveyedRoad.SurveyedTrack;
import org.ridewright.roughness.TrackRoughness;

/** Figures of a road: its heights and index, its spectrum, and what wheels make of it. */
public final class RoadFigures {
    private static final double MILLI = 1000;

    private RoadFigures() {}

    /** All figures that the road allows, in the order of reading. */
    public static List<Figure> of(SurveyedRoad road) {
        List<Figure> figures = new ArrayList<>();
        RoadWheelFigures.passing(road).ifPresent(figures::add);
        RoadWheelFigures.paths(road).ifPresent(figures::add);
        RoadSpectrumFigure.of(road).ifPresent(figures::add);
        figures.add(heights(road));
        return List.copyOf(figures);
    }

    private static Figure heights(SurveyedRoad road) {
        AxisSpec station = station(road);
        AxisSpec height = height(road);
        List<Panel> panels = new ArrayList<>();
        for (SurveyedTrack track : road.tracks()) {
            Series line = outline(track.name(), track.roughness().outline());
            panels.add(Panel.of(RideFigures.upperFirst(track.name()), station, height, line));
        }
        boolean indexed = indexPanel(road, station).map(panels::add).isPresent();
        TrackRoughness first = road.tracks().get(0).roughness();
        String caption = "Heights of %s over %s m, %s%s Heights are drawn far larger than lengths.%s"
                .formatted(
                        road.name(),
                        Numbers.of(first.length()),
                        relief(road),
                        road.tracks().size() > 1 ? "; both tracks on the same axes." : ".",
                        indexed
                                ? " Below, the International Roughness Index of each hundred metres; 0 is a perfectly even road."
                                : "");
        return Figure.stacked(
                RideName.slug(road.name()) + "-heights",
                RideFigures.upperFirst(road.name()) + ": heights along the road",
                caption,
                22 + 46.0 * panels.size(),
                panels.toArray(Panel[]::new));
    }

    private static String relief(SurveyedRoad road) {
        List<String> parts = new ArrayList<>();
        for (SurveyedTrack track : road.tracks()) {
            Outline outline = track.roughness().outline();
            double low = outline.low()[0];
            double high = outline.high()[0];
            for (int i = 0; i < outline.low().length; i++) {
                low = Math.min(low, outline.low()[i]);
                high = Math.max(high, outline.high()[i]);
            }
            parts.add("%s from %s to %s mm".formatted(track.name(), Numbers.of(MILLI * low), Numbers.of(MILLI * high)));
        }
        return String.join(", ", parts);
    }

    private static Optional<Panel> indexPanel(SurveyedRoad road, AxisSpec station) {
        List<Series> lines = new ArrayList<>();
        double greatest = 0;
        for (SurveyedTrack track : road.tracks()) {
            List<Double> sections = track.roughness().index().sections();
            if (sections.size() >= 2) {
                double[] x = new double[sections.size() + 1];
                double[] y = new double[sections.size() + 1];
                for (int i = 0; i < x.length; i++) {
                    double end = track.roughness().start() + track.roughness().length();
                    x[i] = Math.min(end, track.roughness().start() + i * RoughnessIndex.SECTION);
                    y[i] = MILLI * sections.get(Math.min(i, sections.size() - 1));
                    greatest = Math.max(greatest, y[i]);
                }
                lines.add(Series.line(lines.size(), track.name(), x, y).as(Trace.STEP));
            }
        }
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(Panel.of(
                        "Roughness index of each 100 m",
                        station,
                        AxisSpec.of("IRI", "m/km").between(0, greatest > 0 ? 1.2 * greatest : 1),
                        lines.toArray(Series[]::new)));
    }

    private static AxisSpec station(SurveyedRoad road) {
        TrackRoughness first = road.tracks().get(0).roughness();
        return AxisSpec.of("Station along the road", "m").between(first.start(), first.start() + first.length());
    }

    /** One axis for all tracks, so that they can be compared by eye. */
    private static AxisSpec height(SurveyedRoad road) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (SurveyedTrack track : road.tracks()) {
            Outline outline = track.roughness().outline();
            for (int i = 0; i < outline.low().length; i++) {
                low = Math.min(low, outline.low()[i]);
                high = Math.max(high, outline.high()[i]);
            }
        }
        double room = Math.max(0.05 * (high - low), 1e-3);
        return new AxisSpec(
                "Height",
                "mm",
                OptionalDouble.of(MILLI * (low - room)),
                OptionalDouble.of(MILLI * (high + room)),
                false);
    }

    /** Up and down once in each column. */
    private static Series outline(String name, Outline outline) {
        int columns = outline.low().length;
        double[] x = new double[2 * columns];
        double[] y = new double[2 * columns];
        for (int i = 0; i < columns; i++) {
            x[2 * i] = outline.start() + (i + 0.25) * outline.width();
            x[2 * i + 1] = outline.start() + (i + 0.75) * outline.width();
            boolean rising = i == 0 || outline.low()[i] >= outline.low()[i - 1];
            y[2 * i] = MILLI * (rising ? outline.low()[i] : outline.high()[i]);
            y[2 * i + 1] = MILLI * (rising ? outline.high()[i] : outline.low()[i]);
        }
        return Series.line(0, name, x, y);
    }
}
