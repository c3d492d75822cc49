package org.ridewright.dynamics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ridewright.quantity.Measure;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.SpringLaws;
import org.ridewright.vehicle.Attachment;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleFigures;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.Damper;
import org.ridewright.vehicle.GappedStage;
import org.ridewright.vehicle.Hitch;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.Spring;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Contact;
import org.ridewright.wheel.Ground;

/** The force elements of a vehicle: their rows and laws. */
final class ElementAssembly {
    private final Vehicle vehicle;
    private final Coordinates coordinates;
    private final Geometry geometry;
    private final StagePlaces places;
    private final List<Element> elements = new ArrayList<>();
    private final List<WheelPlace> wheels = new ArrayList<>();
    private final Map<String, List<String>> stageNames = new HashMap<>();
    private int inputs;

    ElementAssembly(Vehicle vehicle, Coordinates coordinates, Geometry geometry, StagePlaces places) {
        this.vehicle = vehicle;
        this.coordinates = coordinates;
        this.geometry = geometry;
        this.places = places;
    }

    void build(LoadedBody body, Ground ground) {
        for (int i = 0; i < vehicle.axles().size(); i++) {
            addContacts(i, ground);
        }
        for (int i = 0; i < vehicle.axles().size(); i++) {
            addAxle(i);
        }
        new ConnectionAssembly(vehicle, geometry, this).addAll();
        addSeats(body);
        for (Hitch hitch : vehicle.hitches()) {
            double[] row = Geometry.combine(
                    -1, geometry.bodyRise(hitch.place().x(), hitch.place().y()), 0, geometry.unit(0));
            ForceLaw law = SpringLaws.withDamping(ForceLaw.spring(hitch.rate().value()), hitch.damping());
            double held = hitch.levelWith().isPresent() ? places.hitchHeight() : 0;
            ForceLaw raised = held == 0 ? law : law.withOffset(hitch.rate().value() * held);
            elements.add(new Element(hitch.name(), Element.Kind.HITCH, row, inputs++, raised));
        }
    }

    private void addContacts(int i, Ground ground) {
        Axle axle = vehicle.axles().get(i);
        for (double y : geometry.wheelPlaces(i)) {
            double[] rise = geometry.unsprungRise(i, y);
            Contact contact = Contact.of(axle.wheel(), ground, effectiveMass(axle, y));
            String name = axle.name() + " wheel" + side(y);
            double[] row = Geometry.combine(-1, rise, 0, rise);
            wheels.add(new WheelPlace(name, i, axle.x(), y, elements.size(), inputs, contact));
            elements.add(new Element(
                    name, Element.Kind.CONTACT, row, inputs++, ForceLaw.contact(contact.rate(), contact.damping())));
        }
    }

    /** {@code 1/m_e = 1/m_j + y²/I_j} of a beam (kg); of a single wheel its mass. */
    private double effectiveMass(Axle axle, double y) {
        double m = axle.unsprungMass().value();
        return switch (Coordinates.kind(vehicle.layout(), axle)) {
            case SINGLE -> m;
            case INDEPENDENT -> m / 2;
            case BEAM -> Contact.effectiveMass(m, AxleFigures.rollInertia(axle).value(), y);
        };
    }

    private void addAxle(int i) {
        Axle axle = vehicle.axles().get(i);
        for (Spring spring : axle.springs()) {
            ForceLaw law = springLaw(spring);
            for (double y : acrossAt(axle, spring.attachment())) {
                String name = Element.nameOf(axle.name(), spring.name()) + side(y);
                double[] row = scaled(spring.motionRatio(), geometry.cornerCompression(i, y));
                double rate = SpringLaws.workingRate(spring.kind(), spring.elasticity());
                addStaged(name, Element.Kind.SPRING, row, law, rate, spring.stages());
            }
        }
        for (Damper damper : axle.dampers()) {
            ForceLaw law = SpringLaws.damper(damper);
            for (double y : acrossAt(axle, damper.attachment())) {
                String name = Element.nameOf(axle.name(), damper.name()) + side(y);
                double[] row = scaled(damper.motionRatio(), geometry.cornerCompression(i, y));
                elements.add(new Element(name, Element.Kind.DAMPER, row, -1, law));
            }
        }
        if (axle.antiRollBar().isPresent() && coordinates.roll() >= 0 && kind(axle) != AxleKind.SINGLE) {
            double[] row = Geometry.combine(1, geometry.unsprungRoll(i), -1, geometry.bodyRoll(axle.x()));
            elements.add(new Element(
                    axle.name() + " anti-roll bar",
                    Element.Kind.ANTI_ROLL_BAR,
                    row,
                    -1,
                    ForceLaw.spring(axle.antiRollBar().get().value())));
        }
    }

    private AxleKind kind(Axle axle) {
        return Coordinates.kind(vehicle.layout(), axle);
    }

    /** Elastic law, damping and friction; helpers and stops follow for each element. */
    static ForceLaw springLaw(Spring spring) {
        ForceLaw law = SpringLaws.withDamping(SpringLaws.elastic(spring.kind(), spring.elasticity()), spring.damping());
        return SpringLaws.withFriction(law, spring.elasticity(), spring.friction());
    }

    /**
     * Adds an element after placing its gapped stages.
     *
     * @param workingRate of the law without them, of a gas at its stated load (N/m)
     */
    void addStaged(
            String name, Element.Kind kind, double[] row, ForceLaw law, double workingRate, List<GappedStage> stages) {
        ForceLaw staged = law;
        List<String> names = new ArrayList<>();
        for (GappedStage stage : stopsLast(stages)) {
            double base = 0;
            if (stage.measuredAt().isPresent()) {
                String measured = stage.measuredAt().get();
                OptionalDouble known = places.at(measured, name);
                if (known.isEmpty()) {
                    continue;
                }
                base = known.getAsDouble();
            }
            names.add(stage.kind().word());
            int side = stage.kind() == GappedStage.Kind.DROOP_STOP ? -1 : 1;
            double rate = stage.rate().value();
            double at = base + side * stage.clearance().value();
            staged = stage.kind() == GappedStage.Kind.HELPER
                    ? SpringLaws.withStage(staged, rate, at, side)
                    : SpringLaws.withStop(staged, rate, at, side);
        }
        stageNames.put(name, List.copyOf(names));
        elements.add(new Element(name, kind, row, -1, checkedFriction(name, staged, workingRate)));
    }

    /** In the order of the pieces of a law. */
    private static List<GappedStage> stopsLast(List<GappedStage> stages) {
        return stages.stream()
                .sorted(Comparator.comparing(stage -> stage.kind() != GappedStage.Kind.HELPER))
                .toList();
    }

    private static ForceLaw checkedFriction(String name, ForceLaw law, double workingRate) {
        double needed = law.friction().share() * Math.max(workingRate, law.greatestLeafRate());
        if (law.friction().lockedRate() > 0 && !(law.friction().weakestLockedRate() > needed)) {
            throw RideException.tooSoft(
                    name,
                    String.format(
                            Locale.ROOT,
                            "'%s' is too soft beside its helpers, or the locked rate of its friction too low: this, %.3g N/mm%s "
                                    + "(a multiple of the spring's rate unless given), must exceed the friction's share of load times "
                                    + "the steepest rate with helpers, %.3g N/mm. Check the spring's rate and its unit, or "
                                    + "give a higher locked rate",
                            name,
                            law.friction().weakestLockedRate() / 1000,
                            law.friction().states() > 1 ? " where it is least over a slider's share of the limit" : "",
                            needed / 1000));
        }
        return law;
    }

    private void addSeats(LoadedBody body) {
        List<Occupant> sprung = VehicleModel.sprung(body);
        for (int o = 0; o < sprung.size(); o++) {
            Occupant occupant = sprung.get(o);
            Seat seat = occupant.seat();
            double[] floor = geometry.bodyRise(seat.place().x(), seat.place().y());
            for (int i = 0; i < occupant.moving().size(); i++) {
                Occupant.Moving moving = occupant.moving().get(i);
                double[] above = geometry.unit(coordinates.occupant(o)[i]);
                double[] below =
                        moving.on() < 0 ? floor : geometry.unit(coordinates.occupant(o)[moving.on()]);
                ForceLaw law = i == occupant.cushion()
                        ? ForceLaw.contact(moving.rate(), moving.damping())
                        : ForceLaw.spring(moving.rate()).withDamping(moving.damping());
                String name = seat.name() + " " + moving.element();
                elements.add(new Element(name, Element.Kind.SEAT, Geometry.combine(1, below, -1, above), -1, law));
            }
        }
    }

    /** Adds an element as it is. */
    void add(Element element) {
        elements.add(element);
    }

    /** y of each spring or damper of an attachment. */
    double[] acrossAt(Axle axle, Attachment attachment) {
        double half = kind(axle) == AxleKind.SINGLE
                ? 0
                : kind(axle) == AxleKind.INDEPENDENT
                        ? axle.track().orElseThrow().value() / 2
                        : attachment.apart().map(a -> a.value() / 2).orElse(0.0);
        if (kind(axle) == AxleKind.SINGLE) {
            return new double[] {0};
        }
        return switch (attachment.position()) {
            case CENTRE -> new double[] {0};
            case LEFT -> new double[] {half};
            case RIGHT -> new double[] {-half};
            case PAIR -> new double[] {half, -half};
        };
    }

    private static double[] scaled(Optional<Measure> ratio, double[] row) {
        double r = ratio.map(Measure::value).orElse(1.0);
        return Geometry.combine(r, row, 0, row);
    }

    static String side(double y) {
        return y > 0 ? " left" : y < 0 ? " right" : "";
    }

    List<Element> elements() {
        return elements;
    }

    Map<String, List<String>> stageNames() {
        return Map.copyOf(stageNames);
    }

    List<WheelPlace> wheels() {
        return wheels;
    }

    int inputs() {
        return inputs;
    }
}
