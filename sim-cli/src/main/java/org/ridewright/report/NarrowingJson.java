package org.ridewright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.ridewright.narrowing.Answer;
import org.ridewright.narrowing.Narrowing;

/** What measuring would narrow an answer most, for other programs; SI units, shares from 0 to 1. */
public final class NarrowingJson {
    private NarrowingJson() {}

    /** The figures of the answer, and every uncertain value in their order. */
    public static String render(String vehicle, Narrowing narrowing, Answer answer) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("vehicle", vehicle);
        root.put("asked", answer.asked());
        ArrayNode figures = root.putArray("figures");
        for (int f = 0; f < narrowing.figures().size(); f++) {
            Answer.Figure figure = narrowing.figures().get(f);
            ObjectNode node = JsonNumbers.value(
                    figures, figure.name(), narrowing.central().get(f), figure.unit());
            JsonNumbers.put(
                    node, "standard uncertainty", narrowing.uncertainty().get(f));
            JsonNumbers.put(node, "scatter of runs", narrowing.scatter().get(f));
        }
        ArrayNode values = root.putArray("uncertain values");
        for (Narrowing.Row row : narrowing.rows()) {
            ObjectNode node = values.addObject();
            node.put("path", row.value().path());
            JsonNumbers.put(node, "value", row.value().measure().value());
            JsonNumbers.put(node, "standard uncertainty", row.value().measure().tolerance());
            node.put("unit", row.value().measure().kind().siUnit());
            node.put(
                    "known by",
                    row.value().knowledge().name().toLowerCase(Locale.ROOT).replace('_', ' '));
            node.put("usual tolerance taken", row.value().usualTolerance());
            JsonNumbers.put(node, "mean share", row.share());
            ArrayNode shares = node.putArray("shares");
            row.shares().forEach(shares::add);
            row.refused().ifPresent(reason -> node.put("tried on one side only, or not at all", reason));
        }
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers could not be written as JSON", e);
        }
    }
}
