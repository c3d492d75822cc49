package org.ridewright.report;

import org.ridewright.ride.RideResult.ElementResult;

/** Units of an element's travel and force: those of rotation for bars and frames that twist. */
record Units(String travel, String force) {
    static Units of(ElementResult element) {
        return switch (element.kind()) {
            case "anti-roll bar", "twist" -> new Units("rad", "N·m");
            default -> new Units("m", "N");
        };
    }
}
