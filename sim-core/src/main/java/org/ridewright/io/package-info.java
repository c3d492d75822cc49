/**
 * Files that people write, YAML or JSON, to and from the records of the other packages.
 *
 * <p>A file is read in three steps: its text into a tree of {@link org.ridewright.io.Node nodes} that know their line and column;
 * the tree into records, by one reader for each part; the records through the checks of {@code vehicle.check} and
 * {@code ride}. Each step goes on past what it cannot use, so that one reading names everything that is wrong.
 */
package org.ridewright.io;
