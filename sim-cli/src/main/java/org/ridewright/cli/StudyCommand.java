package org.ridewright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ridewright.io.ResultFolder;
import org.ridewright.io.StudyFile;
import org.ridewright.report.StudyBasis;
import org.ridewright.study.Findings;
import org.ridewright.study.Finished;
import org.ridewright.study.Journal;
import org.ridewright.study.Method;
import org.ridewright.study.Part;
import org.ridewright.study.Runs;
import org.ridewright.study.SearchRun;
import org.ridewright.study.Study;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Rides a study and writes a report. */
@Command(
        name = "study",
        description =
                "Rides a study, many runs that answer one question, and writes report, figures, a table of all runs and "
                        + "numbers into a folder. Interrupted, it goes on from where it was when it is started again.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class StudyCommand implements Callable<Integer> {
    private static final Pattern PART = Pattern.compile("(\\d{1,6})/(\\d{1,6})");

    @Parameters(paramLabel = "FILE", description = "Study file, YAML or JSON; its ending may be left out.")
    private Path named;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description =
                    "Where the results go; results/<name of the study file> unless stated. Finished runs are kept beside "
                            + "it, in FOLDER.runs.")
    private Path folder;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "How many runs are ridden at a time; as many as there are cores unless stated.")
    private Integer threads;

    @Option(
            names = "--part",
            paramLabel = "K/N",
            description = "Rides only the K-th of N parts, such as 3/16, and writes no report.")
    private String part;

    @Option(names = "--join", description = "Rides nothing, and makes the report of what all parts have ridden.")
    private boolean join;

    @Option(names = "--afresh", description = "Forgets all finished runs first; with --part, those of that part.")
    private boolean afresh;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        try {
            return study();
        } catch (OutOfMemoryError full) {
            spec.commandLine()
                    .getErr()
                    .println(
                            "The memory did not suffice. Lower --threads, ask for fewer answers or steps, or give Java more with "
                                    + "JAVA_TOOL_OPTIONS=-Xmx4g. The runs that were finished are kept, and the same command goes on from there.");
            return ExitCode.FAILED_RUN;
        }
    }

    private int study() throws IOException {
        Part which = part();
        int crew = threads();
        Path file = ScenarioPath.resolve(named);
        Study study = StudyFile.read(file, program() + " " + ProgramDigest.ofThis());
        Path target = folder != null ? folder : Path.of("results", ScenarioPath.stem(file));
        StudyJournals journals = StudyJournals.beside(target);
        boolean search = study.method() instanceof Method.Search;
        if (search && (join || !which.isWhole())) {
            throw new ParameterException(
                    spec.commandLine(),
                    "a search cannot be split: each of its runs depends on those before; leave out "
                            + (join ? "--join" : "--part"));
        }
        if (afresh) {
            journals.forget(which);
        }
        if (search) {
            return search(study, basis(file), target, journals, crew);
        }
        boolean partAfresh = afresh && !which.isWhole();
        Finished finished = new Finished(study, partAfresh ? List.of() : journals.all());
        BitSet done = finished.runs();
        if (!join && !ride(study, which, done, journals, crew)) {
            return ExitCode.FAILED_RUN;
        }
        if (!which.isWhole()) {
            spec.commandLine()
                    .getOut()
                    .println("Part " + which.number() + "/" + which.of() + " of '" + study.name()
                            + "' is ridden. Once all are, --join makes the report.");
            return ExitCode.DONE;
        }
        return report(study, basis(file), target, journals);
    }

    /** @return whether all runs of the part are done */
    private boolean ride(Study study, Part which, BitSet done, StudyJournals journals, int crew) throws IOException {
        try (Journal journal = Journal.open(journals.of(which), study.name());
                RunWatch watch = new RunWatch(spec.commandLine())) {
            return Runs.ride(study, which, done, journal, crew, watch.progress(), watch.stop());
        } catch (FileSystemException toldWithItsFile) {
            throw toldWithItsFile;
        } catch (IOException full) {
            throw new IOException(
                    full.getMessage() + "; the runs that were finished are kept in " + journals.of(which)
                            + ", and the same command goes on from there",
                    full);
        }
    }

    private int report(Study study, StudyBasis basis, Path target, StudyJournals journals) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        List<Path> all = journals.all();
        Finished finished = new Finished(study, all);
        BitSet done = finished.runsWithDefects();
        long runs = study.schedule().size();
        if (done.cardinality() < runs) {
            spec.commandLine()
                    .getErr()
                    .println("The study is not complete: " + journals.lacking(done, runs)
                            + ". Ride them with --part, or all together without --join.");
            return ExitCode.FAILED_RUN;
        }
        try (ResultFolder results = ResultFolder.begin(target, "study of " + study.name())) {
            Findings findings = Findings.of(study);
            StudyFiles.write(results, basis, findings, finished);
            results.commit();
            StudyTable.lines(findings).forEach(out::println);
        }
        out.println("Report: " + target.resolve("report.html"));
        return ExitCode.DONE;
    }

    private int search(Study study, StudyBasis basis, Path target, StudyJournals journals, int crew)
            throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        SearchRun.Result result;
        try (Journal journal = Journal.open(journals.of(Part.WHOLE), study.name());
                RunWatch watch = new RunWatch(spec.commandLine())) {
            result = new SearchRun(study, journals.of(Part.WHOLE), journal, watch.progress(), watch.stop()).run(crew);
        } catch (SearchRun.Stopped stopped) {
            return ExitCode.FAILED_RUN;
        }
        try (ResultFolder results = ResultFolder.begin(target, "study of " + study.name())) {
            StudyFiles.write(results, basis, study, result);
            results.commit();
        }
        StudyTable.lines(study, result).forEach(out::println);
        out.println("Report: " + target.resolve("report.html"));
        return ExitCode.DONE;
    }

    private static StudyBasis basis(Path file) {
        return new StudyBasis(file.getFileName().toString(), program());
    }

    private static String program() {
        return String.join("", new Version().getVersion());
    }

    private Part part() {
        if (part == null) {
            return Part.WHOLE;
        }
        if (join) {
            throw new ParameterException(spec.commandLine(), "--join and --part exclude each other");
        }
        Matcher written = PART.matcher(part.strip());
        if (written.matches()) {
            int number = Integer.parseInt(written.group(1));
            int of = Integer.parseInt(written.group(2));
            if (number >= 1 && number <= of) {
                return new Part(number, of);
            }
        }
        throw new ParameterException(
                spec.commandLine(), "--part names one of several parts, from 1/16 to 16/16, got '" + part + "'");
    }

    private int threads() {
        int count = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
        if (count < 1 || count > 1024) {
            throw new ParameterException(spec.commandLine(), "--threads must be 1 to 1024, got " + count);
        }
        return count;
    }
}
