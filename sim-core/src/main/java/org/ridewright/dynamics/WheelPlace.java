package org.ridewright.dynamics;

import org.ridewright.wheel.Contact;

/**
 * A wheel on the road.
 *
 * @param axle index of its axle
 * @param x place, forward of the front axle (m)
 * @param y place, left of the centre line (m)
 * @param element index of its contact
 * @param input index of the height that its path gives
 * @param contact rate and damping on this ground
 */
public record WheelPlace(String name, int axle, double x, double y, int element, int input, Contact contact) {}
