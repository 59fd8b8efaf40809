/**
 * Outlines, exact regions and what can be measured of them: area, centroid, pieces, distances. Plane geometry without a
 * unit of its own; y runs down. Uses nothing of ours; the overlay library stays behind {@link umbercard.geometry.Region}.
 */
@NullMarked
package umbercard.geometry;

import org.jspecify.annotations.NullMarked;
