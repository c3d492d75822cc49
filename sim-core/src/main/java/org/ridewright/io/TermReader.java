package org.ridewright.io;

import java.util.List;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Attachment.Position;
import org.ridewright.vehicle.Connection.Term;
import org.ridewright.vehicle.Layout;

/** Reads {@code terms}, the weighted travels of an interconnection. */
record TermReader(Layout layout) {
    List<Term> read(Part interconnection) {
        if (!interconnection.has("terms")) {
            interconnection.missing("terms", "a list of weighted travels");
        }
        return interconnection.parts("terms", "a term", "weight", "corner", "unsprung", "body point").stream()
                .map(this::term)
                .toList();
    }

    private Term term(Part term) {
        double weight = term.number("weight");
        String travel = term.oneOf("corner", "unsprung", "body point").orElse("");
        if (travel.equals("body point")) {
            return new Term.BodyPoint(weight, new PlaceReader(layout).read(term, "body point"));
        }
        Part end =
                term.partOrMissing(travel.isEmpty() ? "corner" : travel, "an end of an axle", "axle", "side", "apart");
        String axle = end.text("axle", "the name of an axle");
        Position side = end.wordIfAny("side", AttachmentReader.SIDES).orElse(Position.CENTRE);
        return travel.equals("unsprung")
                ? new Term.Unsprung(weight, axle, side, end.measureIfAny("apart", QuantityKind.LENGTH))
                : new Term.Corner(weight, axle, side, end.measureIfAny("apart", QuantityKind.LENGTH));
    }
}
