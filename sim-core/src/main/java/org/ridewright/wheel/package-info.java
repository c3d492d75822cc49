/**
 * What a wheel makes of the road: the path of its centre, and its contact.
 *
 * <p>Symbols: {@code X} station of the wheel centre (m); {@code x} station of the point touched (m); {@code r(x)} height of the
 * road (m); {@code u(X)} height of the wheel path, 0 on the level (m); {@code R} radius of the wheel (m); {@code α} slope angle
 * of the road where it is touched (rad); {@code a} half length of the footprint (m); {@code k} contact rate (N/m); {@code d}
 * contact damping (N·s/m); {@code ζ} damping ratio; {@code e} restitution; {@code m_e} effective mass (kg).
 *
 * <p>The path of a rigid disc, {@code u(X) = max over |x − X| ≤ R of r(x) + √(R² − (x − X)²) − R}, is found exactly rather than
 * by trying stations. At the maximum the disc touches either a smooth section of road, where its radius to the contact point is normal to
 * the road,
 *
 * <pre>
 *   tan α = r′(x),   X = x − R sin α,   u = r(x) + R cos α − R,   du/dX = tan α,   dX/dx = 1 − R κ(x)
 * </pre>
 *
 * so that the path is the road's parallel curve, and only where its curvature κ is below 1/R; or a corner, on which it turns through
 * all angles between the slopes on both sides, an upright side counting as ±90°. Features that follow one another with falling or
 * equal slope make one {@link org.ridewright.wheel.TouchChain chain}: a smooth path (continuous slope). Chains end where the
 * slope rises at a joint, at the low side of an upright face, and where the road is hollower than the wheel is round.
 *
 * <p>For any two points of the road the one further on gains on the other as X grows, because the slope of a disc's rim grows along
 * it. Hence two chains cross once at most, the one further on is the upper one afterwards, and the path is the upper envelope of the
 * chains, found in one pass. Where chains cross, the wheel touches in two places and the path has a concave kink.
 */
package org.ridewright.wheel;
