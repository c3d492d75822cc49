package org.ridewright.figure;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One plot of a figure.
 *
 * @param title what this panel shows; may be blank
 * @param x horizontal axis; neighbours below one another with equal x axes share ends, labels and marker texts
 * @param y vertical axis
 * @param series curves, at least one, names unlike
 * @param markers vertical lines
 * @param levels horizontal reference lines
 * @param guides slanted reference lines
 * @param bands shaded strips
 * @param legend where the series are named
 * @param equalScale whether a length in x is printed as long as the same length in y; the given ends of the axes are then
 *     shown at least
 * @param field colours behind the curves that say how high a third quantity is; both axes then need given ends
 */
public record Panel(
        String title,
        AxisSpec x,
        AxisSpec y,
        List<Series> series,
        List<Marker> markers,
        List<Level> levels,
        List<Guide> guides,
        List<Band> bands,
        LegendPlace legend,
        boolean equalScale,
        Optional<Field> field) {

    /**
     * Checks and copies the lists.
     *
     * @throws IllegalArgumentException if there is no series, a name comes twice, or equal scale is asked of unlike axes
     */
    public Panel {
        series = List.copyOf(series);
        markers = List.copyOf(markers);
        levels = List.copyOf(levels);
        guides = List.copyOf(guides);
        bands = List.copyOf(bands);
        if (series.isEmpty()) {
            throw new IllegalArgumentException("panel '%s' must have ≥ 1 series, got 0".formatted(title));
        }
        Set<String> names = new HashSet<>();
        for (Series each : series) {
            if (!names.add(each.name())) {
                throw new IllegalArgumentException(
                        "panel '%s': series names must be unlike, got '%s' twice".formatted(title, each.name()));
            }
        }
        if (equalScale && (x.log() || y.log() || !x.unit().equals(y.unit()))) {
            throw new IllegalArgumentException(
                    "panel '%s': equal scale needs two linear axes of one unit, got '%s' and '%s'"
                            .formatted(title, x.unit(), y.unit()));
        }
    }

    /**
     * A panel without markers; its series are named below it when there is more than one.
     *
     * @param title what this panel shows
     * @param x horizontal axis
     * @param y vertical axis
     * @param series curves
     * @return the panel
     */
    public static Panel of(String title, AxisSpec x, AxisSpec y, Series... series) {
        LegendPlace place = series.length > 1 ? LegendPlace.BELOW : LegendPlace.NONE;
        return new Panel(
                title,
                x,
                y,
                List.of(series),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                place,
                false,
                Optional.empty());
    }

    /**
     * The same panel with vertical lines.
     *
     * @param lines markers
     * @return the panel with these markers
     */
    public Panel withMarkers(List<Marker> lines) {
        return new Panel(title, x, y, series, lines, levels, guides, bands, legend, equalScale, field);
    }

    /**
     * The same panel with reference lines.
     *
     * @param lines levels
     * @return the panel with these levels
     */
    public Panel withLevels(List<Level> lines) {
        return new Panel(title, x, y, series, markers, lines, guides, bands, legend, equalScale, field);
    }

    /**
     * The same panel with slanted reference lines.
     *
     * @param lines guides
     * @return the panel with these guides
     */
    public Panel withGuides(List<Guide> lines) {
        return new Panel(title, x, y, series, markers, levels, lines, bands, legend, equalScale, field);
    }

    /**
     * The same panel with shaded strips.
     *
     * @param strips bands
     * @return the panel with these bands
     */
    public Panel withBands(List<Band> strips) {
        return new Panel(title, x, y, series, markers, levels, guides, strips, legend, equalScale, field);
    }

    /**
     * The same panel with its legend elsewhere.
     *
     * @param place where
     * @return the panel with that legend
     */
    public Panel withLegend(LegendPlace place) {
        return new Panel(title, x, y, series, markers, levels, guides, bands, place, equalScale, field);
    }

    /** Whether it is a sketch, without frame, grid and axes. */
    boolean isSketch() {
        return x.isUndrawn() && y.isUndrawn();
    }

    /**
     * The same panel as a drawing to scale.
     *
     * @return the panel with equal scales
     */
    public Panel toScale() {
        return new Panel(title, x, y, series, markers, levels, guides, bands, legend, true, field);
    }

    /**
     * The same panel with colours behind its curves.
     *
     * @param colours how high a third quantity is
     * @return the panel with that field
     */
    public Panel withField(Field colours) {
        return new Panel(title, x, y, series, markers, levels, guides, bands, legend, equalScale, Optional.of(colours));
    }
}
