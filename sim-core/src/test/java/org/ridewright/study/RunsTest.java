package org.ridewright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Runs are ridden once, kept, and come out the same however they were ridden. */
class RunsTest {
    private static final int STEPS = 200;

    @TempDir
    Path folder;

    private final Set<Long> ridden = ConcurrentHashMap.newKeySet();

    private static Study study(int steps, String fingerprint) {
        Factor factor = new Factor.Range("x", "1", List.of("x"), 0, 1, false, false);
        List<Double> levels = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            levels.add(i / (steps - 1.0));
        }
        return new Study(
                "numbers",
                "",
                List.of(new Variant("as written", new NoScenario(), Map.of())),
                List.of(new Question(RideMeasure.SEAT_RMS, Optional.empty())),
                new Method.Sweep(List.of(new Method.Swept(factor, levels))),
                fingerprint);
    }

    /** A number with many digits, and every 17th run a failure with awkward signs. */
    private Outcome outcome(Trial trial) {
        ridden.add(trial.run());
        if (trial.run() % 17 == 5) {
            return Outcome.failed("! tipped; over | at\t0.3 s\nand \\ worse");
        }
        double x =
                trial.texts().isEmpty() ? 0.5 : Double.parseDouble(trial.texts().get("x"));
        List<String> labels = List.of("dray; two-horse", "!laden", "lane|1", "5 km/h");
        return new Outcome(List.of(new Outcome.Line(labels, List.of(Math.sin(1e3 * x)), "")), "");
    }

    private boolean ride(Study study, Part part, Path file, BitSet done, int threads) throws IOException {
        try (Journal journal = Journal.open(file, study.name())) {
            return Runs.ride(
                    study, () -> this::outcome, part, done, journal, threads, Runs.Progress.SILENT, () -> false);
        }
    }

    private static String inOrder(Study study, Path... journals) throws IOException {
        StringBuilder all = new StringBuilder();
        new Finished(study, List.of(journals))
                .inOrder((trial, outcome) ->
                        all.append(trial).append(OutcomeText.write(outcome)).append('\n'));
        return all.toString();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 8})
    void theNumberOfThreadsChangesNoBit(int threads) throws IOException {
        Study study = study(STEPS, "f");
        Path one = folder.resolve("one.journal");
        Path many = folder.resolve("many.journal");
        assertThat(ride(study, Part.WHOLE, one, new BitSet(), 1)).isTrue();
        assertThat(ride(study, Part.WHOLE, many, new BitSet(), threads)).isTrue();

        assertThat(inOrder(study, many)).isEqualTo(inOrder(study, one));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 7, 16})
    void partsTogetherAreTheWhole(int parts) throws IOException {
        Study study = study(STEPS, "f");
        Path whole = folder.resolve("whole.journal");
        ride(study, Part.WHOLE, whole, new BitSet(), 2);
        List<Path> each = new ArrayList<>();
        for (int p = parts; p >= 1; p--) {
            Path part = folder.resolve("part-" + p + ".journal");
            ride(study, new Part(p, parts), part, new BitSet(), 2);
            each.add(part);
        }

        assertThat(inOrder(study, each.toArray(Path[]::new))).isEqualTo(inOrder(study, whole));
    }

    @Test
    void awkwardReasonsAndNamesComeBackAsTheyWere() throws IOException {
        Study study = study(40, "f");
        Path file = folder.resolve("j");
        ride(study, Part.WHOLE, file, new BitSet(), 1);

        new Finished(study, List.of(file))
                .inOrder((trial, outcome) -> assertThat(outcome).isEqualTo(outcome(trial)));
    }

    @Test
    void whatIsDoneIsNotRiddenAgain() throws IOException {
        Study study = study(STEPS, "f");
        Path file = folder.resolve("j");
        AtomicInteger count = new AtomicInteger();
        try (Journal journal = Journal.open(file, study.name())) {
            boolean ended = Runs.ride(
                    study,
                    () -> trial -> {
                        count.incrementAndGet();
                        return outcome(trial);
                    },
                    Part.WHOLE,
                    new BitSet(),
                    journal,
                    2,
                    Runs.Progress.SILENT,
                    () -> count.get() >= 70);
            assertThat(ended).isFalse();
        }
        BitSet done = new Finished(study, List.of(file)).runs();
        assertThat(done.cardinality()).isBetween(70, 72);
        ridden.clear();
        assertThat(ride(study, Part.WHOLE, file, done, 2)).isTrue();
        assertThat(ridden).noneMatch(run -> done.get(run.intValue())).hasSize(STEPS + 1 - done.cardinality());
        assertThat(inOrder(study, file)).isEqualTo(inOrder(study, whole(study)));
    }

    private Path whole(Study study) throws IOException {
        Path file = folder.resolve("undisturbed");
        ride(study, Part.WHOLE, file, new BitSet(), 1);
        return file;
    }

    /** As a killed process, or a disk that was full, may leave it. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 9, 40, 75})
    void aTornLastLineCostsThatRunAlone(int torn) throws IOException {
        Study study = study(30, "f");
        Path file = whole(study);
        String whole = inOrder(study, file);
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(bytes, bytes.length - torn));

        BitSet done = new Finished(study, List.of(file)).runs();
        assertThat(done.cardinality()).isBetween(29, torn == 1 ? 31 : 30);
        ride(study, Part.WHOLE, file, done, 1);
        assertThat(inOrder(study, file)).isEqualTo(whole);
    }

    @Test
    void aSpoiltLineCostsThatRunAlone() throws IOException {
        Study study = study(30, "f");
        Path file = whole(study);
        String whole = inOrder(study, file);
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        lines.set(12, lines.get(12).replaceFirst("0\\.", "1."));
        Files.write(file, lines);

        BitSet done = new Finished(study, List.of(file)).runs();
        assertThat(done.cardinality()).isEqualTo(30);
        ride(study, Part.WHOLE, file, done, 1);
        assertThat(inOrder(study, file)).isEqualTo(whole);
    }

    @Test
    void runsOfOtherFilesDoNotCount() throws IOException {
        Path file = whole(study(30, "f"));

        assertThat(new Finished(study(30, "g"), List.of(file)).runs().cardinality())
                .isZero();
        assertThat(new Finished(study(30, "f"), List.of(file)).runs().cardinality())
                .isEqualTo(31);
    }

    /** Of two paths that mean one value the later prevails, so that another order is another run. */
    @Test
    void theOrderOfChangesTellsRunsApart() {
        RunKeys keys = new RunKeys(study(3, "f"));
        Map<String, String> one = new LinkedHashMap<>();
        one.put("axles[*].rate", "1 N/m");
        one.put("axles[0].rate", "2 N/m");
        Map<String, String> other = new LinkedHashMap<>();
        other.put("axles[0].rate", "2 N/m");
        other.put("axles[*].rate", "1 N/m");

        assertThat(keys.of(new Trial(1, 0, "level", one, List.of())))
                .isNotEqualTo(keys.of(new Trial(1, 0, "level", other, List.of())));
    }

    @Test
    void aJournalOfAnotherStudyIsRefusedAndLeftAsItIs() throws IOException {
        Path file = folder.resolve("notes.txt");
        Files.writeString(file, "my notes\n");

        assertThatThrownBy(() -> Journal.open(file, "numbers")).hasMessageContaining("another study");
        assertThat(Files.readString(file)).isEqualTo("my notes\n");
    }

    @Test
    void aJournalWithATornHeadIsBegunAgain() throws IOException {
        Path file = folder.resolve("j");
        Files.writeString(file, "ridewright stu", StandardOpenOption.CREATE);
        Study study = study(5, "f");
        ride(study, Part.WHOLE, file, new BitSet(), 1);

        assertThat(new Finished(study, List.of(file)).runs().cardinality()).isEqualTo(6);
    }

    @Test
    void twoProcessesDoNotWriteIntoOneJournal() throws IOException {
        Path file = folder.resolve("j");
        try (Journal first = Journal.open(file, "numbers")) {
            assertThat(first).isNotNull();
            assertThatThrownBy(() -> Journal.open(file, "numbers")).isInstanceOf(Exception.class);
        }
    }

    @Test
    void whatABenchCannotDoEndsTheStudyButKeepsWhatIsDone() throws IOException {
        Study study = study(50, "f");
        Path file = folder.resolve("j");
        try (Journal journal = Journal.open(file, study.name())) {
            assertThatThrownBy(() -> Runs.ride(
                            study,
                            () -> trial -> {
                                if (trial.run() == 20) {
                                    throw new IllegalStateException("a defect");
                                }
                                return outcome(trial);
                            },
                            Part.WHOLE,
                            new BitSet(),
                            journal,
                            1,
                            Runs.Progress.SILENT,
                            () -> false))
                    .hasMessage("a defect");
        }
        assertThat(new Finished(study, List.of(file)).runs().cardinality()).isEqualTo(20);
    }

    @Test
    void aDefectIsTheRowOfThatRunAndItIsRiddenAgain() throws IOException {
        Study study = study(30, "f");
        Path file = folder.resolve("j");
        StudyBench bench = new StudyBench(study);
        try (Journal journal = Journal.open(file, study.name())) {
            Runs.ride(
                    study,
                    () -> trial -> trial.run() == 7 ? bench.ride(trial) : outcome(trial),
                    Part.WHOLE,
                    new BitSet(),
                    journal,
                    2,
                    Runs.Progress.SILENT,
                    () -> false);
        }
        List<String> reasons = new ArrayList<>();
        Finished finished = new Finished(study, List.of(file));
        finished.inOrder((trial, outcome) -> {
            if (trial.run() == 7) {
                reasons.add(outcome.reason());
            }
        });
        assertThat(reasons).singleElement().asString().startsWith("defect: ").contains("UnsupportedOperation");
        assertThat(finished.runsWithDefects().cardinality()).isEqualTo(31);
        assertThat(finished.runs().get(7)).isFalse();
        assertThat(finished.runs().cardinality()).isEqualTo(30);

        ride(study, Part.WHOLE, file, finished.runs(), 1);
        assertThat(inOrder(study, file)).isEqualTo(inOrder(study, whole(study)));
    }

    @Test
    void whateverElseIsThrownEndsTheStudyPlainly() throws IOException {
        Study study = study(50, "f");
        try (Journal journal = Journal.open(folder.resolve("j"), study.name())) {
            assertThatThrownBy(() -> Runs.ride(
                            study,
                            () -> trial -> {
                                throw new ExceptionInInitializerError("a class that cannot be");
                            },
                            Part.WHOLE,
                            new BitSet(),
                            journal,
                            2,
                            Runs.Progress.SILENT,
                            () -> false))
                    .isInstanceOf(ExceptionInInitializerError.class);
        }
    }

    /** 150 000 runs, of which a table in memory would take some 50 MB: read back in stretches within a share of that. */
    @Test
    void memoryDoesNotGrowWithTheRuns() throws IOException {
        Study study = study(150_000, "f");
        Path file = folder.resolve("j");
        RunKeys keys = new RunKeys(study);
        Schedule schedule = study.schedule();
        try (var out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            out.write("ridewright study journal 1: numbers\n");
        }
        try (Journal journal = Journal.open(file, study.name())) {
            for (long run = 0; run < schedule.size(); run++) {
                Trial trial = schedule.trial(run);
                journal.add(run, keys.of(trial), outcome(trial));
            }
        }
        ridden.clear();
        SweepFindings findings = (SweepFindings) Findings.of(study);
        long[] most = {0};
        long before = used();
        new Finished(study, List.of(file)).inOrder((trial, outcome) -> {
            findings.take(trial, outcome);
            if (trial.run() % 20_000 == 19_999) {
                most[0] = Math.max(most[0], used());
            }
        });

        assertThat(findings.runs()).isEqualTo(150_001);
        assertThat(findings.axis(0)).hasSize(Levels.MOST);
        assertThat(most[0] - before).isLessThan(25_000_000);
    }

    private static long used() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
