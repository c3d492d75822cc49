package org.ridewright.ringdown;

import java.util.List;
import java.util.Locale;
import org.ridewright.ringdown.DecayCurve.Place;
import org.ridewright.ringdown.DecayFit.Fitted;

/** What a reader must know of a fit. */
final class Remarks {
    private static final double FEW_INDEPENDENT = 0.25;
    private static final int FEW_HALF_CYCLES = 6;

    private Remarks() {}

    static void add(Fitted fitted, int half, List<String> remarks) {
        if (half < FEW_HALF_CYCLES) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "Only %.1f cycles stand out: friction and damping can hardly be told apart; push further down, or release again and again.",
                    half / 2.0));
        }
        if (fitted.varies(Place.SOFTNESS)) {
            double omega = Math.exp(fitted.value(Place.LOG_OMEGA));
            double travel = 2 * fitted.value(Place.FRICTION) * fitted.value(Place.SOFTNESS) / (omega * omega);
            remarks.add(String.format(
                    Locale.ROOT,
                    "Friction does not turn over at once: it takes %.2g mm of travel after each turn, as leaf packs do; the fit allows for it, and the spring is stiffer there.",
                    1000 * travel));
        }
        if (fitted.varies(Place.SECOND_LOG_OMEGA)) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "The decay beats: a second mode at %.2f Hz swings along, %.0f %% as large at first, and was fitted with it.",
                    Math.exp(fitted.value(Place.SECOND_LOG_OMEGA)) / (2 * Math.PI),
                    100 * Reading.secondShare(fitted)));
        }
        double worth = fitted.fit().effective() / fitted.samples();
        if (worth < FEW_INDEPENDENT) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "What the curve leaves is not noise alone but a motion of its own (%d samples are worth %.0f); the intervals allow for it, the model does not.",
                    fitted.samples(),
                    fitted.fit().effective()));
        }
    }
}
