package org.ridewright.dynamics;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.AxleKind;
import org.ridewright.vehicle.FurtherMotions.Motion;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.Vehicle;

/**
 * Which coordinate is which. Body first (heave, roll, pitch, twist, surge, sway), then each axle (heave and roll of a beam; left and right of
 * independent wheels; one of a single wheel), then each sprung occupant stage.
 */
public final class Coordinates {
    private final List<String> names = new ArrayList<>();
    private final List<String> units = new ArrayList<>();
    private final int heave;
    private final int roll;
    private final int pitch;
    private final int twist;
    private final int surge;
    private final int sway;
    private final List<int[]> axles = new ArrayList<>();
    private final List<int[]> occupants = new ArrayList<>();

    /** @param braked the undercarriage is held still by its wheels, and does not surge */
    Coordinates(Vehicle vehicle, List<Occupant> sprung, boolean braked) {
        Layout layout = vehicle.layout();
        heave = add("body heave", "m");
        roll = layout.rolls() ? add("body roll", "rad") : -1;
        pitch = layout.pitches() ? add("body pitch", "rad") : -1;
        twist = layout.rolls() && vehicle.body().rearBody().isPresent() ? add("body twist", "rad") : -1;
        surge = vehicle.further().has(Motion.SURGE) && !braked ? add("surge", "m") : -1;
        sway = vehicle.further().has(Motion.SWAY) && layout.rolls() ? add("body sway", "m") : -1;
        for (Axle axle : vehicle.axles()) {
            axles.add(
                    switch (kind(layout, axle)) {
                        case BEAM -> new int[] {add(axle.title() + " heave", "m"), add(axle.title() + " roll", "rad")};
                        case INDEPENDENT ->
                            new int[] {add(axle.name() + " wheel left", "m"), add(axle.name() + " wheel right", "m")};
                        case SINGLE -> new int[] {add(axle.name() + " wheel", "m")};
                    });
        }
        for (Occupant occupant : sprung) {
            int[] stages = new int[occupant.moving().size()];
            for (int i = 0; i < stages.length; i++) {
                stages[i] =
                        add((occupant.name() + " " + occupant.moving().get(i).coordinate()).strip(), "m");
            }
            occupants.add(stages);
        }
    }

    /** How the axle's wheels move in this layout: a vehicle that does not roll has one wheel to an axle. */
    static AxleKind kind(Layout layout, Axle axle) {
        return layout.rolls() ? axle.kind() : AxleKind.SINGLE;
    }

    private int add(String name, String unit) {
        names.add(name);
        units.add(unit);
        return names.size() - 1;
    }

    /** Number of coordinates. */
    public int size() {
        return names.size();
    }

    /** Name of each coordinate. */
    public List<String> names() {
        return List.copyOf(names);
    }

    /** Unit of each coordinate, m or rad. */
    public List<String> units() {
        return List.copyOf(units);
    }

    /** Index of body heave. */
    public int heave() {
        return heave;
    }

    /** Index of body roll, −1 if the body does not roll. */
    public int roll() {
        return roll;
    }

    /** Index of body pitch, −1 if the body does not pitch. */
    public int pitch() {
        return pitch;
    }

    /** Index of the twist between front and rear body, −1 if it does not twist. */
    public int twist() {
        return twist;
    }

    /** Index of the surge of the undercarriage, −1 if it travels steadily. */
    public int surge() {
        return surge;
    }

    /** Index of the sway of the body at its roll axis, −1 if that stays above the wheels. */
    public int sway() {
        return sway;
    }

    /** Indices of axle i: heave and roll of a beam, left and right of independent wheels, one of a single wheel. */
    public int[] axle(int i) {
        return axles.get(i).clone();
    }

    int[] occupant(int i) {
        return occupants.get(i).clone();
    }
}
