/**
 * Outlines, exact regions and what can be measured of them. Plane geometry without a unit of its own; y runs down. Uses
 * nothing of ours; the overlay library stays behind {@link umbercard.geometry.Region}. Where to begin:
 *
 * <ul>
 *   <li>Drawn curves: {@link umbercard.geometry.Outline} and {@link umbercard.geometry.Path}; a hand's strokes become them by
 *       {@link umbercard.geometry.CurveFit} and {@link umbercard.geometry.BorderClosing}, and move by
 *       {@link umbercard.geometry.Warp}.
 *   <li>What they fill, precisely: {@link umbercard.geometry.Region}, over {@code Flattening}, {@code Overlay} for whole drawings
 *       and {@code Patch} for small changes; {@code Terraces} where all else fails.
 *   <li>What they fill, at once: {@link umbercard.geometry.Hatch} and the stretches of its lines.
 *   <li>What is measured of regions: {@link umbercard.geometry.Moments}, {@link umbercard.geometry.FrameContact},
 *       {@link umbercard.geometry.Crossings}, {@link umbercard.geometry.Borderline}, {@link umbercard.geometry.Gap},
 *       {@link umbercard.geometry.Masses}, {@link umbercard.geometry.MirrorOverlap}.
 * </ul>
 */
@NullMarked
package umbercard.geometry;

import org.jspecify.annotations.NullMarked;
