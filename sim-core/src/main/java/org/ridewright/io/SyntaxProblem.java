package org.ridewright.io;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.List;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Why a text cannot be taken apart into keys and values, in words for someone who never heard of a parser. */
record SyntaxProblem(Spot spot, String fault, String fix) {
    static SyntaxProblem of(JsonProcessingException broken, String text) {
        if (broken.getCause() instanceof MarkedYAMLException yaml && yaml.getProblemMark() != null) {
            return of(yaml, text);
        }
        JsonLocation location = broken.getLocation();
        Spot spot = location == null ? Spot.WHOLE_FILE : new Spot(location.getLineNr(), location.getColumnNr());
        return new SyntaxProblem(
                spot,
                "the text cannot be read from here on: " + firstLine(broken.getOriginalMessage()),
                "look for a missing comma, quote or bracket here or just above");
    }

    void addTo(Reading reading) {
        reading.problem(spot, "", "", fault, "", fix);
    }

    private static SyntaxProblem of(MarkedYAMLException yaml, String text) {
        Spot spot = spot(yaml.getProblemMark());
        String problem = yaml.getProblem() == null ? "" : yaml.getProblem();
        String context = yaml.getContext() == null ? "" : yaml.getContext();
        Spot begun = yaml.getContextMark() == null ? spot : spot(yaml.getContextMark());
        String opened = yaml.getContextMark() == null
                ? ""
                : " opened in line " + spot(yaml.getContextMark()).line();
        if (indentedByTab(spot, text)) {
            return new SyntaxProblem(spot, "the line is indented with a tab", "use spaces to indent");
        }
        if (problem.contains("cannot start any token")) {
            return new SyntaxProblem(
                    spot,
                    "a value cannot begin with the character " + quotedCharacter(spot, text),
                    "put the whole value in double quotes");
        }
        if (problem.contains("mapping values are not allowed")) {
            return new SyntaxProblem(
                    spot,
                    "a colon stands where no key can be",
                    "put a text that contains ': ' in double quotes, or indent this line like its neighbours");
        }
        if (context.contains("quoted scalar")) {
            return new SyntaxProblem(begun, "the quotation that begins here is never closed", "add the missing quote");
        }
        if (context.contains("flow")) {
            String bracket = context.contains("sequence") ? "]" : "}";
            return new SyntaxProblem(
                    spot,
                    "the bracket" + opened + " is not closed before here",
                    "add a comma or the missing " + bracket);
        }
        if (context.contains("block")) {
            return new SyntaxProblem(
                    spot,
                    "this line does not continue the lines above it",
                    "indent it like the lines it belongs with; begin each item of a list with '- '");
        }
        if (context.contains("simple key")) {
            return new SyntaxProblem(
                    begun, "a key stands here without a colon", "write the key, a colon and a space, then the value");
        }
        return new SyntaxProblem(
                spot, "the text cannot be read from here on: " + firstLine(problem), "look here and in the line above");
    }

    private static boolean indentedByTab(Spot spot, String text) {
        String line = line(spot.line(), text);
        return line.length() > line.stripLeading().length()
                && line.substring(0, line.length() - line.stripLeading().length())
                        .contains("\t");
    }

    private static String quotedCharacter(Spot spot, String text) {
        String line = line(spot.line(), text);
        int at = spot.column() - 1;
        return at < line.length() ? "'" + line.charAt(at) + "'" : "at the end of the line";
    }

    private static String line(int number, String text) {
        List<String> lines = text.lines().toList();
        return number <= lines.size() ? lines.get(number - 1) : "";
    }

    private static Spot spot(Mark mark) {
        return new Spot(mark.getLine() + 1, mark.getColumn() + 1);
    }

    private static String firstLine(String message) {
        return message == null ? "" : message.lines().findFirst().orElse("");
    }
}
