package org.ridewright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.modal.HarmonicBalance;
import org.ridewright.modal.RoadInput;
import org.ridewright.ride.Fleet;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.vehicle.Vehicle;

/** Harmonic balance beside the motion itself, of a quarter vehicle whose spring is dry, as the solver advances it. */
class HarmonicBalanceAccuracyTest {
    private static final double SETTLED = 40;
    private static final int SAMPLES = 24;

    /** Frequency (Hz) and amplitude of the road (mm), below, at and above the ride's resonance. */
    @ParameterizedTest
    @CsvSource({"0.8, 4", "1.2, 4", "1.4, 4", "1.6, 4", "2.0, 4", "3.0, 4", "6.0, 4", "1.4, 1", "1.4, 10", "2.0, 2"})
    void theBodyMovesAsFarAsItsMotionInTimeTells(double f, double mm) {
        Vehicle vehicle = Fleet.described(Fleet.quarter(250)
                .replace(
                        "rate: 22 kN/m}",
                        "rate: 22 kN/m, friction: {constant: 20 N, share of load: 0.02, locked rate: 2 times}}"));
        VehicleModel model = VehicleModel.assemble(vehicle, vehicle.loadCases().get(0), Optional.empty(), false);
        Complex balanced = new HarmonicBalance(model, RoadInput.both(1), mm / 1000)
                .at(new double[] {f})
                .get(0)
                .coordinates()[0];
        Complex moved = moved(model, f, mm / 1000);
        assertThat(balanced.norm()).isCloseTo(moved.norm(), within(0.02 * moved.norm()));
    }

    /** First harmonic of the steady motion over the road's. */
    private static Complex moved(VehicleModel model, double f, double amplitude) {
        double omega = 2 * Math.PI * f;
        double start = Math.ceil(SETTLED * f) / f;
        PiecewisePolynomial road = Drives.cosine(amplitude, omega, 0, start + 1 / f);
        Complex sum = Complex.ZERO;
        for (int i = 0; i < SAMPLES; i++) {
            double phase = 2 * Math.PI * i / SAMPLES;
            Problem problem = new Problem(
                    model.equations(),
                    List.of(road),
                    model.rest().q().clone(),
                    new double[2],
                    new double[1],
                    start + phase / omega);
            double z = RegimeSolver.solve(problem, step -> {}).q()[0]
                    - model.rest().q()[0];
            sum = sum.add(new Complex(Math.cos(phase), -Math.sin(phase)).multiply(2 * z / SAMPLES));
        }
        return sum.divide(amplitude);
    }
}
