package com.github.caciocavallosilano.cacio.peer.managed;

import java.awt.Component;
import java.awt.Dialog;
import java.awt.Window;
import java.util.List;
import java.util.stream.Stream;

/** Clicking or raising another window activates it; a window blocked by a modal dialog never takes the focus. */
public final class MemFocusManager extends FocusManager {
    private static boolean deciding;

    /** Whether the focus is just being given to a window: only then may a window itself take it. */
    public static boolean isDeciding() {
        return deciding;
    }

    @Override
    void setFocusedWindowNoEvent(ManagedWindow window) {
        if (deciding || window == null) {
            super.setFocusedWindowNoEvent(window);
        } else if (window != getFocusedWindow() && !isBlocked(window)) {
            setFocusedWindow(window);
        }
    }

    @Override
    void setFocusedWindow(ManagedWindow window) {
        deciding = true;
        try {
            super.setFocusedWindow(window);
        } finally {
            deciding = false;
        }
    }

    private static boolean isBlocked(ManagedWindow window) {
        Component asked = window.getCacioComponent().getAWTComponent();
        return Stream.of(Window.getWindows())
                .filter(other -> other instanceof Dialog dialog && dialog.isModal())
                .anyMatch(dialog -> dialog.isShowing() && dialog != asked && !isOwned(asked, dialog));
    }

    private static boolean isOwned(Component component, Window owner) {
        for (Component each = component; each != null; each = each.getParent()) {
            if (each == owner) {
                return true;
            }
        }
        return false;
    }

    /**
     * Moves the window and, above it, those that it owns to the top of the stack and activates it, unless it is hidden or
     * blocked. So an open list stays in front of the dialog that it belongs to.
     */
    public static void raise(Object platformWindow) {
        ManagedWindow window = (ManagedWindow) platformWindow;
        if (!window.isVisible() || isBlocked(window)) {
            return;
        }
        ManagedWindowContainer stack = window.getParent();
        WindowStack.standIn(stack);
        if (stack.getChildren().peekLast() != window) {
            lift(window, stack);
            Window owner = (Window) window.getCacioComponent().getAWTComponent();
            List.copyOf(stack.getChildren()).stream()
                    .filter(other -> other != window)
                    .filter(other -> isOwned(other.getCacioComponent().getAWTComponent(), owner))
                    .forEach(owned -> lift(owned, stack));
        }
        if (FocusManager.getInstance().getFocusedWindow() != window) {
            FocusManager.getInstance().setFocusedWindow(window);
        }
    }

    private static void lift(ManagedWindow window, ManagedWindowContainer stack) {
        stack.remove(window);
        stack.add(window);
    }
}
