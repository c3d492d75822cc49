package org.ridewright.validation;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.ridewright.comfort.SeatedOccupant;

/**
 * Seated persons as masses on springs: apparent mass {@code AM(s) = m₀ + Σ M(k + cs)/(M s² + cs + k)}, and what a cushion lets through,
 * {@code T = (k + cs)/(k + cs + s² AM)}; peaks found by a fine search. The expected values were computed apart from this project from the
 * same published parameters.
 */
final class OccupantModels implements ReferenceProblem {
    private static final Source COMPUTED = Source.closedForm("AM(s), T(s) computed independently");
    private static final ReferenceTable TABLE = ReferenceTable.read("seat_and_occupant.csv");

    @Override
    public String title() {
        return "Seated occupants and cushions";
    }

    @Override
    public String statement() {
        return "Vertical models FG1 (frequency and damping ratio seen in a handbook, masses from memory), WG1, WG2 and ISO5982 (from "
                + "memory); three cushions of example rates under FG1.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        for (SeatedOccupant model : SeatedOccupant.published()) {
            DoubleUnaryOperator mass = f -> model.apparentMass(f).norm();
            addPeak(rows, model.name(), "apparent mass of " + model.name(), "kg", "AM_peak", mass);
        }
        addPeak(
                rows,
                "ISO5982",
                "head of ISO5982 over seat",
                "1",
                "head_T_peak",
                f -> SeatedOccupant.ISO_5982
                        .transmissibilityTo("head", f)
                        .orElseThrow()
                        .norm());
        for (String cushion : List.of("seat_firm_foam", "seat_soft_foam_or_spring", "seat_very_soft")) {
            double k = value(cushion, "k");
            double c = value(cushion, "c");
            DoubleUnaryOperator t =
                    f -> SeatedOccupant.FG1.cushionTransmissibility(k, c, f).norm();
            String name = String.format(Locale.ROOT, "cushion of %.0f N/m, %.0f N·s/m under FG1", k, c);
            double peak = peak(t);
            rows.relative(COMPUTED, name + ", peak at", "Hz", value(cushion, "T_peak_frequency_with_FG1"), peak, 1e-3)
                    .relative(
                            COMPUTED,
                            name + ", peak",
                            "1",
                            value(cushion, "T_peak_with_FG1"),
                            t.applyAsDouble(peak),
                            1e-3);
            for (int f : new int[] {1, 2, 4, 8, 16}) {
                double expected = value(cushion, "T_with_FG1_at_" + f + "Hz");
                rows.relative(COMPUTED, name + ", " + f + " Hz", "1", expected, t.applyAsDouble(f), 1e-3);
            }
        }
        return rows.list();
    }

    private static void addPeak(
            Rows rows, String model, String name, String unit, String parameter, DoubleUnaryOperator f) {
        double peak = peak(f);
        String frequency = parameter.equals("AM_peak") ? "AM_peak_frequency" : "head_T_peak_frequency";
        // the table gives frequencies to 0.005 Hz
        rows.absolute(COMPUTED, name + ", peak at", "Hz", value(model, frequency), peak, 5e-3)
                .relative(COMPUTED, name + ", peak", unit, value(model, parameter), f.applyAsDouble(peak), 1e-3);
    }

    private static double value(String model, String parameter) {
        return TABLE.rows().stream()
                .filter(row ->
                        row.text("model").equals(model) && row.text("parameter").equals(parameter))
                .findFirst()
                .orElseThrow()
                .number("value");
    }

    private static double peak(DoubleUnaryOperator f) {
        double best = 0.5;
        for (int i = 500; i < 15_000; i++) {
            best = f.applyAsDouble(i / 1000.0) > f.applyAsDouble(best) ? i / 1000.0 : best;
        }
        return best;
    }
}
