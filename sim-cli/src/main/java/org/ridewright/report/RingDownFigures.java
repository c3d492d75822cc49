package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.bounce.Count;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Trace;
import org.ridewright.friction.FrictionLab;
import org.ridewright.friction.RingDowns;
import org.ridewright.friction.RingDowns.Rung;
import org.ridewright.signal.Channel;

/** Bodies let go with springs oiled, as written and rusted, and with dampers in place of friction. */
final class RingDownFigures {
    private static final double MILLI = 1000;
    private static final double SHOWN = 3;

    private RingDownFigures() {}

    static List<Figure> of(FrictionLab lab) {
        if (lab.ringDowns().isEmpty()) {
            return List.of();
        }
        boolean swings = lab.ringDowns().stream()
                .flatMap(each -> rungs(each).stream())
                .anyMatch(rung -> rung.result().count().slidingCycles() > 0);
        return swings ? List.of(motions(lab), swings(lab)) : List.of(motions(lab));
    }

    private static String slug(FrictionLab lab, String what) {
        return RideName.slug(lab.model().vehicle().name()) + "-" + what;
    }

    static String subject(FrictionLab lab) {
        return lab.model().vehicle().name() + ", " + lab.model().loadCase().name();
    }

    /** Dry ones in their order, then the damper. */
    static List<Rung> rungs(RingDowns each) {
        List<Rung> rungs = new ArrayList<>(each.rungs());
        each.damper().ifPresent(rungs::add);
        return rungs;
    }

    private static String title(FrictionLab lab, RingDowns each) {
        return each.kind().word().equals("roll") ? "roll" : RingDownWords.place(lab, each);
    }

    private static String unit(RingDowns each) {
        return each.kind().counted().turns() ? "mrad" : "mm";
    }

    private static Figure motions(FrictionLab lab) {
        List<Panel> panels = new ArrayList<>();
        for (RingDowns each : lab.ringDowns()) {
            List<Series> series = new ArrayList<>();
            for (Rung rung : rungs(each)) {
                Channel trace = rung.result().traces().stream()
                        .filter(t -> t.name().equals(each.kind().counted().title()))
                        .findFirst()
                        .orElseThrow();
                series.add(line(series.size(), rung.word(), trace));
            }
            panels.add(Panel.of(
                            RideFigures.upperFirst(title(lab, each)),
                            AxisSpec.of("Time from letting go", "s").between(-0.2, SHOWN),
                            AxisSpec.of(
                                    RideFigures.upperFirst(each.kind().counted().title()), unit(each)),
                            series.toArray(Series[]::new))
                    .withLegend(LegendPlace.SHARED));
        }
        return Figure.stacked(
                slug(lab, "ring-down"),
                subject(lab) + ": let go with more or less friction",
                ("The body of the %s pressed down at one place by %s mm (roll: at the side) and let go, brake on: with the friction of its springs as written, with %s times "
                                + "as much (oiled) and %s times (rusted), and with dampers in its place that take as much of the first cycle as the friction as written. "
                                + "Friction leaves the body a little off its place. Where a body swings on at a higher frequency, friction holds all springs: in a description with few sliders hardly anything damps that, while leaves of a "
                                + "real pack let go one by one.")
                        .formatted(
                                lab.model().vehicle().name(),
                                Numbers.brief(MILLI * lab.settings().depth()),
                                Numbers.of(FrictionLab.GREASINGS.get(0).factor(), 1),
                                Numbers.of(FrictionLab.GREASINGS.get(2).factor(), 2)),
                22 + 52.0 * panels.size(),
                panels.toArray(Panel[]::new));
    }

    private static Series line(int order, String name, Channel trace) {
        int from = Math.max(0, (int) Math.ceil((-0.2 - trace.start()) * trace.sampleRate()));
        int to = Math.min(trace.size(), (int) Math.floor((SHOWN - trace.start()) * trace.sampleRate()) + 1);
        double[] x = new double[to - from];
        double[] y = new double[to - from];
        for (int i = from; i < to; i++) {
            x[i - from] = trace.start() + i / trace.sampleRate();
            y[i - from] = MILLI * trace.sample(i);
        }
        return Series.line(order, name, x, y);
    }

    private static Figure swings(FrictionLab lab) {
        List<Panel> panels = new ArrayList<>();
        List<String> held = new ArrayList<>();
        for (RingDowns each : lab.ringDowns()) {
            List<Series> series = new ArrayList<>();
            for (Rung rung : rungs(each)) {
                Count count = rung.result().count();
                if (count.isOnHeldSprings()) {
                    held.add(title(lab, each) + " " + rung.word());
                } else if (!count.isHeld()) {
                    double[] x = new double[count.halfCycles()];
                    double[] y = new double[x.length];
                    for (int j = 0; j < x.length; j++) {
                        x[j] = j + 1.0;
                        y[j] = MILLI * count.swing(j);
                    }
                    series.add(Series.line(rungs(each).indexOf(rung), rung.word(), x, y)
                            .as(Trace.LINE_AND_MARKS));
                }
            }
            if (!series.isEmpty()) {
                panels.add(Panel.of(
                                RideFigures.upperFirst(title(lab, each)),
                                AxisSpec.of("Half cycle, by its number", ""),
                                AxisSpec.of("Swing from turn to turn", unit(each))
                                        .from(0),
                                series.toArray(Series[]::new))
                        .withLegend(LegendPlace.SHARED));
            }
        }
        return new Figure(
                slug(lab, "swings"),
                subject(lab) + ": how the swings shrink",
                ("Swings of the %s from one turn to the next, as they are counted by eye: as long as they exceed 1 mm to either side and are more than the swinging on springs that friction holds.%s "
                                + "Dry friction takes the same height each time, so that swings lie on a straight line that comes to nought; dampers take the same share, so that "
                                + "swings lie on an exponential that never does.")
                        .formatted(
                                lab.model().vehicle().name(),
                                held.isEmpty()
                                        ? ""
                                        : " Not drawn, since friction holds all springs at every swing that is seen: "
                                                + String.join(", ", held) + "."),
                panels,
                Math.min(3, panels.size()),
                Figure.PAGE_WIDTH_MM,
                82);
    }
}
