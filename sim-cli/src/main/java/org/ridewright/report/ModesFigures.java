package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.complex.Complex;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.modal.Condition;
import org.ridewright.modal.ModalAnalysis;
import org.ridewright.modal.Mode;
import org.ridewright.modal.PlaceResponse;
import org.ridewright.modal.ResponseCurve;
import org.ridewright.modal.RoadInput;
import org.ridewright.modal.RoadInput.Tracks;
import org.ridewright.modal.Swing;
import org.ridewright.modal.SwingCurve;

/** Figures of a vehicle's modes: their shapes, what reaches the seats, and what friction does with how far it swings. */
final class ModesFigures {
    private static final double MILLI = 1000;
    private static final double KMH = 3.6;
    private static final int MOST_PLACES = 4;
    private static final double LEAST_RATIO = 0.01;

    private ModesFigures() {}

    static List<Figure> of(ModalAnalysis analysis) {
        List<Figure> figures = new ArrayList<>();
        figures.add(shapes(analysis, Condition.SLIDING));
        if (analysis.rubs()) {
            figures.add(shapes(analysis, Condition.LOCKED));
        }
        figures.add(responses(analysis));
        wheels(analysis).ifPresent(figures::add);
        if (!analysis.swings().isEmpty()) {
            figures.add(swings(analysis));
        }
        return figures;
    }

    static String subject(ModalAnalysis analysis) {
        return analysis.model().vehicle().name() + ", "
                + analysis.model().loadCase().name();
    }

    /** The same within a sentence. */
    private static String within(ModalAnalysis analysis) {
        return analysis.model().vehicle().name() + " ("
                + analysis.model().loadCase().name() + ")";
    }

    private static String slug(ModalAnalysis analysis) {
        return RideName.slug(analysis.model().vehicle().name()) + "-"
                + RideName.slug(analysis.model().loadCase().name());
    }

    private static String condition(ModalAnalysis analysis, Condition condition) {
        return analysis.rubs() ? "springs " + condition.word() : "no dry friction";
    }

    private static Figure shapes(ModalAnalysis analysis, Condition condition) {
        List<Panel> panels = new ArrayList<>();
        for (Mode mode : analysis.modes(condition).modes()) {
            String title = "%d  %s, %s"
                    .formatted(panels.size() + 1, RideFigures.upperFirst(mode.name()), ModesTables.frequency(mode));
            panels.add(ModeSketch.of(analysis.model(), mode, title));
        }
        boolean rolls = analysis.model().vehicle().layout().rolls();
        String caption =
                ("Modes of the %s, %s, each at the end of its swing and far larger than life; dotted as it stands. Seen from the left, "
                                + "the front to the left%s. Wheels, axles and their places are to scale, the body is a box. A mark within the body is "
                                + "its centre of oscillation, which stays where it is.")
                        .formatted(
                                within(analysis),
                                condition(analysis, condition),
                                rolls ? ", and from behind at the axles named above the drawings" : "");
        int rows = (panels.size() + 1) / 2;
        return new Figure(
                slug(analysis) + "-shapes-" + condition.word(),
                "%s: mode shapes, %s".formatted(subject(analysis), condition(analysis, condition)),
                caption,
                panels,
                Math.min(2, panels.size()),
                Figure.PAGE_WIDTH_MM,
                12 + 33.0 * rows);
    }

    private static List<PlaceResponse> places(ModalAnalysis analysis) {
        List<PlaceResponse> seats =
                analysis.responses().stream().filter(PlaceResponse::seat).toList();
        List<PlaceResponse> all = analysis.responses();
        List<PlaceResponse> ofBody = all.size() > 2 ? List.of(all.get(1), all.get(all.size() - 1)) : all.subList(0, 1);
        List<PlaceResponse> chosen = seats.isEmpty() ? ofBody : seats;
        return chosen.subList(0, Math.min(MOST_PLACES, chosen.size()));
    }

    private static Figure responses(ModalAnalysis analysis) {
        List<Panel> panels = new ArrayList<>();
        for (PlaceResponse place : places(analysis)) {
            List<Series> lines = new ArrayList<>();
            for (ResponseCurve curve : place.curves()) {
                boolean shown =
                        curve.input().equals(RoadInput.both(analysis.settings().speed()))
                                && (analysis.rubs() || curve.condition().equals(Optional.of(Condition.SLIDING)));
                if (shown && lines.size() < 5) {
                    line(lines, name(analysis, curve), curve);
                }
            }
            panels.add(panel(RideFigures.upperFirst(place.place()), lines));
        }
        String friction = !analysis.rubs()
                ? "Nothing rubs, so that the height of the waves does not matter."
                : "Sliding and locked: friction left out, and friction that never lets go; between them what waves of the stated height above and below "
                        + "the mean make of it, by harmonic balance, as far as neither wheel nor rider would leave what they rest on.";
        return figure(
                analysis,
                "responses",
                "vertical motion over that of the road at " + speed(analysis),
                ("What reaches %s of the %s from waves of the road under both tracks, at %s: amplitude over that of the road, against how often "
                                + "waves come. The axles meet each wave one after the other, which makes dips and crests. %s")
                        .formatted(
                                places(analysis).get(0).seat() ? "the seats" : "the body",
                                within(analysis),
                                speed(analysis),
                                friction),
                panels);
    }

    private static Figure figure(
            ModalAnalysis analysis, String what, String title, String caption, List<Panel> panels) {
        int columns = panels.size() % 2 == 0 ? 2 : 1;
        int rows = (panels.size() + columns - 1) / columns;
        return new Figure(
                slug(analysis) + "-" + what,
                subject(analysis) + ": " + title,
                caption,
                panels,
                columns,
                Figure.PAGE_WIDTH_MM,
                26 + (columns == 1 && rows > 1 ? 50.0 : 62.0) * rows);
    }

    private static Panel panel(String title, List<Series> lines) {
        return Panel.of(
                        title,
                        AxisSpec.of("Frequency", "Hz").logarithmic(),
                        AxisSpec.of("Motion over that of the road", "")
                                .logarithmic()
                                .from(LEAST_RATIO),
                        lines.toArray(Series[]::new))
                .withLegend(lines.size() > 1 ? LegendPlace.SHARED : LegendPlace.NONE);
    }

    private static String name(ModalAnalysis analysis, ResponseCurve curve) {
        if (curve.condition().isPresent()) {
            return analysis.rubs() ? curve.condition().get().word() : "no dry friction";
        }
        return "waves of ± " + Numbers.of(MILLI * curve.amplitude(), 2) + " mm";
    }

    static String speed(ModalAnalysis analysis) {
        return Numbers.of(KMH * analysis.settings().speed(), 3) + " km/h";
    }

    /** Adds a curve; one of which nothing is left is left out. */
    private static void line(List<Series> lines, String name, ResponseCurve curve) {
        double[] f = ModalAnalysis.frequencies();
        double[] y = new double[f.length];
        boolean any = false;
        for (int i = 0; i < f.length; i++) {
            Complex value = curve.values()[i];
            double size = value.norm();
            y[i] = i < curve.leaves() && size > LEAST_RATIO ? size : Double.NaN;
            any |= Double.isFinite(y[i]);
        }
        if (any) {
            lines.add(Series.line(lines.size(), name, f, y));
        }
    }

    /** What each axle, and one track alone, do to the first place. */
    private static Optional<Figure> wheels(ModalAnalysis analysis) {
        int axles = analysis.model().vehicle().axles().size();
        if (axles < 2 && !analysis.model().vehicle().layout().rolls()) {
            return Optional.empty();
        }
        List<Panel> panels = new ArrayList<>();
        for (PlaceResponse place :
                places(analysis).subList(0, Math.min(2, places(analysis).size()))) {
            List<Series> lines = new ArrayList<>();
            for (ResponseCurve curve : place.curves()) {
                if (curve.condition().equals(Optional.of(Condition.SLIDING))
                        && curve.input().tracks() != Tracks.RIGHT
                        && lines.size() < 5) {
                    line(lines, words(analysis, curve.input()), curve);
                }
            }
            panels.add(panel(RideFigures.upperFirst(place.place()), lines));
        }
        return Optional.of(figure(
                analysis,
                "wheels",
                "which wheels bring it, " + condition(analysis, Condition.SLIDING),
                ("The same for one place or two of the %s, %s, with waves under other wheels: one axle alone, one track alone, and all axles at once as on waves far "
                                + "longer than the vehicle.")
                        .formatted(within(analysis), condition(analysis, Condition.SLIDING)),
                panels));
    }

    static String words(ModalAnalysis analysis, RoadInput input) {
        if (input.axle().isPresent()) {
            return analysis.model()
                            .vehicle()
                            .axles()
                            .get(input.axle().getAsInt())
                            .title() + " alone";
        }
        String when = Double.isInfinite(input.speed()) ? "all axles at once" : "at " + speed(analysis);
        return input.tracks().words() + ", " + when;
    }

    private static Figure swings(ModalAnalysis analysis) {
        List<Series> frequency = new ArrayList<>();
        List<Series> damping = new ArrayList<>();
        for (SwingCurve curve : analysis.swings()) {
            double[] x =
                    curve.swings().stream().mapToDouble(s -> MILLI * s.travel()).toArray();
            frequency.add(Series.line(
                    frequency.size(),
                    curve.mode(),
                    x,
                    curve.swings().stream().mapToDouble(Swing::frequency).toArray()));
            damping.add(Series.line(
                    damping.size(),
                    curve.mode(),
                    x,
                    curve.swings().stream().mapToDouble(s -> 100 * s.ratio()).toArray()));
        }
        AxisSpec travel =
                AxisSpec.of("Amplitude of the spring that travels most", "mm").logarithmic();
        LegendPlace legend = frequency.size() > 1 ? LegendPlace.SHARED : LegendPlace.NONE;
        return Figure.stacked(
                slug(analysis) + "-swings",
                subject(analysis) + ": frequency and damping against amplitude",
                ("How far the springs of the %s swing decides whether they slide: natural frequency, and damping ratio by friction, dampers and "
                                + "tyres together, by harmonic balance. Small swings are locked, large ones slide; in between friction takes most.")
                        .formatted(within(analysis)),
                130,
                Panel.of("Natural frequency", travel, AxisSpec.of("Frequency", "Hz"), frequency.toArray(Series[]::new))
                        .withLegend(legend),
                Panel.of(
                                "Equivalent damping ratio",
                                travel,
                                AxisSpec.of("Damping ratio", "%").from(0),
                                damping.toArray(Series[]::new))
                        .withLegend(legend));
    }
}
