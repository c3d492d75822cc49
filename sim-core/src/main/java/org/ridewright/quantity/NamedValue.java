package org.ridewright.quantity;

import java.util.Optional;

/**
 * A single value of a file, as it stands there.
 *
 * @param path from the top of the file, such as {@code axles[1].springs[0].rate}
 * @param written its words
 * @param measure what they say; empty where they are a name, a choice or a plain count
 */
public record NamedValue(String path, String written, Optional<Measure> measure) {}
