package org.ridewright.io;

import java.util.Objects;

/**
 * One thing wrong with a file.
 *
 * @param file as its reader was given it
 * @param line counted from 1; 0 where the file as a whole is meant
 * @param column counted from 1; 0 where the file as a whole is meant
 * @param path of the value from the top of the file, such as {@code axles[1].dampers[0].rebound}; empty for the file
 * @param value offending value as written; empty where there is none
 * @param fault what is wrong with it, as the rest of a sentence that begins with the value
 * @param expected what would do; may be empty
 * @param fix what most likely puts it right, as an instruction; may be empty
 */
public record InputProblem(
        String file, int line, int column, String path, String value, String fault, String expected, String fix) {
    private static final int LONGEST_VALUE = 60;

    public InputProblem {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(fault, "fault");
        Objects.requireNonNull(expected, "expected");
        Objects.requireNonNull(fix, "fix");
    }

    /** One line, such as {@code saloon.yaml:31:15  axles[1].track: 11 m is ...; expected .... Likely fix: ....} */
    public String render() {
        StringBuilder line = new StringBuilder(file);
        if (this.line > 0) {
            line.append(':').append(this.line).append(':').append(column);
        }
        line.append("  ");
        if (!path.isEmpty()) {
            line.append(path).append(": ");
        }
        if (!value.isEmpty()) {
            line.append(shortened()).append(' ');
        }
        line.append(fault);
        if (!expected.isEmpty()) {
            line.append("; expected ").append(expected);
        }
        line.append('.');
        if (!fix.isEmpty()) {
            line.append(" Likely fix: ").append(fix).append(endsSentence(fix) ? "" : ".");
        }
        return line.toString();
    }

    private static boolean endsSentence(String text) {
        return text.endsWith("?") || text.endsWith(".");
    }

    private String shortened() {
        String oneLine = value.strip().replaceAll("\\s+", " ");
        return oneLine.length() <= LONGEST_VALUE ? oneLine : oneLine.substring(0, LONGEST_VALUE - 1) + "…";
    }
}
