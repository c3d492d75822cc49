package org.ridewright.io;

import java.util.List;
import java.util.Optional;
import org.ridewright.fieldwork.Loading;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.LoadCase.Aboard;
import org.ridewright.vehicle.Place;

/** Reads {@code with} and {@code added}: who and what was aboard. */
record LoadingReader(Layout layout) {
    static final List<String> KEYS = List.of("with", "added");

    Loading read(Part part) {
        List<Aboard> added = new LoadCaseReader(layout).aboard(part, "added");
        return new Loading(part.text("with", "the name of a load case of the vehicle"), added);
    }

    /** A place along and across, whose height does not matter. */
    Place planPlace(Part owner, String key) {
        Part group = PlaceReader.group(owner, key);
        Optional<Measure> along = PlaceReader.along(group);
        if (along.isEmpty()
                && layout.pitches()
                && !group.has("behind front axle")
                && !group.has("ahead of front axle")) {
            group.missing("behind front axle", Values.expected(QuantityKind.LENGTH));
        }
        return new Place(
                along.orElse(Measure.of(0, QuantityKind.LENGTH)),
                PlaceReader.across(group),
                group.measureOrZero("above ground", QuantityKind.LENGTH));
    }
}
