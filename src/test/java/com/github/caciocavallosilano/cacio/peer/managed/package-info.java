/** What must live beside the window manager of the screen in memory to extend it: focus and events. */
package com.github.caciocavallosilano.cacio.peer.managed;
