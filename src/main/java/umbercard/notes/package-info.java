/**
 * Color notes: the trade's words for what a stick is for, which sticks fit the colors of a study's zones, what to set out for
 * them, and what the sticks set out lack. May use the door and what it stands on.
 */
@NullMarked
package umbercard.notes;

import org.jspecify.annotations.NullMarked;
