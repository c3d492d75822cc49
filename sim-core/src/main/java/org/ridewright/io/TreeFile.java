package org.ridewright.io;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ridewright.vehicle.check.NearestWord;

/** Reads a file, JSON if its name ends so and else YAML, into a tree. */
final class TreeFile {
    private TreeFile() {}

    /**
     * The top of the file's tree. Problems that leave a tree are added to {@code reading}.
     *
     * @throws InputException if there is no such file, or it is not text, or not YAML or JSON
     */
    static Node read(Path file, Reading reading) {
        return read(file, reading, near -> true);
    }

    /** The same of a file that should be of one kind; another that could have been meant is of that kind too. */
    static Node read(Path file, Reading reading, FileKind wanted) {
        return read(file, reading, near -> FileKind.mayBe(near, wanted));
    }

    private static Node read(Path file, Reading reading, Predicate<Path> meant) {
        String text = text(file, reading, meant);
        boolean json = file.toString().toLowerCase(Locale.ROOT).endsWith(".json");
        JsonFactory factory = json ? new JsonFactory() : new YAMLFactory();
        try (JsonParser parser = factory.createParser(text)) {
            return new TreeBuilder(parser, reading).document();
        } catch (JsonProcessingException broken) {
            SyntaxProblem.of(broken, text).addTo(reading);
            throw new InputException(reading.problems());
        } catch (IOException impossible) {
            throw new IllegalStateException("reading from memory failed", impossible);
        }
    }

    /** @throws InputException if there is no such file, or it is not text in UTF-8 */
    static String text(Path file, Reading reading) {
        return text(file, reading, near -> true);
    }

    private static String text(Path file, Reading reading, Predicate<Path> meant) {
        try {
            byte[] bytes = Files.readAllBytes(file);
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException notText) {
            reading.problem(
                    Spot.WHOLE_FILE,
                    "",
                    "",
                    "is not text in UTF-8",
                    "a text file",
                    "save it again with the encoding UTF-8");
        } catch (NoSuchFileException missing) {
            String fix = nearestFile(file, meant).map(near -> "write " + near).orElse("check the name and the folder");
            reading.problem(Spot.WHOLE_FILE, "", "", "there is no such file", "", fix);
        } catch (IOException unreadable) {
            String why = Files.isDirectory(file) ? "is a folder" : "cannot be read (" + unreadable.getMessage() + ")";
            reading.problem(Spot.WHOLE_FILE, "", "", why, "a file that may be read", "");
        }
        throw new InputException(reading.problems());
    }

    /** The file in the same folder whose name is most like this one's. */
    static Optional<String> nearestFile(Path file) {
        return nearestFile(file, near -> true);
    }

    private static Optional<String> nearestFile(Path file, Predicate<Path> meant) {
        Path folder = file.toAbsolutePath().normalize().getParent();
        if (folder == null) {
            return Optional.empty();
        }
        try (Stream<Path> siblings = Files.list(folder)) {
            List<String> names = new ArrayList<>(
                    siblings.map(path -> path.getFileName().toString()).sorted().toList());
            Optional<String> near = NearestWord.to(file.getFileName().toString(), names);
            while (near.isPresent() && !meant.test(folder.resolve(near.get()))) {
                names.remove(near.get());
                near = NearestWord.to(file.getFileName().toString(), names);
            }
            return near;
        } catch (IOException noFolder) {
            return Optional.empty();
        }
    }
}
