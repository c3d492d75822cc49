/**
 * Roads: what they are made of, and what height the ground has at a station.
 *
 * <p>Symbols: {@code x} station (m); {@code y} lateral position, left positive (m); {@code z}, {@code r(x)} height above the
 * level road (m); {@code h} height of an obstacle (m); {@code L} its length along the road (m); {@code ρ} radius of an arc (m).
 */
package org.ridewright.road;
