package org.ridewright.vehicle;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/**
 * A spring, or the like pair of them on either side of an axle; figures are those of one.
 *
 * @param name unique on its axle
 * @param damping viscous damping of the spring itself; a coefficient (N·s/m)
 * @param mountHeight height above ground of its eyes or mounts (m)
 * @param motionRatio spring travel over wheel travel, independent wheels only, > 0
 */
public record Spring(
        String name,
        SpringKind kind,
        Attachment attachment,
        Elasticity elasticity,
        Damping damping,
        Friction friction,
        List<GappedStage> stages,
        Optional<Measure> mountHeight,
        Optional<Measure> motionRatio) {
    public Spring {
        stages = List.copyOf(stages);
    }
}
