package org.ridewright.validation;

import java.util.List;
import java.util.Locale;
import org.ridewright.roughness.GoldenCar;

/**
 * The quarter car of the International Roughness Index, {@code z(i) = ST z(i−1) + PR s(i)}: state-transition matrix and vector as printed for 250
 * and 100 mm and as a matrix exponential worked out elsewhere, and the index of sinusoids, {@code 4 n a |H(n)|} for height
 * {@code a sin 2πnx}, by the transfer function H from slope to motion of the suspension.
 *
 * <p>PR₁ is printed 1.8e-5 (250 mm) and 7e-4 (100 mm) too low; the exact identities {@code ST₁₁ + ST₁₃ + PR₁ = 1} tell which is right.
 */
final class RoughnessIndices implements ReferenceProblem {
    private static final Source PRINTED = Source.standard("ASTM E1926; World Bank Technical Paper 46 (1986)");
    private static final Source EXACT = Source.closedForm("matrix exponential");
    private static final Source GAIN = Source.closedForm("frequency response of the quarter car");
    private static final int STEPS = 400;

    @Override
    public String title() {
        return "International Roughness Index";
    }

    @Override
    public String statement() {
        return "Quarter car at 80 km/h, `z(i) = ST z(i−1) + PR s(i)`; heights of 1 mm `sin 2πnx`, 400 to a wave, without the average "
                + "over 250 mm. Worst of all coefficients, relative.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        for (double spacing : new double[] {0.25, 0.1}) {
            boolean coarse = spacing == 0.25;
            worst(rows, PRINTED, "ST", spacing, "published", coarse ? 1e-6 : 2e-6);
            worst(rows, PRINTED, "PR", spacing, "published", coarse ? 2e-5 : 1e-3);
            worst(rows, EXACT, "ST", spacing, "exact", 1e-9);
            worst(rows, EXACT, "PR", spacing, "exact", 1e-9);
        }
        for (ReferenceTable.Row row : ReferenceTable.read("iri_gain.csv").rows()) {
            double n = row.number("n_cycle_per_m");
            rows.relative(
                    GAIN,
                    String.format(Locale.ROOT, "index of 1 mm at %.4g cycle/m", n),
                    "m/km",
                    row.number("iri_m_per_km_per_mm"),
                    1000 * ofSine(n),
                    1e-4);
        }
        return rows.list();
    }

    private static void worst(Rows rows, Source source, String kind, double spacing, String column, double tolerance) {
        GoldenCar car = new GoldenCar(spacing);
        double worst = 0;
        for (ReferenceTable.Row row : ReferenceTable.read("iri_quarter_car.csv").rows()) {
            if (row.text("kind").equals(kind) && row.text("key").equals("dx=" + spacing)) {
                int i = (int) row.number("row") - 1;
                double ours = kind.equals("ST") ? car.transition(i, (int) row.number("col") - 1) : car.input(i);
                worst = Math.max(worst, Math.abs(ours / row.number(column) - 1));
            }
        }
        String name = String.format(Locale.ROOT, "%s at %.0f mm, %s", kind, 1000 * spacing, column);
        rows.absolute(source, name, "1", 0, worst, tolerance);
    }

    /** Index of 1 mm sin 2πnx over whole waves, after the car has forgotten its start. */
    private static double ofSine(double n) {
        double spacing = 1 / (n * STEPS);
        int settling = (int) Math.ceil(200 * n) * STEPS;
        int waves = (int) Math.ceil(10 * n) * STEPS;
        GoldenCar car = new GoldenCar(spacing);
        double sum = 0;
        for (int i = 0; i < settling + waves; i++) {
            car.advance((height(i + 1) - height(i)) / spacing);
            sum += i >= settling ? car.rectifiedSlope() : 0;
        }
        return sum / waves;
    }

    private static double height(int i) {
        return 1e-3 * Math.sin(2 * Math.PI * i / STEPS);
    }
}
