/** Color notes made from those that are there. */
@NullMarked
package umbercard.notes.turned;

import org.jspecify.annotations.NullMarked;
