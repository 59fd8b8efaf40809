/**
 * The screen that the UI tests draw on. With the system property {@code ui.screen} at {@code memory} on Java 17 it lies in
 * memory and needs no display server; otherwise it is the machine's own display, and where there is none those tests are
 * skipped and say so.
 */
package umbercard.screen;
