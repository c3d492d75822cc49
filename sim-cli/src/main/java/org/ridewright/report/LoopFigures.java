package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.friction.FrictionLab;
import org.ridewright.friction.Loop;
import org.ridewright.friction.LoopPoint;
import org.ridewright.friction.SpringLoops;

/** Load–deflection loops of springs, and what they lose and how stiff they are against amplitude. */
final class LoopFigures {
    /** At which a damper is told that loses as much (Hz). */
    static final double DAMPER_FREQUENCY = 2;

    private static final double MILLI = 1000;
    private static final double KILO = 1000;
    private static final int MOST_LOADS = 4;
    /** Loops that lose less than this part of the greatest are not drawn on a scale of ratios: the spring is locked. */
    private static final double LEAST_PART = 1e-4;

    private final FrictionLab lab;
    private final Map<String, List<SpringLoops>> springs = new LinkedHashMap<>();

    private LoopFigures(FrictionLab lab) {
        this.lab = lab;
        lab.loops()
                .forEach(each -> springs.computeIfAbsent(each.spring(), s -> new ArrayList<>())
                        .add(each));
    }

    static List<Figure> of(FrictionLab lab) {
        LoopFigures figures = new LoopFigures(lab);
        List<Figure> all = new ArrayList<>();
        figures.springs.forEach((spring, loads) -> {
            List<SpringLoops> shown = loads.subList(0, Math.min(MOST_LOADS, loads.size()));
            all.add(figures.loops(spring, shown));
            all.add(figures.losses(spring, shown));
        });
        return all;
    }

    private String slug(String spring, String what) {
        return RideName.slug(lab.model().vehicle().name()) + "-" + what + "-" + RideName.slug(spring);
    }

    private Figure loops(String spring, List<SpringLoops> loads) {
        List<Panel> panels = new ArrayList<>();
        double most = MILLI
                * loads.stream()
                        .flatMap(l -> l.loops().stream())
                        .mapToDouble(Loop::amplitude)
                        .max()
                        .orElseThrow();
        double high = loads.stream()
                        .flatMap(l -> l.loops().stream())
                        .flatMapToDouble(l -> Arrays.stream(l.force()))
                        .max()
                        .orElseThrow()
                / KILO;
        // one scale for all loads, so that loops can be compared
        AxisSpec across = AxisSpec.of("Travel from rest", "mm").between(-1.25 * most, 1.25 * most);
        AxisSpec upright = AxisSpec.of("Force", "kN").between(0, 1.05 * high);
        for (SpringLoops load : loads) {
            List<Series> series = new ArrayList<>();
            // the widest first, so that its name leads
            for (int i = load.loops().size() - 1; i >= 0; i--) {
                Loop loop = load.loops().get(i);
                double[] x = scaled(loop.travel(), MILLI, load.travel());
                double[] y = scaled(loop.force(), 1 / KILO, 0);
                series.add(Series.line(i, "± " + Numbers.brief(MILLI * loop.amplitude()) + " mm", x, y));
            }
            panels.add(Panel.of(
                            load.loadCase() + ", " + Numbers.of(load.load() / KILO) + " kN",
                            across,
                            upright,
                            series.toArray(Series[]::new))
                    .withLegend(LegendPlace.SHARED));
        }
        String caption =
                ("Load–deflection loops of the %s under each load, as the solver drives its force law about where it stands at rest: once round, clockwise. "
                                + "Just after each turn the spring is locked and stiff, then it slides. A loop of small travel is hardly more than its locked "
                                + "line; a heavier load makes the loop higher where friction grows with it. Loops stop short of bump stops, helpers and free hanging.")
                        .formatted(spring);
        int columns = Math.min(panels.size(), panels.size() == 4 ? 2 : 3);
        int rows = (panels.size() + columns - 1) / columns;
        return new Figure(
                slug(spring, "loops"),
                RideFigures.upperFirst(spring) + ": load–deflection loops",
                caption,
                panels,
                columns,
                Figure.PAGE_WIDTH_MM,
                22 + 68.0 * rows);
    }

    private static double[] scaled(double[] values, double factor, double origin) {
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = factor * (values[i] - origin);
        }
        return out;
    }

    private Figure losses(String spring, List<SpringLoops> loads) {
        double omega = 2 * Math.PI * DAMPER_FREQUENCY;
        AxisSpec x = AxisSpec.of("Amplitude of travel", "mm").logarithmic();
        List<Panel> panels = List.of(
                panel(
                        "Lost in a cycle",
                        x,
                        AxisSpec.of("Area of the loop", "J").logarithmic(),
                        loads,
                        LoopPoint::balancedArea,
                        LoopPoint::area,
                        true),
                panel(
                        "Viscous damper that loses as much at " + Numbers.brief(DAMPER_FREQUENCY) + " Hz",
                        x,
                        AxisSpec.of("Damping", "kN s/m").from(0),
                        loads,
                        p -> p.balancedDamper(omega) / KILO,
                        p -> p.damper(omega) / KILO,
                        false),
                panel(
                        "Rate in step with the travel",
                        x,
                        AxisSpec.of("Rate", "N/mm").from(0),
                        loads,
                        p -> p.balancedRate() / KILO,
                        p -> p.firstHarmonicRate() / KILO,
                        false),
                secant(x, loads));
        String caption =
                ("The loops of the %s against how far it travels. Marks: simulated loops; lines: harmonic balance, which takes the limit of friction as it is at rest. "
                                + "Upper left: area, nought while the spring is locked. Upper right: the viscous damper that loses as much each cycle at %s Hz; at "
                                + "another frequency it is as much smaller as that is higher. Lower left: first harmonic of the force in step with the travel, over the "
                                + "travel. Lower right: greatest less least force over twice the amplitude, the secant through the loop's tips, simulated; it lies a little above the rate to its left.")
                        .formatted(spring, Numbers.brief(DAMPER_FREQUENCY));
        return new Figure(
                slug(spring, "losses"),
                RideFigures.upperFirst(spring) + ": loss and rate against amplitude",
                caption,
                panels,
                2,
                Figure.PAGE_WIDTH_MM,
                150);
    }

    private static Panel panel(
            String title,
            AxisSpec x,
            AxisSpec y,
            List<SpringLoops> loads,
            ToDoubleFunction<LoopPoint> balanced,
            ToDoubleFunction<LoopPoint> simulated,
            boolean byRatio) {
        List<Series> series = new ArrayList<>();
        double most = loads.stream()
                .flatMap(l -> l.points().stream())
                .mapToDouble(simulated)
                .max()
                .orElse(1);
        double least = byRatio ? LEAST_PART * most : Double.NEGATIVE_INFINITY;
        for (int i = 0; i < loads.size(); i++) {
            List<LoopPoint> points = loads.get(i).points();
            series.add(Series.line(
                    i,
                    loads.get(i).loadCase() + ", harmonic balance",
                    amplitudes(points),
                    values(points, balanced, least)));
            series.add(Series.marks(
                    i, loads.get(i).loadCase() + ", simulated", amplitudes(points), values(points, simulated, least)));
        }
        return Panel.of(title, x, y, series.toArray(Series[]::new)).withLegend(LegendPlace.SHARED);
    }

    private static Panel secant(AxisSpec x, List<SpringLoops> loads) {
        List<Series> series = new ArrayList<>();
        for (int i = 0; i < loads.size(); i++) {
            List<LoopPoint> points = loads.get(i).points();
            series.add(Series.marks(
                    i,
                    loads.get(i).loadCase() + ", simulated",
                    amplitudes(points),
                    values(points, p -> p.secantRate() / KILO, Double.NEGATIVE_INFINITY)));
        }
        return Panel.of("Secant rate", x, AxisSpec.of("Rate", "N/mm").from(0), series.toArray(Series[]::new))
                .withLegend(LegendPlace.SHARED);
    }

    private static double[] amplitudes(List<LoopPoint> points) {
        return points.stream().mapToDouble(p -> MILLI * p.amplitude()).toArray();
    }

    private static double[] values(List<LoopPoint> points, ToDoubleFunction<LoopPoint> what, double least) {
        return points.stream()
                .mapToDouble(what)
                .map(v -> v >= least ? v : Double.NaN)
                .toArray();
    }
}
