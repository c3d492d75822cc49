package org.ridewright.validation;

import java.util.List;
import java.util.Locale;
import org.hipparchus.complex.Complex;
import org.ridewright.comfort.Iso2631Tables;
import org.ridewright.comfort.Weighting;
import org.ridewright.signal.AnalogueFilter;
import org.ridewright.signal.Channel;
import org.ridewright.signal.SampledFilter;
import org.ridewright.signal.Sines;

/**
 * Factors of the frequency weightings at the nominal one-third-octave centres, as ISO 2631-1:1997 prints them in tables 3 and 4
 * (times 1000), and as its annex A defines the filters. A printed value binds to half of its last digit; 0.1 % is added for the
 * rounding of nominal centres.
 *
 * <p>Two printed values are left out of the worst differences because the filter and their neighbours contradict them: Wd at 10 Hz
 * and Wj at 4 Hz. Besides the analogue filter, the gain of the digital filter that runs use is read back from a sine.
 */
final class Weightings implements ReferenceProblem {
    private static final Source TABLES = Source.standard("ISO 2631-1:1997 tables 3 and 4");
    private static final Source ANNEX = Source.standard("ISO 2631-1:1997 annex A");
    private static final double NOMINAL = 1e-3;

    @Override
    public String title() {
        return "Frequency weightings";
    }

    @Override
    public String statement() {
        return "Factor × 1000 at nominal one-third-octave centres. A printed value binds to half of its last digit and "
                + "0.1 %; “of its allowance” counts differences in that. Printed Wd at 10 Hz and Wj at 4 Hz contradict annex "
                + "A and are left out.";
    }

    @Override
    public List<Check> checks() {
        Rows rows = new Rows(this);
        addPrinted(rows, "Wk", "1", "4", "8", "16", "63");
        addPrinted(rows, "Wd", "1", "2", "4", "31.5");
        addPrinted(rows, "Wf", "0.16");
        for (String symbol : List.of("Wk", "Wd", "Wf", "Wc", "We", "Wj")) {
            addWorst(rows, symbol);
        }
        for (double frequency : new double[] {1, 4, 8, 16, 63}) {
            addDigital(rows, frequency);
        }
        for (double rate : new double[] {50, 100, 500, 2000, 20_000}) {
            addWorstDigital(rows, rate);
        }
        return rows.list();
    }

    private static List<List<String>> rowsOf(String symbol) {
        return Iso2631Tables.rows("weightings.csv").stream()
                .filter(row -> row.get(0).equals(symbol))
                .toList();
    }

    private static double halfLastDigit(String printed) {
        int point = printed.indexOf('.');
        return 0.5 * Math.pow(10, point < 0 ? 0 : point + 1 - printed.length());
    }

    private static double allowance(String printed) {
        return halfLastDigit(printed) + NOMINAL * Double.parseDouble(printed);
    }

    private static double factor(List<String> row) {
        return 1000 * Iso2631Tables.weighting(row.get(0)).factor(Double.parseDouble(row.get(2)));
    }

    private static void addPrinted(Rows rows, String symbol, String... centres) {
        for (List<String> row : rowsOf(symbol)) {
            if (List.of(centres).contains(row.get(2))) {
                String printed = row.get(3);
                rows.absolute(
                        TABLES,
                        symbol + " at " + row.get(2) + " Hz",
                        "1/1000",
                        Double.parseDouble(printed),
                        factor(row),
                        allowance(printed));
            }
        }
    }

    private static void addWorst(Rows rows, String symbol) {
        double worst = 0;
        double design = 0;
        int printed = 0;
        for (List<String> row : rowsOf(symbol)) {
            design = Math.max(design, Math.abs(factor(row) / Double.parseDouble(row.get(4)) - 1));
            if (!row.get(3).isEmpty() && !Iso2631Tables.isMisprint(row)) {
                double off = Math.abs(factor(row) - Double.parseDouble(row.get(3)));
                worst = Math.max(worst, off / allowance(row.get(3)));
                printed++;
            }
        }
        int all = rowsOf(symbol).size();
        rows.absolute(
                TABLES,
                String.format(Locale.ROOT, "%s: worst of %d printed values, of its allowance", symbol, printed),
                "1",
                0,
                worst,
                1);
        rows.absolute(
                ANNEX,
                String.format(Locale.ROOT, "%s: worst relative difference at %d centres", symbol, all),
                "1",
                0,
                design,
                NOMINAL);
    }

    /** All weightings as a record of this rate passes them, at the nominal centres up to 0.4 of it; in gain and phase. */
    private static void addWorstDigital(Rows rows, double rate) {
        double worst = 0;
        int centres = 0;
        for (String symbol : List.of("Wk", "Wd", "Wf", "Wc", "We", "Wj")) {
            AnalogueFilter analogue = Iso2631Tables.weighting(symbol).filter();
            SampledFilter digital = analogue.at(rate);
            for (List<String> row : rowsOf(symbol)) {
                double f = Double.parseDouble(row.get(2));
                if (f <= 0.4 * rate) {
                    Complex exact = analogue.response(f);
                    worst = Math.max(worst, digital.response(f).subtract(exact).norm() / exact.norm());
                    centres++;
                }
            }
        }
        rows.absolute(
                ANNEX,
                String.format(
                        Locale.ROOT, "all at %.0f Hz sampling: worst of %d centres, gain and phase", rate, centres),
                "1",
                0,
                worst,
                2e-4);
    }

    /** Gain of the digital Wk at 500 samples a second. */
    private static void addDigital(Rows rows, double frequency) {
        double rate = 500;
        double settling = 9;
        double span = Math.max(1 / frequency, 200 / rate);
        Channel y = Weighting.WK.apply(Sines.sine(rate, settling + span + 20 / rate, 1, frequency));
        double gain =
                Sines.gain(y, frequency, (int) (settling * rate), y.size() - 20).norm();
        String centre = frequency == Math.rint(frequency) ? String.valueOf((int) frequency) : String.valueOf(frequency);
        String printed = rowsOf("Wk").stream()
                .filter(row -> row.get(2).equals(centre))
                .findFirst()
                .orElseThrow()
                .get(3);
        rows.absolute(
                TABLES,
                "Wk at " + centre + " Hz, digital at 500 Hz",
                "1/1000",
                Double.parseDouble(printed),
                1000 * gain,
                allowance(printed));
    }
}
