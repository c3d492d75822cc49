package org.ridewright.dynamics;

/**
 * What an accelerometer fixed at a point of the body and zeroed at rest reads: {@code a_z} from the rise,
 * {@code a_x = (z_P − z_pitch) θ̈ − g θ}, {@code a_y = −(z_P − z_roll) φ̈ + g φ}, to which surge and sway
 * add ξ̈ and ÿ where they are coordinates. Each is a row on accelerations plus a row on
 * displacements from rest.
 *
 * @param rise row of the rise; a_z is this row on q̈
 * @param longitudinal row of a_x on q̈
 * @param longitudinalTilt row of a_x on q
 * @param lateral row of a_y on q̈
 * @param lateralTilt row of a_y on q
 */
public record PointMotion(
        double[] rise, double[] longitudinal, double[] longitudinalTilt, double[] lateral, double[] lateralTilt) {}
