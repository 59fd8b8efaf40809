/** The color card, and the box that opens over it. */
@NullMarked
package umbercard.desk.notes;

import org.jspecify.annotations.NullMarked;
