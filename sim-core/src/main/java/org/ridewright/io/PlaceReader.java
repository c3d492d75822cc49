package org.ridewright.io;

import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.Place;

/** Reads places, of which a layout without pitch or roll needs less. */
record PlaceReader(Layout layout) {
    private static final String[] KEYS = {
        "behind front axle", "ahead of front axle", "left of centre", "right of centre", "above ground"
    };
    private static final String BEHIND = "behind front axle";
    private static final String AHEAD = "ahead of front axle";

    /** A required place; a quarter vehicle does without. */
    Place read(Part owner, String key) {
        if (layout == Layout.QUARTER && !owner.has(key)) {
            return Place.of(0, 0, 0);
        }
        return place(group(owner, key));
    }

    Optional<Place> readIfAny(Part owner, String key) {
        return owner.has(key) ? Optional.of(place(group(owner, key))) : Optional.empty();
    }

    /** The group of keys of a place. */
    static Part group(Part owner, String key) {
        return owner.partOrMissing(key, "a place", KEYS);
    }

    /** Distance behind the front axle, if the group has it. */
    static Optional<Measure> along(Part group) {
        return eitherWay(group, BEHIND, AHEAD);
    }

    /** Distance left of the centre line; on it where the group does not say. */
    static Measure across(Part group) {
        return eitherWay(group, "left of centre", "right of centre").orElse(zero());
    }

    private Place place(Part group) {
        Optional<Measure> along = along(group);
        if (along.isEmpty() && layout.pitches() && !group.has(BEHIND) && !group.has(AHEAD)) {
            group.missing(BEHIND, Values.expected(QuantityKind.LENGTH));
        }
        Measure height = layout == Layout.QUARTER
                ? group.measureOrZero("above ground", QuantityKind.LENGTH)
                : group.measure("above ground", QuantityKind.LENGTH);
        return new Place(along.orElse(zero()), across(group), height);
    }

    private static Optional<Measure> eitherWay(Part group, String key, String opposite) {
        Optional<String> given = group.atMostOneOf(key, opposite);
        if (given.isPresent() && given.get().equals(opposite)) {
            group.reading().alias(group.path(key), group.path(opposite));
            return group.measureIfAny(opposite, QuantityKind.LENGTH).map(PlaceReader::negated);
        }
        return group.measureIfAny(key, QuantityKind.LENGTH);
    }

    private static Measure negated(Measure measure) {
        return new Measure(
                measure.kind(),
                -measure.value(),
                measure.tolerance(),
                measure.provenance(),
                Place.OPPOSITE + measure.written());
    }

    private static Measure zero() {
        return Measure.of(0, QuantityKind.LENGTH);
    }
}
