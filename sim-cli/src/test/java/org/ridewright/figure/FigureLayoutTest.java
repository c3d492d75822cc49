package org.ridewright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class FigureLayoutTest {
    private static final AxisSpec TIME = AxisSpec.of("Time", "s");
    private static final AxisSpec TRAVEL = AxisSpec.of("Travel", "mm");

    @Test
    void plotsOfOneColumnStandExactlyBelowOneAnotherAndAreAsHigh() {
        List<PlacedPanel> placed = placed(Figure.stacked(
                "a",
                "",
                "",
                150,
                panel(TIME, 0, 1, 0, 1),
                panel(TIME, 0, 2, -123456, 98765),
                panel(AxisSpec.of("Distance", "m"), 0, 5, 0, 1)));
        Rectangle2D first = placed.get(0).plot();
        for (PlacedPanel each : placed) {
            assertThat(each.plot().getX()).isEqualTo(first.getX());
            assertThat(each.plot().getWidth()).isEqualTo(first.getWidth());
            assertThat(each.plot().getHeight()).isCloseTo(first.getHeight(), within(1e-9));
        }
    }

    @Test
    void panelsWithOneAxisShareItsEndsAndItsNumbers() {
        List<PlacedPanel> placed = placed(Figure.stacked(
                "a",
                "",
                "",
                150,
                panel(TIME, 0, 1, 0, 1),
                panel(TIME, 0.5, 3, 0, 1),
                panel(AxisSpec.of("Distance", "m"), 0, 5, 0, 1)));
        assertThat(placed).extracting(PlacedPanel::numbered).containsExactly(false, true, true);
        assertThat(placed.get(0).x())
                .isEqualTo(new Scale(0, 3, false))
                .isEqualTo(placed.get(1).x());
        assertThat(placed.get(2).x()).isEqualTo(new Scale(0, 5, false));
    }

    @Test
    void theRowAboveAnIncompleteOneHasItsNumbersThroughout() {
        Panel panel = panel(TIME, 0, 1, 0, 1);
        List<PlacedPanel> placed =
                placed(new Figure("a", "", "", Collections.nCopies(8, panel), 3, Figure.PAGE_WIDTH_MM, 200));
        assertThat(placed)
                .extracting(PlacedPanel::numbered)
                .containsExactly(false, false, false, true, true, true, true, true);
    }

    @Test
    void everythingStandsOnTheSheet() {
        for (Figure figure : SampleFigures.all()) {
            Sheet sheet = FigurePainter.paint(figure);
            for (Ink ink : sheet.inks()) {
                if (ink instanceof Ink.Lettered text) {
                    double length = text.face().width(text.text(), text.size());
                    Rectangle2D box = text.upright()
                            ? new Rectangle2D.Double(
                                    text.x() - 0.75 * text.size(), text.y() - length, text.size(), length)
                            : new Rectangle2D.Double(text.x(), text.y() - 0.75 * text.size(), length, text.size());
                    assertThat(sheet.whole().contains(box))
                            .as("%s: '%s' at %s", figure.fileName(), text.text(), box)
                            .isTrue();
                }
            }
        }
    }

    @Test
    void aDrawingToScaleHasOneScaleAndShowsAllOfItsData() {
        PlacedPanel placed = placed(SampleFigures.wheelPaths()).get(0);
        assertThat(placed.x().span() / placed.plot().getWidth())
                .isCloseTo(placed.y().span() / placed.plot().getHeight(), within(1e-12));
        assertThat(placed.x().holds(-0.6) && placed.x().holds(0.9)).isTrue();
        assertThat(placed.y().holds(0) && placed.y().holds(0.4)).isTrue();
    }

    @Test
    void aLevelStretchesTheAxisAndIsNotHiddenByTheFrame() {
        Panel panel = panel(TIME, 0, 1, 3000, 5000).withLevels(List.of(new Level(0, "lift-off")));
        Scale y = placed(Figure.stacked("a", "", "", 80, panel)).get(0).y();
        assertThat(y.min()).isNegative();
    }

    @Property(tries = 100)
    void noMarkerLineCrossesATextAndNoTextsOverlap(
            @ForAll @Size(min = 1, max = 6) List<@DoubleRange(min = 0, max = 0.55) Double> places) {
        List<Marker> markers =
                places.stream().map(x -> new Marker(x, "axle meets the kerb")).toList();
        Panel panel = panel(TIME, 0, 1, 0, 1).withMarkers(markers);
        List<NoteStrip.Note> notes = new ArrayList<>(
                NoteStrip.of(panel, new Scale(0, 1, false), 40, 400).notes());
        for (int i = 0; i < notes.size(); i++) {
            for (int k = 0; k < notes.size(); k++) {
                NoteStrip.Note a = notes.get(i);
                NoteStrip.Note b = notes.get(k);
                boolean apart = a.right() <= b.left() || b.right() <= a.left();
                assertThat(i == k || a.row() != b.row() || apart).isTrue();
                boolean under = b.lineX() > a.left() && b.lineX() < a.right();
                assertThat(!under || b.row() < a.row()).isTrue();
            }
        }
    }

    @Test
    void aConstantTraceIsShownInTheMiddleOfItsAxis() {
        Scale y = AxisRange.ofY(panel(TIME, 0, 1, 340, 340));
        assertThat(y.share(340)).isCloseTo(0.5, within(1e-12));
        assertThat(AxisRange.ofY(panel(TIME, 0, 1, 0, 0)).holds(0)).isTrue();
    }

    @Test
    void samplesWithoutALogarithmAreLeftOut() {
        Series series = Series.line(0, "density", new double[] {0, 1, 10, 100}, new double[] {5, 0, 1, 0.1});
        Panel panel = Panel.of("", AxisSpec.of("Frequency", "Hz").logarithmic(), TRAVEL.logarithmic(), series);
        Sheet sheet = FigurePainter.paint(Figure.stacked("a", "", "", 80, panel));
        assertThat(sheet.inks().stream()
                        .filter(i -> i instanceof Ink.Stroked s && s.colour().equals(Tone.INK.colour())))
                .singleElement()
                .satisfies(i -> assertThat(Double.isFinite(
                                ((Ink.Stroked) i).path().getBounds2D().getWidth()))
                        .isTrue());
    }

    @Test
    void aFigureTooSmallForItsPanelsNamesTheHeightItNeeds() {
        Panel[] panels = new Panel[5];
        java.util.Arrays.fill(panels, panel(TIME, 0, 1, 0, 1));
        assertThatThrownBy(() -> FigurePainter.paint(Figure.stacked("tight", "", "", 40, panels)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageMatching("figure tight: height must be ≥ \\d+ mm for its 5 rows of panels, got 40.0 mm");
    }

    @Test
    void badDescriptionsAreRefusedByName() {
        double[] two = {0, 1};
        assertThatThrownBy(() -> Series.line(0, "travel", two, new double[] {1}))
                .hasMessage("series 'travel': x and y must have the same length ≥ 1, got 2 and 1");
        assertThatThrownBy(() -> Series.line(0, "travel", two, new double[] {1, Double.POSITIVE_INFINITY}))
                .hasMessage("series 'travel': y[1] must be finite or NaN, got Infinity");
        assertThatThrownBy(() -> TIME.between(3, 3)).hasMessage("axis 'Time': min must be < max, got 3.0 and 3.0");
        assertThatThrownBy(() -> TIME.logarithmic().from(0))
                .hasMessage("axis 'Time': min must be > 0 on a logarithmic axis, got 0.0");
        assertThatThrownBy(() -> panel(TIME, 0, 1, 0, 1).toScale())
                .hasMessage("panel '': equal scale needs two linear axes of one unit, got 's' and 'mm'");
        assertThatThrownBy(() -> Figure.stacked("a/b", "", "", 80, panel(TIME, 0, 1, 0, 1)))
                .hasMessageStartingWith("figure file name must be of letters");
    }

    @Test
    void aSeriesDoesNotChangeWithTheArraysItWasMadeFrom() {
        double[] y = {1, 2};
        Series series = Series.line(0, "travel", new double[] {0, 1}, y);
        y[0] = 99;
        series.y()[1] = 99;
        assertThat(series.y()).containsExactly(1, 2);
    }

    private static Panel panel(AxisSpec x, double fromX, double toX, double fromY, double toY) {
        return Panel.of("", x, TRAVEL, Series.line(0, "a", new double[] {fromX, toX}, new double[] {fromY, toY}));
    }

    private static List<PlacedPanel> placed(Figure figure) {
        double width = figure.widthMm() * PrintStyle.POINTS_PER_MM;
        double height = figure.heightMm() * PrintStyle.POINTS_PER_MM;
        return FigureLayout.place(figure, new Rectangle2D.Double(0, 0, width, height));
    }
}
