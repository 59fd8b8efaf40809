/** The command line: everything the desk computes, without a screen. May use everything but the desk. */
@NullMarked
package umbercard.cli;

import org.jspecify.annotations.NullMarked;
