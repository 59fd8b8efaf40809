/**
 * What the color notes lead to: the sky turned over for the water, sky colors that return in the ground, planes that should
 * part, and notes made of matched sticks. May use the notes and what they stand on.
 */
@NullMarked
package umbercard.notes.turned;

import org.jspecify.annotations.NullMarked;
