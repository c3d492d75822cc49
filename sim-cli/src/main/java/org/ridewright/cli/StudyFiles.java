package org.ridewright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.ridewright.figure.FigureFiles;
import org.ridewright.figure.FigureWriter;
import org.ridewright.io.ResultFolder;
import org.ridewright.report.BandsCsv;
import org.ridewright.report.FigureGroup;
import org.ridewright.report.RunsCsv;
import org.ridewright.report.StudyBasis;
import org.ridewright.report.StudyFigures;
import org.ridewright.report.StudyJson;
import org.ridewright.report.StudyPage;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.Findings;
import org.ridewright.study.Finished;
import org.ridewright.study.Outcome;
import org.ridewright.study.SearchRun;
import org.ridewright.study.Study;

/** The files that a study leaves. */
final class StudyFiles {
    private static final String TABLE = "runs.csv";
    private static final String NUMBERS = "study.json";

    private StudyFiles() {}

    /** Hands all runs, in order, to the table and to the findings, and writes what these say. */
    static void write(ResultFolder results, StudyBasis basis, Findings findings, Finished finished) throws IOException {
        Study study = findings.study();
        try (RunsCsv csv = new RunsCsv(
                results.path().resolve(TABLE), study, study.schedule().heads())) {
            finished.inOrder((trial, ridden) -> {
                Outcome outcome = findings.matched(trial, ridden);
                csv.add(trial, outcome);
                findings.take(trial, outcome);
            });
        }
        results.write(NUMBERS, utf8(StudyJson.render(basis, findings)));
        if (findings instanceof CompareFindings compare && BandsCsv.isAsked(compare)) {
            results.write("bands.csv", utf8(BandsCsv.render(compare)));
        }
        List<FigureGroup> groups = StudyFigures.of(findings);
        List<FigureFiles> drawn = draw(results, groups);
        results.write("report.html", utf8(StudyPage.render(basis, findings, groups, drawn)));
    }

    /** The same of a search. */
    static void write(ResultFolder results, StudyBasis basis, Study study, SearchRun.Result result) throws IOException {
        try (RunsCsv csv = new RunsCsv(
                results.path().resolve(TABLE), study, study.schedule().heads())) {
            for (SearchRun.Step step : result.way()) {
                csv.add(step.trial(), step.outcome());
            }
        }
        results.write(NUMBERS, utf8(StudyJson.render(basis, study, result)));
        List<FigureGroup> groups = StudyFigures.of(study, result);
        List<FigureFiles> drawn = draw(results, groups);
        results.write("report.html", utf8(StudyPage.render(basis, study, result, groups, drawn)));
    }

    private static List<FigureFiles> draw(ResultFolder results, List<FigureGroup> groups) throws IOException {
        List<FigureFiles> drawn = new FigureWriter()
                .files(groups.stream().flatMap(g -> g.figures().stream()).toList());
        for (FigureFiles figure : drawn) {
            results.write("figures/" + figure.fileName() + ".svg", utf8(figure.svg()));
            results.write("figures/" + figure.fileName() + ".png", figure.png());
            results.write("figures/" + figure.fileName() + ".pdf", figure.pdf());
        }
        return drawn;
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
