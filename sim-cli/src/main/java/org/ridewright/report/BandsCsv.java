package org.ridewright.report;

import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.Estimate;

/** What a comparison found in third octaves, for other programs: a row for each thing in each band of each ride test. */
public final class BandsCsv {
    private BandsCsv() {}

    /** Whether there is anything to write. */
    public static boolean isAsked(CompareFindings findings) {
        return !BandRatios.of(findings).isEmpty();
    }

    /** The table, with a head; ratios are to the first thing. */
    public static String render(CompareFindings findings) throws IOException {
        StringWriter text = new StringWriter();
        CSVFormat format = CSVFormat.DEFAULT.builder().setRecordSeparator("\n").get();
        try (CSVPrinter printer = new CSVPrinter(text, format)) {
            printer.printRecord(
                    "answer",
                    "ride test",
                    "band (Hz)",
                    "thing",
                    "median (m/s²)",
                    "5 % (m/s²)",
                    "95 % (m/s²)",
                    "median ratio to " + findings.things().get(0),
                    "5 % of the ratio",
                    "95 % of the ratio");
            for (BandRatios test : BandRatios.of(findings)) {
                for (int i = 0; i < test.bands().size(); i++) {
                    for (int th = 0; th < findings.things().size(); th++) {
                        List<Object> row = new ArrayList<>(List.of(
                                test.family().first().family(),
                                findings.rows().get(test.test()),
                                test.bands().get(i).nominal(),
                                findings.things().get(th)));
                        add(row, test.level(th, i));
                        add(row, test.ratio(th, i));
                        printer.printRecord(row);
                    }
                }
            }
        }
        return text.toString();
    }

    private static void add(List<Object> row, Estimate e) {
        for (double value : new double[] {e.value(), e.low(), e.high()}) {
            row.add(Double.isFinite(value) ? value : "");
        }
    }
}
