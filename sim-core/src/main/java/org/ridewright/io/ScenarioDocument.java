package org.ridewright.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.ridewright.quantity.Adjustable;
import org.ridewright.quantity.JointSpread;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.ride.Scenario;
import org.ridewright.uncertainty.DrawnScenarios;
import org.ridewright.vehicle.Vehicle;

/**
 * A scenario file of which each value can be looked up by its path and exchanged, and those of its vehicles, whose paths begin with the
 * entrant: {@code vehicles[0].vehicle.axles[front].springs[0].rate}. Vehicles of one file change one by one.
 */
public final class ScenarioDocument implements Adjustable<Scenario>, DrawnScenarios {
    private static final Pattern OF_VEHICLE = Pattern.compile("(vehicles\\[[^\\]]*])\\.vehicle\\.(.+)");

    private final Path file;
    private final ValueTree tree;
    private final Scenario scenario;
    /** Of every vehicle file that was read, those that a change names included. */
    private final Map<Path, VehicleDocument> documents = new ConcurrentHashMap<>();

    private final Set<Path> roadFiles = ConcurrentHashMap.newKeySet();
    private final List<VehicleDocument> vehicles = new ArrayList<>();
    private final JointSpread own;
    private final Map<VehicleDocument, JointSpread> spreads = new LinkedHashMap<>();

    /** Words of its own values that a study states in place of the file's, by path with counted items. */
    private final Map<String, String> stated;

    private ScenarioDocument(
            Path file, Node top, Map<String, String> stated, IntFunction<Map<String, String>> ofVehicles) {
        this.file = file;
        this.stated = Map.copyOf(stated);
        Reading reading = new Reading(file.toString());
        TreeEdit.locate(top, reading);
        scenario = ScenarioFile.described(
                top,
                reading,
                file,
                (index, path) -> {
                    VehicleDocument written = documents.computeIfAbsent(path, VehicleDocument::read);
                    Map<String, String> texts = ofVehicles.apply(index);
                    VehicleDocument document = texts.isEmpty() ? written : written.stating(texts);
                    vehicles.add(document);
                    return document.asWritten();
                },
                roadFiles::add);
        tree = new ValueTree(top, reading);
        own = JointSpread.independent(tree.values().stream()
                .filter(value -> value.measure().filter(m -> m.tolerance() > 0).isPresent())
                .toList());
        vehicles.forEach(vehicle -> spreads.computeIfAbsent(vehicle, VehicleDocument::spread));
    }

    /**
     * @param file YAML, or JSON if its name ends in {@code .json}
     * @throws InputException as {@link ScenarioFile#read}
     */
    public static ScenarioDocument read(Path file) {
        Reading reading = new Reading(file.toString());
        Node top = ScenarioFile.tree(file, reading);
        reading.throwIfAny();
        return new ScenarioDocument(file, top, Map.of(), index -> Map.of());
    }

    @Override
    public Scenario asWritten() {
        return scenario;
    }

    /** The file's name, without folders. */
    String fileName() {
        return file.getFileName().toString();
    }

    /** The files of its vehicles, in the order of the scenario. */
    public List<VehicleDocument> vehicles() {
        return List.copyOf(vehicles);
    }

    /**
     * The same file with other values, which are then as uncertain as they say, and other vehicle files, whose values are as uncertain as those say.
     *
     * @param texts by path; each of a value that the file has
     * @throws UnfitValueException as {@link #with}
     */
    ScenarioDocument stating(Map<String, String> texts) {
        Split split = new Split(texts);
        Map<String, String> counted = new LinkedHashMap<>(stated);
        split.own.forEach((path, words) -> tree.meant(path).forEach(place -> counted.put(place, words)));
        return new ScenarioDocument(
                file,
                tree.with(split.own),
                counted,
                index -> index < split.ofVehicles.size() ? split.ofVehicles.get(index) : Map.of());
    }

    /** Words of the values that {@link #stating} put in, by path with counted items. */
    Map<String, String> stated() {
        return stated;
    }

    /** A path of a vehicle's value that calls the vehicle by its number; other paths as they are. */
    String numbered(String path) {
        Matcher ofVehicle = OF_VEHICLE.matcher(path.strip());
        if (!ofVehicle.matches() || ofVehicle.group(1).contains("*")) {
            return path;
        }
        return vehiclePath(entrants(ofVehicle.group(1)).get(0), ofVehicle.group(2));
    }

    /** Where it stands. */
    Path file() {
        return file;
    }

    /** Every file that was read so far: its own, and those that it or a change to it names. */
    Set<Path> files() {
        Set<Path> files = new LinkedHashSet<>();
        files.add(file);
        files.addAll(documents.keySet());
        files.addAll(roadFiles);
        return files;
    }

    /** What is known of its own values that have a tolerance, those of its vehicles left out. */
    JointSpread ownSpread() {
        return own;
    }

    /** Path of the values of entrant {@code index}. */
    public static String vehiclePath(int index, String path) {
        return "vehicles[" + index + "].vehicle." + path;
    }

    @Override
    public List<NamedValue> values() {
        List<NamedValue> values = new ArrayList<>(tree.values());
        for (int i = 0; i < vehicles.size(); i++) {
            for (NamedValue value : vehicles.get(i).values()) {
                values.add(new NamedValue(vehiclePath(i, value.path()), value.written(), value.measure()));
            }
        }
        return values;
    }

    @Override
    public NamedValue value(String path) {
        Matcher ofVehicle = OF_VEHICLE.matcher(path.strip());
        if (!ofVehicle.matches()) {
            return tree.value(path);
        }
        int index = entrants(ofVehicle.group(1)).get(0);
        NamedValue value = vehicles.get(index).value(ofVehicle.group(2));
        return new NamedValue(vehiclePath(index, value.path()), value.written(), value.measure());
    }

    /**
     * The value of a vehicle at a path once others have been put in, which may be what puts it there.
     *
     * @throws UnfitValueException if there is none
     */
    NamedValue value(String path, Map<String, String> texts) {
        Matcher ofVehicle = OF_VEHICLE.matcher(path.strip());
        if (!ofVehicle.matches()) {
            return value(path);
        }
        int index = entrants(ofVehicle.group(1)).get(0);
        Map<String, String> own = new LinkedHashMap<>();
        texts.forEach((at, text) -> {
            Matcher other = OF_VEHICLE.matcher(at.strip());
            if (other.matches() && entrants(other.group(1)).contains(index)) {
                own.put(other.group(2), text);
            }
        });
        NamedValue value = vehicles.get(index).value(ofVehicle.group(2), own);
        return new NamedValue(vehiclePath(index, value.path()), value.written(), value.measure());
    }

    @Override
    public List<String> meant(String path) {
        Matcher ofVehicle = OF_VEHICLE.matcher(path.strip());
        return ofVehicle.matches()
                ? entrants(ofVehicle.group(1)).stream()
                        .flatMap(i -> vehicles.get(i).meant(ofVehicle.group(2)).stream()
                                .map(p -> vehiclePath(i, p)))
                        .toList()
                : tree.meant(path);
    }

    @Override
    public Scenario with(Map<String, String> texts) {
        Split split = new Split(texts);
        Node edited = tree.with(split.own);
        Reading reading = new Reading(file.toString());
        TreeEdit.locate(edited, reading);
        return ScenarioFile.described(
                edited, reading, file, (i, path) -> vehicle(i, path, split.ofVehicles), roadFiles::add);
    }

    /** Changes to the scenario's own file, and to each of its vehicles. */
    private final class Split {
        private final Map<String, String> own = new LinkedHashMap<>();
        private final List<Map<String, String>> ofVehicles = IntStream.range(0, vehicles.size())
                .<Map<String, String>>mapToObj(i -> new LinkedHashMap<>())
                .toList();

        Split(Map<String, String> texts) {
            texts.forEach((path, text) -> {
                Matcher ofVehicle = OF_VEHICLE.matcher(path.strip());
                if (ofVehicle.matches()) {
                    entrants(ofVehicle.group(1)).forEach(i -> ofVehicles.get(i).put(ofVehicle.group(2), text));
                } else {
                    own.put(path, text);
                }
            });
        }
    }

    @Override
    public int uncertainValues() {
        return own.size()
                + spreads.values().stream().mapToInt(JointSpread::size).sum();
    }

    /** Vehicles of one file are drawn alike. */
    @Override
    public Scenario drawn(double[] w) {
        Map<String, String> texts = new LinkedHashMap<>(own.texts(Arrays.copyOf(w, own.size())));
        int next = own.size();
        for (Map.Entry<VehicleDocument, JointSpread> each : spreads.entrySet()) {
            int size = each.getValue().size();
            Map<String, String> drawn = each.getValue().texts(Arrays.copyOfRange(w, next, next + size));
            next += size;
            for (int i = 0; i < vehicles.size(); i++) {
                if (vehicles.get(i).equals(each.getKey())) {
                    int index = i;
                    drawn.forEach((path, text) -> texts.put(vehiclePath(index, path), text));
                }
            }
        }
        return with(texts);
    }

    /** Of the file that the scenario named from the first, unless the change names another. */
    private Vehicle vehicle(int index, Path path, List<Map<String, String>> changes) {
        VehicleDocument known =
                index < vehicles.size() && vehicles.get(index).file().equals(path)
                        ? vehicles.get(index)
                        : documents.computeIfAbsent(path, VehicleDocument::read);
        Map<String, String> changed = index < changes.size() ? changes.get(index) : Map.of();
        return changed.isEmpty() ? known.asWritten() : known.with(changed);
    }

    /** The vehicles that {@code vehicles[...]} means, by their number, their file's name, or their own. */
    private List<Integer> entrants(String step) {
        String word = step.substring("vehicles[".length(), step.length() - 1).strip();
        List<Integer> named = IntStream.range(0, vehicles.size())
                .filter(i -> called(i).contains(word))
                .boxed()
                .toList();
        return named.isEmpty()
                ? new TreePath(step)
                        .in(tree.top()).stream()
                                .map(path -> Integer.valueOf(path.replaceAll("\\D", "")))
                                .toList()
                : onlyOne(named, word);
    }

    private static List<Integer> onlyOne(List<Integer> named, String word) {
        if (named.size() > 1) {
            throw new UnfitValueException(named.size() + " vehicles of the scenario are called " + word
                    + "; use their number, as in vehicles[" + named.get(0) + "]");
        }
        return named;
    }

    private List<String> called(int index) {
        String name =
                Path.of(scenario.entrants().get(index).file()).getFileName().toString();
        return List.of(vehicles.get(index).asWritten().name(), name, name.replaceFirst("\\.[^.]*$", ""));
    }
}
