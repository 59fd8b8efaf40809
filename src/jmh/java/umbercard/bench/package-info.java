/** Benchmarks: what a drag costs, how right it is, how long a frame takes, and the page that says so. */
@NullMarked
package umbercard.bench;

import org.jspecify.annotations.NullMarked;
