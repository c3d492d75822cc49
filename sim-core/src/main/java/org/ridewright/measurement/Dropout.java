package org.ridewright.measurement;

/**
 * A place where a log was cut because rows are missing, or because its clock was set back.
 *
 * @param line of the file, of the first row after it
 * @param at instant of the last row before it (s), from the first row
 * @param length time without rows (s); NaN where the clock was set back
 */
public record Dropout(int line, double at, double length) {}
