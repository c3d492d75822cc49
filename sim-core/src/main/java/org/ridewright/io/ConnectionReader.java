package org.ridewright.io;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Connection;
import org.ridewright.vehicle.Connection.Interconnection;
import org.ridewright.vehicle.Connection.SideSpring;
import org.ridewright.vehicle.Connection.Tip;
import org.ridewright.vehicle.Connection.UndercarriageTwist;
import org.ridewright.vehicle.Damping;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.Layout;

/** Reads {@code connections}, the parts that join axles. */
record ConnectionReader(Layout layout) {
    private static final String TWIST = "undercarriage twist";
    private static final String SIDE_SPRING = "side spring";
    private static final String INTERCONNECTION = "interconnection";
    private static final Words<String> KINDS =
            Words.of("a kind of connection", List.of(TWIST, SIDE_SPRING, INTERCONNECTION), word -> word);
    private static final String[] TWIST_KEYS = {"name", "kind", "front axle", "rear axle", "rate", "damping", "friction"
    };
    private static final String[] SIDE_SPRING_KEYS = {"name", "kind", "front axle", "rear axle", "side", "apart", "tips"
    };
    private static final String[] TIP_KEYS = {
        "behind front axle",
        "kind",
        "rate",
        "table",
        "leaves",
        "wire",
        "bar",
        "gas",
        "damping",
        "friction",
        "helper",
        "bump stop",
        "droop stop"
    };
    private static final String[] INTERCONNECTION_KEYS = {
        "name",
        "kind",
        "terms",
        "rate",
        "table",
        "leaves",
        "wire",
        "bar",
        "gas",
        "damping",
        "friction",
        "helper",
        "bump stop",
        "droop stop"
    };

    List<Connection> read(Part vehicle) {
        List<Node> items = vehicle.items("connections", "a connection after each dash");
        boolean only = items.size() == 1;
        return items.stream()
                .map(node -> connection(vehicle.reading(), node, only))
                .toList();
    }

    private Connection connection(Reading reading, Node node, boolean only) {
        Optional<String> kind = kind(reading, node);
        if (kind.isEmpty()) {
            reading.spoil(node.path());
            return standIn();
        }
        String[] keys = keys(kind.get());
        Part part = Part.of(reading, node, Hints.article(kind.get()) + " " + kind.get(), keys);
        return switch (kind.get()) {
            case TWIST -> twist(part, only);
            case SIDE_SPRING -> sideSpring(part, only);
            default -> interconnection(part, only);
        };
    }

    /** Keeps the place of a connection that could not be read. */
    private static Connection standIn() {
        return new Interconnection(
                "",
                List.of(),
                new Elasticity.Rate(Values.standIn(QuantityKind.RATE)),
                new Damping.NotGiven(),
                FrictionReader.ofSpring().none(),
                List.of());
    }

    /** The kind, looked up before the keys can be judged, since it says which there are. */
    private static Optional<String> kind(Reading reading, Node node) {
        Node.Entry entry =
                node instanceof Node.Mapping mapping ? mapping.entries().get("kind") : null;
        if (entry == null) {
            reading.problem(
                    node,
                    "",
                    "has no kind",
                    "kind, one of: " + KINDS.listed(),
                    "add the line kind: ... to the connection");
            return Optional.empty();
        }
        return new Values(reading).word(entry.value(), KINDS);
    }

    private static String[] keys(String kind) {
        return switch (kind) {
            case TWIST -> TWIST_KEYS;
            case SIDE_SPRING -> SIDE_SPRING_KEYS;
            default -> INTERCONNECTION_KEYS;
        };
    }

    private static Connection twist(Part part, boolean only) {
        return new UndercarriageTwist(
                part.name(only, TWIST),
                part.text("front axle", "the name of an axle"),
                part.text("rear axle", "the name of an axle"),
                part.measure("rate", QuantityKind.ROLL_RATE),
                new DampingReader("damping").read(part, QuantityKind.ROLL_DAMPING),
                FrictionReader.ofJoint().read(part));
    }

    private Connection sideSpring(Part part, boolean only) {
        if (!part.has("tips")) {
            part.missing("tips", "a list of one or two tips");
        }
        return new SideSpring(
                part.name(only, SIDE_SPRING),
                part.text("front axle", "the name of an axle"),
                part.text("rear axle", "the name of an axle"),
                new AttachmentReader(!layout.rolls()).read(part),
                part.parts("tips", "a tip", TIP_KEYS).stream()
                        .map(ConnectionReader::tip)
                        .toList());
    }

    private static Tip tip(Part part) {
        return new Tip(
                part.measure("behind front axle", QuantityKind.LENGTH),
                SpringReader.kind(part),
                ElasticityReader.read(part),
                new DampingReader("damping").read(part),
                FrictionReader.ofSpring().read(part),
                StageReader.read(part));
    }

    private Connection interconnection(Part part, boolean only) {
        return new Interconnection(
                part.name(only, INTERCONNECTION),
                new TermReader(layout).read(part),
                ElasticityReader.read(part),
                new DampingReader("damping").read(part),
                FrictionReader.ofSpring().read(part),
                StageReader.read(part));
    }
}
