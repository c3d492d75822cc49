package org.ridewright.io;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.quantity.Adjustable;
import org.ridewright.quantity.JointSpread;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.NamedValue;
import org.ridewright.vehicle.Vehicle;

/** A vehicle file of which each value can be looked up by its path and exchanged, in the description and in the text. */
public final class VehicleDocument implements Adjustable<Vehicle> {
    /** Figures that may be needed where an estimate lies at the edge of what can be. */
    private static final int MOST_FURTHER_FIGURES = 6;

    private final Path file;
    private final String text;
    private final ValueTree tree;
    private final Vehicle vehicle;
    private final Optional<CalibrationBlock> calibration;
    /** Words of the values that a study states in place of the file's, by path with counted items. */
    private final Map<String, String> stated;

    private VehicleDocument(Path file, String text, Node top, Map<String, String> stated) {
        this.file = file;
        this.text = text;
        this.stated = Map.copyOf(stated);
        Reading reading = new Reading(file.toString());
        TreeEdit.locate(top, reading);
        vehicle = VehicleFile.described(top, reading);
        tree = new ValueTree(top, reading);
        // a value that is stated anew is not known together with what was calibrated
        calibration = CalibrationBlock.read(top, tree, reading).map(block -> block.without(this.stated.keySet()));
        reading.throwIfAny();
    }

    /**
     * @param file YAML, or JSON if its name ends in {@code .json}
     * @throws InputException as {@link VehicleFile#read}
     */
    public static VehicleDocument read(Path file) {
        Reading reading = new Reading(file.toString());
        Node top = VehicleFile.tree(file, reading);
        reading.throwIfAny();
        return new VehicleDocument(file, TreeFile.text(file, reading), top, Map.of());
    }

    @Override
    public Vehicle asWritten() {
        return vehicle;
    }

    @Override
    public List<NamedValue> values() {
        return tree.values();
    }

    @Override
    public NamedValue value(String path) {
        return tree.value(path);
    }

    /**
     * The value at a path once others have been put in, which may be what puts it there.
     *
     * @throws org.ridewright.quantity.UnfitValueException if there is none, or no such vehicle can be
     */
    NamedValue value(String path, Map<String, String> texts) {
        Node edited = tree.with(texts);
        Reading reading = new Reading(file.toString());
        TreeEdit.locate(edited, reading);
        VehicleFile.described(edited, reading);
        String counted = new TreePath(path).in(edited).get(0);
        return reading.measure(counted)
                .map(measure -> new NamedValue(counted, texts.getOrDefault(path, ""), Optional.of(measure)))
                .orElseGet(() -> value(path));
    }

    @Override
    public List<String> meant(String path) {
        return tree.meant(path);
    }

    /**
     * The same file with other values, which are then as uncertain as they say.
     *
     * @param texts by path; each of a value that the file has
     * @throws org.ridewright.quantity.UnfitValueException as {@link #with}
     */
    VehicleDocument stating(Map<String, String> texts) {
        Map<String, String> all = new LinkedHashMap<>(stated);
        texts.forEach((path, words) -> meant(path).forEach(place -> all.put(place, words)));
        return new VehicleDocument(file, text, tree.with(texts), all);
    }

    /** Words of the values that {@link #stating} put in, by path with counted items. */
    Map<String, String> stated() {
        return stated;
    }

    /** Where it stands. */
    Path file() {
        return file;
    }

    @Override
    public Vehicle with(Map<String, String> texts) {
        Node edited = tree.with(texts);
        Reading reading = new Reading(file.toString());
        TreeEdit.locate(edited, reading);
        return VehicleFile.described(edited, reading);
    }

    /**
     * The paths with counted items that a path means; its last keys need not be there yet.
     *
     * @throws org.ridewright.quantity.UnfitValueException if it leads nowhere, with what is there instead
     */
    public List<String> places(String path) {
        return tree.places(path);
    }

    /**
     * What exchanged single values say, each with its tolerance; groups and words are left out.
     *
     * @param texts as for {@link #with}, by paths with counted items
     * @throws org.ridewright.quantity.UnfitValueException as {@link #with}
     */
    public Map<String, Measure> said(Map<String, String> texts) {
        Node edited = tree.with(texts);
        Reading reading = new Reading(file.toString());
        TreeEdit.locate(edited, reading);
        VehicleFile.described(edited, reading);
        Map<String, Measure> said = new LinkedHashMap<>();
        texts.keySet().forEach(path -> reading.measure(path).ifPresent(measure -> said.put(path, measure)));
        return said;
    }

    /**
     * What is known of all values that have a tolerance, those that were calibrated together with their correlation.
     *
     * @return in the order of the file
     */
    @Override
    public JointSpread spread() {
        List<NamedValue> uncertain = values().stream()
                .filter(value -> value.measure().filter(m -> m.tolerance() > 0).isPresent())
                .toList();
        return calibration.map(block -> block.spread(uncertain)).orElseGet(() -> JointSpread.independent(uncertain));
    }

    /**
     * The file's text with other values, each with its tolerance and provenance; comments and layout stay, decimal numbers keep their unit. A
     * calibration that stood in the file is replaced. Values get so many figures that the vehicle can still be when they are read again.
     *
     * @param values by path
     * @param alongside paths of values that stay as they stand in the file, correlated with these
     * @param correlation of the values that are calibrated, in the order of {@code values}, then of those alongside; 1 × 1 or larger, symmetric
     * @param from where they come from, for the reader of the file
     */
    public String rewritten(Map<String, Measure> values, List<String> alongside, double[][] correlation, String from) {
        for (int further = 0; further <= MOST_FURTHER_FIGURES; further++) {
            TextEdit edit = new TextEdit(text, tree, file, further);
            if (stands(edit.words(values))) {
                return edit.with(values, alongside, correlation, from);
            }
        }
        return new TextEdit(text, tree, file, 0).with(values, alongside, correlation, from);
    }

    private boolean stands(Map<String, String> texts) {
        try {
            with(texts);
            return true;
        } catch (InputException rounded) {
            return false;
        }
    }

    /** The same with nothing alongside. */
    public String rewritten(Map<String, Measure> values, double[][] correlation, String from) {
        return rewritten(values, List.of(), correlation, from);
    }
}
