/** The sheet on which a person writes down what a vehicle measures in the yard. */
package org.ridewright.sheet;
