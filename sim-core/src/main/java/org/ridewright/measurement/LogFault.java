package org.ridewright.measurement;

/**
 * Why a log cannot be used.
 *
 * @param line of the file, counted from 1; 0 where the file as a whole is meant
 * @param column name of the column; empty where none in particular is meant
 * @param value offending value; may be empty
 * @param fault what is wrong, as the rest of a sentence that begins with the value
 * @param expected what would do
 * @param fix what most likely puts it right
 */
public record LogFault(int line, String column, String value, String fault, String expected, String fix) {
    /** Of the file as a whole. */
    static LogFault whole(String column, String value, String fault, String expected, String fix) {
        return new LogFault(0, column, value, fault, expected, fix);
    }
}
