package org.ridewright.yardstick;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Builds and runs the two programs in C; without a C compiler, or SUNDIALS for the first, they are left out and it is said. */
final class Rivals {
    private static final Pattern SPEED = Pattern.compile("([0-9.]+) sim s/s");
    private static final Pattern ERRORS = Pattern.compile("rel rms acc err[^:]*:\\s*(\\S+) (\\S+) (\\S+)");

    private final Path home;
    private final Path out;
    private final String missing;

    /** Simulated seconds per second, and error. */
    record Speed(double speed, double error) {}

    Rivals(Path home, Path out) throws IOException, InterruptedException {
        this.home = home;
        this.out = Files.createDirectories(out).toAbsolutePath();
        List<String> failed = new ArrayList<>();
        for (String program : List.of("multistep", "rungekutta")) {
            // made anew each time: the rule's name is a file too where somebody has built the programs in their own
            // folder
            Files.deleteIfExists(this.out.resolve(program));
            run(List.of("make", "-B", "OUT=" + this.out + "/", program));
            if (!Files.isExecutable(this.out.resolve(program))) {
                failed.add(program);
            }
        }
        missing = String.join(" and ", failed);
    }

    String state() {
        return missing.isEmpty()
                ? "Both programs in C were built and are measured beside."
                : "Could not build " + missing + " (needs make, a C compiler and SUNDIALS): left out.";
    }

    Optional<Speed> multistep(String problem) throws IOException, InterruptedException {
        return measure(List.of(
                out.resolve("multistep").toString(),
                "data/" + problem + ".bin",
                "adams",
                "root",
                "fixedpt=1",
                "runs=5"));
    }

    Optional<Speed> rungeKutta(String problem, int refinement) throws IOException, InterruptedException {
        return measure(List.of(
                out.resolve("rungekutta").toString(),
                "data/" + problem + ".bin",
                "1",
                String.valueOf(refinement),
                "9"));
    }

    private Optional<Speed> measure(List<String> command) throws IOException, InterruptedException {
        if (!Files.isExecutable(Path.of(command.get(0)))) {
            return Optional.empty();
        }
        return run(command).map(Rivals::parse);
    }

    private static Speed parse(String text) {
        Matcher speed = SPEED.matcher(text);
        Matcher errors = ERRORS.matcher(text);
        if (!speed.find() || !errors.find()) {
            throw new IllegalStateException("cannot read the program's answer: " + text);
        }
        double worst = 0;
        for (int i = 1; i <= errors.groupCount(); i++) {
            worst = Math.max(worst, Double.parseDouble(errors.group(i)));
        }
        return new Speed(Double.parseDouble(speed.group(1)), worst);
    }

    /** Output of a program, or nothing if it cannot be run or fails. */
    private Optional<String> run(List<String> command) throws IOException, InterruptedException {
        Process process;
        try {
            process = new ProcessBuilder(command)
                    .directory(home.toFile())
                    .redirectErrorStream(true)
                    .start();
        } catch (IOException e) {
            return Optional.empty();
        }
        process.getOutputStream().close();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return process.waitFor() == 0 ? Optional.of(text) : Optional.empty();
    }
}
