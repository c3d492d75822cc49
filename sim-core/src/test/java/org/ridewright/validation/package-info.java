/**
 * Reference problems whose answers are known from elsewhere, and the table that sets the program's numbers beside them.
 *
 * <p>A problem is a {@link org.ridewright.validation.ReferenceProblem}: equation and closed solution in its Javadoc, a list of
 * {@link org.ridewright.validation.Check}s from production classes, and of the reference apart. It is entered in {@link org.ridewright.validation.Validation};
 * test and table follow by themselves.
 */
package org.ridewright.validation;
