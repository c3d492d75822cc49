package org.ridewright.modal;

import org.ridewright.suspension.FrictionLaw;

/**
 * The linear element that stands for dry friction at one amplitude, by harmonic balance: of {@code s(X cos φ)} the part in step with the
 * compression, {@code k_eq = (1/πX) ∮ s cos φ dφ}, and the part in step with its rate, {@code h = (1/πX²) ∮ s dc}.
 *
 * <p>A slider of limit S and locked rate k_p with {@code X > x_s = S/k_p} slips: {@code k_eq = (k_p/π)(θ − ½ sin 2θ)}, {@code θ = arccos(1 −
 * 2 x_s/X)}, {@code h = 4 S (X − x_s)/(πX²)}; below it is {@code k_p} and loses nothing. Sliders in parallel add. The exponential envelope
 * swings between {@code ±S tanh(X/β)} and loses {@code 4 S (X − β tanh(X/β))}; its k_eq is integrated. Where the limit grows with the load,
 * {@code S(c) = S_0 + μ f_l' c}, the change is one of the second harmonic and drops out: S is that at rest.
 *
 * <p>Source: loop areas: closed forms of the Jenkins element and of the envelope, derived again; the method: Krylov and Bogoliubov 1937 (from
 * memory). Accuracy: beside the motion itself, see docs/modes.md.
 *
 * @param rate k_eq (N/m)
 * @param loss h (N/m): a viscous damper that loses as much has {@code h/ω}
 */
public record EquivalentFriction(double rate, double loss) {
    private static final EquivalentFriction NONE = new EquivalentFriction(0, 0);
    private static final int POINTS = 400;

    /**
     * Of a friction law at an amplitude.
     *
     * @param limit S at rest (N), ≥ 0
     * @param amplitude X (m), ≥ 0
     */
    public static EquivalentFriction of(FrictionLaw law, double limit, double amplitude) {
        if (law.states() == 0 || limit == 0) {
            return NONE;
        }
        if (law.isEnvelope()) {
            return envelope(limit, law.envelopeLength(), amplitude);
        }
        double rate = 0;
        double loss = 0;
        for (int j = 0; j < law.states(); j++) {
            EquivalentFriction slider = slider(law.limitShares()[j] * limit, law.lockedRates()[j], amplitude);
            rate += slider.rate();
            loss += slider.loss();
        }
        return new EquivalentFriction(rate, loss);
    }

    private static EquivalentFriction slider(double limit, double lockedRate, double amplitude) {
        double yields = limit / lockedRate;
        if (amplitude <= yields) {
            return new EquivalentFriction(lockedRate, 0);
        }
        double theta = Math.acos(1 - 2 * yields / amplitude);
        return new EquivalentFriction(
                lockedRate / Math.PI * (theta - Math.sin(2 * theta) / 2),
                4 * limit * (amplitude - yields) / (Math.PI * amplitude * amplitude));
    }

    /** Upper branch of the loop, from −X to X: {@code s = S − (S + s_m) e^{−(c + X)/β}}; Simpson's rule over half a turn. */
    private static EquivalentFriction envelope(double limit, double length, double amplitude) {
        if (amplitude < 1e-9 * length) {
            return new EquivalentFriction(limit / length, 0);
        }
        double ratio = amplitude / length;
        double end = limit * Math.tanh(ratio);
        double sum = 0;
        for (int i = 0; i <= POINTS; i++) {
            double cos = Math.cos(Math.PI * i / POINTS);
            double s = limit - (limit + end) * Math.exp(-ratio * (1 - cos));
            double weight = i == 0 || i == POINTS ? 1 : i % 2 == 1 ? 4 : 2;
            // time runs with φ from π to 2π on this branch, c = X cos φ rising; the lower branch gives as much again
            sum += weight * s * -cos;
        }
        double rate = 2 * sum * Math.PI / POINTS / 3 / (Math.PI * amplitude);
        double loss = 4 * limit * (amplitude - length * Math.tanh(ratio)) / (Math.PI * amplitude * amplitude);
        return new EquivalentFriction(rate, loss);
    }
}
