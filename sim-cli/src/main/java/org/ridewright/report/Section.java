package org.ridewright.report;

import java.util.List;

/**
 * A part of an answer.
 *
 * @param heading plain text
 * @param paragraphs plain text, in the order of reading
 */
public record Section(String heading, List<String> paragraphs) {
    public Section {
        paragraphs = List.copyOf(paragraphs);
    }
}
