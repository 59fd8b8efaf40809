/** The frame on the photograph: the view it is moved, scaled, leveled and mirrored in, by pointer and by keyboard. */
@NullMarked
package umbercard.desk.framing;

import org.jspecify.annotations.NullMarked;
