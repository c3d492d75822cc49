package org.ridewright.io;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.ridewright.study.Answer;
import org.ridewright.study.Method;
import org.ridewright.study.Question;
import org.ridewright.study.Study;

/** Study files; their language is laid down in {@code docs/studies.md}. */
public final class StudyFile {
    private static final String[] KEYS = {
        "study",
        "about",
        "base",
        "with",
        "answers",
        "answer",
        "sweep",
        "compare",
        "uncertainty",
        "sensitivity",
        "search"
    };

    private StudyFile() {}

    /**
     * The study that a file describes, with its scenarios and all that they name.
     *
     * @param file YAML, or JSON if its name ends in {@code .json}
     * @param program which version of the program is to ride it; runs of another one are ridden anew
     * @throws InputException with everything found wrong, if it or a file that it names cannot be read, or asks for what cannot be
     */
    public static Study read(Path file, String program) {
        Reading reading = new Reading(file.toString());
        Node top = TreeFile.read(file, reading, FileKind.STUDY);
        TreeEdit.locate(top, reading);
        refuseOtherKinds(top, reading, file);
        Part part = Part.of(reading, top, "a study file", KEYS);
        VariantReader variants = new VariantReader(file.resolveSibling(""));
        String name = part.text("study", "its name");
        String about = part.textIfAny("about", "a text").orElse("");
        Optional<VariantReader.Base> base = variants.base(part, "as written");
        List<Question> questions = QuestionReader.read(part, base.map(b -> b.scenario()));
        if (base.isEmpty()) {
            throw new InputException(reading.problems());
        }
        MethodReader methods = new MethodReader(base.get(), variants, questions);
        Optional<Method> method = methods.read(part);
        Optional<Answer> answer = method.flatMap(m -> AnswerReader.read(part, questions, m, methods.variants()));
        reading.throwIfAny();
        Study study = new Study(
                name,
                about,
                methods.variants(),
                questions,
                method.orElseThrow(),
                Fingerprint.of(program, file, variants.files()),
                answer);
        MethodReader.refuseHuge(reading, top, study.schedule().size());
        reading.throwIfAny();
        return study;
    }

    private static void refuseOtherKinds(Node top, Reading reading, Path file) {
        Optional<FileKind> told = FileKind.told(top);
        if (told.isPresent() && told.get() != FileKind.STUDY) {
            String kind = told.get().key();
            reading.problem(
                    top,
                    "",
                    "this is a " + kind + " file",
                    "a study, which says what varies and what is asked",
                    told.get() == FileKind.SCENARIO
                            ? "name it in a study: 'study: <name>', 'base: " + file.getFileName()
                                    + "', 'answers: [a_w]' and what varies"
                            : "begin a file of its own with 'study: <name>' and 'base: <scenario file>'");
            throw new InputException(reading.problems());
        }
    }
}
