package com.github.caciocavallosilano.cacio.ctc;

import com.github.caciocavallosilano.cacio.peer.CacioMouseInfoPeer;
import com.github.caciocavallosilano.cacio.peer.managed.MemEvent;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** The hands at the screen in memory: one mouse with a wheel, one keyboard. Also reads the screen's pixels. */
public final class MemRobotPeer extends CTCRobotPeer {
    private static final List<Integer> BUTTONS =
            List.of(InputEvent.BUTTON1_DOWN_MASK, InputEvent.BUTTON2_DOWN_MASK, InputEvent.BUTTON3_DOWN_MASK);
    private static final int ANY_BUTTON =
            InputEvent.BUTTON1_DOWN_MASK | InputEvent.BUTTON2_DOWN_MASK | InputEvent.BUTTON3_DOWN_MASK;

    /** Presses nearer than this in place and time count together as one multiple click. */
    private static final int SAME_PLACE_PIXELS = 3;

    private static final long SAME_TIME_MILLIS = 400;

    private static final long PATIENCE_SECONDS = 5;

    private int modifiers;
    private int x;
    private int y;
    private int clicks;
    private int lastButton;
    private int pressX;
    private int pressY;
    private long lastPress;

    /** Returns when the event is in the queue of the toolkit, so that waiting until that is idle needs no pause. */
    private static void post(MemEvent event) {
        send(event);
        CountDownLatch passed = new CountDownLatch(1);
        send(MemEvent.barrier(passed));
        try {
            if (!passed.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new IllegalStateException("the screen in memory takes no more events");
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static void send(MemEvent event) {
        event.setSource(CTCScreen.getInstance());
        event.setTime(System.currentTimeMillis());
        CTCEventSource.getInstance().postEvent(event);
    }

    private void mouse(int id, int button, int count, boolean popup, int wheel) {
        post(MemEvent.mouse(id, modifiers, x, y, button, count, popup, wheel));
    }

    private boolean isNearPress() {
        return Math.abs(x - pressX) < SAME_PLACE_PIXELS && Math.abs(y - pressY) < SAME_PLACE_PIXELS;
    }

    /** The number of the button, 1..3; callers use the old masks and the new ones. */
    @SuppressWarnings("deprecation")
    private static int buttonOf(int mask) {
        if ((mask & (InputEvent.BUTTON1_MASK | InputEvent.BUTTON1_DOWN_MASK)) != 0) {
            return MouseEvent.BUTTON1;
        }
        if ((mask & InputEvent.BUTTON2_DOWN_MASK) != 0 || mask == InputEvent.BUTTON2_MASK) {
            return MouseEvent.BUTTON2;
        }
        return MouseEvent.BUTTON3;
    }

    @Override
    public synchronized void mouseMove(int toX, int toY) {
        x = toX;
        y = toY;
        if (!isNearPress()) {
            lastPress = 0;
        }
        CacioMouseInfoPeer.getInstance().setMouseScreenCoordinates(x, y);
        boolean held = (modifiers & ANY_BUTTON) != 0;
        mouse(held ? MouseEvent.MOUSE_DRAGGED : MouseEvent.MOUSE_MOVED, MouseEvent.NOBUTTON, 0, false, 0);
    }

    @Override
    public synchronized void mousePress(int buttons) {
        int button = buttonOf(buttons);
        long now = System.currentTimeMillis();
        boolean again = button == lastButton && now - lastPress < SAME_TIME_MILLIS && isNearPress();
        clicks = again ? clicks + 1 : 1;
        lastButton = button;
        lastPress = now;
        pressX = x;
        pressY = y;
        modifiers |= BUTTONS.get(button - 1);
        mouse(MouseEvent.MOUSE_PRESSED, button, clicks, button == MouseEvent.BUTTON3, 0);
    }

    @Override
    public synchronized void mouseRelease(int buttons) {
        int button = buttonOf(buttons);
        modifiers &= ~BUTTONS.get(button - 1);
        mouse(MouseEvent.MOUSE_RELEASED, button, clicks, false, 0);
        if (x == pressX && y == pressY) {
            mouse(MouseEvent.MOUSE_CLICKED, button, clicks, false, 0);
        }
    }

    @Override
    public synchronized void mouseWheel(int notches) {
        if (notches != 0) {
            mouse(MouseEvent.MOUSE_WHEEL, MouseEvent.NOBUTTON, 0, false, notches);
        }
    }

    private static int modifierOf(int code) {
        return switch (code) {
            case KeyEvent.VK_SHIFT -> InputEvent.SHIFT_DOWN_MASK;
            case KeyEvent.VK_CONTROL -> InputEvent.CTRL_DOWN_MASK;
            case KeyEvent.VK_ALT -> InputEvent.ALT_DOWN_MASK;
            case KeyEvent.VK_META -> InputEvent.META_DOWN_MASK;
            case KeyEvent.VK_ALT_GRAPH -> InputEvent.ALT_GRAPH_DOWN_MASK;
            default -> 0;
        };
    }

    /** What the key types; the layout knows the old masks only. */
    @SuppressWarnings("deprecation")
    private char charOf(int code) {
        int shift = (modifiers & InputEvent.SHIFT_DOWN_MASK) != 0 ? InputEvent.SHIFT_MASK : 0;
        return KeyStrokeMappingFactory.getInstance().getKeyStrokeMapping().getKeyChar(code, shift);
    }

    @Override
    public synchronized void keyPress(int code) {
        modifiers |= modifierOf(code);
        char typed = charOf(code);
        post(MemEvent.key(KeyEvent.KEY_PRESSED, modifiers, code, typed));
        boolean shortcut = (modifiers & (InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK)) != 0;
        if (typed != KeyEvent.CHAR_UNDEFINED && !shortcut) {
            post(MemEvent.key(KeyEvent.KEY_TYPED, modifiers, KeyEvent.VK_UNDEFINED, typed));
        }
    }

    @Override
    public synchronized void keyRelease(int code) {
        modifiers &= ~modifierOf(code);
        post(MemEvent.key(KeyEvent.KEY_RELEASED, modifiers, code, charOf(code)));
    }

    @Override
    public int getRGBPixel(int atX, int atY) {
        return getRGBPixels(new Rectangle(atX, atY, 1, 1))[0];
    }

    @Override
    public int[] getRGBPixels(Rectangle area) {
        return CTCScreen.getInstance().getRGBPixels(area);
    }
}
