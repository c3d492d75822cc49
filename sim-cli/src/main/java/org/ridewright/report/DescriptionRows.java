package org.ridewright.report;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.road.Obstacle;
import org.ridewright.vehicle.Attachment;
import org.ridewright.vehicle.Place;

/** Every value of a description record, found through its components, so that no input can be left out of the report. */
final class DescriptionRows {
    private static final String ARROW = " › ";

    private final List<Entry> entries = new ArrayList<>();

    private DescriptionRows() {}

    /**
     * One value.
     *
     * @param path where it stands, in words
     * @param measure null where it is no measure
     * @param text what is written
     */
    record Entry(String path, Measure measure, String text) {}

    /** All values below a record. */
    static List<Entry> of(Object description, String path) {
        DescriptionRows rows = new DescriptionRows();
        rows.walk(path, description);
        return rows.entries;
    }

    /** The measures below a record. */
    static List<Entry> measures(Object description, String path) {
        return of(description, path).stream().filter(e -> e.measure() != null).toList();
    }

    private void walk(String path, Object value) {
        if (value instanceof Measure measure) {
            if (!putInAsNil(measure)) {
                entries.add(measured(path, measure));
            }
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(v -> walk(path, v));
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                walk(path + ARROW + label(list.get(i), i), list.get(i));
            }
        } else if (value instanceof Enum<?> choice) {
            entries.add(new Entry(path, null, word(choice)));
        } else if (value instanceof Record part) {
            walkRecord(path, part);
        } else if (!String.valueOf(value).isBlank()) {
            entries.add(new Entry(path, null, String.valueOf(value)));
        }
    }

    /** A nil that stands for what the file does not give. */
    private static boolean putInAsNil(Measure measure) {
        return measure.value() == 0
                && (measure.written().equals("none given") || measure.equals(Measure.of(0, measure.kind())));
    }

    /** As the file has it: ahead of the axle, or right of the centre, by a length, and not the other way by a negative one. */
    private static Entry measured(String path, Measure m) {
        if (!m.written().startsWith(Place.OPPOSITE)) {
            return new Entry(path, m, m.written());
        }
        String written = m.written().substring(Place.OPPOSITE.length());
        return new Entry(
                path.replaceFirst("behind front axle$", "ahead of front axle")
                        .replaceFirst("left of centre$", "right of centre"),
                new Measure(m.kind(), -m.value(), m.tolerance(), m.provenance(), written),
                written);
    }

    private void walkRecord(String path, Record part) {
        RecordComponent[] components = part.getClass().getRecordComponents();
        // an alternative of a sealed interface is named, as its figures alone do not tell which it is
        boolean alternative = part.getClass().getInterfaces().length > 0;
        if (alternative || components.length == 0) {
            entries.add(new Entry(path, null, words(part.getClass().getSimpleName())));
        }
        for (RecordComponent component : components) {
            boolean label = component.getName().equals("name") && !path.isEmpty();
            if (!label && !component.getName().equals("about")) {
                boolean inner = component.getType() == Obstacle.Lie.class || component.getType() == Attachment.class;
                walk(inner ? path : path + ARROW + words(component.getName()), read(component, part));
            }
        }
    }

    private static String label(Object item, int index) {
        if (item instanceof Record part) {
            for (RecordComponent component : part.getClass().getRecordComponents()) {
                if (component.getName().equals("name") && component.getType() == String.class) {
                    return String.valueOf(read(component, part));
                }
            }
        }
        return String.valueOf(index + 1);
    }

    private static Object read(RecordComponent component, Record part) {
        try {
            return component.getAccessor().invoke(part);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("component " + component.getName() + " cannot be read", e);
        }
    }

    private static String word(Enum<?> choice) {
        try {
            return String.valueOf(choice.getDeclaringClass().getMethod("word").invoke(choice));
        } catch (ReflectiveOperationException e) {
            return choice.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /** Words of a name written together. */
    static String words(String name) {
        return name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }
}
