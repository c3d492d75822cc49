package org.ridewright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Numbers with name and unit in JSON; what is no number becomes null. */
final class JsonNumbers {
    private JsonNumbers() {}

    /** Adds {@code {name, value, unit}} to a list, and returns it. */
    static ObjectNode value(ArrayNode values, String name, double value, String unit) {
        ObjectNode node = values.addObject().put("name", name);
        put(node, "value", value);
        return node.put("unit", unit);
    }

    /** Sets a field. */
    static void put(ObjectNode node, String field, double value) {
        if (Double.isFinite(value)) {
            node.put(field, value);
        } else {
            node.putNull(field);
        }
    }
}
