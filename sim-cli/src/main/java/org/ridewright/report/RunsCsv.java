package org.ridewright.report;

import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ridewright.study.Outcome;
import org.ridewright.study.Question;
import org.ridewright.study.Schedule;
import org.ridewright.study.Study;
import org.ridewright.study.Trial;

/** The table of all runs, a row for each ride test of each, written as they come. */
public final class RunsCsv implements Closeable {
    private static final List<String> LABELS = List.of("vehicle", "load case", "road", "speed");

    private final CSVPrinter printer;
    private final int questions;
    private final Schedule schedule;
    /** Whether runs belong to draws, by which those of several variants or steps go together. */
    private final boolean hasDraws;

    /** @param heads of what varies, with units */
    public RunsCsv(Path file, Study study, List<String> heads) throws IOException {
        BufferedWriter writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
        CSVFormat format = CSVFormat.DEFAULT.builder().setRecordSeparator("\n").get();
        printer = new CSVPrinter(writer, format);
        questions = study.questions().size();
        schedule = study.schedule();
        hasDraws = schedule.draw(schedule.size() - 1) > 0;
        List<String> head = new ArrayList<>(List.of("run", "role"));
        if (hasDraws) {
            head.add("draw");
        }
        head.addAll(heads);
        head.addAll(LABELS);
        study.questions().stream().map(Question::head).forEach(head::add);
        head.add("failure");
        printer.printRecord(head);
    }

    /** Adds a run. */
    public void add(Trial trial, Outcome outcome) throws IOException {
        if (outcome.tests().isEmpty()) {
            row(trial, new Outcome.Line(Collections.nCopies(LABELS.size(), ""), List.of(), outcome.failure()));
        }
        for (Outcome.Line line : outcome.tests()) {
            row(trial, line);
        }
    }

    private void row(Trial trial, Outcome.Line line) throws IOException {
        List<String> cells = new ArrayList<>(List.of(Long.toString(trial.run()), trial.role()));
        if (hasDraws) {
            long draw = schedule.draw(trial.run());
            cells.add(draw > 0 ? Long.toString(draw) : "");
        }
        cells.addAll(trial.cells());
        cells.addAll(line.labels());
        for (int q = 0; q < questions; q++) {
            double answer = line.answer(q);
            cells.add(Double.isNaN(answer) ? "" : Double.toString(answer));
        }
        cells.add(line.failure().strip().replaceAll("\\s*\\R\\s*", "; "));
        printer.printRecord(cells);
    }

    @Override
    public void close() throws IOException {
        printer.close();
    }
}
