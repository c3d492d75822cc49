/**
 * Roads: what they are made of, and what height the ground has at a station.
 *
 * <p>A {@link org.ridewright.road.Road} describes; {@link org.ridewright.road.RoadTracks} lays it out along the tracks of a vehicle; a
 * {@link org.ridewright.road.Track} gives a {@link org.ridewright.road.RoadProfile} for any window. Surfaces are cubics between joints that
 * do not depend on the window; chance is looked up by seed and place, in strict arithmetic.
 *
 * <p>Symbols: {@code x} station (m); {@code y} lateral position, left positive (m); {@code z}, {@code r(x)} height above the
 * level road (m); {@code h} height of an obstacle (m); {@code L} its length along the road (m); {@code ρ} radius of an arc (m); {@code n}
 * wavenumber (cycle/m), {@code n₀} = 0.1 cycle/m; {@code G(n)} one-sided spectral density of the height (m³); {@code w} waviness; {@code g}
 * cross spectrum of two tracks over the spectrum of one; {@code d} spacing of a grid (m).
 */
package org.ridewright.road;
