package org.ridewright.why;

/**
 * One place of a vehicle file that is exchanged.
 *
 * @param path of a value or group; may mean several
 * @param text what stands there instead; {@code × 0.3} multiplies, nothing takes it out
 */
public record Change(String path, String text) {
    /** As an option of the command writes it. */
    public String words() {
        return path + " = " + (text.isEmpty() ? "(nothing)" : text);
    }
}
