package org.ridewright.narrowing;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.quantity.Adjustable;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.vehicle.Vehicle;

/** A vehicle without a file: its measures by the names of the records' parts. */
public record MeasuredParts(Vehicle asWritten) implements Adjustable<Vehicle> {
    @Override
    public List<NamedValue> values() {
        List<NamedValue> found = new ArrayList<>();
        changed(asWritten, "", (path, measure) -> {
            found.add(new NamedValue(path.substring(1), measure.written(), Optional.of(measure)));
            return measure;
        });
        return found;
    }

    @Override
    public NamedValue value(String path) {
        return values().stream()
                .filter(v -> v.path().equals(path))
                .findFirst()
                .orElseThrow(() -> new UnfitValueException("no value " + path));
    }

    @Override
    public Vehicle with(Map<String, String> texts) {
        texts.keySet().forEach(this::value);
        return (Vehicle) changed(
                asWritten,
                "",
                (path, measure) -> texts.containsKey(path.substring(1))
                        ? Measures.parse(texts.get(path.substring(1)), measure.kind())
                        : measure);
    }

    private interface Change {
        Measure of(String path, Measure measure);
    }

    private static Object changed(Object part, String path, Change change) {
        if (part instanceof Measure measure) {
            return change.of(path, measure);
        } else if (part instanceof Optional<?> optional) {
            return optional.map(inner -> changed(inner, path, change));
        } else if (part instanceof List<?> list) {
            List<Object> copy = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                copy.add(changed(list.get(i), path + "[" + i + "]", change));
            }
            return copy;
        } else if (part instanceof Record record) {
            Record copy = record;
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                Object inner = changed(value(record, component), path + "." + component.getName(), change);
                copy = Altered.with(copy, component.getName(), inner);
            }
            return copy;
        }
        return part;
    }

    private static Object value(Record record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
