package org.ridewright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.sheet.Proportions.Shape;
import org.ridewright.sheet.Proportions.Sitting;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Connection;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.GappedStage;
import org.ridewright.vehicle.Hitch;
import org.ridewright.vehicle.Outline;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.SpringKind;
import org.ridewright.vehicle.Tyre;
import org.ridewright.vehicle.Vehicle;

/** The table of lengths, letter by letter as the sketches have them. */
final class Dimensions {
    private static final String TAPE = "Tape";

    private final Optional<Vehicle> vehicle;
    private final Proportions proportions;
    private final List<Dimension> rows = new ArrayList<>();

    private Dimensions(Optional<Vehicle> vehicle, Proportions proportions) {
        this.vehicle = vehicle;
        this.proportions = proportions;
    }

    static List<Dimension> of(Optional<Vehicle> vehicle, Proportions proportions) {
        Dimensions table = new Dimensions(vehicle, proportions);
        table.axles();
        table.springs();
        table.sideSprings();
        table.seats();
        table.body();
        table.hitch();
        return List.copyOf(table.rows);
    }

    private void add(String letter, String what, String how, String precision, String key, Optional<Measure> known) {
        rows.add(new Dimension(
                letter,
                what,
                how,
                precision,
                key,
                known.map(Dimensions::written).orElse("")));
    }

    /** As the file has it. */
    static String written(Measure measure) {
        return measure.written();
    }

    /** The same of a place that may be counted the other way, with a word for that way. */
    private static String directed(Measure measure, String otherWay) {
        String words = measure.written();
        return words.startsWith(Place.OPPOSITE) ? words.substring(Place.OPPOSITE.length()) + ", " + otherWay : words;
    }

    private void place(
            String letter,
            String what,
            String how,
            String precision,
            String key,
            Optional<Measure> known,
            String otherWay) {
        String words = known.map(measure -> directed(measure, otherWay)).orElse("");
        rows.add(new Dimension(letter, what, how, precision, key, words));
    }

    private Optional<Axle> axle(int i) {
        return vehicle.map(v -> v.axles().get(i));
    }

    private void axles() {
        List<Shape> axles = proportions.axles();
        int count = axles.size();
        for (int i = 1; i < count; i++) {
            String name = axles.get(i).name();
            add(
                    Letters.WHEELBASE.of(i - 1, count - 1),
                    "%s hub to %s hub, along the ground".formatted(axles.get(0).name(), name),
                    TAPE + ", plumb line from each hub; both sides, mean of the two",
                    "± 5 mm",
                    "axles[" + name + "].behind front axle",
                    axle(i).map(Axle::behindFrontAxle));
        }
        for (int i = 0; i < count; i++) {
            wheels(i, count);
        }
    }

    private void wheels(int i, int count) {
        Shape axle = proportions.axles().get(i);
        String key = "axles[" + axle.name() + "].";
        if (axle.track() > 0) {
            add(
                    Letters.TRACK.of(i, count),
                    "track, " + axle.name(),
                    TAPE + ", from outer edge of one tyre to inner edge of the other, on the ground",
                    "± 5 mm",
                    key + "track",
                    axle(i).flatMap(Axle::track));
        }
        add(
                Letters.WHEEL.of(i, count),
                "wheel diameter, " + axle.name(),
                "Chalk mark, roll one turn, tape along the ground, divide by 3.1416",
                "± 3 mm",
                key + "wheels.diameter",
                axle(i).map(a -> a.wheel().diameter()));
        boolean pneumatic = axle(i).map(a -> a.wheel().tyre() == Tyre.PNEUMATIC).orElse(false);
        if (pneumatic) {
            add(
                    Letters.FOOTPRINT.of(i, count),
                    "length of ground that the tyre touches, " + axle.name(),
                    "Two thin cards pushed under the tyre from front and rear; tape between them",
                    "± 10 mm",
                    key + "wheels.footprint",
                    axle(i).flatMap(a -> a.wheel().footprintLength()));
        }
    }

    private void springs() {
        List<Shape> axles = proportions.axles();
        int count = axles.size();
        for (int i = 0; i < count; i++) {
            Shape axle = axles.get(i);
            List<Spring> springs = axle(i).map(Axle::springs).orElse(List.of());
            if (vehicle.isPresent() && springs.isEmpty()) {
                continue; // borne by a spring that reaches from axle to axle
            }
            Optional<Spring> spring = springs.stream().findFirst();
            String key = "axles[" + axle.name() + "].springs["
                    + spring.map(Spring::name).orElse("0") + "].";
            spring(i, count, axle, spring, key);
        }
    }

    private void spring(int i, int count, Shape axle, Optional<Spring> spring, String key) {
        boolean onBeam = spring.map(s -> s.attachment().apart().isPresent()).orElse(true);
        if (axle.track() > 0 && onBeam) {
            apart(
                    i,
                    count,
                    axle.name(),
                    key + "apart",
                    spring.flatMap(s -> s.attachment().apart()));
        }
        add(
                Letters.MOUNTS.of(i, count),
                "where the springs hold the body, above the ground, " + axle.name(),
                TAPE + "; of an elliptic spring its upper pad, of others the mean of the eyes",
                "± 10 mm",
                key + "mount height",
                spring.flatMap(Spring::mountHeight));
        Pack pack = new Pack(
                axle.name(),
                spring.map(Spring::kind).map(SpringKind::isLeaf).orElse(true),
                spring.map(Spring::elasticity),
                spring.map(Spring::stages).orElse(List.of()),
                key);
        clearance(i, count, pack);
        leaves(i, count, pack);
    }

    /** Springs that reach along the side from axle to axle. */
    private void sideSprings() {
        List<Connection.SideSpring> springs = vehicle.map(Vehicle::connections).orElse(List.of()).stream()
                .filter(Connection.SideSpring.class::isInstance)
                .map(Connection.SideSpring.class::cast)
                .toList();
        for (int i = 0; i < springs.size(); i++) {
            Connection.SideSpring spring = springs.get(i);
            String key = "connections[" + spring.name() + "].";
            apart(
                    i,
                    springs.size(),
                    spring.name(),
                    key + "apart",
                    spring.attachment().apart());
            Connection.Tip tip = spring.tips().get(0);
            Pack pack = new Pack(
                    spring.name(), tip.kind().isLeaf(), Optional.of(tip.elasticity()), tip.stages(), key + "tips[0].");
            clearance(i, springs.size(), pack);
            leaves(i, springs.size(), pack);
        }
    }

    /** What a spring is made of, and the key that it stands under. */
    private record Pack(
            String name, boolean leaf, Optional<Elasticity> elasticity, List<GappedStage> stages, String key) {}

    private void apart(int i, int count, String name, String key, Optional<Measure> known) {
        add(
                Letters.SPRINGS_APART.of(i, count),
                "left to right spring, middle to middle, " + name,
                TAPE + ", across the spring seats",
                "± 5 mm",
                key,
                known);
    }

    private void clearance(int i, int count, Pack pack) {
        Optional<GappedStage> stop = pack.stages().stream()
                .filter(stage -> stage.kind() == GappedStage.Kind.BUMP_STOP)
                .findFirst();
        add(
                Letters.CLEARANCE.of(i, count),
                "gap until the spring or axle meets its stop, or the frame, " + pack.name(),
                TAPE + " or folding rule; say who was aboard: "
                        + stop.flatMap(GappedStage::measuredAt).orElse("________"),
                "± 5 mm",
                pack.key() + "bump stop.clearance",
                stop.map(GappedStage::clearance));
    }

    private void leaves(int i, int count, Pack spring) {
        if (!spring.leaf()) {
            return;
        }
        Optional<Elasticity.LeafPack> pack = spring.elasticity()
                .filter(Elasticity.LeafPack.class::isInstance)
                .map(Elasticity.LeafPack.class::cast);
        add(
                Letters.SPRING_LENGTH.of(i, count),
                "spring from eye to eye, " + spring.name(),
                TAPE + ", straight, not along the leaf",
                "± 5 mm",
                spring.key() + "leaves.length",
                pack.map(Elasticity.LeafPack::length));
        rows.add(new Dimension(
                Letters.LEAVES.of(i, count),
                "leaves: number × width × thickness, " + spring.name(),
                "Calliper, on clean metal; write each group of like leaves",
                "± 0.1 mm (thickness)",
                spring.key() + "leaves.pack",
                pack.map(Dimensions::written).orElse("")));
        add(
                Letters.FREE_CAMBER.of(i, count) + ", " + Letters.LOADED_CAMBER.of(i, count),
                "camber, free and loaded, " + spring.name(),
                "Straight edge across the eyes, rule at the middle; the load on the spring must be known",
                "± 2 mm",
                "facts: camber",
                Optional.empty());
    }

    private static String written(Elasticity.LeafPack pack) {
        return String.join(
                ", ",
                pack.leaves().stream()
                        .map(l -> l.number() + " × " + l.width().written() + " × "
                                + l.thickness().written())
                        .toList());
    }

    private void seats() {
        int count = proportions.seats().size();
        for (int i = 0; i < count; i++) {
            Sitting sitting = proportions.seats().get(i);
            Optional<Seat> seat = vehicle.flatMap(v -> v.seat(sitting.name()));
            String name = sitting.name();
            String key = "seats[" + (vehicle.isPresent() ? name : "0") + "].";
            Optional<Place> at = seat.map(Seat::place);
            Optional<Place> feet = seat.flatMap(Seat::feet);
            String loaded = TAPE + " and plumb line; with the person seated";
            place(
                    Letters.SEAT_BEHIND.of(i, count),
                    "seat behind front axle, " + name,
                    loaded + ", to the hip bones",
                    "± 20 mm",
                    key + "at.behind front axle",
                    at.map(Place::behindFrontAxle),
                    "ahead");
            add(
                    Letters.SEAT_HEIGHT.of(i, count),
                    "seat above ground, " + name,
                    loaded,
                    "± 20 mm",
                    key + "at.above ground",
                    at.map(Place::aboveGround));
            place(
                    Letters.SEAT_ASIDE.of(i, count),
                    "seat left or right of the centre line, " + name,
                    TAPE + "; write which side",
                    "± 10 mm",
                    key + "at.left of centre",
                    at.map(Place::leftOfCentre),
                    "right");
            place(
                    Letters.FEET_BEHIND.of(i, count),
                    "feet behind front axle, " + name,
                    TAPE + " and plumb line, to the heels",
                    "± 20 mm",
                    key + "feet.behind front axle",
                    feet.map(Place::behindFrontAxle),
                    "ahead");
            add(
                    Letters.FEET_HEIGHT.of(i, count),
                    "feet above ground, " + name,
                    TAPE,
                    "± 20 mm",
                    key + "feet.above ground",
                    feet.map(Place::aboveGround));
        }
    }

    private void body() {
        Optional<Outline> outline = vehicle.flatMap(v -> v.body().outline());
        String how = TAPE + "; the box that holds most of the weight of the body, without shafts and lamps";
        add(
                Letters.LENGTH.letter(),
                "body, length",
                how,
                "± 20 mm",
                "body.outline.length",
                outline.map(Outline::length));
        add(Letters.WIDTH.letter(), "body, width", TAPE, "± 20 mm", "body.outline.width", outline.map(Outline::width));
        add(
                Letters.HEIGHT.letter(),
                "body, height",
                TAPE,
                "± 20 mm",
                "body.outline.height",
                outline.map(Outline::height));
    }

    private void hitch() {
        if (proportions.hitch().isEmpty()) {
            return;
        }
        Optional<Hitch> hitch = vehicle.flatMap(v -> v.hitches().stream().findFirst());
        String key = "hitches[" + hitch.map(Hitch::name).orElse("0") + "].at.";
        place(
                Letters.HITCH_AHEAD.letter(),
                "where shafts or drawbar are held, from the front axle",
                TAPE + ", plumb line",
                "± 10 mm",
                key + "behind front axle",
                hitch.map(h -> h.place().behindFrontAxle()),
                "ahead");
        add(
                Letters.HITCH_HEIGHT.letter(),
                "the same, above the ground",
                TAPE + ", vehicle level",
                "± 10 mm",
                key + "above ground",
                hitch.map(h -> h.place().aboveGround()));
    }
}
