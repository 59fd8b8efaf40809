/** What the pointer does on the thumbnail, as plain gestures turned into edits. No toolkit here. */
@NullMarked
package umbercard.desk.instruments;

import org.jspecify.annotations.NullMarked;
