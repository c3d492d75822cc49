package org.ridewright.modal;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.complex.Complex;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;

/**
 * Response to a sinusoidal road of a stated amplitude, dry friction by harmonic balance: each rubbing element is replaced by its
 * {@link EquivalentFriction} at the amplitude at which it then moves. Gapped pieces and contacts stay as they stand at rest; where a
 * wheel would leave the ground, or a person the seat, the response says so.
 */
public final class HarmonicBalance {
    private static final int MOST_ROUNDS = 2000;
    private static final double SETTLED = 1e-9;
    /** Part of each change that is taken over: too much makes locking and sliding alternate. */
    private static final double[] TAKEN = {0.7, 0.3, 0.1, 0.03};

    private final VehicleModel model;
    private final LinearModel sliding;
    private final FrictionElements friction;
    private final RoadInput input;
    private final double amplitude;

    /** @param amplitude of the road (m), > 0 */
    public HarmonicBalance(VehicleModel model, RoadInput input, double amplitude) {
        if (!(amplitude > 0)) {
            throw new IllegalArgumentException("amplitude must be > 0 m, got " + amplitude);
        }
        this.model = model;
        this.input = input;
        this.amplitude = amplitude;
        sliding = LinearModel.of(model, Condition.SLIDING);
        friction = new FrictionElements(sliding);
    }

    /**
     * Steady motion at one frequency.
     *
     * @param coordinates over the road's amplitude; not to be modified
     * @param settled whether amplitudes and friction agree
     * @param liftsOff whether something that only pushes would be pulled: what follows from here on is no motion of this vehicle
     */
    public record Steady(double frequency, Complex[] coordinates, boolean settled, boolean liftsOff) {}

    /**
     * Motions at rising frequencies, each sought from the one before.
     *
     * @param frequencies rising (Hz), > 0
     */
    public List<Steady> at(double[] frequencies) {
        List<Steady> all = new ArrayList<>();
        double[] start = new double[friction.count()];
        for (double f : frequencies) {
            all.add(steady(f, start));
        }
        return all;
    }

    /** @param amplitudes from which it is sought; then those found */
    private Steady steady(double frequency, double[] amplitudes) {
        double omega = 2 * Math.PI * frequency;
        double[] before = amplitudes.clone();
        for (double taken : TAKEN) {
            for (int round = 0; round < MOST_ROUNDS; round++) {
                FrequencyResponse response = new FrequencyResponse(model, friction.at(amplitudes, omega), input);
                Complex[] q = response.at(frequency);
                double change = 0;
                for (int i = 0; i < amplitudes.length; i++) {
                    double found = amplitude
                            * response.compression(friction.element(i), q, omega)
                                    .norm();
                    change = Math.max(change, Math.abs(found - amplitudes[i]));
                    amplitudes[i] += taken * (found - amplitudes[i]);
                }
                if (change < SETTLED * amplitude) {
                    return new Steady(frequency, q, true, liftsOff(response, q, omega));
                }
            }
            System.arraycopy(before, 0, amplitudes, 0, before.length);
        }
        FrequencyResponse last = new FrequencyResponse(model, friction.at(amplitudes, omega), input);
        Complex[] q = last.at(frequency);
        return new Steady(frequency, q, false, liftsOff(last, q, omega));
    }

    private boolean liftsOff(FrequencyResponse response, Complex[] q, double omega) {
        List<Element> elements = sliding.equations().elements();
        for (int e = 0; e < elements.size(); e++) {
            double at = sliding.rest().compression()[e];
            if (elements.get(e).law().pushesOnly()
                    && at > 0
                    && amplitude * response.compression(e, q, omega).norm() > at) {
                return true;
            }
        }
        return false;
    }
}
