/**
 * Which of a vehicle's values, if it were measured, would narrow an answer most.
 *
 * <p>Each value {@code x_i} is put one standard uncertainty up and down while the others stay, and the answer {@code y} is worked out anew. Its
 * contribution to the variance of the answer is {@code u_i² = ½ (Δ₊² + Δ₋²)}, which is {@code (∂y/∂x_i · u(x_i))²} where y is straight
 * within the tolerance; the share of a value is {@code u_i² / Σ u_j²}. Values are taken as independent of one another.
 *
 * <p>Source: JCGM 100:2008 (GUM), 5.1.2 and 5.1.3.
 */
package org.ridewright.narrowing;
