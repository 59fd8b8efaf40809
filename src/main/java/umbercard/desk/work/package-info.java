/** Long work off the event thread, with progress and a way to stop it. */
@NullMarked
package umbercard.desk.work;

import org.jspecify.annotations.NullMarked;
