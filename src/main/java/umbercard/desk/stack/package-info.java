/** The stack of thumbnails. */
@NullMarked
package umbercard.desk.stack;

import org.jspecify.annotations.NullMarked;
