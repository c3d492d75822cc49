package org.ridewright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.figure.Sketch;
import org.ridewright.figure.Sketch.Pen;
import org.ridewright.sheet.Proportions.Box;
import org.ridewright.sheet.Proportions.Shape;
import org.ridewright.sheet.Proportions.Sitting;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.SpringKind;

/** Views of a vehicle to its proportions, with dimension letters. The front is on the left. */
final class Sketches {
    private static final double WIDTH = 182;
    private static final double ROW = 7.5;
    private static final double COLUMN = 7.5;

    private final Proportions vehicle;

    Sketches(Proportions vehicle) {
        this.vehicle = vehicle;
    }

    /** All views, in the order in which they are shown. */
    List<Sketch> all() {
        return List.of(side(), end(), plan(), spring());
    }

    /** Metres to millimetres on paper, such that the drawing keeps to both bounds. */
    private static double scale(double length, double height, double widest, double highest) {
        return Math.min(widest / length, highest / height);
    }

    /** A height that is drawn in a column beside the view, with the place that it belongs to. */
    private record Upright(double x, double z, String letter) {}

    /** A length behind the front axle that is drawn in a row below the view. */
    private record Level(double from, double to, double z, String letter) {}

    private Sketch side() {
        double[] ends = vehicle.length();
        double length = ends[1] - ends[0];
        List<Upright> left = new ArrayList<>();
        List<Upright> right = new ArrayList<>();
        List<Level> below = new ArrayList<>();
        collect(left, right, below);
        double margin = 9 + COLUMN * Math.max(left.size(), right.size());
        double above = 10;
        double scale = scale(length, vehicle.height(), WIDTH - 2 * margin, 62);
        double ground = above + scale * vehicle.height() + 2;
        double x0 = WIDTH / 2 - scale * (ends[0] + ends[1]) / 2;
        Sketch sketch = new Sketch("side", "Side view", WIDTH, ground + 6 + ROW * below.size());
        View view = new View(sketch, x0, ground, scale);
        body(view);
        for (Shape axle : vehicle.axles()) {
            wheel(view, axle);
        }
        vehicle.seats().forEach(s -> sitting(view, s));
        vehicle.hitch().ifPresent(h -> hitch(view, h));
        sketch.line(margin - 4, ground, WIDTH - margin + 4, ground, Pen.BOLD);
        Box box = vehicle.body();
        double top = above - 5;
        sketch.line(view.x(box.front()), view.y(box.top()), view.x(box.front()), top - 1, Pen.HAIR);
        sketch.line(view.x(box.rear()), view.y(box.top()), view.x(box.rear()), top - 1, Pen.HAIR);
        sketch.dimension(view.x(box.front()), top, view.x(box.rear()), top, Letters.LENGTH.letter());
        uprights(view, left, view.x(ends[0]) - 7, -COLUMN);
        uprights(view, right, view.x(ends[1]) + 7, COLUMN);
        double y = ground + ROW - 1;
        for (Level level : below) {
            sketch.line(view.x(level.from()), ground, view.x(level.from()), y + 1, Pen.HAIR);
            sketch.line(view.x(level.to()), view.y(level.z()), view.x(level.to()), y + 1, Pen.HAIR);
            sketch.dimension(view.x(level.from()), y, view.x(level.to()), y, level.letter());
            y += ROW;
        }
        return sketch;
    }

    private void collect(List<Upright> left, List<Upright> right, List<Level> below) {
        List<Shape> axles = vehicle.axles();
        for (int i = 0; i < axles.size(); i++) {
            Shape axle = axles.get(i);
            List<Upright> side = i == 0 ? left : right;
            side.add(new Upright(axle.x(), 2 * axle.radius(), Letters.WHEEL.of(i, axles.size())));
            if (axle.ownSprings()) {
                side.add(new Upright(axle.x(), axle.mounts(), Letters.MOUNTS.of(i, axles.size())));
            }
            if (i > 0) {
                below.add(new Level(0, axle.x(), 0, Letters.WHEELBASE.of(i - 1, axles.size() - 1)));
            }
        }
        int count = vehicle.seats().size();
        for (int i = 0; i < count; i++) {
            Sitting sitting = vehicle.seats().get(i);
            List<Upright> side = i == 0 ? left : right;
            side.add(new Upright(-sitting.seat().x(), sitting.seat().z(), Letters.SEAT_HEIGHT.of(i, count)));
            side.add(new Upright(-sitting.feet().x(), sitting.feet().z(), Letters.FEET_HEIGHT.of(i, count)));
            below.add(new Level(0, -sitting.seat().x(), sitting.seat().z(), Letters.SEAT_BEHIND.of(i, count)));
            below.add(new Level(0, -sitting.feet().x(), sitting.feet().z(), Letters.FEET_BEHIND.of(i, count)));
        }
        vehicle.hitch().ifPresent(h -> {
            left.add(new Upright(-h.x(), h.z(), Letters.HITCH_HEIGHT.letter()));
            below.add(new Level(0, -h.x(), h.z(), Letters.HITCH_AHEAD.letter()));
        });
        // the shortest stand nearest, so that no line crosses an arrow
        left.sort(Comparator.comparingDouble(Upright::z));
        right.sort(Comparator.comparingDouble(Upright::z));
        below.sort(Comparator.comparingDouble(level -> Math.abs(level.to() - level.from())));
    }

    private static void uprights(View view, List<Upright> uprights, double from, double step) {
        double x = from;
        for (Upright upright : uprights) {
            view.sketch.line(
                    view.x(upright.x()), view.y(upright.z()), x + Math.signum(step), view.y(upright.z()), Pen.HAIR);
            x += step;
        }
        // letters go over the lines that lead to others
        x = from;
        for (Upright upright : uprights) {
            view.sketch.dimension(x, view.ground, x, view.y(upright.z()), upright.letter());
            x += step;
        }
    }

    private void body(View view) {
        Box box = vehicle.body();
        view.sketch.box(view.x(box.front()), view.y(box.top()), view.x(box.rear()), view.y(box.floor()), Pen.BOLD);
    }

    private static void wheel(View view, Shape axle) {
        double x = view.x(axle.x());
        double y = view.y(axle.radius());
        double r = view.scale * axle.radius();
        view.sketch.circle(x, y, r, Pen.BOLD);
        view.sketch.circle(x, y, 0.92 * r, Pen.FINE);
        view.sketch.dot(x, y, 0.8);
        double mount = view.y(axle.mounts());
        boolean leaves = axle.spring().isLeaf();
        double reach = Math.min(0.45 * view.scale, r);
        if (!leaves) {
            coil(view.sketch, x, y, mount);
        } else if (axle.spring() == SpringKind.FULL_ELLIPTIC) {
            double middle = (y + mount) / 2;
            view.sketch.bow(x - reach, middle, x + reach, middle, (y - mount) / 2, Pen.BOLD);
            view.sketch.bow(x - reach, middle, x + reach, middle, (mount - y) / 2, Pen.BOLD);
        } else {
            view.sketch.bow(x - reach, mount, x + reach, mount, Math.max(y - mount, 1.5), Pen.BOLD);
        }
    }

    private static void coil(Sketch sketch, double x, double y, double mount) {
        int turns = 5;
        double[] xy = new double[4 * turns + 4];
        double step = (mount - y) / (2 * turns + 1);
        for (int i = 0; i < 2 * turns + 2; i++) {
            xy[2 * i] = x + (i == 0 || i == 2 * turns + 1 ? 0 : i % 2 == 0 ? 2 : -2);
            xy[2 * i + 1] = y + i * step;
        }
        sketch.lines(Pen.FINE, xy);
    }

    private static void sitting(View view, Sitting sitting) {
        double x = view.x(-sitting.seat().x());
        double y = view.y(sitting.seat().z());
        double deep = 0.22 * view.scale;
        view.sketch.lines(Pen.BOLD, x - deep, y, x + deep, y, x + 1.25 * deep, y - 1.6 * deep);
        double fx = view.x(-sitting.feet().x());
        double fy = view.y(sitting.feet().z());
        view.sketch.line(fx - 0.6 * deep, fy, fx + 0.6 * deep, fy, Pen.BOLD);
        view.sketch.dot(x, y, 0.7);
        view.sketch.dot(fx, fy, 0.7);
    }

    private void hitch(View view, Place hitch) {
        double x = view.x(-hitch.x());
        double y = view.y(hitch.z());
        double front =
                view.x(Math.min(vehicle.body().front(), vehicle.axles().get(0).x()));
        view.sketch.line(x, y, Math.max(front, x), view.y(vehicle.body().floor()), Pen.BOLD);
        view.sketch.lines(Pen.FINE, x, y, x - 2, y + 3.5, x + 2, y + 3.5, x, y);
    }

    /** From metres of the vehicle to millimetres of the paper. */
    private static final class View {
        private final Sketch sketch;
        private final double x0;
        private final double ground;
        private final double scale;

        View(Sketch sketch, double x0, double ground, double scale) {
            this.sketch = sketch;
            this.x0 = x0;
            this.ground = ground;
            this.scale = scale;
        }

        double x(double along) {
            return x0 + scale * along;
        }

        double y(double z) {
            return ground - scale * z;
        }
    }

    /** The first axle whose springs stand apart, or the first of all, from the front. */
    private Sketch end() {
        double width = 88;
        List<Shape> axles = vehicle.axles();
        int shown = IntStream.range(0, axles.size())
                .filter(i -> axles.get(i).springsApart() > 0)
                .findFirst()
                .orElse(0);
        Shape axle = axles.get(shown);
        double half = Math.max(vehicle.greatestTrack(), vehicle.body().width()) / 2;
        double scale = scale(2 * half + 0.2, vehicle.height(), width - 30, 46);
        double ground = 8 + scale * vehicle.height();
        Sketch sketch = new Sketch("end", "End view", width, ground + 3 * ROW);
        View view = new View(sketch, width / 2 - 4, ground, scale);
        Box box = vehicle.body();
        sketch.box(view.x(-box.width() / 2), view.y(box.top()), view.x(box.width() / 2), view.y(box.floor()), Pen.BOLD);
        double tread = Math.max(1, 0.03 * scale);
        double track = axle.track();
        double y = view.y(axle.radius());
        if (track > 0) {
            sketch.line(view.x(-track / 2), y, view.x(track / 2), y, Pen.BOLD);
        }
        for (double at : track > 0 ? new double[] {-track / 2, track / 2} : new double[] {0}) {
            sketch.box(view.x(at) - tread, view.y(2 * axle.radius()), view.x(at) + tread, ground, Pen.BOLD);
        }
        double apart = axle.springsApart();
        for (double at : apart > 0 && track > 0 ? new double[] {-apart / 2, apart / 2} : new double[] {}) {
            sketch.box(view.x(at) - 1.2, view.y(axle.mounts()), view.x(at) + 1.2, y, Pen.FINE);
        }
        sketch.line(3, ground, width - 12, ground, Pen.BOLD);
        sketch.line(view.x(0), 3, view.x(0), ground + 2, Pen.DASHED);
        int count = vehicle.axles().size();
        double row = ground + ROW - 1;
        if (apart > 0 && track > 0) {
            across(view, apart / 2, y, row, Letters.SPRINGS_APART.of(shown, count));
            row += ROW;
        }
        if (track > 0) {
            across(view, track / 2, ground, row, Letters.TRACK.of(shown, count));
        }
        double column = view.x(half) + 8;
        sketch.line(view.x(box.width() / 2), view.y(box.top()), column + 1, view.y(box.top()), Pen.HAIR);
        sketch.line(view.x(box.width() / 2), view.y(box.floor()), column + 1, view.y(box.floor()), Pen.HAIR);
        sketch.dimension(column, view.y(box.floor()), column, view.y(box.top()), Letters.HEIGHT.letter());
        return sketch;
    }

    private static void across(View view, double half, double from, double row, String letter) {
        for (double at : new double[] {-half, half}) {
            view.sketch.line(view.x(at), from, view.x(at), row + 1, Pen.HAIR);
        }
        view.sketch.dimension(view.x(-half), row, view.x(half), row, letter);
    }

    private Sketch plan() {
        double width = 92;
        double[] ends = vehicle.length();
        double half = Math.max(vehicle.greatestTrack(), vehicle.body().width()) / 2 + 0.1;
        double scale = scale(ends[1] - ends[0], 2 * half, width - 18, 44);
        double middle = 10 + scale * half;
        Sketch sketch = new Sketch("plan", "Plan, seen from above", width, middle + scale * half + 10);
        double x0 = 2 - scale * ends[0];
        Box box = vehicle.body();
        sketch.box(
                x0 + scale * box.front(),
                middle - scale * box.width() / 2,
                x0 + scale * box.rear(),
                middle + scale * box.width() / 2,
                Pen.BOLD);
        for (Shape axle : vehicle.axles()) {
            double x = x0 + scale * axle.x();
            sketch.line(x, middle - scale * axle.track() / 2, x, middle + scale * axle.track() / 2, Pen.FINE);
            for (double side : axle.track() > 0 ? new double[] {-0.5, 0.5} : new double[] {0}) {
                double y = middle + side * scale * axle.track();
                sketch.box(x - scale * axle.radius(), y - 1, x + scale * axle.radius(), y + 1, Pen.BOLD);
            }
        }
        sketch.line(0, middle, width - 14, middle, Pen.DASHED);
        int count = vehicle.seats().size();
        for (int i = 0; i < count; i++) {
            Place seat = vehicle.seats().get(i).seat();
            double x = x0 - scale * seat.x();
            double y = middle - scale * seat.y();
            sketch.dot(x, y, 0.9);
            if (Math.abs(y - middle) > 0.5) {
                sketch.dimension(x, middle, x, y, Letters.SEAT_ASIDE.of(i, count));
            } else {
                sketch.letter(x, y, Letters.SEAT_ASIDE.of(i, count));
            }
        }
        double column = x0 + scale * ends[1] + 6;
        for (double side : new double[] {-0.5, 0.5}) {
            double y = middle + side * scale * box.width();
            sketch.line(x0 + scale * box.rear(), y, column + 1, y, Pen.HAIR);
        }
        sketch.dimension(
                column,
                middle - scale * box.width() / 2,
                column,
                middle + scale * box.width() / 2,
                Letters.WIDTH.letter());
        sketch.text("left", 6, 4);
        sketch.text("right", 6, 2 * middle - 4);
        return sketch;
    }

    /** One leaf spring off the vehicle and under its load, and the gap above it. */
    private static Sketch spring() {
        Sketch sketch = new Sketch("spring", "One spring, free and loaded", WIDTH, 40);
        half(sketch, 8, 16, Letters.FREE_CAMBER.letter(), "free, lying on its side");
        half(sketch, 100, 9, Letters.LOADED_CAMBER.letter(), "loaded, on the standing vehicle");
        sketch.box(136, 0.5, 148, 4.5, Pen.FINE);
        sketch.text("stop", 142, 2.6);
        sketch.dimension(142, 4.5, 142, 21, Letters.CLEARANCE.letter());
        return sketch;
    }

    private static void half(Sketch sketch, double x, double camber, String letter, String words) {
        double length = 74;
        double eyes = 12;
        double middle = x + length / 2;
        for (int leaf = 0; leaf < 3; leaf++) {
            double reach = length / 2 * (1 - 0.27 * leaf);
            double rise = camber * (1 - Math.pow(reach / (length / 2), 2));
            sketch.bow(
                    middle - reach,
                    eyes + rise + 1.1 * leaf,
                    middle + reach,
                    eyes + rise + 1.1 * leaf,
                    camber - rise,
                    leaf == 0 ? Pen.BOLD : Pen.FINE);
        }
        for (double at : new double[] {x, x + length}) {
            sketch.circle(at, eyes, 1.2, Pen.BOLD);
        }
        sketch.line(x, eyes, x + length, eyes, Pen.DASHED);
        double column = x + 0.36 * length;
        sketch.line(column - 3, eyes + camber, middle, eyes + camber, Pen.HAIR);
        sketch.dimension(column, eyes, column, eyes + camber, letter);
        double row = 33.5;
        sketch.line(x, eyes, x, row + 1, Pen.HAIR);
        sketch.line(x + length, eyes, x + length, row + 1, Pen.HAIR);
        sketch.dimension(x, row, x + length, row, Letters.SPRING_LENGTH.letter());
        sketch.text(words, middle + 0.24 * length, 38);
    }
}
