/**
 * Many ride tests that answer one question: what varies, in which order runs are numbered, how they are run on every core and kept, and what
 * their numbers say.
 *
 * <p>A study is a numbered list of runs ({@link org.ridewright.study.Schedule}). Each run is worked out from its number alone, so that it
 * does not matter where, when or beside which others it is ridden. Finished runs go to a journal
 * ({@link org.ridewright.study.Journal}); what is reported is read from there in the order of the numbers, with memory that does not grow with them.
 */
package org.ridewright.study;
