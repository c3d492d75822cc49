package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.BodyFigures;
import org.ridewright.vehicle.LoadCase.Aboard;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.vehicle.check.Faults;

/**
 * What puts the common centre of mass off the ground that the wheels and hitches span: of all that is carried, that which turns the
 * vehicle most about the edge beyond which the centre lies.
 *
 * @param item that
 * @param centre of all mass, behind the front axle or left of the centre line (m)
 * @param edge last place that carries, measured alike (m)
 * @param load name of the load case
 */
record Overhang(Item item, double centre, double edge, String load) {

    /** Something carried: where its place is written, how, its mass (kg) and that place (m). */
    record Item(String path, String written, double mass, double at) {}

    /** The overhang of a load case; none if the centre lies between what carries it. */
    static Optional<Overhang> of(Vehicle vehicle, int load) {
        String name = vehicle.loadCases().get(load).name();
        if (vehicle.layout().pitches()) {
            List<Double> carried = new ArrayList<>();
            vehicle.axles().forEach(axle -> carried.add(axle.behindFrontAxle().value()));
            vehicle.hitches()
                    .forEach(
                            hitch -> carried.add(hitch.place().behindFrontAxle().value()));
            Optional<Overhang> along = beyond(items(vehicle, load, true), carried, name);
            if (along.isPresent()) {
                return along;
            }
        }
        if (vehicle.layout().rolls()) {
            double half = vehicle.axles().stream()
                            .flatMap(axle -> axle.track().stream())
                            .mapToDouble(Measure::value)
                            .max()
                            .orElse(Double.POSITIVE_INFINITY)
                    / 2;
            return beyond(items(vehicle, load, false), List.of(-half, half), name);
        }
        return Optional.empty();
    }

    private static Optional<Overhang> beyond(List<Item> items, List<Double> carried, String load) {
        double least = carried.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double most = carried.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double mass = items.stream().mapToDouble(Item::mass).sum();
        double centre = items.stream().mapToDouble(i -> i.mass() * i.at()).sum() / mass;
        if (centre >= least && centre <= most) {
            return Optional.empty();
        }
        double edge = centre > most ? most : least;
        double out = Math.signum(centre - edge);
        Item worst = items.get(0);
        for (Item item : items) {
            if (out * item.mass() * (item.at() - edge) > out * worst.mass() * (worst.at() - edge)) {
                worst = item;
            }
        }
        return Optional.of(new Overhang(worst, centre, edge, load));
    }

    private static List<Item> items(Vehicle vehicle, int load, boolean along) {
        List<Item> items = new ArrayList<>();
        BodyFigures body = BodyFigures.of(vehicle);
        Measure at = along ? body.behindFrontAxle() : body.leftOfCentre();
        boolean weighed = along && vehicle.body().weighbridge().isPresent();
        String place = weighed ? "body.weighbridge" : "body.centre of mass." + key(along);
        items.add(new Item(place, weighed ? "" : written(at), body.mass().value(), at.value()));
        List<Aboard> aboard = vehicle.loadCases().get(load).aboard();
        for (int i = 0; i < aboard.size(); i++) {
            if (aboard.get(i) instanceof Aboard.Cargo cargo) {
                Measure where =
                        along ? cargo.place().behindFrontAxle() : cargo.place().leftOfCentre();
                String path = "load cases[" + load + "].aboard[" + i + "].at." + key(along);
                items.add(new Item(path, written(where), cargo.mass().value(), where.value()));
            } else if (aboard.get(i) instanceof Aboard.Person person) {
                items.add(onSeat(vehicle, person, along));
            }
        }
        return items;
    }

    private static Item onSeat(Vehicle vehicle, Aboard.Person person, boolean along) {
        List<String> names = vehicle.seats().stream().map(Seat::name).toList();
        int index = names.indexOf(person.seat());
        Seat seat = vehicle.seats().get(index);
        Measure where = along ? seat.place().behindFrontAxle() : seat.place().leftOfCentre();
        return new Item(
                "seats[" + index + "].at." + key(along),
                written(where),
                person.mass().value(),
                where.value());
    }

    private static String key(boolean along) {
        return along ? "behind front axle" : "left of centre";
    }

    /** As the file has it: a place ahead of the axle, or right of the centre, is kept with its sign turned. */
    private static String written(Measure place) {
        return place.written().replaceFirst("^" + Place.OPPOSITE, "");
    }

    void addTo(Faults faults) {
        boolean along = item.path().endsWith(key(true)) || item.path().endsWith("weighbridge");
        faults.add(
                item.path(),
                item.written(),
                String.format(
                        Locale.ROOT,
                        "brings the centre of all that is carried with load case '%s' to %s, beyond the %s at %s, so that the "
                                + "vehicle cannot stand",
                        load,
                        words(centre, along),
                        along ? "outermost axle or hitch" : "wheels",
                        words(edge, along)),
                along
                        ? "a place that leaves it between axles and hitches"
                        : "a place that leaves it between the wheels",
                "check the place and its unit");
    }

    private static String words(double at, boolean along) {
        String way = along
                ? at < 0 ? "ahead of the front axle" : "behind the front axle"
                : at < 0 ? "right of the centre line" : "left of the centre line";
        return Faults.plain(Math.abs(at)) + " m " + way;
    }
}
