package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.Level;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Trace;
import org.ridewright.standing.SpringLoad;
import org.ridewright.standing.StageTravel;
import org.ridewright.standing.Standing;
import org.ridewright.vehicle.GappedStage;
import org.ridewright.vehicle.Vehicle;

/** Figures of how a vehicle stands: what axles carry, where springs stand between their stops. */
final class LoadsFigures {
    private static final double MILLI = 1000;
    private static final int MOST_BARS = 5;

    private LoadsFigures() {}

    static List<Figure> of(Vehicle vehicle, List<Standing> all) {
        List<Figure> figures = new ArrayList<>();
        figures.add(axles(vehicle, all));
        travel(vehicle, all).ifPresent(figures::add);
        stress(vehicle, all).ifPresent(figures::add);
        return figures;
    }

    private static String numbered(List<Standing> all) {
        return IntStream.range(0, all.size())
                .mapToObj(i -> (i + 1) + " " + all.get(i).loadCase().name())
                .collect(Collectors.joining(", "));
    }

    private static AxisSpec cases(List<Standing> all) {
        return AxisSpec.of("Load case: " + numbered(all), "").between(0.4, all.size() + 0.6);
    }

    private static double[] numbers(List<Standing> all) {
        return IntStream.rangeClosed(1, all.size()).asDoubleStream().toArray();
    }

    private static Figure axles(Vehicle vehicle, List<Standing> all) {
        List<Series> bars = new ArrayList<>();
        for (int a = 0; a < Math.min(MOST_BARS, vehicle.axles().size()); a++) {
            int axle = a;
            bar(
                    bars,
                    vehicle.axles().get(a).title(),
                    all,
                    all.stream().mapToDouble(s -> s.axleLoad(axle) / MILLI).toArray());
        }
        for (int h = 0; h < all.get(0).hitches().size() && bars.size() < MOST_BARS; h++) {
            int hitch = h;
            bar(
                    bars,
                    all.get(0).hitches().get(h).name(),
                    all,
                    all.stream()
                            .mapToDouble(s -> s.hitches().get(hitch).load() / MILLI)
                            .toArray());
        }
        // bars grow from nothing; only a hitch that holds the vehicle down goes below
        boolean below = bars.stream().anyMatch(b -> Arrays.stream(b.y()).anyMatch(y -> y < 0));
        AxisSpec load =
                below ? AxisSpec.of("Load", "kN") : AxisSpec.of("Load", "kN").from(0);
        return Figure.stacked(
                RideName.slug(vehicle.name()) + "-axle-loads",
                vehicle.name() + ": what axles" + (all.get(0).hitches().isEmpty() ? "" : " and hitches") + " carry",
                "Load that stands on each axle of the " + vehicle.name() + ", wheels and axle included, by load case: "
                        + numbered(all) + ".",
                80,
                Panel.of("", cases(all), load, bars.toArray(Series[]::new)).withLegend(LegendPlace.BELOW));
    }

    private static void bar(List<Series> bars, String name, List<Standing> all, double[] values) {
        bars.add(Series.line(bars.size(), name, numbers(all), values).as(Trace.BARS));
    }

    /** Springs that have a stop or helper, against where these begin; those that stand alike share a panel. */
    private static Optional<Figure> travel(Vehicle vehicle, List<Standing> all) {
        List<Panel> panels = new ArrayList<>();
        List<SpringLoad> springs = all.get(0).springs();
        for (int s = 0; s < springs.size(); s++) {
            if (springs.get(s).stages().isEmpty() || springs.get(s).name().endsWith(" right")) {
                continue;
            }
            List<Series> lines = new ArrayList<>();
            add(lines, all, s);
            String name = springs.get(s).name();
            if (name.endsWith(" left") && s + 1 < springs.size()) {
                add(lines, all, s + 1);
                name = name.substring(0, name.length() - " left".length());
            }
            panels.add(Panel.of(
                            RideFigures.upperFirst(name),
                            cases(all),
                            AxisSpec.of("Deflection from free", "mm").from(0),
                            lines.toArray(Series[]::new))
                    .withLevels(levels(all, s))
                    .withLegend(lines.size() > 1 ? LegendPlace.BELOW : LegendPlace.NONE));
        }
        if (panels.isEmpty()) {
            return Optional.empty();
        }
        int rows = (panels.size() + 1) / 2;
        return Optional.of(new Figure(
                RideName.slug(vehicle.name()) + "-spring-travel",
                vehicle.name() + ": where the springs stand between their stops",
                "Deflection of each spring of the " + vehicle.name()
                        + " from its free state, by load case (" + numbered(all)
                        + "), and where helpers and stops begin to bear.",
                panels,
                panels.size() > 1 ? 2 : 1,
                Figure.PAGE_WIDTH_MM,
                12 + 72.0 * rows));
    }

    private static void add(List<Series> lines, List<Standing> all, int spring) {
        double[] y = all.stream()
                .mapToDouble(s -> MILLI * s.springs().get(spring).deflection())
                .toArray();
        String name = all.get(0).springs().get(spring).name();
        String side = name.endsWith(" left") ? "left" : name.endsWith(" right") ? "right" : name;
        lines.add(Series.line(lines.size(), side, numbers(all), y).as(Trace.BARS));
    }

    private static List<Level> levels(List<Standing> all, int spring) {
        SpringLoad at = all.get(0).springs().get(spring);
        List<Level> levels = new ArrayList<>();
        for (StageTravel stage : at.stages()) {
            double side = stage.kind() == GappedStage.Kind.DROOP_STOP ? -1 : 1;
            levels.add(new Level(
                    MILLI * (at.deflection() + side * stage.left()),
                    stage.kind().word()));
        }
        return levels;
    }

    private static Optional<Figure> stress(Vehicle vehicle, List<Standing> all) {
        List<Series> bars = new ArrayList<>();
        for (int s = 0; s < all.get(0).springs().size() && bars.size() < MOST_BARS; s++) {
            int spring = s;
            if (all.get(0).springs().get(s).leaves().flatMap(l -> l.share()).isPresent()) {
                bar(
                        bars,
                        all.get(0).springs().get(s).name(),
                        all,
                        all.stream()
                                .mapToDouble(each -> 100
                                        * each.springs()
                                                .get(spring)
                                                .leaves()
                                                .orElseThrow()
                                                .share()
                                                .orElseThrow())
                                .toArray());
            }
        }
        if (bars.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Figure.stacked(
                RideName.slug(vehicle.name()) + "-leaf-stress",
                vehicle.name() + ": bending stress of the leaves, standing still",
                "Greatest bending stress in the leaves of the " + vehicle.name()
                        + " over the allowable that its file gives, by load case (" + numbered(all)
                        + "). The road adds to it.",
                80,
                Panel.of(
                                "",
                                cases(all),
                                AxisSpec.of("Stress over allowable", "%").from(0),
                                bars.toArray(Series[]::new))
                        .withLevels(List.of(new Level(100, "allowable")))
                        .withLegend(LegendPlace.BELOW)));
    }
}
