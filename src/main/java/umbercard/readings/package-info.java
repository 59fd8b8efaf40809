/** What can be read of a thumbnail, one subpackage a family. Plug-ins behind {@link umbercard.door.Reading}. May use the door and what it stands on, and notes. */
@NullMarked
package umbercard.readings;

import org.jspecify.annotations.NullMarked;
