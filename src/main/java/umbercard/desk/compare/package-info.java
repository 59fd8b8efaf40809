/** Thumbnails compared by their readings: two side by side, or all of the study in a table. */
@NullMarked
package umbercard.desk.compare;

import org.jspecify.annotations.NullMarked;
