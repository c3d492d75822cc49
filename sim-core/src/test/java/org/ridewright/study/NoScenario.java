package org.ridewright.study;

import java.util.List;
import java.util.Map;
import org.ridewright.quantity.Adjustable;
import org.ridewright.quantity.NamedValue;
import org.ridewright.ride.Scenario;

/** No scenario: for runs that ride none, and for a defect in making one. */
final class NoScenario implements Adjustable<Scenario> {
    @Override
    public Scenario asWritten() {
        throw new UnsupportedOperationException();
    }

    @Override
    public List<NamedValue> values() {
        return List.of();
    }

    @Override
    public NamedValue value(String path) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Scenario with(Map<String, String> texts) {
        throw new UnsupportedOperationException();
    }
}
