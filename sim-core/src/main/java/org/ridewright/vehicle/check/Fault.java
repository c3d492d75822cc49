package org.ridewright.vehicle.check;

import java.util.List;

/**
 * Something that cannot be true of a description.
 *
 * @param path of the value from the top, in the words of the file: {@code axles[1].dampers[0].rebound}
 * @param value as written; empty where none is given
 * @param fault what is wrong, as the rest of a sentence that begins with the value
 * @param expected what would do; may be empty
 * @param fix what most likely puts it right, as an instruction; may be empty
 * @param restsOn paths of the other values that the judgement rests on
 */
public record Fault(String path, String value, String fault, String expected, String fix, List<String> restsOn) {
    public Fault {
        restsOn = List.copyOf(restsOn);
    }
}
