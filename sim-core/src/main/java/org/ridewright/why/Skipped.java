package org.ridewright.why;

/**
 * An ingredient that was not swapped.
 *
 * @param name of the ingredient
 * @param reason why; a clause that begins in lower case
 */
public record Skipped(String name, String reason) {}
