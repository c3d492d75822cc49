package org.ridewright.friction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.StaticState;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;

/**
 * The body of a vehicle going straight up and down on its springs alone, wheels following the road, dampers away: one degree of freedom, for which there is a
 * closed form. Its mass, rates and limits are those of the vehicle at rest; the limit is the same at every load.
 *
 * <p>Against the ground {@code x} obeys {@code m ẍ + k x + F sgn ẋ = F₀ cos ωt} with {@code F₀ = m ω² Y}.
 *
 * @param mass m, of what heaves with the body (kg)
 * @param rate k, of all springs (N/m)
 * @param limit F, of all springs that rub (N)
 * @param curves one for each amplitude of the road
 */
public record BodyAlone(double mass, double rate, double limit, List<Curve> curves) {
    /** Amplitudes of the road over the travel F/k at which friction would hold a spring for ever. */
    private static final double[] ROADS = {1.5, 3};

    private static final double LEAST = 0.5;
    private static final double GREATEST = 2.5;
    private static final int FINE = 241;
    /** Frequencies that are simulated over the natural one; next to it, where motion grows without end, nothing settles. */
    private static final double[] SIMULATED = {0.6, 0.7, 0.8, 0.85, 1.2, 1.3, 1.4, 1.6, 1.8, 2, 2.25, 2.5};

    /** Locked rate over k of friction as good as rigid, of which the amplitude errs by about one part in its square root. */
    private static final double RIGID = 2e4;

    public BodyAlone {
        curves = List.copyOf(curves);
    }

    /**
     * At one amplitude of the road.
     *
     * @param amplitude Y (m)
     * @param fine frequencies over the natural one
     * @param closed travel of the springs over the road's by Den Hartog's closed form; NaN where it does not hold
     * @param rigid simulated, friction as good as rigid, where the closed form holds and the motion settles
     * @param given simulated at the locked rate of the vehicle's springs, wherever it settles
     */
    public record Curve(
            double amplitude, double[] fine, double[] closed, List<ForcedPoint> rigid, List<ForcedPoint> given) {
        public Curve {
            rigid = List.copyOf(rigid);
            given = List.copyOf(given);
        }
    }

    /** Natural frequency (Hz). */
    public double frequency() {
        return Math.sqrt(rate / mass) / (2 * Math.PI);
    }

    /** By the closed form, of a simulated point; NaN where it does not hold. */
    public double closed(Curve curve, ForcedPoint point) {
        return closed(point.frequency() / frequency(), limit / (rate * curve.amplitude()));
    }

    /** Travel over the road: {@code r² X k/F₀}, with {@code F/F₀ = F/(k Y r²)}. */
    private static double closed(double r, double held) {
        return r * r * DenHartogAmplitude.of(r, held / (r * r)).orElse(Double.NaN);
    }

    /** Greatest share by which simulation with friction as good as rigid departs from the closed form; NaN where there is nothing to compare. */
    public double departure() {
        return departure(Curve::rigid);
    }

    /** The same of springs that give as the vehicle's do before they slide. */
    public double departureAsWritten() {
        return departure(Curve::given);
    }

    /** How many points of rigid friction there are. */
    public int compared() {
        return curves.stream().mapToInt(c -> c.rigid().size()).sum();
    }

    private double departure(Function<Curve, List<ForcedPoint>> points) {
        return curves.stream()
                .flatMap(c -> points.apply(c).stream().map(p -> Math.abs(p.amplitude() / closed(c, p) - 1)))
                .filter(Double::isFinite)
                .max(Double::compare)
                .orElse(Double.NaN);
    }

    /** Shakes the body of a vehicle. */
    public static BodyAlone of(VehicleModel model) {
        int heave = model.coordinates().heave();
        double rate = 0;
        double limit = 0;
        double locked = 0;
        List<Element> elements = model.equations().elements();
        for (int e = 0; e < elements.size(); e++) {
            Element element = elements.get(e);
            double row = Math.abs(element.row()[heave]);
            if (element.kind() == Element.Kind.SPRING || element.kind() == Element.Kind.LINKAGE) {
                rate += row * row * element.law().elasticRate(model.rest().compression()[e]);
                if (Leaves.rubs(element)) {
                    limit += row * Leaves.limit(model, e);
                    locked += row * row * lockedRate(model, e);
                }
            }
        }
        BodyAlone alone = new BodyAlone(model.equations().mass(heave, heave), rate, limit, List.of());
        List<Curve> curves = new ArrayList<>();
        for (double road : ROADS) {
            curves.add(alone.shaken(road * limit / rate, locked));
        }
        return new BodyAlone(alone.mass, rate, limit, curves);
    }

    private static double lockedRate(VehicleModel model, int element) {
        FrictionLaw friction = model.equations().elements().get(element).law().friction();
        return friction.isEnvelope()
                ? Leaves.limit(model, element) / friction.envelopeLength()
                : Arrays.stream(friction.lockedRates()).sum();
    }

    private Curve shaken(double road, double locked) {
        double held = limit / (rate * road);
        double[] fine = new double[FINE];
        double[] closed = new double[FINE];
        for (int i = 0; i < FINE; i++) {
            fine[i] = LEAST * Math.pow(GREATEST / LEAST, i / (FINE - 1.0));
            closed[i] = closed(fine[i], held);
        }
        double[] within = Arrays.stream(SIMULATED)
                .filter(r -> Double.isFinite(closed(r, held)))
                .toArray();
        return new Curve(road, fine, closed, points(within, road, RIGID * rate), points(SIMULATED, road, locked));
    }

    private List<ForcedPoint> points(double[] ratios, double road, double locked) {
        ForceLaw law = ForceLaw.spring(rate).withFriction(FrictionLaw.single(0, limit, locked));
        // compressed by a road that rises and a body that does not
        Element spring = new Element("springs", Element.Kind.CONTACT, new double[] {-1}, 0, law);
        Equations equations =
                new Equations(new double[] {mass}, new double[] {0}, new double[] {0}, List.of(spring), 1);
        StaticState rest = new StaticState(new double[1], new double[1], new double[1], new double[1]);
        return IntStream.range(0, ratios.length)
                .parallel()
                .mapToObj(
                        i -> new ForcedRun(equations, rest, new double[] {1}, -1, road, ratios[i] * frequency()).run())
                .filter(ForcedPoint::settled)
                .toList();
    }
}
