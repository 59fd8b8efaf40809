package com.github.caciocavallosilano.cacio.ctc;

import com.github.caciocavallosilano.cacio.peer.MemDialogPeer;
import com.github.caciocavallosilano.cacio.peer.MemFramePeer;
import java.awt.Cursor;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.Frame;
import java.awt.GraphicsDevice;
import java.awt.Image;
import java.awt.Point;

/**
 * A toolkit that draws on a screen in memory. Adds to its parent what the UI tests need and it lacks: cursors of our own,
 * windows that can be maximised and raised, and a robot that turns the wheel, holds Alt and reads pixels. Return types are
 * classes rather than the interfaces of the runtime's insides, of which the compiler warns without end.
 */
public final class MemToolkit extends CTCToolkit {
    private final MemRobotPeer robot = new MemRobotPeer();

    private static final class NamedCursor extends Cursor {
        NamedCursor(String name) {
            super(name);
        }
    }

    /** Windows stand without title bars, which would overpaint their contents after a change of the look and feel. */
    public MemToolkit() {
        setDecorateWindows(false);
    }

    /** Every robot moves the same mouse and strikes the same keys, as on a real screen. */
    @Override
    public MemRobotPeer createRobot(GraphicsDevice screen) {
        return robot;
    }

    @Override
    public Cursor createCustomCursor(Image image, Point hotSpot, String name) {
        return new NamedCursor(name);
    }

    @Override
    public Dimension getBestCursorSize(int width, int height) {
        return new Dimension(32, 32);
    }

    @Override
    public int getMaximumCursorColors() {
        return 1 << 24;
    }

    @Override
    public boolean isFrameStateSupported(int state) {
        return true;
    }

    @Override
    public MemFramePeer createFrame(Frame target) {
        MemFramePeer peer = new MemFramePeer(target, getPlatformWindowFactory());
        targetCreatedPeer(target, peer);
        return peer;
    }

    @Override
    public MemDialogPeer createDialog(Dialog target) {
        MemDialogPeer peer = new MemDialogPeer(target, getPlatformWindowFactory());
        targetCreatedPeer(target, peer);
        return peer;
    }
}
