package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.Level;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.friction.BodyAlone;
import org.ridewright.friction.ForcedPoint;
import org.ridewright.friction.ForcedResponse;
import org.ridewright.friction.FrictionLab;

/** What a sinusoidal road makes of a vehicle whose friction is locked, sliding, or both in turn. */
final class ForcedFigures {
    private static final double MILLI = 1000;
    private static final double LEAST_RATIO = 0.02;
    /** Next to resonance the travel of a body by itself has no end. */
    private static final double MOST_TRAVEL = 4;

    private ForcedFigures() {}

    static List<Figure> of(FrictionLab lab) {
        return List.of(responses(lab), threshold(lab), alone(lab));
    }

    private static AxisSpec frequency() {
        return AxisSpec.of("Frequency", "Hz").logarithmic();
    }

    static String waves(double amplitude) {
        return "± " + Numbers.brief(MILLI * amplitude) + " mm";
    }

    private static double[] clipped(double[] values) {
        double[] out = values.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] = out[i] > LEAST_RATIO ? out[i] : Double.NaN;
        }
        return out;
    }

    private static Figure responses(FrictionLab lab) {
        ForcedResponse forced = lab.forced();
        List<Panel> panels = new ArrayList<>();
        for (ForcedResponse.Curve curve : forced.curves()) {
            List<Series> series = new ArrayList<>();
            series.add(new Series(
                    "friction left out",
                    forced.fine(),
                    clipped(forced.sliding()),
                    LineStyle.DOT,
                    Tone.TEAL,
                    Trace.LINE));
            series.add(new Series(
                    "friction that never lets go",
                    forced.fine(),
                    clipped(forced.locked()),
                    LineStyle.DASH,
                    Tone.NAVY,
                    Trace.LINE));
            double[] balanced = clipped(curve.balanced());
            series.add(new Series("harmonic balance", forced.fine(), balanced, LineStyle.SOLID, Tone.INK, Trace.LINE));
            addMarks(series, "simulated", curve, false, Tone.RUST);
            addMarks(series, "simulated, lifting off or meeting a stop", curve, true, Tone.AMBER);
            panels.add(Panel.of(
                            "Road of " + waves(curve.amplitude()),
                            frequency(),
                            AxisSpec.of("Body over road", "").logarithmic().from(LEAST_RATIO),
                            series.toArray(Series[]::new))
                    .withLegend(LegendPlace.SHARED));
        }
        return Figure.stacked(
                RideName.slug(lab.model().vehicle().name()) + "-forced",
                RingDownFigures.subject(lab) + ": body over a sinusoidal road",
                ("Motion of the body's centre of mass over that of the ground, which goes up and down under all wheels at once, as on waves far longer than the %s. "
                                + "Marks: first harmonic of the simulated steady motion. Lines: harmonic balance, which knows no stops, as far as wheels and riders stay on what they rest on, and the two limits, "
                                + "friction that never lets go and none at all. On the smallest waves the springs are locked and the body follows the dashed line; the larger the waves, "
                                + "the more the springs slide.")
                        .formatted(lab.model().vehicle().name()),
                26 + 56.0 * panels.size(),
                panels.toArray(Panel[]::new));
    }

    private static void addMarks(
            List<Series> series, String name, ForcedResponse.Curve curve, boolean lifting, Tone tone) {
        List<ForcedPoint> shown = curve.simulated().stream()
                .filter(p -> p.settled() && p.liftsOff() == lifting && p.harmonic() > LEAST_RATIO)
                .toList();
        if (!shown.isEmpty()) {
            series.add(new Series(
                    name,
                    shown.stream().mapToDouble(ForcedPoint::frequency).toArray(),
                    shown.stream().mapToDouble(ForcedPoint::harmonic).toArray(),
                    LineStyle.SOLID,
                    tone,
                    Trace.MARKS));
        }
    }

    private static Figure threshold(FrictionLab lab) {
        ForcedResponse forced = lab.forced();
        double[] threshold = new double[forced.fine().length];
        for (int i = 0; i < threshold.length; i++) {
            threshold[i] = MILLI * forced.threshold()[i];
            threshold[i] = threshold[i] > 0 ? threshold[i] : Double.NaN;
        }
        List<Panel> panels = new ArrayList<>();
        List<Level> levels = forced.curves().stream()
                .map(c -> new Level(MILLI * c.amplitude(), waves(c.amplitude())))
                .toList();
        panels.add(Panel.of(
                        "Below the line no spring slides",
                        frequency(),
                        AxisSpec.of("Amplitude of the road", "mm").logarithmic(),
                        Series.line(0, "threshold", forced.fine(), threshold))
                .withLevels(levels));
        List<Series> locked = new ArrayList<>();
        for (ForcedResponse.Curve curve : forced.curves()) {
            List<ForcedPoint> shown =
                    curve.simulated().stream().filter(ForcedPoint::settled).toList();
            if (!shown.isEmpty()) {
                locked.add(Series.line(
                                locked.size(),
                                "road of " + waves(curve.amplitude()),
                                shown.stream()
                                        .mapToDouble(ForcedPoint::frequency)
                                        .toArray(),
                                shown.stream()
                                        .mapToDouble(p -> 100 * p.locked())
                                        .toArray())
                        .as(Trace.LINE_AND_MARKS));
            }
        }
        if (!locked.isEmpty()) {
            panels.add(Panel.of(
                            "Time during which every spring is locked",
                            frequency(),
                            AxisSpec.of("Time locked", "%").between(0, 105),
                            locked.toArray(Series[]::new))
                    .withLegend(LegendPlace.BELOW));
        }
        return Figure.stacked(
                RideName.slug(lab.model().vehicle().name()) + "-threshold",
                RingDownFigures.subject(lab) + ": where friction holds the springs",
                "Above: amplitude of the road at which the first spring begins to slide, worked out from the locked vehicle, in which all is linear until then. Below it friction "
                        + "makes the springs stiffer and takes nothing. Below: share of the time during which all springs are locked in the simulated steady motion.",
                130,
                panels.toArray(Panel[]::new));
    }

    /** A panel for each amplitude: the closed form, and what is simulated beside it. */
    private static Figure alone(FrictionLab lab) {
        BodyAlone alone = lab.alone();
        List<Panel> panels = new ArrayList<>();
        for (BodyAlone.Curve curve : alone.curves()) {
            List<Series> series = new ArrayList<>();
            double[] hertz =
                    Arrays.stream(curve.fine()).map(r -> r * alone.frequency()).toArray();
            series.add(Series.line(0, "Den Hartog's closed form", hertz, below(curve.closed())));
            addMarks(series, "simulated, rigid friction", curve.rigid(), 3);
            addMarks(series, "simulated, springs that give as written before they slide", curve.given(), 1);
            panels.add(Panel.of(
                            "Road of " + waves(curve.amplitude()),
                            AxisSpec.of("Frequency", "Hz").from(0),
                            AxisSpec.of("Spring travel over road", "").between(0, MOST_TRAVEL),
                            series.toArray(Series[]::new))
                    .withLegend(LegendPlace.SHARED));
        }
        String departure = Double.isFinite(alone.departure())
                ? "Simulation with friction as good as rigid lies within %s of it."
                        .formatted(Numbers.percent(alone.departure()))
                : "It holds at none of the simulated frequencies.";
        return Figure.stacked(
                RideName.slug(lab.model().vehicle().name()) + "-den-hartog",
                RingDownFigures.subject(lab) + ": the body by itself beside a closed form",
                ("The body of the %s (%s kg) straight up and down on its springs (%s N/mm, friction %s N at every load), wheels following the road, dampers away: of one degree of freedom, "
                                + "natural frequency %s Hz. Line: Den Hartog's closed form for rigid friction, where the motion never stops and does not grow without end. %s "
                                + "Springs that give before they slide are another vehicle.")
                        .formatted(
                                lab.model().vehicle().name(),
                                Numbers.of(alone.mass()),
                                Numbers.of(alone.rate() / 1000),
                                Numbers.of(alone.limit()),
                                Numbers.of(alone.frequency()),
                                departure),
                26 + 56.0 * panels.size(),
                panels.toArray(Panel[]::new));
    }

    private static double[] below(double[] values) {
        return Arrays.stream(values).map(y -> y <= MOST_TRAVEL ? y : Double.NaN).toArray();
    }

    private static void addMarks(List<Series> series, String name, List<ForcedPoint> points, int order) {
        List<ForcedPoint> shown =
                points.stream().filter(p -> p.amplitude() <= MOST_TRAVEL).toList();
        if (!shown.isEmpty()) {
            series.add(Series.marks(
                    order,
                    name,
                    shown.stream().mapToDouble(ForcedPoint::frequency).toArray(),
                    shown.stream().mapToDouble(ForcedPoint::amplitude).toArray()));
        }
    }
}
