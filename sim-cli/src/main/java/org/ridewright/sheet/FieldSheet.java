package org.ridewright.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ridewright.dynamics.Element;
import org.ridewright.figure.Sketch;
import org.ridewright.narrowing.Answer;
import org.ridewright.narrowing.Narrowing;
import org.ridewright.quantity.Measure;
import org.ridewright.report.Templates;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Connection;
import org.ridewright.vehicle.Hitch;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.LoadCase.Aboard;
import org.ridewright.vehicle.Vehicle;

/** The sheet, for any vehicle or filled for one, as a page and for print. */
public final class FieldSheet {
    private static final String TEMPLATE = "fieldsheet.ftlh";
    /** Load cases that a sheet has room for; a person copies pages for more. */
    private static final int MOST_LOAD_CASES = 4;

    private static final int BLANK_LOAD_CASES = 3;

    private final Optional<Vehicle> vehicle;
    private final Optional<Narrowing> narrowing;
    private final String asked;
    private final Proportions proportions;
    private final List<Sketch> sketches;

    private FieldSheet(Optional<Vehicle> vehicle, Optional<Narrowing> narrowing, String asked) {
        this.vehicle = vehicle;
        this.narrowing = narrowing;
        this.asked = asked;
        proportions = vehicle.map(Proportions::of).orElseGet(Proportions::usual);
        sketches = new Sketches(proportions).all();
    }

    /** A sheet for a vehicle of which nothing is known yet. */
    public static FieldSheet blank() {
        return new FieldSheet(Optional.empty(), Optional.empty(), "");
    }

    /** A sheet for a vehicle, with what of it is worth measuring. */
    public static FieldSheet of(Vehicle vehicle, Narrowing narrowing, Answer answer) {
        return new FieldSheet(Optional.of(vehicle), Optional.of(narrowing), answer.asked());
    }

    /** Drawings of the sheet. */
    List<Sketch> sketches() {
        return sketches;
    }

    /** Every length that the sheet asks for. */
    List<Dimension> dimensions() {
        return Dimensions.of(vehicle, proportions);
    }

    /** The sheet as a page, one file that needs no other. */
    public String html() {
        Map<String, String> drawings = new HashMap<>();
        sketches.forEach(sketch -> drawings.put(sketch.name(), sketch.svg()));
        return Templates.render(TEMPLATE, model(drawings));
    }

    /** The sheet as a document for print, A4 upright. */
    public byte[] pdf() {
        Map<String, String> drawings = new HashMap<>();
        sketches.forEach(sketch -> drawings.put(sketch.name(), SheetPdf.placeOf(sketch)));
        return SheetPdf.write(Templates.render(TEMPLATE, model(drawings)), sketches);
    }

    private Map<String, Object> model(Map<String, String> drawings) {
        Map<String, Object> model = new HashMap<>();
        model.put("name", vehicle.map(Vehicle::name).orElse(""));
        model.put("sketches", drawings);
        model.put("dimensions", dimensions());
        model.put("wheels", wheelNames());
        model.put("loads", loadCases());
        model.put("people", people());
        model.put("axles", axles());
        model.put("springs", springs());
        model.put("asked", asked);
        narrowing.ifPresent(found -> {
            model.put("figures", ValueNames.figures(found));
            model.put("heads", found.figures().stream().map(Answer.Figure::name).toList());
            model.put("guesses", PriorityTable.guesses(vehicle.orElseThrow(), found));
            model.put("stated", PriorityTable.stated(vehicle.orElseThrow(), found));
        });
        return model;
    }

    private List<String> wheelNames() {
        List<String> names = new ArrayList<>();
        for (Proportions.Shape axle : proportions.axles()) {
            if (axle.track() > 0) {
                names.add(axle.name() + " left");
                names.add(axle.name() + " right");
            } else {
                names.add(axle.name());
            }
        }
        vehicle.map(Vehicle::hitches)
                .ifPresentOrElse(
                        hitches -> hitches.stream().map(Hitch::name).forEach(names::add), () -> names.add("shafts"));
        return names;
    }

    private List<String> loadCases() {
        return vehicle.map(v -> v.loadCases().stream()
                        .map(LoadCase::name)
                        .limit(MOST_LOAD_CASES)
                        .toList())
                .orElseGet(() -> Collections.nCopies(BLANK_LOAD_CASES, ""));
    }

    /** Everybody and everything that comes aboard, once each, with what the file says it weighs. */
    private List<Map<String, String>> people() {
        Set<String> seen = new LinkedHashSet<>();
        List<Map<String, String>> rows = new ArrayList<>();
        for (LoadCase load : vehicle.map(Vehicle::loadCases).orElse(List.of())) {
            for (Aboard aboard : load.aboard()) {
                String name = aboard instanceof Aboard.Person person ? person.name() : ((Aboard.Cargo) aboard).name();
                if (seen.add(name)) {
                    rows.add(Map.of(
                            "name",
                            name,
                            "key",
                            "load cases[" + load.name() + "].aboard",
                            "known",
                            aboard.mass().written()));
                }
            }
        }
        return rows;
    }

    private List<Map<String, String>> axles() {
        List<Map<String, String>> rows = new ArrayList<>();
        for (int i = 0; i < proportions.axles().size(); i++) {
            int index = i;
            Optional<Measure> mass = vehicle.map(v -> v.axles().get(index)).map(Axle::unsprungMass);
            rows.add(Map.of(
                    "name",
                    proportions.axles().get(i).name(),
                    "key",
                    "axles[" + proportions.axles().get(i).name() + "].unsprung mass",
                    "known",
                    mass.map(Dimensions::written).orElse("")));
        }
        return rows;
    }

    /** Names of springs that are loaded step by step, each once. */
    private List<String> springs() {
        List<String> names = new ArrayList<>();
        vehicle.ifPresent(v -> {
            v.axles().forEach(axle -> axle.springs().forEach(s -> names.add(Element.nameOf(axle.name(), s.name()))));
            v.connections().stream()
                    .filter(Connection.SideSpring.class::isInstance)
                    .forEach(c -> names.add(c.name()));
        });
        return names.isEmpty() ? List.of("") : names;
    }
}
