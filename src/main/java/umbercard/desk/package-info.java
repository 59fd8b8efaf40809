/** The window. May use everything but the command line. Swing lives here and nowhere else. */
@NullMarked
package umbercard.desk;

import org.jspecify.annotations.NullMarked;
