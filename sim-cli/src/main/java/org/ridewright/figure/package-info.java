/**
 * Figures as data, and the one style they are printed in.
 *
 * <p>A {@link org.ridewright.figure.Figure} says what is seen; {@link org.ridewright.figure.FigureWriter} makes SVG, PNG
 * and PDF of it. The way there has three stages: {@code FigureLayout} places panels, {@code PanelPainter} draws them on a
 * {@code Sheet} of outlines, and one writer per format puts the sheet into bytes. All lengths on a sheet are points
 * (1/72 inch), x to the right and y down from the upper left corner.
 *
 * <p>Names, titles, quantities and units may hold raised and lowered pieces: {@code m/s^{1.75}}, {@code a_{w}}.
 */
package org.ridewright.figure;
