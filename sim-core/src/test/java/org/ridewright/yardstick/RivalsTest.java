package org.ridewright.yardstick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RivalsTest {
    @TempDir
    private Path home;

    @BeforeEach
    void makeIsThere() {
        assumeThat(Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                        .anyMatch(folder -> Files.isExecutable(Path.of(folder, "make"))))
                .as("make on the path")
                .isTrue();
    }

    private Path out() {
        return home.resolve("built");
    }

    /** Rules that "build" by writing a script; the second fails. */
    private void rules(String rungeKutta) throws IOException {
        Files.writeString(
                home.resolve("Makefile"),
                "multistep:\n\techo '#!/bin/sh' > $(OUT)$@; chmod +x $(OUT)$@\nrungekutta:\n\t" + rungeKutta + "\n");
    }

    @Test
    void programsBuiltInTheirOwnFolderAreBuiltAgainWhereTheyAreMeasured() throws IOException, InterruptedException {
        rules("echo '#!/bin/sh' > $(OUT)$@; chmod +x $(OUT)$@");
        Files.writeString(home.resolve("multistep"), "built before");
        Files.writeString(home.resolve("rungekutta"), "built before");
        assertThat(new Rivals(home, out()).state()).contains("Both programs");
        assertThat(out().resolve("multistep")).isExecutable();
        assertThat(out().resolve("rungekutta")).isExecutable();
    }

    @Test
    void aProgramThatCannotBeBuiltIsLeftOutEvenIfAnOlderOneIsThere() throws IOException, InterruptedException {
        rules("false");
        Files.createDirectories(out());
        Files.writeString(out().resolve("rungekutta"), "#!/bin/sh\n");
        assertThat(out().resolve("rungekutta").toFile().setExecutable(true)).isTrue();
        Rivals rivals = new Rivals(home, out());
        assertThat(rivals.state()).contains("Could not build rungekutta ");
        assertThat(rivals.rungeKutta("plank", 1)).isEmpty();
    }
}
