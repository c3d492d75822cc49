package org.ridewright.modal;

import java.util.List;

/**
 * Vertical motion of one place for several roads and conditions.
 *
 * @param place name of a seat or of a point of the body
 * @param seat whether it is a seat
 */
public record PlaceResponse(String place, boolean seat, List<ResponseCurve> curves) {
    public PlaceResponse {
        curves = List.copyOf(curves);
    }
}
