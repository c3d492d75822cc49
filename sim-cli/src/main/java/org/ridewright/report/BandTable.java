package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.Estimate;
import org.ridewright.study.Question;

/**
 * What a comparison found in third octaves, as a table: a row for each band of each ride test.
 *
 * @param heads of the columns, of which the first three hold words
 */
record BandTable(List<String> heads, List<List<String>> rows) {
    static BandTable of(CompareFindings findings) {
        List<String> things = findings.things();
        List<String> heads = new ArrayList<>(List.of("Answer", "Ride test", "Band"));
        things.forEach(thing -> heads.add(thing + ", m/s²"));
        things.subList(1, things.size()).forEach(thing -> heads.add(thing + " ÷ " + things.get(0)));
        List<List<String>> rows = new ArrayList<>();
        for (BandRatios test : BandRatios.of(findings)) {
            for (int i = 0; i < test.bands().size(); i++) {
                List<String> row = new ArrayList<>(List.of(
                        test.family().first().family(),
                        findings.rows().get(test.test()),
                        Question.spoken(test.bands().get(i))));
                for (int th = 0; th < things.size(); th++) {
                    row.add(text(test.level(th, i)));
                }
                for (int th = 1; th < things.size(); th++) {
                    row.add(text(test.ratio(th, i)));
                }
                rows.add(row);
            }
        }
        return new BandTable(heads, rows);
    }

    private static String text(Estimate e) {
        String value = Numbers.of(e.value());
        return e.low() < e.high()
                ? value + " (" + Numbers.of(e.low(), 2) + " to " + Numbers.of(e.high(), 2) + ")"
                : value;
    }
}
