package com.github.caciocavallosilano.cacio.peer.managed;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedList;
import java.util.List;

/**
 * The windows of the screen, the front one last. The event thread restacks them while another thread looks for the one under
 * the mouse, so whoever walks through them walks through a copy.
 */
@SuppressWarnings("JdkObsolete") // the list it stands in for is declared as this class
final class WindowStack extends LinkedList<ManagedWindow> {
    private WindowStack(List<ManagedWindow> windows) {
        super(windows);
    }

    /** Puts such a list in the place of the plain one, once. */
    static void standIn(ManagedWindowContainer screen) {
        if (screen.getChildren() instanceof WindowStack) {
            return;
        }
        try {
            Field children = AbstractManagedWindowContainer.class.getDeclaredField("children");
            children.setAccessible(true);
            children.set(screen, new WindowStack(new ArrayList<>(screen.getChildren())));
        } catch (ReflectiveOperationException changed) {
            throw new IllegalStateException("the screen keeps its windows in another way", changed);
        }
    }

    @Override
    public synchronized boolean add(ManagedWindow window) {
        return super.add(window);
    }

    @Override
    public synchronized boolean remove(Object window) {
        return super.remove(window);
    }

    @Override
    public Iterator<ManagedWindow> iterator() {
        return copy().iterator();
    }

    @Override
    public Iterator<ManagedWindow> descendingIterator() {
        List<ManagedWindow> windows = copy();
        Collections.reverse(windows);
        return windows.iterator();
    }

    private synchronized List<ManagedWindow> copy() {
        List<ManagedWindow> windows = new ArrayList<>();
        Collections.addAll(windows, super.toArray(new ManagedWindow[0]));
        return windows;
    }
}
