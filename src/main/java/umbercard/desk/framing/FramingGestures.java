package umbercard.desk.framing;

import java.awt.event.InputEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import javax.swing.SwingUtilities;
import umbercard.geometry.Point;

/** What the pointer, the wheel and the keys do on the framing view. */
final class FramingGestures {
    private static final double DEGREES_A_KEY = 0.1;
    private static final double SHARE_A_KEY = 0.005;
    private static final double SHARE_A_NOTCH = 0.02;
    private static final double SHIFT_FACTOR = 10;

    private final FramingView view;
    private final Viewfinder finder;
    private final Runnable done;

    FramingGestures(FramingView view, Viewfinder finder, Runnable done) {
        this.view = view;
        this.finder = finder;
        this.done = done;
    }

    void listen() {
        Pointer pointer = new Pointer();
        view.addMouseListener(pointer);
        view.addMouseMotionListener(pointer);
        view.addMouseWheelListener(pointer);
        view.addKeyListener(new Keys());
    }

    private static Point at(MouseEvent event) {
        return new Point(event.getX(), event.getY());
    }

    private final class Pointer extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            view.requestFocusInWindow();
            if (SwingUtilities.isMiddleMouseButton(event)) {
                return;
            }
            if (view.marking().isPresent()) {
                view.marking().get().press(at(event));
                view.repaint();
            } else if (view.grip().isEmpty()) {
                boolean turning = SwingUtilities.isRightMouseButton(event) || event.isAltDown();
                view.take(view.gripAt(at(event), turning));
            }
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            view.marking().ifPresent(marking -> {
                marking.move(at(event));
                view.repaint();
            });
            view.grip().ifPresent(grip -> finder.hold(grip.to(at(event))));
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            view.marking().flatMap(marking -> marking.release(at(event))).ifPresent(view::marked);
            Optional<FrameGrip> grip = view.grip();
            view.take(Optional.empty());
            grip.ifPresent(held -> finder.letGo(held.name()));
            view.repaint();
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            view.point(at(event));
            view.marking().ifPresent(marking -> {
                marking.move(at(event));
                view.repaint();
            });
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent event) {
            if (view.isResting()) {
                double factor = Math.pow(1 + SHARE_A_NOTCH, -event.getPreciseWheelRotation());
                view.sight().ifPresent(sight -> finder.scale(sight.onPhotograph(event.getX(), event.getY()), factor));
            }
        }
    }

    private final class Keys extends KeyAdapter {
        @Override
        public void keyPressed(KeyEvent event) {
            if ((event.getModifiersEx() & (InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK)) == 0
                    && take(event)) {
                event.consume();
            }
        }

        private boolean take(KeyEvent event) {
            switch (event.getKeyCode()) {
                case KeyEvent.VK_LEFT, KeyEvent.VK_KP_LEFT -> arrow(event, -1, 0);
                case KeyEvent.VK_RIGHT, KeyEvent.VK_KP_RIGHT -> arrow(event, 1, 0);
                case KeyEvent.VK_UP, KeyEvent.VK_KP_UP -> arrow(event, 0, -1);
                case KeyEvent.VK_DOWN, KeyEvent.VK_KP_DOWN -> arrow(event, 0, 1);
                case KeyEvent.VK_ESCAPE -> escape();
                case KeyEvent.VK_ENTER -> enter();
                case KeyEvent.VK_H -> view.mark(view.marking().isEmpty());
                default -> {
                    return view.isResting() && act(event.getKeyCode());
                }
            }
            return true;
        }

        private boolean act(int key) {
            switch (key) {
                case KeyEvent.VK_L -> finder.level();
                case KeyEvent.VK_U -> finder.upright();
                case KeyEvent.VK_M -> finder.mirror();
                case KeyEvent.VK_HOME -> finder.largest();
                default -> {
                    return false;
                }
            }
            return true;
        }

        private void arrow(KeyEvent event, int right, int down) {
            double times = event.isShiftDown() ? SHIFT_FACTOR : 1;
            if (view.marking().isPresent()) {
                HorizonMarking marking = view.marking().get();
                marking.move(marking.at().plus(times * right, times * down));
                view.repaint();
            } else if (view.grip().isPresent()) {
                return;
            } else if (!event.isAltDown()) {
                view.pixel().ifPresent(pixel -> finder.move(times * pixel * right, times * pixel * down));
            } else if (right != 0) {
                finder.turnSeen(-times * right * DEGREES_A_KEY);
            } else {
                finder.scaleAboutMiddle(Math.pow(1 + SHARE_A_KEY, -times * down));
            }
        }

        private void escape() {
            if (view.isResting()) {
                done.run();
            } else {
                view.rest();
            }
        }

        private void enter() {
            if (view.marking().isPresent()) {
                view.marking().get().set().ifPresent(view::marked);
                view.repaint();
            } else if (view.isResting()) {
                done.run();
            }
        }
    }
}
