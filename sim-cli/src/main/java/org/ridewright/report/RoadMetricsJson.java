package org.ridewright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.ridewright.roughness.RoadRemarks;
import org.ridewright.roughness.RoughnessIndex;
import org.ridewright.roughness.SpectrumPoint;
import org.ridewright.roughness.StraightFit;
import org.ridewright.roughness.SurveyedRoad;
import org.ridewright.roughness.SurveyedRoad.Passed;
import org.ridewright.roughness.SurveyedRoad.SurveyedTrack;

/** Every number of a survey of roads for other programs, SI units; a value that does not exist is null. */
public final class RoadMetricsJson {
    private RoadMetricsJson() {}

    /** The numbers of all roads, in their order. */
    public static String render(String name, List<SurveyedRoad> roads) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("survey", name);
        ArrayNode all = root.putArray("roads");
        roads.forEach(road -> road(all.addObject(), road));
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers could not be written as JSON", e);
        }
    }

    private static void road(ObjectNode node, SurveyedRoad road) {
        node.put("road", road.name());
        node.put("source", road.source());
        ArrayNode tracks = node.putArray("tracks");
        road.tracks().forEach(track -> track(tracks.addObject(), track));
        ArrayNode wheels = node.putArray("wheels");
        for (int w = 0; w < road.wheels().size(); w++) {
            ObjectNode wheel = wheels.addObject();
            wheel.put("wheel", road.wheels().get(w).label());
            JsonNumbers.value(
                    wheel.putArray("values"), "r.m.s. slope of the path over that of the road", road.jolting(w), "1");
            ArrayNode passed = wheel.putArray("root of the path's spectrum over the road's");
            for (Passed each : road.passed(w)) {
                ObjectNode band = passed.addObject();
                band.put("from (cycle/m)", each.band().from());
                band.put("to (cycle/m)", each.band().to());
                JsonNumbers.put(band, "value", each.share());
            }
        }
        ArrayNode remarks = node.putArray("remarks");
        RoadRemarks.of(road).forEach(remarks::add);
    }

    private static void track(ObjectNode node, SurveyedTrack track) {
        node.put("track", track.name());
        ArrayNode values = node.putArray("values");
        JsonNumbers.value(
                values, "station of the first height", track.roughness().start(), "m");
        JsonNumbers.value(values, "length", track.roughness().length(), "m");
        JsonNumbers.value(values, "spacing of heights", track.roughness().spacing(), "m");
        RoughnessIndex index = track.roughness().index();
        JsonNumbers.value(values, "International Roughness Index", index.value(), "m/m");
        JsonNumbers.value(values, "length over which slopes are taken for it", index.base(), "m");
        track.roughness().fit().ifPresent(fit -> fit(node, fit));
        ArrayNode sections = node.putArray("International Roughness Index of each 100 m (m/m)");
        index.sections().forEach(sections::add);
        ArrayNode spectrum = node.putArray("spectrum");
        for (SpectrumPoint point : track.roughness().smoothed()) {
            ObjectNode each = spectrum.addObject();
            JsonNumbers.put(each, "wavenumber (cycle/m)", point.wavenumber());
            JsonNumbers.put(each, "Gd (m³)", point.height());
            JsonNumbers.put(each, "degrees of freedom", point.degreesOfFreedom());
        }
    }

    private static void fit(ObjectNode node, StraightFit fit) {
        node.put("class", fit.roadClass().name());
        ArrayNode values = node.putArray("fit");
        JsonNumbers.value(values, "confidence of the class", fit.confidence(fit.roadClass()), "1");
        JsonNumbers.value(values, "Gd(0.1 cycle/m), waviness 2", fit.atReference(), "m³");
        JsonNumbers.value(values, "lower end of its 95 %", fit.lower(), "m³");
        JsonNumbers.value(values, "upper end of its 95 %", fit.upper(), "m³");
        JsonNumbers.value(values, "Gd(0.1 cycle/m), waviness free", fit.freeAtReference(), "m³");
        JsonNumbers.value(values, "waviness", fit.waviness(), "1");
        JsonNumbers.value(values, "standard error of the waviness", fit.wavinessError(), "1");
        JsonNumbers.value(values, "fitted from", fit.from(), "cycle/m");
        JsonNumbers.value(values, "fitted to", fit.to(), "cycle/m");
    }
}
