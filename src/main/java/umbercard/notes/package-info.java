/** Color notes: the trade's words for what a stick is for. May use the door and what it stands on. */
@NullMarked
package umbercard.notes;

import org.jspecify.annotations.NullMarked;
