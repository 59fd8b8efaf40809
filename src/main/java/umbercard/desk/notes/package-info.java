/** The color card: strips in the order of application, and their choices. */
@NullMarked
package umbercard.desk.notes;

import org.jspecify.annotations.NullMarked;
