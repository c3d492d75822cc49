package org.ridewright.vehicle;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * Dry friction in a spring: {@code S(c) = F_0 + μ max(0, f_l(c))}, f_l the force in the leaves without stops, is half the height of its load–deflection loop.
 *
 * @param shareOfLoad μ, ≥ 0
 * @param constant F_0 (N), or (N·m) in a joint that twists, ≥ 0
 * @param lockedRate rate that friction adds until the leaves slide
 * @param sliders how limit and locked rate are split over sliders in parallel, each share summing to one; one slider
 *     where empty
 * @param envelopeLength β of the exponential envelope (m), which then replaces the sliders
 */
public record Friction(
        Measure shareOfLoad,
        Measure constant,
        LockedRate lockedRate,
        List<SliderShare> sliders,
        Optional<Measure> envelopeLength) {
    /**
     * Limit of a pack that was cleaned and oiled over that of a middling one: packs in good order rub with 2 to 8 % of their load, greased
     * ones at the low end. Source: from memory, range of the trade.
     */
    public static final double OILED = 0.4;

    public Friction {
        sliders = List.copyOf(sliders);
    }

    /** Whether there is any. */
    public boolean present() {
        return shareOfLoad.value() > 0 || constant.value() > 0;
    }

    /** Shares of one slider, each above 0 to 1. */
    public record SliderShare(double ofLimit, double ofLockedRate) {}

    /** Rate that friction adds before the leaves slide. */
    public sealed interface LockedRate {
        /** As measured just after a reversal (N/m). */
        record Given(Measure rate) implements LockedRate {}

        /** As a multiple of the elastic rate. */
        record MultipleOfRate(Measure multiple) implements LockedRate {}

        /** As stiff as the solver resolves well: 10⁵ times the elastic rate. */
        record Rigid() implements LockedRate {}

        /** Not measured: twice the elastic rate, marked estimated. */
        record NotGiven() implements LockedRate {}
    }
}
