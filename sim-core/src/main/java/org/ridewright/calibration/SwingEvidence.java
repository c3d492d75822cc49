package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.fieldwork.SwingTest;
import org.ridewright.fieldwork.SwingTest.Axis;
import org.ridewright.fieldwork.SwingTest.Hung;
import org.ridewright.fieldwork.SwingTest.Part;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.AxleFigures;
import org.ridewright.vehicle.BodyFigures;
import org.ridewright.vehicle.Vehicle;

/**
 * Moment of inertia from the period T of a part that hung up and swung, about its centre of mass:
 *
 * <pre>
 *   on a pivot at distance a       I = m g a T²/4π² − m a²
 *   on two wires, apart d and e    I = m g d e T²/(16 π² h)       h² = L² − ((d − e)/2)²
 *   on three wires, radii R and r  I = m g R r T²/(4 π² h)        h² = L² − (R − r)²
 * </pre>
 *
 * <p>Source: handbook formulas of the compound pendulum and of bifilar and trifilar suspensions (from memory); small swings.
 */
record SwingEvidence(SwingTest fact, List<Datum> data) implements Evidence {
    /** By which each reading is varied to find what its uncertainty does, in standard deviations. */
    private static final double STEP = 0.5;

    /** @throws CalibrationException if the model has no such inertia */
    static SwingEvidence of(SwingTest fact) {
        if (fact.axis() == Axis.YAW) {
            throw new CalibrationException(
                    fact.label() + ": nothing in the model turns about the upright; a yaw inertia cannot be fitted");
        }
        List<Measure> readings = readings(fact);
        double[] values = readings.stream().mapToDouble(Measure::value).toArray();
        ToDoubleFunction<double[]> inertia = x -> inertia(fact, x);
        double variance = 0;
        for (int i = 0; i < values.length; i++) {
            double[] up = values.clone();
            double[] down = values.clone();
            up[i] += STEP * readings.get(i).tolerance();
            down[i] -= STEP * readings.get(i).tolerance();
            double change = (inertia.applyAsDouble(up) - inertia.applyAsDouble(down)) / (2 * STEP);
            variance += change * change;
        }
        double observed = inertia.applyAsDouble(values);
        if (!(observed > 0)) {
            throw new CalibrationException(
                    fact.label()
                            + ": the period is shorter than that of a point mass on the same arm; check the arm, the swings and the time");
        }
        List<Datum> data = new ArrayList<>();
        data.add(new Datum(fact.label() + ": inertia", "kg·m²", observed, Math.sqrt(variance), fact.keepBack(), ""));
        return new SwingEvidence(fact, List.copyOf(data));
    }

    private static List<Measure> readings(SwingTest fact) {
        return Stream.concat(Stream.of(fact.mass(), fact.time()), fact.hung().lengths().stream())
                .toList();
    }

    private static double inertia(SwingTest fact, double[] x) {
        double g = VehicleModel.GRAVITY;
        double m = x[0];
        double period = x[1] / fact.swings();
        double square = period * period / (4 * Math.PI * Math.PI);
        double[] lengths = Arrays.copyOfRange(x, 2, x.length);
        if (fact.hung() instanceof Hung.OnPivot) {
            double a = lengths[0];
            return m * g * a * square - m * a * a;
        }
        double wire = lengths[0];
        double above = lengths[1];
        double below = lengths.length > 2 ? lengths[2] : above;
        boolean two = fact.hung() instanceof Hung.OnTwoWires;
        double slant = two ? (above - below) / 2 : above - below;
        double height = Math.sqrt(wire * wire - slant * slant);
        return m * g * above * below * square / ((two ? 4 : 1) * height);
    }

    @Override
    public double[] predict(Trial trial, double[] circumstances) {
        Vehicle vehicle = trial.vehicle();
        if (fact.of() instanceof Part.WholeAxle whole) {
            return new double[] {
                AxleFigures.rollInertia(BodyMarks.axle(vehicle, whole.axle())).value()
            };
        } else if (fact.of() instanceof Part.OneWheel wheel) {
            return new double[] {
                BodyMarks.axle(vehicle, wheel.axle()).wheel().spinInertia().value()
            };
        }
        BodyFigures body = BodyFigures.of(vehicle);
        return new double[] {
            fact.axis() == Axis.ROLL
                    ? body.rollInertia().value()
                    : body.pitchInertia().value()
        };
    }
}
