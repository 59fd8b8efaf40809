package com.github.caciocavallosilano.cacio.peer;

import com.github.caciocavallosilano.cacio.peer.managed.MemFocusManager;
import java.awt.EventQueue;
import java.awt.Frame;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.WindowEvent;
import java.util.Optional;

/** A frame that comes to the front when asked, and can be maximised and brought back. */
public final class MemFramePeer extends CacioFramePeer {
    private int state;
    private Optional<Rectangle> beforeMaximised = Optional.empty();

    public MemFramePeer(Frame frame, PlatformWindowFactory windows) {
        super(frame, windows);
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

    @Override
    public int getState() {
        return state;
    }

    @Override
    public void setState(int wanted) {
        if (wanted == state) {
            return;
        }
        Frame frame = (Frame) getAWTComponent();
        int before = state;
        state = wanted;
        if (isMaximised(wanted)) {
            beforeMaximised = Optional.of(frame.getBounds());
            Rectangle all = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
            EventQueue.invokeLater(() -> frame.setBounds(all));
        } else if (isMaximised(before)) {
            beforeMaximised.ifPresent(bounds -> EventQueue.invokeLater(() -> frame.setBounds(bounds)));
        }
        handlePeerEvent(new WindowEvent(frame, WindowEvent.WINDOW_STATE_CHANGED, before, wanted));
    }

    private static boolean isMaximised(int state) {
        return (state & Frame.MAXIMIZED_BOTH) == Frame.MAXIMIZED_BOTH;
    }
}
