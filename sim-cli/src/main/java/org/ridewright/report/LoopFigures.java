package org.ridewright.report;

import java.util.ArrayList;
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
    /** Loops up to this part of the widest are drawn by themselves. */
    private static final double SMALL = 0.26;
    /** Half of an axis over the widest travel on it. */
    private static final double AROUND = 1.15;

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
        boolean apart = loads.stream().allMatch(l -> isApart(l.loops()));
        List<Panel> panels = new ArrayList<>();
        for (SpringLoops load : loads) {
            panels.add(panel(load, apart, false));
        }
        if (apart) {
            loads.forEach(load -> panels.add(panel(load, true, true)));
        }
        String caption =
                ("Load–deflection loops, as the solver drives the force law about where the spring stands at rest: once round, clockwise. "
                                + "Just after each turn the spring is locked and stiff, then it slides.%s A heavier load makes a loop higher where friction grows with it. "
                                + "Each panel has scales of its own. Loops stop short of bump stops, helpers and free hanging.")
                        .formatted(apart ? " Below, the small loops, hardly more than their locked lines." : "");
        int columns = loads.size();
        return new Figure(
                slug(spring, "loops"),
                RideFigures.upperFirst(spring) + ": load and deflection",
                caption,
                panels,
                columns,
                Figure.PAGE_WIDTH_MM,
                24 + (columns > 2 ? 56.0 : 66.0) * (apart ? 2 : 1));
    }

    private static boolean isSmall(Loop loop, List<Loop> among) {
        return loop.amplitude() <= SMALL * among.get(among.size() - 1).amplitude();
    }

    /** Whether small loops would be lost beside the great ones. */
    private static boolean isApart(List<Loop> loops) {
        return isSmall(loops.get(0), loops);
    }

    private static Panel panel(SpringLoops load, boolean apart, boolean small) {
        List<Series> series = new ArrayList<>();
        double most = 0;
        // the widest first, so that its name leads
        for (int i = load.loops().size() - 1; i >= 0; i--) {
            Loop loop = load.loops().get(i);
            if (!apart || isSmall(loop, load.loops()) == small) {
                most = Math.max(most, MILLI * loop.amplitude());
                series.add(Series.line(
                        i,
                        "± " + Numbers.brief(MILLI * loop.amplitude()) + " mm",
                        scaled(loop.travel(), MILLI, load.travel()),
                        scaled(loop.force(), 1 / KILO, 0)));
            }
        }
        return Panel.of(
                        small ? "" : load.loadCase() + ", " + Numbers.of(load.load() / KILO) + " kN",
                        AxisSpec.of("Travel from rest", "mm").between(-AROUND * most, AROUND * most),
                        AxisSpec.of("Force", "kN"),
                        series.toArray(Series[]::new))
                .withLegend(LegendPlace.SHARED);
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
