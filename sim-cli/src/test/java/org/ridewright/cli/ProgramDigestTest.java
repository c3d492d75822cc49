package org.ridewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs of another program do not count, those of the same one built again do. */
class ProgramDigestTest {
    private static final String LAW = "org/ridewright/suspension/Law.class";
    private static final String PAGE = "org/ridewright/report/Page.class";

    @TempDir
    Path folder;

    private Path write(String name, String content) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, content);
    }

    private Path jar(String content, long built) throws IOException {
        Path file = folder.resolve("core.jar");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file))) {
            ZipEntry entry = new ZipEntry(LAW);
            entry.setLastModifiedTime(FileTime.fromMillis(built));
            out.putNextEntry(entry);
            out.write(content.getBytes(StandardCharsets.UTF_8));
            out.closeEntry();
        }
        return file;
    }

    @Test
    void anotherClassMakesAnotherProgram() throws IOException {
        write("classes/" + LAW, "k x");
        String before = ProgramDigest.of(List.of(folder.resolve("classes")));
        write("classes/" + LAW, "k x³");

        assertThat(ProgramDigest.of(List.of(folder.resolve("classes")))).isNotEqualTo(before);
    }

    @Test
    void anotherReportDoesNot() throws IOException {
        write("classes/" + LAW, "k x");
        String before = ProgramDigest.of(List.of(folder.resolve("classes")));
        write("classes/" + PAGE, "<h2>");

        assertThat(ProgramDigest.of(List.of(folder.resolve("classes")))).isEqualTo(before);
    }

    @Test
    void inAJarTheContentCountsAndNotWhenItWasBuilt() throws IOException {
        String before = ProgramDigest.of(List.of(jar("k x", 1_700_000_000_000L)));
        assertThat(ProgramDigest.of(List.of(jar("k x", 1_710_000_000_000L)))).isEqualTo(before);
        assertThat(ProgramDigest.of(List.of(jar("k x³", 1_700_000_000_000L)))).isNotEqualTo(before);
    }

    @Test
    void theSameClassesInAFolderAndInAJarAreTheSame() throws IOException {
        write("classes/" + LAW, "k x");

        assertThat(ProgramDigest.of(List.of(folder.resolve("classes"))))
                .isEqualTo(ProgramDigest.of(List.of(jar("k x", 1_700_000_000_000L))));
    }

    @Test
    void theRunningProgramHasOne() throws IOException {
        assertThat(ProgramDigest.ofThis()).hasSize(64).isNotEqualTo(ProgramDigest.of(List.of()));
    }
}
