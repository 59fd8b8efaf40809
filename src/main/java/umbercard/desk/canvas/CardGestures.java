package umbercard.desk.canvas;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.SwingUtilities;
import umbercard.desk.canvas.NotanCard.Bare;
import umbercard.door.Gesture;
import umbercard.door.Gesture.Act;
import umbercard.door.Gesture.With;
import umbercard.geometry.Point;

/** Turns the pointer and the keys on the notan card into plain gestures. */
final class CardGestures {
    private static final Map<Integer, String> NAMED = Map.ofEntries(
            Map.entry(KeyEvent.VK_ENTER, "enter"),
            Map.entry(KeyEvent.VK_BACK_SPACE, "backspace"),
            Map.entry(KeyEvent.VK_DELETE, "delete"),
            Map.entry(KeyEvent.VK_LEFT, "left"),
            Map.entry(KeyEvent.VK_RIGHT, "right"),
            Map.entry(KeyEvent.VK_UP, "up"),
            Map.entry(KeyEvent.VK_DOWN, "down"));

    private final NotanCard card;
    private final Handling handling;
    private Point last = new Point(0, 0);

    CardGestures(NotanCard card, Handling handling) {
        this.card = card;
        this.handling = handling;
    }

    void listen() {
        Pointer pointer = new Pointer();
        card.addMouseListener(pointer);
        card.addMouseMotionListener(pointer);
        card.addKeyListener(new Keys());
        card.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                card.bare(Bare.NO);
            }
        });
    }

    private void feel(Act act, String key, Set<With> with, int clicks, long millis) {
        handling.feel(new Gesture(act, last, card.place().pixel(), key, with, clicks, millis));
        card.felt();
    }

    private static Set<With> with(boolean shift, boolean alt, boolean shortcut, boolean second) {
        Set<With> with = EnumSet.noneOf(With.class);
        if (shift) {
            with.add(With.SHIFT);
        }
        if (alt) {
            with.add(With.ALT);
        }
        if (shortcut) {
            with.add(With.SHORTCUT);
        }
        if (second) {
            with.add(With.SECOND_BUTTON);
        }
        return with;
    }

    private final class Pointer extends MouseAdapter {
        private void pass(Act act, MouseEvent event, int clicks) {
            last = card.place().toFrame(event.getX(), event.getY());
            boolean second = SwingUtilities.isRightMouseButton(event);
            feel(
                    act,
                    "",
                    with(event.isShiftDown(), event.isAltDown(), event.isControlDown() || event.isMetaDown(), second),
                    clicks,
                    event.getWhen());
        }

        @Override
        public void mousePressed(MouseEvent event) {
            card.requestFocusInWindow();
            if (!SwingUtilities.isMiddleMouseButton(event)) {
                pass(Act.PRESS, event, event.getClickCount());
            }
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            if (SwingUtilities.isLeftMouseButton(event) || SwingUtilities.isRightMouseButton(event)) {
                pass(Act.DRAG, event, 0);
            }
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            if (!SwingUtilities.isMiddleMouseButton(event)) {
                pass(Act.RELEASE, event, event.getClickCount());
            }
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            pass(Act.HOVER, event, 0);
        }

        @Override
        public void mouseEntered(MouseEvent event) {
            card.pointerOn(true);
        }

        @Override
        public void mouseExited(MouseEvent event) {
            card.pointerOn(false);
        }
    }

    private final class Keys extends KeyAdapter {
        @Override
        public void keyPressed(KeyEvent event) {
            if (event.isControlDown() || event.isMetaDown()) {
                return;
            }
            switch (event.getKeyCode()) {
                case KeyEvent.VK_ESCAPE -> pass(Act.ESCAPE, "", event);
                case KeyEvent.VK_SPACE -> card.bare(Bare.NOTAN);
                case KeyEvent.VK_B -> card.bare(Bare.REFERENCE);
                default -> key(event);
            }
        }

        /** Letters are left to the window as well, which takes up instruments by them. */
        private void key(KeyEvent event) {
            int code = event.getKeyCode();
            if (code >= KeyEvent.VK_A && code <= KeyEvent.VK_Z) {
                feel(Act.KEY, String.valueOf((char) ('a' + code - KeyEvent.VK_A)), held(event), 0, event.getWhen());
            } else {
                Optional.ofNullable(NAMED.get(code)).ifPresent(name -> pass(Act.KEY, name, event));
            }
        }

        private void pass(Act act, String key, KeyEvent event) {
            feel(act, key, held(event), 0, event.getWhen());
            event.consume();
        }

        private Set<With> held(KeyEvent event) {
            return with(event.isShiftDown(), event.isAltDown(), false, false);
        }

        @Override
        public void keyReleased(KeyEvent event) {
            if (event.getKeyCode() == KeyEvent.VK_SPACE || event.getKeyCode() == KeyEvent.VK_B) {
                card.bare(Bare.NO);
            }
        }
    }
}
