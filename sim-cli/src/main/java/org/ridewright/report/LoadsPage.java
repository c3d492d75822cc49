package org.ridewright.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.figure.FigureFiles;
import org.ridewright.standing.Standing;
import org.ridewright.vehicle.Vehicle;

/** The page of how a vehicle stands. One file that needs no other. */
public final class LoadsPage {
    private LoadsPage() {}

    /** Every figure. */
    public static FigureGroup group(Vehicle vehicle, List<Standing> all) {
        return new FigureGroup("All load cases", LoadsFigures.of(vehicle, all));
    }

    /**
     * The page; every text of the user's is escaped.
     *
     * @param all one for each load case, at least one
     * @param drawn figures of {@link #group}, drawn
     */
    public static String render(Vehicle vehicle, List<Standing> all, FigureGroup group, List<FigureFiles> drawn) {
        Map<String, Object> page = new HashMap<>();
        page.put("name", vehicle.name());
        page.put("about", vehicle.about().strip());
        page.put("answers", LoadsTables.answers(vehicle, all));
        page.put("cautions", LoadsTables.cautions(all));
        page.put("wheelHeads", LoadsTables.wheelHeads());
        page.put("wheels", LoadsTables.wheels(vehicle, all));
        page.put("springHeads", LoadsTables.springHeads());
        page.put("springs", LoadsTables.springs(all));
        page.put("stressHeads", LoadsTables.stressHeads());
        page.put("stresses", LoadsTables.stresses(all));
        page.put("attitudeHeads", LoadsTables.attitudeHeads(vehicle));
        page.put("attitudes", LoadsTables.attitudes(vehicle, all));
        page.put("groups", Templates.groups(List.of(group), drawn));
        return Templates.render("loads.ftlh", page);
    }
}
