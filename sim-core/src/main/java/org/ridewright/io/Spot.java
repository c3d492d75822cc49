package org.ridewright.io;

/**
 * A place in the text of a file.
 *
 * @param line counted from 1; 0 for the file as a whole
 * @param column counted from 1; 0 for the file as a whole
 */
record Spot(int line, int column) {
    static final Spot WHOLE_FILE = new Spot(0, 0);
}
