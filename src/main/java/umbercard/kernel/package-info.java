/**
 * What holds the plug-ins together: finding them, their order, keeping one that fails from taking others along; and the
 * guard that keeps slow work off the event thread. Uses nothing of ours.
 */
@NullMarked
package umbercard.kernel;

import org.jspecify.annotations.NullMarked;
