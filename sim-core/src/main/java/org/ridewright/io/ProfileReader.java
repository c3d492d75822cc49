package org.ridewright.io;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.MeasuredProfile;
import org.ridewright.road.Surface.Measured;
import org.ridewright.road.Surface.Measured.Trend;
import org.ridewright.road.Surface.Stretch;

/** Reads {@code measured} surfaces, with the files that hold their heights, and keeps what is wrong with those. */
final class ProfileReader {
    static final List<String> KEYS = List.of(
            "file", "station", "height", "left", "right", "station unit", "height unit", "heights", "spikes", "every");
    private static final Words<Trend> TRENDS = Words.of(
            "a treatment of heights",
            List.of(new Measured.Detrended(), new Measured.AsMeasured()),
            trend -> trend instanceof Measured.Detrended ? "detrended" : "as measured");
    private static final Words<Boolean> SPIKES =
            Words.of("a treatment of spikes", List.of(false, true), removed -> removed ? "left out" : "kept");

    private final Path folder;
    private final Consumer<Path> opened;
    private final Set<InputProblem> problems = new LinkedHashSet<>();

    /**
     * @param folder from which the names of profile files are reckoned
     * @param opened is told every file that is read
     */
    ProfileReader(Path folder, Consumer<Path> opened) {
        this.folder = folder;
        this.opened = opened;
    }

    /** What is wrong with the profile files. */
    List<InputProblem> problems() {
        return List.copyOf(problems);
    }

    Measured measured(Part part, Stretch stretch) {
        String file = part.text("file", "the name of a CSV file, reckoned from the folder of the scenario");
        Optional<MeasuredProfile> profile = file.isEmpty() ? Optional.empty() : profile(part, file);
        if (profile.isEmpty()) {
            part.reading().spoil(part.path());
        }
        return new Measured(
                stretch,
                profile.orElseGet(() -> new MeasuredProfile(file, new double[] {0, 1, 2}, List.of(new double[3]))),
                trend(part),
                part.wordIfAny("spikes", SPIKES).orElse(false),
                part.measureIfAny("every", QuantityKind.LENGTH));
    }

    private static Trend trend(Part part) {
        Optional<Node> node = part.node("heights");
        if (node.isPresent() && node.get() instanceof Node.Mapping) {
            Part group = part.partOrMissing("heights", "a treatment of heights", "high-pass");
            return new Measured.HighPass(group.measure("high-pass", QuantityKind.LENGTH));
        }
        return part.wordIfAny("heights", TRENDS).orElse(new Measured.Detrended());
    }

    private Optional<MeasuredProfile> profile(Part part, String file) {
        Path path;
        try {
            path = folder.resolve(file);
        } catch (InvalidPathException impossible) {
            refuse(part, file, "cannot be the name of a file", "write the name as the folder shows it");
            return Optional.empty();
        }
        if (Files.isDirectory(path)) {
            refuse(part, file, "is a folder", "name a CSV file in it");
            return Optional.empty();
        }
        if (!Files.exists(path)) {
            String fix = TreeFile.nearestFile(path)
                    .map(near -> "write "
                            + Path.of(file).resolveSibling(near).toString().replace('\\', '/'))
                    .orElse("check the name; it is reckoned from the folder of the scenario");
            refuse(part, file, "is not there", fix);
            return Optional.empty();
        }
        opened.accept(path);
        try {
            return Optional.of(ProfileFile.read(path, file, choice(part)));
        } catch (InputException broken) {
            problems.addAll(broken.problems());
            return Optional.empty();
        }
    }

    private static ProfileFile.Choice choice(Part part) {
        return new ProfileFile.Choice(
                part.textIfAny("station", "the name of a column"),
                part.textIfAny("height", "the name of a column"),
                part.textIfAny("left", "the name of a column"),
                part.textIfAny("right", "the name of a column"),
                part.textIfAny("station unit", "a unit of length"),
                part.textIfAny("height unit", "a unit of length"),
                true);
    }

    private static void refuse(Part part, String file, String fault, String fix) {
        part.node("file").ifPresent(node -> part.reading().problem(node, file, fault, "the name of a CSV file", fix));
    }
}
