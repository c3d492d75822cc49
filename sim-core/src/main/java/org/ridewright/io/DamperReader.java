package org.ridewright.io;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Damper;
import org.ridewright.vehicle.Damper.Law;

/** Reads {@code dampers}. */
record DamperReader(AttachmentReader attachments) {
    private static final String[] KEYS = {
        "name", "side", "apart", "damping", "bump", "rebound", "table", "friction", "locked rate", "motion ratio"
    };

    List<Damper> read(Part axle) {
        List<Part> dampers = axle.parts("dampers", "a damper", KEYS);
        return dampers.stream().map(part -> damper(part, dampers.size() == 1)).toList();
    }

    private Damper damper(Part damper, boolean only) {
        return new Damper(
                damper.name(only, "dampers"),
                attachments.read(damper),
                law(damper),
                damper.measureOrZero("friction", QuantityKind.FORCE),
                damper.measureIfAny("locked rate", QuantityKind.RATE),
                damper.measureIfAny("motion ratio", QuantityKind.RATIO));
    }

    private static Optional<Law> law(Part damper) {
        damper.atMostOneOf("damping", "bump", "table");
        damper.atMostOneOf("damping", "rebound", "table");
        if (damper.has("table")) {
            return Optional.of(new Law.Table(damper.rows("table", QuantityKind.SPEED, QuantityKind.FORCE).stream()
                    .map(row -> new Law.Point(row.get(0), row.get(1)))
                    .toList()));
        }
        if (damper.has("damping")) {
            damper.reading().alias(damper.path("bump"), damper.path("damping"));
            damper.reading().alias(damper.path("rebound"), damper.path("damping"));
            return damper.measureIfAny("damping", QuantityKind.DAMPING).map(both -> new Law.Rates(both, both));
        }
        if (damper.has("bump") || damper.has("rebound")) {
            return Optional.of(new Law.Rates(
                    damper.measure("bump", QuantityKind.DAMPING), damper.measure("rebound", QuantityKind.DAMPING)));
        }
        if (!damper.has("friction")) {
            damper.missing("bump", "bump and rebound, or damping, or a table, or friction alone");
        }
        return Optional.empty();
    }
}
