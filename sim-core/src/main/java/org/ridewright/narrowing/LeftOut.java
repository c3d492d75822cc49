package org.ridewright.narrowing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.suspension.SpringLaws;
import org.ridewright.vehicle.AxisHeight;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleFigures;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.BodyFigures;
import org.ridewright.vehicle.Connection;
import org.ridewright.vehicle.Damper;
import org.ridewright.vehicle.Damping;
import org.ridewright.vehicle.Friction;
import org.ridewright.vehicle.FurtherMotions.Motion;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.MountHeights;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.SprungBody;
import org.ridewright.vehicle.SwayFigures;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Contact;

/** Values that a vehicle file leaves out and that the program estimates, each under the key that would give it. */
final class LeftOut {
    private static final double HEIGHT = 0.1;
    private static final double INERTIA = 0.25;
    private static final double CONTACT = 0.5;
    /** Of a locked rate: half to twice, since between a quarter and three times the usual multiple occur. */
    private static final double LOCKED = 1;

    private static final double FOOTPRINT = 0.2;
    private static final double SHARE_ON_SEAT = 0.07;
    private static final double CUSHION = 0.5;
    private static final double SWAY_DAMPING = 0.5;

    private final Vehicle vehicle;
    private final Set<String> given;
    private final List<UncertainValue> found = new ArrayList<>();

    private LeftOut(Vehicle vehicle, Set<String> given) {
        this.vehicle = vehicle;
        this.given = given;
    }

    /**
     * All that are left out.
     *
     * @param given paths of the values that the file gives
     */
    static List<UncertainValue> of(Vehicle vehicle, Set<String> given) {
        LeftOut search = new LeftOut(vehicle, given);
        search.body();
        for (int i = 0; i < vehicle.axles().size(); i++) {
            search.axle(i);
        }
        for (int i = 0; i < vehicle.connections().size(); i++) {
            search.connection(i);
        }
        for (int i = 0; i < vehicle.seats().size(); i++) {
            search.seat(i);
        }
        search.sway();
        return List.copyOf(search.found);
    }

    private void add(String path, Measure guess, Function<Measure, Vehicle> with) {
        if (!(guess.tolerance() > 0)) {
            return; // a guess of nothing has no share in anything
        }
        UncertainValue[] self = new UncertainValue[1];
        self[0] = new UncertainValue(
                path,
                guess,
                UncertainValue.Knowledge.LEFT_OUT,
                true,
                z -> with.apply(Measure.of(self[0].spread().at(z), guess.kind())));
        found.add(self[0]);
    }

    private void body() {
        SprungBody body = vehicle.body();
        Layout layout = vehicle.layout();
        BodyFigures figures = BodyFigures.of(vehicle);
        if (layout != Layout.QUARTER && body.centreAboveGround().isEmpty()) {
            bodyValue("body.centre of mass.above ground", figures.aboveGround(), HEIGHT, "centreAboveGround");
        }
        if (layout.rolls() && body.rollInertia().isEmpty() && body.rollRadius().isEmpty()) {
            bodyValue(
                    "body.roll inertia",
                    figures.rollInertia(),
                    INERTIA * figures.rollInertia().value(),
                    "rollInertia");
        }
        if (layout.pitches()
                && body.pitchInertia().isEmpty()
                && body.pitchRadius().isEmpty()) {
            bodyValue(
                    "body.pitch inertia",
                    figures.pitchInertia(),
                    INERTIA * figures.pitchInertia().value(),
                    "pitchInertia");
        }
    }

    private void bodyValue(String path, Measure guess, double tolerance, String component) {
        add(
                path,
                UsualTolerance.absolute(guess, tolerance),
                m -> Altered.with(vehicle, "body", Altered.with(vehicle.body(), component, Optional.of(m))));
    }

    private Vehicle withAxle(int i, String component, Object value) {
        Axle changed = Altered.with(vehicle.axles().get(i), component, value);
        return Altered.with(vehicle, "axles", Altered.with(vehicle.axles(), i, changed));
    }

    private void axle(int i) {
        Axle axle = vehicle.axles().get(i);
        String path = "axles[" + i + "]";
        boolean rolls = vehicle.layout().rolls();
        if (rolls && axle.kind() == AxleKind.BEAM && axle.rollInertia().isEmpty()) {
            add(
                    path + ".roll inertia",
                    UsualTolerance.relative(AxleFigures.rollInertia(axle), INERTIA),
                    m -> withAxle(i, "rollInertia", Optional.of(m)));
        }
        wheel(i, axle, path + ".wheels");
        boolean mountsStated =
                axle.springs().stream().anyMatch(s -> s.mountHeight().isPresent());
        if (vehicle.layout() != Layout.QUARTER
                && !mountsStated
                && !axle.springs().isEmpty()) {
            add(
                    path + ".springs[0].mount height",
                    UsualTolerance.absolute(MountHeights.at(axle), HEIGHT),
                    m -> withSpring(i, 0, "mountHeight", Optional.of(m)));
        }
        boolean rollAxisOpen = rolls && vehicle.body().rollAxis() instanceof AxisHeight.AtAxles;
        if (rollAxisOpen && axle.rollAxisHeight().isEmpty()) {
            Measure guess = Measure.estimated(
                    MountHeights.rollAxisAt(axle).value(), QuantityKind.LENGTH, "at the height of the spring mounts");
            add(
                    path + ".roll axis height",
                    UsualTolerance.absolute(guess, HEIGHT),
                    m -> withAxle(i, "rollAxisHeight", Optional.of(m)));
        }
        for (int s = 0; s < axle.springs().size(); s++) {
            spring(i, s);
        }
        for (int d = 0; d < axle.dampers().size(); d++) {
            damper(i, d);
        }
    }

    private void wheel(int i, Axle axle, String path) {
        if (axle.wheel().contactRate().isEmpty()) {
            add(
                    path + ".contact rate",
                    UsualTolerance.relative(Contact.defaultRate(axle.wheel().tyre()), CONTACT),
                    m -> withAxle(i, "wheel", Altered.with(axle.wheel(), "contactRate", Optional.of(m))));
        }
        if (axle.wheel().contactDamping() instanceof Damping.NotGiven) {
            add(
                    path + ".contact damping ratio",
                    UsualTolerance.relative(
                            Contact.defaultDampingRatio(axle.wheel().tyre()), CONTACT),
                    m -> withAxle(i, "wheel", Altered.with(axle.wheel(), "contactDamping", new Damping.Ratio(m))));
        }
        Optional<Measure> footprint = axle.wheel().footprintLength();
        if (footprint.isPresent() && isGuess(footprint.get(), "axles[" + i + "].wheel", ".footprint")) {
            add(
                    path + ".footprint",
                    UsualTolerance.relative(footprint.get(), FOOTPRINT),
                    m -> withAxle(i, "wheel", Altered.with(axle.wheel(), "footprintLength", Optional.of(m))));
        }
    }

    /** Whether a value that the reader put in has no place in the file. */
    private boolean isGuess(Measure measure, String start, String end) {
        return measure.provenance() == Provenance.ESTIMATED
                && given.stream().noneMatch(path -> path.startsWith(start) && path.endsWith(end));
    }

    private Vehicle withSpring(int i, int s, String component, Object value) {
        List<Spring> springs = vehicle.axles().get(i).springs();
        return withAxle(i, "springs", Altered.with(springs, s, Altered.with(springs.get(s), component, value)));
    }

    private void spring(int i, int s) {
        Friction friction = vehicle.axles().get(i).springs().get(s).friction();
        locked(
                "axles[" + i + "].springs[" + s + "].friction.locked rate",
                friction,
                changed -> withSpring(i, s, "friction", changed));
    }

    private void locked(String path, Friction friction, Function<Friction, Vehicle> with) {
        boolean slides = friction.present() && friction.envelopeLength().isEmpty();
        if (slides && friction.lockedRate() instanceof Friction.LockedRate.NotGiven) {
            add(
                    path,
                    UsualTolerance.relative(SpringLaws.defaultLockedMultiple(), LOCKED),
                    m -> with.apply(Altered.with(friction, "lockedRate", new Friction.LockedRate.MultipleOfRate(m))));
        }
    }

    private void damper(int i, int d) {
        List<Damper> dampers = vehicle.axles().get(i).dampers();
        Damper damper = dampers.get(d);
        if (damper.friction().value() > 0 && damper.lockedRate().isEmpty()) {
            add(
                    "axles[" + i + "].dampers[" + d + "].locked rate",
                    UsualTolerance.relative(SpringLaws.defaultLockedRate(damper), LOCKED),
                    m -> withAxle(
                            i,
                            "dampers",
                            Altered.with(dampers, d, Altered.with(damper, "lockedRate", Optional.of(m)))));
        }
    }

    private Vehicle withConnection(int i, Connection changed) {
        return Altered.with(vehicle, "connections", Altered.with(vehicle.connections(), i, changed));
    }

    private void connection(int i) {
        String path = "connections[" + i + "]";
        Connection connection = vehicle.connections().get(i);
        if (connection instanceof Connection.UndercarriageTwist twist) {
            locked(
                    path + ".friction.locked rate",
                    twist.friction(),
                    changed -> withConnection(i, Altered.with(twist, "friction", changed)));
        } else if (connection instanceof Connection.SideSpring side) {
            for (int t = 0; t < side.tips().size(); t++) {
                int index = t;
                Connection.Tip tip = side.tips().get(t);
                locked(path + ".tips[" + t + "].friction.locked rate", tip.friction(), changed -> {
                    List<Connection.Tip> tips =
                            Altered.with(side.tips(), index, Altered.with(tip, "friction", changed));
                    return withConnection(i, Altered.with(side, "tips", tips));
                });
            }
        } else if (connection instanceof Connection.Interconnection sum) {
            locked(
                    path + ".friction.locked rate",
                    sum.friction(),
                    changed -> withConnection(i, Altered.with(sum, "friction", changed)));
        }
    }

    private Vehicle withSeat(int i, String component, Object value) {
        Seat changed = Altered.with(vehicle.seats().get(i), component, value);
        return Altered.with(vehicle, "seats", Altered.with(vehicle.seats(), i, changed));
    }

    private void seat(int i) {
        Seat seat = vehicle.seats().get(i);
        String path = "seats[" + i + "]";
        boolean shared = seat.shareOnSeat().value() < 1;
        if (shared && isGuess(seat.shareOnSeat(), path, ".share on seat")) {
            add(
                    path + ".share on seat",
                    UsualTolerance.absolute(seat.shareOnSeat(), SHARE_ON_SEAT),
                    m -> withSeat(i, "shareOnSeat", m));
        }
        // a cushion known by its condition alone
        if (seat.stages().size() == 1 && isGuess(seat.stages().get(0).rate(), path + ".", ".rate")) {
            Seat.SeatStage stage = seat.stages().get(0);
            add(
                    path + ".cushion.rate",
                    UsualTolerance.relative(stage.rate(), CUSHION),
                    m -> withSeat(i, "stages", List.of(Altered.with(stage, "rate", m))));
            if (stage.damping() instanceof Damping.Coefficient damping) {
                add(
                        path + ".cushion.damping",
                        UsualTolerance.relative(damping.value(), CUSHION),
                        m -> withSeat(
                                i, "stages", List.of(Altered.with(stage, "damping", new Damping.Coefficient(m)))));
            }
        }
    }

    private void sway() {
        if (!vehicle.further().has(Motion.SWAY) || SwayFigures.byAxles(vehicle)) {
            return;
        }
        if (vehicle.further().swayFrequency().isEmpty()) {
            Measure guess = SwayFigures.frequency(vehicle);
            add("sway frequency", guess, m -> withFurther("swayFrequency", m));
        }
        if (vehicle.further().swayDampingRatio().isEmpty()) {
            Measure guess = UsualTolerance.relative(SwayFigures.dampingRatio(vehicle), SWAY_DAMPING);
            add("sway damping ratio", guess, m -> withFurther("swayDampingRatio", m));
        }
    }

    private Vehicle withFurther(String component, Measure value) {
        return Altered.with(vehicle, "further", Altered.with(vehicle.further(), component, Optional.of(value)));
    }
}
