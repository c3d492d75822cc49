package org.ridewright.io;

import java.util.List;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.LoadCase.Aboard;

/** Reads {@code load cases}; a file without them has one, empty. */
record LoadCaseReader(Layout layout) {
    private static final String[] KEYS = {"person", "cargo", "mass", "seat", "at", "outline"};

    List<LoadCase> read(Part vehicle) {
        if (!vehicle.has("load cases")) {
            return List.of(new LoadCase("empty", List.of()));
        }
        return vehicle.parts("load cases", "a load case", "name", "aboard").stream()
                .map(part -> new LoadCase(part.text("name", "a name"), aboard(part, "aboard")))
                .toList();
    }

    /** A list of persons and things. */
    List<Aboard> aboard(Part owner, String key) {
        return owner.parts(key, "a person or cargo", KEYS).stream()
                .map(this::aboard)
                .toList();
    }

    private Aboard aboard(Part part) {
        if (part.oneOf("person", "cargo").orElse("person").equals("person")) {
            refuse(part, "at", "outline");
            return new Aboard.Person(
                    part.textIfAny("person", "who it is").orElse(""),
                    part.measure("mass", QuantityKind.MASS),
                    part.text("seat", "the name of a seat"));
        }
        refuse(part, "seat");
        return new Aboard.Cargo(
                part.text("cargo", "what it is"),
                part.measure("mass", QuantityKind.MASS),
                new PlaceReader(layout).read(part, "at"),
                OutlineReader.readIfAny(part));
    }

    private static void refuse(Part part, String... keys) {
        for (String key : keys) {
            part.node(key)
                    .ifPresent(node -> part.reading()
                            .problem(
                                    node,
                                    "",
                                    key.equals("seat") ? "cargo has no seat" : "a person has a seat instead",
                                    key.equals("seat") ? "at, a place" : "seat, the name of a seat",
                                    "remove '" + key + "'"));
        }
    }
}
