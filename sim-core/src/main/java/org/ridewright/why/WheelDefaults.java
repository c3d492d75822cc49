package org.ridewright.why;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.ridewright.quantity.NamedValue;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.PathKind;
import org.ridewright.vehicle.Tyre;
import org.ridewright.vehicle.Vehicle;

/**
 * What a vehicle file leaves to be reckoned from the diameter of its wheels: heights of spring mounts, and with them the axes of roll and pitch, and
 * the length on which a pneumatic tyre stands. Where wheels of another size are tried it is held at what it is, or the body would be let down.
 */
public final class WheelDefaults {
    /** Height of a wheel's centre over its diameter. */
    private static final String CENTRE = "0.5";

    private static final String FOOTPRINT = "footprint";
    private static final Pattern DIAMETER = Pattern.compile("axles\\[[^]]+]\\.wheels?\\.diameter");
    /** Of the axle in the place of %s; a whole group of springs brings its own mounts. */
    private static final String HEIGHT =
            "axles\\[(?:\\*|%s)](\\.springs(\\[[^]]+])?(\\.mount height)?|\\.roll axis height)|body\\.(pitch axis|spring mount height)";

    private static final String TYRE = "axles\\[(?:\\*|%s)]\\.wheels?\\.(footprint|tyre|path)";

    /** @param unlessSaid paths with which a swap says otherwise */
    private record Hold(Change change, Pattern unlessSaid) {}

    private final List<NamedValue> written;
    private final List<Hold> holds = new ArrayList<>();

    /** @param written values of the vehicle's file */
    public WheelDefaults(Vehicle vehicle, List<NamedValue> written) {
        this.written = List.copyOf(written);
        for (int a = 0; a < vehicle.axles().size(); a++) {
            Axle axle = vehicle.axles().get(a);
            String of = " of " + wheels(a) + ".diameter";
            Pattern height = ofAxle(HEIGHT, a, axle);
            if (axle.springs().stream().allMatch(s -> s.mountHeight().isEmpty())) {
                if (!axle.springs().isEmpty()) {
                    hold("axles[" + a + "].springs[0].mount height", CENTRE + of, height);
                } else if (axle.rollAxisHeight().isEmpty()) {
                    hold("axles[" + a + "].roll axis height", CENTRE + of, height);
                }
            }
            if (a == 0
                    && axle.springs().isEmpty()
                    && !isWritten("body.pitch axis")
                    && !isWritten("body.spring mount height")) {
                hold("body.pitch axis", CENTRE + of, height);
            }
            boolean stands =
                    axle.wheel().path() == PathKind.FOOTPRINT || axle.wheel().path() == PathKind.DISC_AND_FOOTPRINT;
            if (stands && axle.wheel().tyre() == Tyre.PNEUMATIC && !says(a, FOOTPRINT)) {
                double share = axle.wheel().footprintLength().orElseThrow().value()
                        / axle.wheel().diameter().value();
                hold(wheels(a) + "." + FOOTPRINT, share + of, ofAxle(TYRE, a, axle));
            }
        }
    }

    /** The same swap; if it changes a diameter, with what hangs on it held, except what the swap itself says. */
    public Swap held(Swap swap) {
        if (!changes(swap, DIAMETER)) {
            return swap;
        }
        List<Change> changes = new ArrayList<>(swap.changes());
        holds.stream()
                .filter(hold -> !changes(swap, hold.unlessSaid()))
                .map(Hold::change)
                .forEach(changes::add);
        return new Swap(swap.name(), swap.alternative(), changes);
    }

    private void hold(String path, String text, Pattern unlessSaid) {
        holds.add(new Hold(new Change(path, text), unlessSaid));
    }

    /** Paths of one axle, by its place or its name, or of all. */
    private static Pattern ofAxle(String paths, int place, Axle axle) {
        return Pattern.compile(paths.replace("%s", place + "|" + Pattern.quote(axle.name())));
    }

    private static boolean changes(Swap swap, Pattern path) {
        return swap.changes().stream().anyMatch(c -> path.matcher(c.path()).matches());
    }

    /** Whether the file says something of an axle's wheels. */
    boolean says(int axle, String key) {
        String group = wheels(axle);
        String in = isWritten(group) ? group : group.replaceFirst("\\[\\d+]", "[0]");
        return isWritten(in + "." + key);
    }

    private boolean isWritten(String start) {
        return written.stream()
                .anyMatch(v -> v.path().equals(start)
                        || v.path().startsWith(start + ".")
                        || v.path().startsWith(start + "["));
    }

    /** Of an axle; the file may use the group of another one again, which then has its values there alone. */
    String wheels(int axle) {
        String own = "axles[" + axle + "].wheel";
        boolean single = isWritten(own) || !isWritten(own + "s") && isWritten("axles[0].wheel");
        return own + (single ? "" : "s");
    }
}
