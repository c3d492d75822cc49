package org.ridewright.io;

import java.util.Arrays;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Attachment;
import org.ridewright.vehicle.Attachment.Position;

/**
 * Reads where across the axle something stands.
 *
 * @param onCentre whether it stands on the centre line unless it says otherwise; a pair, if not
 */
record AttachmentReader(boolean onCentre) {
    static final Words<Position> SIDES = Words.of("a side", Arrays.asList(Position.values()), Position::word);

    Attachment read(Part part) {
        Position otherwise = onCentre ? Position.CENTRE : Position.PAIR;
        return new Attachment(
                part.wordIfAny("side", SIDES).orElse(otherwise), part.measureIfAny("apart", QuantityKind.LENGTH));
    }
}
