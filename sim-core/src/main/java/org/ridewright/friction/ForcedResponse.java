package org.ridewright.friction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.modal.Condition;
import org.ridewright.modal.FrequencyResponse;
import org.ridewright.modal.HarmonicBalance;
import org.ridewright.modal.HarmonicBalance.Steady;
import org.ridewright.modal.LinearModel;
import org.ridewright.modal.RoadInput;

/**
 * Motion of the body's centre of mass over a sinusoidal road whose waves are far longer than the vehicle, against frequency.
 *
 * @param model that was shaken
 * @param fine frequencies of what is computed by formula (Hz)
 * @param sliding motion over the road's without friction, at the fine frequencies
 * @param locked the same with friction that never lets go
 * @param threshold amplitude of the road below which friction is locked, at the fine frequencies (m)
 * @param curves one for each amplitude of the road
 */
public record ForcedResponse(
        VehicleModel model, double[] fine, double[] sliding, double[] locked, double[] threshold, List<Curve> curves) {
    /** Road amplitudes unless others are asked for (m). */
    public static final List<Double> USUAL = List.of(0.001, 0.003, 0.010);

    private static final double LOWEST = 0.5;
    private static final double HIGHEST = 12;
    private static final int FINE = 169;
    /** One in twelve of the fine ones. */
    private static final int SIMULATED = 15;

    public ForcedResponse {
        curves = List.copyOf(curves);
    }

    /**
     * At one amplitude of the road.
     *
     * @param amplitude Y (m)
     * @param balanced motion over the road's by harmonic balance, at the fine frequencies; NaN where a wheel or person would leave what
     *     it rests on
     * @param simulated at fewer frequencies
     */
    public record Curve(double amplitude, double[] balanced, List<ForcedPoint> simulated) {
        public Curve {
            simulated = List.copyOf(simulated);
        }

        /** What harmonic balance gives at the frequency of simulated point i; NaN where it gives nothing. */
        public double balancedAt(int i) {
            return balanced[i * (FINE - 1) / (SIMULATED - 1)];
        }
    }

    /** Place among the fine frequencies of the smallest waves on which a spring slides; empty if one slides on waves of any size. */
    public OptionalInt firstToSlide() {
        int least = IntStream.range(0, fine.length)
                .boxed()
                .min(Comparator.comparingDouble(i -> threshold[i]))
                .orElseThrow();
        return threshold[least] > 0 ? OptionalInt.of(least) : OptionalInt.empty();
    }

    /**
     * Harmonic balance beside a simulated point.
     *
     * @param share by which it errs
     * @param amplitude of the road (m)
     * @param frequency (Hz)
     */
    public record Departure(double share, double amplitude, double frequency) {}

    /** At every simulated point at which springs slide and nothing lifts off or meets a stop, rising. */
    public List<Departure> departures() {
        List<Departure> departures = new ArrayList<>();
        for (Curve curve : curves) {
            for (int i = 0; i < curve.simulated().size(); i++) {
                ForcedPoint point = curve.simulated().get(i);
                double share = Math.abs(curve.balancedAt(i) / point.harmonic() - 1);
                if (point.settled() && !point.liftsOff() && point.locked() < 1 && Double.isFinite(share)) {
                    departures.add(new Departure(share, curve.amplitude(), point.frequency()));
                }
            }
        }
        departures.sort(Comparator.comparingDouble(Departure::share));
        return departures;
    }

    /** Shakes a vehicle. */
    public static ForcedResponse of(VehicleModel model, List<Double> amplitudes) {
        double[] row = model.motionAt(model.centreOfMass()).rise();
        double[] fine = spread(FINE);
        RoadInput input = RoadInput.both(Double.POSITIVE_INFINITY);
        LockThreshold threshold = new LockThreshold(model);
        List<Curve> curves = new ArrayList<>();
        for (double amplitude : amplitudes) {
            List<Steady> steady = new HarmonicBalance(model, input, amplitude).at(fine);
            double[] balanced = new double[fine.length];
            for (int i = 0; i < fine.length; i++) {
                Steady at = steady.get(i);
                balanced[i] = !at.liftsOff() && at.settled()
                        ? FrequencyResponse.of(row, at.coordinates()).norm()
                        : Double.NaN;
            }
            double[] few = spread(SIMULATED);
            List<ForcedPoint> points = IntStream.range(0, few.length)
                    .parallel()
                    .mapToObj(i -> new ForcedRun(model.equations(), model.rest(), row, 0, amplitude, few[i]).run())
                    .toList();
            curves.add(new Curve(amplitude, balanced, points));
        }
        return new ForcedResponse(
                model,
                fine,
                linear(model, Condition.SLIDING, input, row, fine),
                linear(model, Condition.LOCKED, input, row, fine),
                Arrays.stream(fine).map(threshold::at).toArray(),
                curves);
    }

    private static double[] linear(
            VehicleModel model, Condition condition, RoadInput input, double[] row, double[] frequencies) {
        FrequencyResponse response = new FrequencyResponse(model, LinearModel.of(model, condition), input);
        return Arrays.stream(frequencies)
                .map(f -> FrequencyResponse.of(row, response.at(f)).norm())
                .toArray();
    }

    private static double[] spread(int count) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = LOWEST * Math.pow(HIGHEST / LOWEST, i / (count - 1.0));
        }
        return values;
    }
}
