package org.ridewright.validation;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.ride.Fleet;
import org.ridewright.solver.Problem;
import org.ridewright.solver.RegimeSolver;
import org.ridewright.vehicle.Vehicle;

/**
 * The quarter car on a road whose vertical velocity is white noise: an ISO 8608 spectrum of waviness 2, {@code G_d(n) =
 * G_d(n₀)(n/n₀)⁻²}, driven over at speed V, has the two-sided spectrum {@code W = 2π² n₀² G_d(n₀) V} of velocity at every
 * frequency.
 *
 * <p>With m_s, m_u, k_s, k_t, c and {@code M = m_s + m_u} the mean squares of body acceleration, suspension travel and tyre
 * compression from rest are
 *
 * <pre>
 *   a   W/2 [M k_s²/(m_s² c) + k_t c/m_s²]
 *   s   W M/(2c)
 *   t   W [k_s² M³/(2 c k_t² m_s²) − k_s m_u M/(c k_t m_s) + m_u/(2c) + c M²/(2 k_t m_s²)]
 * </pre>
 *
 * the integrals {@code ∫ |B(iω)/A(iω)|² dω} of {@link FourthOrderIntegral} with
 *
 * <pre>
 *   A = m_s m_u p⁴ + M c p³ + (m_s (k_s + k_t) + m_u k_s) p² + k_t c p + k_s k_t
 *   B = k_t p (c p + k_s)      −k_t m_s p      m_s m_u p³ + M c p² + M k_s p
 * </pre>
 *
 * <p>The road that is driven has a normal velocity held for each Δt, so its spectrum is {@code W (sin πfΔt/πfΔt)²}; the expected
 * mean square of the run is the integral with that factor, which the rows on the run state, not that of the full band. A mean over
 * T of a normal process of two-sided spectrum S has the relative variance {@code 2/ν} with {@code ν = T (∫S df)²/∫S² df} degrees of
 * freedom: three standard deviations are the tolerance. The integrals over frequency are by the trapezoidal rule in {@code ln ω}.
 */
final class WhiteRoad implements ReferenceProblem {
    private static final double SPRUNG = 317.5;
    private static final double UNSPRUNG = 45.4;
    private static final double SPRING = 22_000;
    private static final double TYRE = 192_000;
    private static final double DAMPING = 1500;
    private static final double SPEED = 20;
    private static final double REFERENCE = 0.1;
    private static final double CLASS_A = 16e-6;
    private static final double CLASS_C = 256e-6;
    private static final double HOLD = 4e-3;
    private static final double SETTLING = 5;
    private static final double DURATION = 2000;
    private static final long SEED = 1;
    private static final double SIGMAS = 3;

    private static final Source BOOKED =
            Source.closedForm("integral tables, James, Nichols and Phillips 1947 (from memory)");
    private static final Source FORMULA = Source.closedForm("covariance equation");

    /** A response: its unit, numerator B_k of p^k, mean square by formula per W, what to read on a step. */
    private record Response(
            String name,
            String unit,
            String squareUnit,
            double unitsPerSi,
            double[] numerator,
            double perIntensity,
            Reading reading) {
        double inUnits(double meanSquare) {
            return unitsPerSi * unitsPerSi * meanSquare;
        }
    }

    @Override
    public String title() {
        return "Quarter car on a road of white velocity";
    }

    @Override
    public String statement() {
        return "Mean squares of the damped quarter car (c = 1500 N·s/m) on an ISO 8608 road of waviness 2 at 20 m/s, by "
                + "formula, by table of integrals and as sum over frequencies; then the mean of a run of "
                + (int) (DURATION - SETTLING)
                + " s over a seeded road of class A whose velocity is held for 4 ms. The run's expectation is that of the "
                + "held velocity, “band” its share of the white one; the tolerance is three standard deviations, `3 √(2/ν)`, "
                + "with ν the degrees of freedom of the record.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        List<Response> responses = responses();
        double[] denominator = denominator();
        addTable(rows, responses);
        double[] measured = measured(responses);
        double w = intensity(CLASS_A);
        for (int i = 0; i < responses.size(); i++) {
            Response response = responses.get(i);
            double intensity = response.inUnits(w);
            double full = intensity * response.perIntensity();
            double tabled =
                    intensity * new FourthOrderIntegral(response.numerator(), denominator).value() / (2 * Math.PI);
            Spectrum spectrum = new Spectrum(response.numerator(), denominator);
            String of = "mean square of " + response.name();
            String unit = response.squareUnit();
            rows.ofReference().relative(FORMULA, of + ", table of integrals", unit, full, tabled, 1e-12);
            rows.ofReference()
                    .relative(
                            BOOKED,
                            of + ", sum over frequencies",
                            unit,
                            tabled,
                            intensity * spectrum.integral(0),
                            1e-8);
            double band = intensity * spectrum.integral(HOLD);
            double freedom = (DURATION - SETTLING)
                    * Math.pow(band, 2)
                    / (intensity * intensity * spectrum.integralOfSquare(HOLD));
            rows.relative(
                    FORMULA,
                    String.format(Locale.ROOT, "%s, run; ν = %.0f, band %.4f", of, freedom, band / full),
                    unit,
                    band,
                    response.inUnits(measured[i]),
                    SIGMAS * Math.sqrt(2 / freedom));
        }
        return rows.list();
    }

    private static double intensity(double roughness) {
        return 2 * Math.PI * Math.PI * REFERENCE * REFERENCE * roughness * SPEED;
    }

    /** The worked values of the table, class C. */
    private static void addTable(Rows rows, List<Response> responses) {
        ReferenceTable table = ReferenceTable.read("ride_dynamics.csv");
        Source source = Source.closedForm("covariance equation, solved apart from this project");
        String[] names = {"rms_body_accel", "rms_suspension_travel", "rms_tyre_deflection"};
        for (int i = 0; i < names.length; i++) {
            Response response = responses.get(i);
            rows.ofReference()
                    .relative(
                            source,
                            "r.m.s. of " + response.name() + ", class C, formula",
                            response.unit(),
                            response.unitsPerSi() * table.value("QC2", names[i], "value"),
                            Math.sqrt(response.inUnits(intensity(CLASS_C) * response.perIntensity())),
                            1e-8);
        }
    }

    private static double[] denominator() {
        return new double[] {
            SPRING * TYRE,
            TYRE * DAMPING,
            SPRUNG * (SPRING + TYRE) + UNSPRUNG * SPRING,
            (SPRUNG + UNSPRUNG) * DAMPING,
            SPRUNG * UNSPRUNG
        };
    }

    private static List<Response> responses() {
        double m = SPRUNG + UNSPRUNG;
        double acceleration =
                (m * SPRING * SPRING / (SPRUNG * SPRUNG * DAMPING) + TYRE * DAMPING / (SPRUNG * SPRUNG)) / 2;
        double tyre = SPRING * SPRING * Math.pow(m, 3) / (2 * DAMPING * TYRE * TYRE * SPRUNG * SPRUNG)
                - SPRING * UNSPRUNG * m / (DAMPING * TYRE * SPRUNG)
                + UNSPRUNG / (2 * DAMPING)
                + DAMPING * m * m / (2 * TYRE * SPRUNG * SPRUNG);
        VehicleModel model = model();
        double[] rest = model.rest().compression();
        return List.of(
                new Response(
                        "body acceleration",
                        "m/s²",
                        "m²/s⁴",
                        1,
                        new double[] {0, TYRE * SPRING, TYRE * DAMPING, 0},
                        acceleration,
                        Reading.acceleration(0)),
                new Response(
                        "suspension travel",
                        "mm",
                        "mm²",
                        1000,
                        new double[] {0, -TYRE * SPRUNG, 0, 0},
                        m / (2 * DAMPING),
                        fromRest(element(model.equations(), Element.Kind.SPRING), rest)),
                new Response(
                        "tyre compression",
                        "mm",
                        "mm²",
                        1000,
                        new double[] {0, m * SPRING, m * DAMPING, SPRUNG * UNSPRUNG},
                        tyre,
                        fromRest(element(model.equations(), Element.Kind.CONTACT), rest)));
    }

    private static VehicleModel model() {
        Vehicle vehicle = Fleet.described(Fleet.quarter(DAMPING));
        return VehicleModel.assemble(vehicle, vehicle.loadCases().get(0), Optional.empty(), false);
    }

    private static int element(Equations equations, Element.Kind kind) {
        return IntStream.range(0, equations.elements().size())
                .filter(e -> equations.elements().get(e).kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static Reading fromRest(int element, double[] rest) {
        return (step, out) -> {
            step.addCompression(element, 1, out);
            out[0] -= rest[element];
        };
    }

    /** Mean squares over the run. */
    private static double[] measured(List<Response> responses) {
        int number = (int) Math.round(DURATION / HOLD);
        double[] velocity = new double[number];
        Random random = new Random(SEED);
        double deviation = Math.sqrt(intensity(CLASS_A) / HOLD);
        for (int i = 0; i < number; i++) {
            velocity[i] = deviation * random.nextGaussian();
        }
        VehicleModel model = model();
        Problem problem = new Problem(
                model.equations(),
                List.of(Drives.velocities(velocity, HOLD)),
                model.rest().q(),
                new double[2],
                new double[0],
                DURATION);
        List<MeanSquare> means = responses.stream()
                .map(response -> new MeanSquare(response.reading(), SETTLING))
                .toList();
        RegimeSolver.solve(problem, step -> means.forEach(mean -> mean.step(step)));
        return means.stream().mapToDouble(MeanSquare::value).toArray();
    }
}
