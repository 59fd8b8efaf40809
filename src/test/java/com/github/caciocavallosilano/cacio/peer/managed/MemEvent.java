package com.github.caciocavallosilano.cacio.peer.managed;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;

/**
 * An event of the robot, with the modifiers, button and wheel that a real one would carry. The window that a button went
 * down in keeps the mouse until the last button is up.
 */
public final class MemEvent extends EventData {
    private static final int ANY_BUTTON =
            InputEvent.BUTTON1_DOWN_MASK | InputEvent.BUTTON2_DOWN_MASK | InputEvent.BUTTON3_DOWN_MASK;
    private static final int LINES_A_NOTCH = 3;

    /** The window that keeps the mouse; null while no button is down. */
    private static ManagedWindow keeper;

    private final int modifiers;
    private final int screenX;
    private final int screenY;
    private final int button;
    private final int wheel;
    private final Optional<CountDownLatch> passed;

    private MemEvent(int id, int modifiers, int x, int y, int button, int wheel, Optional<CountDownLatch> passed) {
        setId(id);
        setX(x);
        setY(y);
        this.modifiers = modifiers;
        this.screenX = x;
        this.screenY = y;
        this.button = button;
        this.wheel = wheel;
        this.passed = passed;
    }

    /** What the mouse does at a place of the screen, in pixels; {@code wheel} in notches, away from the hand below 0. */
    public static MemEvent mouse(
            int id, int modifiers, int x, int y, int button, int clicks, boolean popup, int wheel) {
        MemEvent event = new MemEvent(id, modifiers, x, y, button, wheel, Optional.empty());
        event.setClickCount(clicks);
        event.setPopup(popup);
        return event;
    }

    /** What a key does. */
    public static MemEvent key(int id, int modifiers, int code, char typed) {
        MemEvent event = new MemEvent(id, modifiers, 0, 0, MouseEvent.NOBUTTON, 0, Optional.empty());
        event.setKeyCode(code);
        event.setKeyChar(typed);
        return event;
    }

    /** Does nothing but tell when every event before it has been delivered. */
    public static MemEvent barrier(CountDownLatch passed) {
        MemEvent event = new MemEvent(0, 0, 0, 0, MouseEvent.NOBUTTON, 0, Optional.of(passed));
        event.setKeyChar(KeyEvent.CHAR_UNDEFINED);
        return event;
    }

    private boolean isMouse() {
        return getId() >= MouseEvent.MOUSE_FIRST && getId() <= MouseEvent.MOUSE_LAST;
    }

    /** Called by the poster with the screen, then by the thread that delivers, with what stands at that place. */
    @Override
    public void setSource(Object source) {
        if (!(source instanceof PlatformScreen)) {
            passed.ifPresent(CountDownLatch::countDown);
        }
        boolean isStack = source instanceof AbstractManagedWindowContainer && !(source instanceof ManagedWindow);
        if (isMouse() && isStack && isKept((AbstractManagedWindowContainer) source)) {
            super.setSource(keeper);
            setX(screenX - keeper.getBounds().x);
            setY(screenY - keeper.getBounds().y);
            if (getId() == MouseEvent.MOUSE_RELEASED && (modifiers & ANY_BUTTON) == 0) {
                keeper = null;
            }
        } else {
            super.setSource(source);
        }
    }

    private boolean isKept(AbstractManagedWindowContainer stack) {
        if (getId() == MouseEvent.MOUSE_PRESSED && keeper == null) {
            keeper = stack.findWindowAt(screenX, screenY);
        }
        return keeper != null && (getId() == MouseEvent.MOUSE_DRAGGED || getId() == MouseEvent.MOUSE_RELEASED);
    }

    @Override
    public AWTEvent createAWTEvent() {
        Component source = (Component) getSource();
        if (getId() == MouseEvent.MOUSE_WHEEL) {
            return wheelEvent(source);
        }
        return isMouse() ? mouseEvent(source) : keyEvent(source);
    }

    private AWTEvent wheelEvent(Component source) {
        return new MouseWheelEvent(
                source,
                getId(),
                getTime(),
                modifiers,
                getX(),
                getY(),
                0,
                false,
                MouseWheelEvent.WHEEL_UNIT_SCROLL,
                LINES_A_NOTCH,
                wheel);
    }

    private AWTEvent mouseEvent(Component source) {
        return new MouseEvent(
                source,
                getId(),
                getTime(),
                modifiers,
                getX(),
                getY(),
                screenX,
                screenY,
                getClickCount(),
                isPopup(),
                button);
    }

    private AWTEvent keyEvent(Component source) {
        int location = getId() == KeyEvent.KEY_TYPED ? KeyEvent.KEY_LOCATION_UNKNOWN : KeyEvent.KEY_LOCATION_STANDARD;
        return new KeyEvent(source, getId(), getTime(), modifiers, getKeyCode(), getKeyChar(), location);
    }
}
