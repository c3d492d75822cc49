package org.ridewright.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.Coordinates;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.RideException;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Vehicle;

/** Finds how a vehicle stands under each of its loads, on firm level ground, friction left out. */
public final class StandingVehicle {
    private final Vehicle vehicle;
    private final Optional<VehicleModel> empty;
    private final LeafPacks packs;

    private StandingVehicle(Vehicle vehicle) {
        this.vehicle = vehicle;
        empty = emptied(vehicle);
        packs = new LeafPacks(vehicle);
    }

    /**
     * One for each load case, in their order.
     *
     * @throws RideException if the vehicle cannot stand as described
     */
    public static List<Standing> of(Vehicle vehicle) {
        StandingVehicle standing = new StandingVehicle(vehicle);
        return vehicle.loadCases().stream().map(standing::under).toList();
    }

    /** With nobody and nothing aboard; a vehicle may need its load to stand. */
    private static Optional<VehicleModel> emptied(Vehicle vehicle) {
        try {
            return Optional.of(
                    VehicleModel.assemble(vehicle, new LoadCase("nothing", List.of()), Optional.empty(), false));
        } catch (RideException cannotStand) {
            return Optional.empty();
        }
    }

    private Standing under(LoadCase load) {
        VehicleModel model = VehicleModel.assemble(vehicle, load, Optional.empty(), false);
        List<WheelLoad> wheels = new ArrayList<>();
        for (WheelPlace wheel : model.wheels()) {
            wheels.add(new WheelLoad(wheel.name(), wheel.axle(), model.rest().force()[wheel.element()]));
        }
        List<SupportLoad> hitches = new ArrayList<>();
        List<SpringLoad> springs = new ArrayList<>();
        List<Element> elements = model.equations().elements();
        for (int e = 0; e < elements.size(); e++) {
            Element.Kind kind = elements.get(e).kind();
            if (kind == Element.Kind.HITCH) {
                hitches.add(new SupportLoad(elements.get(e).name(), model.rest().force()[e]));
            } else if (kind == Element.Kind.SPRING || kind == Element.Kind.LINKAGE) {
                springs.add(spring(model, e));
            }
        }
        Coordinates at = model.coordinates();
        return new Standing(
                load,
                model.totalMass(),
                wheels,
                hitches,
                springs,
                levels(model),
                moved(model, at.pitch()),
                moved(model, at.roll()),
                angle(model, at.pitch()),
                angle(model, at.roll()));
    }

    private SpringLoad spring(VehicleModel model, int e) {
        Element element = model.equations().elements().get(e);
        double c = model.rest().compression()[e];
        double force = element.law().elasticForce(c);
        return new SpringLoad(
                element.name(),
                force,
                element.law().friction().states() == 0 ? 0 : element.law().frictionLimit(c),
                c,
                empty.map(m -> c - m.rest().compression()[index(m, element.name())])
                        .orElse(Double.NaN),
                element.law().elasticRate(c),
                Stages.of(model, element, c),
                packs.of(element, c, model));
    }

    private static int index(VehicleModel model, String name) {
        List<Element> elements = model.equations().elements();
        for (int i = 0; i < elements.size(); i++) {
            if (elements.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalStateException("the empty vehicle has no '" + name + "'");
    }

    private static double angle(VehicleModel model, int coordinate) {
        return coordinate < 0 ? 0 : model.rest().q()[coordinate];
    }

    private double moved(VehicleModel model, int coordinate) {
        return coordinate < 0
                ? 0
                : empty.map(m -> angle(model, coordinate) - angle(m, coordinate))
                        .orElse(Double.NaN);
    }

    private List<BodyLevel> levels(VehicleModel model) {
        List<BodyLevel> levels = new ArrayList<>();
        for (Axle axle : vehicle.axles()) {
            double half = axle.track().map(t -> t.value() / 2).orElse(0.0);
            double left = rise(model, axle, half);
            double right = rise(model, axle, -half);
            levels.add(new BodyLevel(axle.name(), left, right));
        }
        return levels;
    }

    private double rise(VehicleModel model, Axle axle, double y) {
        Place place = Place.of(-axle.x(), y, 0);
        return empty.map(m -> height(model, place) - height(m, place)).orElse(Double.NaN);
    }

    /** Rise of a point of the body from the free state (m). */
    private static double height(VehicleModel model, Place place) {
        double[] row = model.motionAt(place).rise();
        double sum = 0;
        for (int i = 0; i < row.length; i++) {
            sum += row[i] * model.rest().q()[i];
        }
        return sum;
    }
}
