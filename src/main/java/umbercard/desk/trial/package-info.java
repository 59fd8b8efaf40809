/** The trial: the thumbnail painted with the color notes, beside the squinted reference. */
@NullMarked
package umbercard.desk.trial;

import org.jspecify.annotations.NullMarked;
