package org.ridewright.narrowing;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Descriptions with one part exchanged. */
final class Altered {
    private Altered() {}

    /**
     * A copy of a record with another value of one component.
     *
     * @throws IllegalArgumentException if it has no such component
     */
    static <R extends Record> R with(R record, String component, Object value) {
        try {
            RecordComponent[] components = record.getClass().getRecordComponents();
            Object[] values = new Object[components.length];
            boolean found = false;
            for (int i = 0; i < components.length; i++) {
                boolean wanted = components[i].getName().equals(component);
                found |= wanted;
                values[i] = wanted ? value : components[i].getAccessor().invoke(record);
            }
            if (!found) {
                throw new IllegalArgumentException(
                        record.getClass().getSimpleName() + " has no component '" + component + "'");
            }
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            @SuppressWarnings("unchecked")
            Constructor<R> constructor = (Constructor<R>) record.getClass().getDeclaredConstructor(types);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(record.getClass() + " cannot be copied", e);
        }
    }

    /** A copy of a list with another item at a place. */
    static <T> List<T> with(List<T> list, int index, T item) {
        List<T> copy = new ArrayList<>(list);
        copy.set(index, item);
        return copy;
    }
}
