package org.ridewright.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import org.ridewright.ride.RideResult;
import org.ridewright.uncertainty.Interval;

/** Every number of a ride test under the way by which its JSON leads to it. */
public final class RideNumbers {
    private RideNumbers() {}

    /** By way, such as {@code seats/driver/values/time off the seat}; those of tables on top of the page besides. */
    public static Map<String, Double> of(RideResult result) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        MetricsJson.ride(node, result);
        Map<String, Double> numbers = new HashMap<>();
        walk(node, "", (way, value) -> numbers.put(way, value.get("value").doubleValue()));
        numbers.putAll(Headline.numbers(result));
        return numbers;
    }

    /** Puts its interval beside each number that has one. */
    static void annotate(ObjectNode ride, Map<String, Interval> intervals) {
        walk(ride, "", (way, value) -> {
            Interval interval = intervals.get(way);
            if (interval != null) {
                value.put("5 %", interval.low());
                value.put("median", interval.median());
                value.put("95 %", interval.high());
            }
        });
    }

    private static void walk(JsonNode node, String way, BiConsumer<String, ObjectNode> found) {
        if (node instanceof ObjectNode object && object.has("value") && object.has("name")) {
            if (object.get("value").isNumber()) {
                found.accept(way, object);
            }
        } else if (node.isObject()) {
            node.properties().forEach(field -> {
                if (!field.getKey().equals("solver")) {
                    walk(field.getValue(), way + "/" + field.getKey(), found);
                }
            });
        } else {
            for (int i = 0; i < node.size(); i++) {
                JsonNode item = node.get(i);
                walk(item, way + "/" + (item.has("name") ? item.get("name").asText() : i), found);
            }
        }
    }
}
