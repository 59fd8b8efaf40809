package com.github.caciocavallosilano.cacio.peer;

import com.github.caciocavallosilano.cacio.peer.managed.MemFocusManager;
import java.awt.Dialog;

/** A dialog that comes to the front when asked. */
public final class MemDialogPeer extends CacioDialogPeer {
    public MemDialogPeer(Dialog dialog, PlatformWindowFactory windows) {
        super(dialog, windows);
    }

    @Override
    public void toFront() {
        MemFocusManager.raise(platformWindow);
    }

    /** A window is no stop on the way of the focus, so that it begins at the first real component. */
    @Override
    public boolean isFocusable() {
        return MemFocusManager.isDeciding() && super.isFocusable();
    }
}
