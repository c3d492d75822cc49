package org.ridewright.figure;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/** Figures of the kinds a report holds, from closed formulas and seeded noise. */
final class SampleFigures {
    private static final AxisSpec TIME = AxisSpec.of("Time", "s");

    private SampleFigures() {}

    static List<Figure> all() {
        return List.of(
                timeTraces(), loadDeflection(), wheelPaths(), wheelLoads(), motions(), spectrum(), measured(), dense());
    }

    static Figure timeTraces() {
        double[] t = grid(0, 3, 6001);
        Panel panel = Panel.of(
                        "",
                        TIME,
                        AxisSpec.of("Seat acceleration", "m/s²"),
                        Series.line(
                                0,
                                "springs and dampers as built",
                                t,
                                map(t, x -> ring(x - 0.42, 1.4, 0.25, 3.1) + ring(x - 0.86, 1.5, 0.25, 2.4))),
                        Series.line(
                                1,
                                "no dampers",
                                t,
                                map(t, x -> ring(x - 0.42, 1.35, 0.03, 3.6) + ring(x - 0.86, 1.45, 0.03, 3))),
                        Series.line(
                                2,
                                "leaf friction doubled",
                                t,
                                map(t, x -> ring(x - 0.42, 1.9, 0.4, 4.4) + ring(x - 0.86, 2, 0.4, 3.1))))
                .withMarkers(List.of(
                        new Marker(0.42, "front axle meets the kerb"), new Marker(0.86, "rear axle meets the kerb")));
        return Figure.stacked(
                "kerb-seat-acceleration",
                "Dampers stop the seat within one swing; without them it swings on for many",
                "Vertical acceleration at the seat after a 50 mm kerb at 20 km/h, two aboard. Upwards is positive.",
                75,
                panel);
    }

    static Figure loadDeflection() {
        double[] s = grid(0, 2 * Math.PI, 4000);
        double[] wide = map(s, x -> 60 + 38 * Math.sin(x));
        double[] narrow = map(s, x -> 60 + 14 * Math.sin(x));
        double[] wideLoad = new double[s.length];
        double[] narrowLoad = new double[s.length];
        for (int i = 0; i < s.length; i++) {
            wideLoad[i] = 42 * wide[i] + 190 * Math.tanh(6 * Math.cos(s[i]));
            narrowLoad[i] = 42 * narrow[i] + 190 * Math.tanh(4 * Math.cos(s[i]));
        }
        AxisSpec deflection = AxisSpec.of("Deflection", "mm");
        AxisSpec load = AxisSpec.of("Load", "N");
        Panel left = Panel.of(
                "(a) Front leaf spring",
                deflection,
                load,
                Series.line(0, "slow, full stroke", wide, wideLoad),
                Series.line(1, "slow, short stroke", narrow, narrowLoad));
        double[] speed = grid(-1.2, 1.2, 200);
        Panel right = Panel.of(
                "(b) Lever-arm damper",
                AxisSpec.of("Speed", "m/s"),
                AxisSpec.of("Force", "N"),
                Series.line(0, "table", speed, map(speed, v -> v > 0 ? 1900 * v / (1 + 0.5 * v) : 750 * v)),
                Series.marks(1, "measured", new double[] {-1, -0.5, -0.25, 0.25, 0.5, 1}, new double[] {
                    -770, -360, -200, 410, 800, 1240
                }));
        return new Figure(
                "load-deflection",
                "What the springs and dampers were measured to do",
                "Loops run clockwise; the height of a loop is twice the dry friction.",
                List.of(left, right),
                2,
                Figure.PAGE_WIDTH_MM,
                80);
    }

    static Figure wheelPaths() {
        double[] x = grid(-0.6, 0.9, 1501);
        double[] road = map(x, v -> v >= 0 && v <= 0.3 ? 0.05 : 0);
        Series ground = new Series("plank, 300 × 50 mm", x, road, LineStyle.SOLID, Tone.INK, Trace.STEP);
        Panel panel = Panel.of(
                        "",
                        AxisSpec.of("Distance", "m"),
                        AxisSpec.of("Height", "m"),
                        ground,
                        Series.line(1, "path of the wheel centre, R = 0.35 m", x, map(x, v -> disc(v, 0.35))),
                        Series.line(3, "path of the wheel centre, R = 0.60 m", x, map(x, v -> disc(v, 0.6) - 0.25)))
                .toScale();
        return Figure.stacked(
                "plank-wheel-paths",
                "A larger wheel meets the plank earlier and climbs it more gently",
                "Drawn to scale; R is the wheel radius. The path of the larger wheel is drawn 250 mm lower.",
                80,
                panel);
    }

    static Figure wheelLoads() {
        double[] t = grid(0, 2, 4001);
        List<Marker> events = List.of(
                new Marker(0.3, "front axle drops"),
                new Marker(0.42, "front bump stop"),
                new Marker(0.75, "rear axle drops"),
                new Marker(1.86, "end of the hole"));
        List<Level> levels = List.of(new Level(0, "lift-off"), new Level(3400, "static"));
        AxisSpec load = AxisSpec.of("Wheel load", "N");
        Panel front = Panel.of(
                        "Front axle",
                        TIME,
                        load,
                        Series.line(0, "left", t, map(t, x -> Math.max(0, 3400 - 80 * ring(x - 0.3, 9, 0.12, 60)))),
                        Series.line(1, "right", t, map(t, x -> Math.max(0, 3400 - 40 * ring(x - 0.33, 9, 0.12, 60)))))
                .withMarkers(events)
                .withLevels(levels)
                .withBands(List.of(new Band(Band.Span.OF_X, 0.31, 0.36, "")))
                .withLegend(LegendPlace.SHARED);
        Panel rear = Panel.of(
                        "Rear axle",
                        TIME,
                        load,
                        Series.line(0, "left", t, map(t, x -> Math.max(0, 3000 - 80 * ring(x - 0.75, 8, 0.15, 60)))),
                        Series.line(1, "right", t, map(t, x -> Math.max(0, 3000 - 35 * ring(x - 0.78, 8, 0.15, 60)))))
                .withMarkers(events)
                .withLevels(levels)
                .withLegend(LegendPlace.SHARED);
        return Figure.stacked(
                "pothole-wheel-loads", "Both left wheels leave the road at the pothole", "", 110, front, rear);
    }

    static Figure motions() {
        double[] t = grid(0, 6, 12001);
        List<Marker> events =
                List.of(new Marker(1, "front axle on the ramp"), new Marker(1.4, "rear axle on the ramp"));
        Panel heave = motion("Heave", "mm", t, 1, 0.8, 24, events);
        Panel pitch = motion("Pitch", "°", t, 1.2, 1.1, 1.4, events);
        Panel roll = motion("Roll", "°", t, 1.4, 1.6, 0.55, events);
        return Figure.stacked(
                "ramp-heave-pitch-roll",
                "The body heaves, pitches and rolls at three frequencies",
                "",
                130,
                heave,
                pitch,
                roll);
    }

    private static Panel motion(
            String name, String unit, double[] t, double at, double f, double size, List<Marker> events) {
        return Panel.of(
                        "",
                        TIME,
                        AxisSpec.of(name, unit),
                        Series.line(0, "driver alone", t, map(t, x -> ring(x - at, f, 0.12, size))),
                        Series.line(1, "four aboard", t, map(t, x -> ring(x - at, 0.86 * f, 0.09, 1.15 * size))))
                .withMarkers(events)
                .withLegend(LegendPlace.SHARED);
    }

    static Figure spectrum() {
        double[] f = grid(-1, 2, 900);
        double[] hz = map(f, e -> Math.pow(10, e));
        Panel panel = Panel.of(
                        "",
                        AxisSpec.of("Frequency", "Hz").logarithmic().between(0.1, 100),
                        AxisSpec.of("Power spectral density of seat acceleration", "(m/s²)²/Hz")
                                .logarithmic(),
                        Series.line(
                                0,
                                "front seat",
                                hz,
                                map(hz, x -> 0.5 / (Math.pow(1 - x * x / 1.7, 2) + 0.1 * x * x) * x + 0.002)),
                        Series.line(
                                1,
                                "rear seat",
                                hz,
                                map(hz, x -> 0.9 / (Math.pow(1 - x * x / 2.4, 2) + 0.2 * x * x) * x + 0.002)),
                        Series.line(
                                2,
                                "a_{w} weighted, rear",
                                hz,
                                map(hz, x -> 0.5 / (Math.pow(1 - x * x / 2.4, 2) + 0.2 * x * x) * x + 0.001)),
                        Series.line(3, "asphalt", hz, map(hz, x -> 0.1 / (0.1 + x * x))),
                        Series.line(4, "cobbles", hz, map(hz, x -> 1.1 / (0.4 + x))))
                .withMarkers(List.of(new Marker(1.3, "bounce"), new Marker(10.5, "wheel hop")));
        return Figure.stacked("seat-spectrum", "Bounce at 1.3 Hz and wheel hop at 10.5 Hz", "", 80, panel);
    }

    static Figure measured() {
        double[] v = {10, 20, 30, 40, 50, 60, 70};
        Panel left = Panel.of(
                        "Weighted acceleration",
                        AxisSpec.of("Speed", "km/h"),
                        AxisSpec.of("Frequency-weighted acceleration a_{w}", "m/s²"),
                        Series.line(0, "computed", v, map(v, x -> 0.02 * x - 0.1 + 0.1 * Math.sin(x))),
                        Series.marks(1, "measured", v, map(v, x -> 0.021 * x - 0.1 + 0.1 * Math.cos(x))))
                .withBands(List.of(
                        new Band(Band.Span.OF_Y, 0.315, 0.63, "a little"),
                        new Band(Band.Span.OF_Y, 0.8, 1.6, "uncomfortable")));
        Panel right = Panel.of(
                        "Vibration dose and tiny numbers",
                        AxisSpec.of("Number of passes", ""),
                        AxisSpec.of("Vibration dose value", "m/s^{1.75}"),
                        Series.line(0, "VDV", v, map(v, x -> 1e-5 * x * x)).as(Trace.LINE_AND_MARKS))
                .withLegend(LegendPlace.RIGHT);
        return new Figure(
                "speed-comfort", "Comfort falls with speed", "", List.of(left, right), 2, Figure.PAGE_WIDTH_MM, 75);
    }

    /** Six panels of noise, ten thousand samples a series. */
    static Figure dense() {
        Random random = new Random(7);
        double[] t = grid(0, 50, 10_000);
        Panel[] panels = new Panel[6];
        for (int i = 0; i < panels.length; i++) {
            double[] rough = new double[t.length];
            double[] smooth = new double[t.length];
            for (int k = 1; k < t.length; k++) {
                rough[k] = 0.97 * rough[k - 1] + random.nextGaussian();
                smooth[k] = 0.995 * smooth[k - 1] + 0.02 * rough[k];
            }
            panels[i] = Panel.of(
                            "Run " + (i + 1),
                            TIME,
                            AxisSpec.of("Acceleration", "m/s²"),
                            Series.line(0, "wheel", t, rough),
                            Series.line(1, "body", t, smooth))
                    .withLegend(LegendPlace.SHARED);
        }
        return new Figure(
                "cobbles-six-runs", "Six runs over cobbles", "", List.of(panels), 2, Figure.PAGE_WIDTH_MM, 150);
    }

    static double[] grid(double from, double to, int n) {
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            values[i] = from + (to - from) * i / (n - 1);
        }
        return values;
    }

    static double[] map(double[] x, DoubleUnaryOperator law) {
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            y[i] = law.applyAsDouble(x[i]);
        }
        return y;
    }

    /** A damped swing that starts at zero. */
    private static double ring(double t, double frequency, double ratio, double size) {
        double omega = 2 * Math.PI * frequency;
        return t < 0 ? 0 : size * Math.exp(-ratio * omega * t) * Math.sin(omega * t);
    }

    /** Centre height of a disc that rolls over a plank from 0 to 0.3 m, 50 mm high. */
    private static double disc(double x, double radius) {
        double beyond = Math.max(0, Math.max(-x, x - 0.3));
        double onPlank = beyond < radius ? 0.05 + Math.sqrt(radius * radius - beyond * beyond) : 0;
        return Math.max(radius, onPlank);
    }
}
