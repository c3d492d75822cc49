package org.ridewright.vehicle;

import java.util.List;
import org.ridewright.quantity.Measure;

/**
 * What scales under the axles showed.
 *
 * @param loadCase name of the load case that was aboard; empty text for nobody and nothing
 * @param axleLoads mass shown under each axle (kg), in the order of the axles
 * @param hitchLoad mass shown under the hitch or shafts (kg), zero where there is none
 */
public record Weighbridge(String loadCase, List<Measure> axleLoads, Measure hitchLoad) {
    public Weighbridge {
        axleLoads = List.copyOf(axleLoads);
    }
}
