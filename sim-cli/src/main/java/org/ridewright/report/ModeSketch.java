package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.dynamics.PointMotion;
import org.ridewright.dynamics.SeatPlace;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Band;
import org.ridewright.figure.LegendPlace;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.modal.Mode;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Place;

/**
 * A stick figure of one mode at the end of its swing: from the left side, the front to the left, and from behind at the first and the last
 * axle. Wheels stand in their sizes and places; the body is a box of no one's shape. Distances are drawn to scale, the motion far larger.
 */
final class ModeSketch {
    private static final double BODY_HEIGHT = 0.42;
    private static final double SEAT_HEIGHT = 0.25;
    private static final double OVERHANG = 0.45;
    private static final double LARGEST = 0.17;
    private static final double BETWEEN = 0.55;
    private static final double TYRE_WIDTH = 0.07;
    private static final int ROUND = 48;

    private final VehicleModel model;
    private final Mode mode;
    private final double bottom;
    private final List<Series> series = new ArrayList<>();
    private double scale = 1;

    private ModeSketch(VehicleModel model, Mode mode) {
        this.model = model;
        this.mode = mode;
        bottom = 1.3
                * axles().stream().mapToDouble(a -> a.wheel().radius()).max().orElseThrow();
        scale = LARGEST * Math.max(1, length() / 2.5) / largest();
    }

    /** A panel of its own. */
    static Panel of(VehicleModel model, Mode mode, String title) {
        return new ModeSketch(model, mode).panel(title);
    }

    private List<Axle> axles() {
        return model.vehicle().axles();
    }

    private double first() {
        return axles().get(0).x() + OVERHANG;
    }

    private double last() {
        return axles().get(axles().size() - 1).x() - OVERHANG;
    }

    private double length() {
        return first() - last();
    }

    private Panel panel(String title) {
        List<Band> bands = new ArrayList<>();
        side();
        Axle hind = axles().get(axles().size() - 1);
        double right = Math.max(-last(), -hind.x() + hind.wheel().radius());
        if (model.vehicle().layout().rolls()) {
            for (int a = 0; a < axles().size(); a += Math.max(1, axles().size() - 1)) {
                double half = halfTrack(axles().get(a)) + 0.25;
                double middle = right + BETWEEN + half;
                behind(a, middle);
                bands.add(new Band(
                        Band.Span.OF_X,
                        middle - half,
                        middle + half,
                        axles().get(a).title()));
                right = middle + half;
            }
        }
        double top = bottom + BODY_HEIGHT + 0.45;
        double front =
                Math.max(first(), axles().get(0).x() + axles().get(0).wheel().radius() + 0.05);
        ground(-front, right);
        return new Panel(
                title,
                AxisSpec.undrawn(-front - 0.1, right + 0.1),
                AxisSpec.undrawn(-0.25, top),
                series,
                List.of(),
                List.of(),
                List.of(),
                bands,
                LegendPlace.NONE,
                true,
                java.util.Optional.empty());
    }

    /** Displacement of a point of the body in the mode: forward, left, up (m, before scaling). */
    private double[] moved(double x, double y, double z) {
        PointMotion motion = model.motionAt(Place.of(-x, y, z));
        return new double[] {dot(motion.longitudinal()), dot(motion.lateral()), dot(motion.rise())};
    }

    private double dot(double[] row) {
        double sum = 0;
        for (int i = 0; i < row.length; i++) {
            sum += row[i] * mode.shape()[i];
        }
        return sum;
    }

    /** Rise of a wheel: its contact shortens as it sinks. */
    private double rise(WheelPlace wheel) {
        return -dot(model.equations().elements().get(wheel.element()).row());
    }

    private List<WheelPlace> wheels(int axle) {
        return model.wheels().stream().filter(w -> w.axle() == axle).toList();
    }

    private double largest() {
        double most = 0;
        for (double x : new double[] {first(), last()}) {
            for (double y : new double[] {halfWidth(0), -halfWidth(0)}) {
                for (double each : moved(x, y, bottom)) {
                    most = Math.max(most, Math.abs(each));
                }
            }
        }
        for (WheelPlace wheel : model.wheels()) {
            most = Math.max(most, Math.abs(rise(wheel)));
        }
        for (SeatPlace seat : model.seats()) {
            most = Math.max(most, Math.abs(dot(seat.rise())));
        }
        return most == 0 ? 1 : most;
    }

    private double halfTrack(Axle axle) {
        return axle.track().map(t -> t.value() / 2).orElse(0.0);
    }

    private double halfWidth(int axle) {
        return 0.62 * halfTrack(axles().get(axle));
    }

    private double middle() {
        return model.centreOfMass().y();
    }

    private void side() {
        double[][] box = {
            {first(), bottom},
            {last(), bottom},
            {last(), bottom + BODY_HEIGHT},
            {first(), bottom + BODY_HEIGHT},
            {first(), bottom}
        };
        double[] restX = new double[box.length];
        double[] restZ = new double[box.length];
        double[] x = new double[box.length];
        double[] z = new double[box.length];
        for (int i = 0; i < box.length; i++) {
            double[] d = moved(box[i][0], middle(), box[i][1]);
            restX[i] = -box[i][0];
            restZ[i] = box[i][1];
            x[i] = -(box[i][0] + scale * d[0]);
            z[i] = box[i][1] + scale * d[2];
        }
        line("body at rest", restX, restZ, LineStyle.DOT, Tone.AMBER);
        for (int a = 0; a < axles().size(); a++) {
            sideWheel(a);
        }
        line("body", x, z, LineStyle.SOLID, Tone.INK);
        for (int s = 0; s < model.seats().size(); s++) {
            SeatPlace seat = model.seats().get(s);
            Place at = seat.seat().place();
            rider("side", s, -at.x() - scale * moved(at.x(), at.y(), at.z())[0], seat);
        }
        mode.centreBehindMass().ifPresent(behind -> {
            double at = model.centreOfMass().behindFrontAxle().value() + behind;
            if (mode.motion().ofBody() && at >= -first() && at <= -last()) {
                series.add(new Series(
                        "centre",
                        new double[] {at},
                        new double[] {bottom + BODY_HEIGHT / 2},
                        LineStyle.SOLID,
                        Tone.RUST,
                        Trace.MARKS));
            }
        });
    }

    private void sideWheel(int a) {
        double r = axles().get(a).wheel().radius();
        double up = scale * wheels(a).stream().mapToDouble(this::rise).average().orElse(0);
        double x = -axles().get(a).x();
        circle("wheel at rest " + a, x, r, r, LineStyle.DOT, Tone.AMBER);
        circle("wheel " + a, x, r + up, r, LineStyle.SOLID, Tone.NAVY);
        double[] d = moved(axles().get(a).x(), middle(), bottom);
        line(
                "spring " + a,
                new double[] {x, x - scale * d[0]},
                new double[] {r + up, bottom + scale * d[2]},
                LineStyle.SOLID,
                Tone.TEAL);
    }

    /** A dot for the rider on a stalk that stands on the body, whatever the height of the seat. */
    private void rider(String view, int s, double across, SeatPlace seat) {
        double floor = bottom + BODY_HEIGHT;
        double z = floor + SEAT_HEIGHT;
        double up = scale * dot(seat.rise());
        double below =
                scale * moved(seat.seat().place().x(), seat.seat().place().y(), floor)[2];
        line(
                view + " stalk " + s,
                new double[] {across, across},
                new double[] {floor + below, z + up},
                LineStyle.SOLID,
                Tone.INK);
        series.add(new Series(
                view + " rider " + s,
                new double[] {across},
                new double[] {z + up},
                LineStyle.SOLID,
                Tone.INK,
                Trace.MARKS));
    }

    private void behind(int a, double middle) {
        double x = axles().get(a).x();
        double half = halfWidth(a);
        double[][] box = {
            {half, bottom}, {-half, bottom}, {-half, bottom + BODY_HEIGHT}, {half, bottom + BODY_HEIGHT}, {half, bottom}
        };
        double[] restY = new double[box.length];
        double[] restZ = new double[box.length];
        double[] y = new double[box.length];
        double[] z = new double[box.length];
        for (int i = 0; i < box.length; i++) {
            double[] d = moved(x, box[i][0], box[i][1]);
            restY[i] = middle - box[i][0];
            restZ[i] = box[i][1];
            y[i] = middle - box[i][0] - scale * d[1];
            z[i] = box[i][1] + scale * d[2];
        }
        line("body at rest, behind " + a, restY, restZ, LineStyle.DOT, Tone.AMBER);
        axleBehind(a, middle);
        line("body, behind " + a, y, z, LineStyle.SOLID, Tone.INK);
        for (int s = 0; s < model.seats().size(); s++) {
            SeatPlace seat = model.seats().get(s);
            Place at = seat.seat().place();
            if (nearer(at.x(), a)) {
                rider("behind " + a, s, middle - at.y() - scale * moved(at.x(), at.y(), at.z())[1], seat);
            }
        }
    }

    /** Whether a place belongs to this one of the two views from behind. */
    private boolean nearer(double x, int a) {
        int other = axles().size() - 1 - a;
        double here = Math.abs(x - axles().get(a).x());
        double there = Math.abs(x - axles().get(other).x());
        return here < there || here == there && a <= other;
    }

    private void axleBehind(int a, double middle) {
        double r = axles().get(a).wheel().radius();
        List<WheelPlace> wheels = wheels(a);
        double tilt = wheels.size() < 2
                ? 0
                : scale
                        * (rise(wheels.get(0)) - rise(wheels.get(1)))
                        / (wheels.get(0).y() - wheels.get(1).y());
        boolean beam = model.coordinates()
                .units()
                .get(model.coordinates().axle(a)[model.coordinates().axle(a).length - 1])
                .equals("rad");
        for (int w = 0; w < wheels.size(); w++) {
            WheelPlace wheel = wheels.get(w);
            tyre("tyre at rest " + a + " " + w, middle - wheel.y(), r, r, 0, LineStyle.DOT, Tone.AMBER);
            tyre(
                    "tyre " + a + " " + w,
                    middle - wheel.y(),
                    r + scale * rise(wheel),
                    r,
                    beam ? tilt : 0,
                    LineStyle.SOLID,
                    Tone.NAVY);
            double y = Math.signum(wheel.y()) * halfWidth(a) * 0.9;
            double[] d = moved(axles().get(a).x(), y, bottom);
            double foot = beam ? y : wheel.y();
            double centre =
                    scale * wheels.stream().mapToDouble(this::rise).average().orElse(0);
            double up = beam ? centre + tilt * y : scale * rise(wheel);
            line(
                    "spring behind " + a + " " + w,
                    new double[] {middle - foot, middle - y - scale * d[1]},
                    new double[] {r + up, bottom + scale * d[2]},
                    LineStyle.SOLID,
                    Tone.TEAL);
        }
        if (beam) {
            line(
                    "axle " + a,
                    wheels.stream().mapToDouble(w -> middle - w.y()).toArray(),
                    wheels.stream().mapToDouble(w -> r + scale * rise(w)).toArray(),
                    LineStyle.SOLID,
                    Tone.NAVY);
        }
    }

    private void tyre(String name, double across, double up, double r, double tilt, LineStyle style, Tone tone) {
        double w = TYRE_WIDTH / 2;
        double[][] corners = {{-w, -r}, {w, -r}, {w, r}, {-w, r}, {-w, -r}};
        double[] x = new double[corners.length];
        double[] z = new double[corners.length];
        for (int i = 0; i < corners.length; i++) {
            x[i] = across + corners[i][0] + tilt * corners[i][1];
            z[i] = up + corners[i][1] - tilt * corners[i][0];
        }
        line(name, x, z, style, tone);
    }

    private void circle(String name, double x, double z, double r, LineStyle style, Tone tone) {
        double[] xs = new double[ROUND + 1];
        double[] zs = new double[ROUND + 1];
        for (int i = 0; i <= ROUND; i++) {
            xs[i] = x + r * Math.cos(2 * Math.PI * i / ROUND);
            zs[i] = z + r * Math.sin(2 * Math.PI * i / ROUND);
        }
        line(name, xs, zs, style, tone);
    }

    private void ground(double from, double to) {
        line("ground", new double[] {from, to}, new double[] {0, 0}, LineStyle.SOLID, Tone.AMBER);
    }

    private void line(String name, double[] x, double[] z, LineStyle style, Tone tone) {
        series.add(new Series(name, x, z, style, tone, Trace.LINE));
    }
}
