package org.ridewright.fieldwork;

import java.nio.file.Path;

/**
 * The road of a ride, in a scenario or road file.
 *
 * @param written the file's name as it was written
 * @param file as it can be opened
 * @param road name of the road; empty where the file has but one
 */
public record RoadReference(String written, Path file, String road) {
    /** In words. */
    public String label() {
        return road.isEmpty() ? written : road;
    }
}
