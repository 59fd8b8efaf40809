/**
 * What notes come to laid one over the other: a rough guide to the color and value that each zone ends in, and a trial of the
 * painting. May use the notes and what they stand on.
 */
@NullMarked
package umbercard.notes.layers;

import org.jspecify.annotations.NullMarked;
