package umbercard.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import umbercard.door.Bench;
import umbercard.door.Edit;
import umbercard.door.Gesture;
import umbercard.door.Hand;
import umbercard.door.Instrument;
import umbercard.door.Place;
import umbercard.door.Preview;
import umbercard.door.Step;
import umbercard.geometry.Node;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.edit.Edits;
import umbercard.words.Message;

/** Drags the node that is nearest to where the button went down. It borrows the words of an instrument of the program. */
final class MoveNode implements Instrument {
    @Override
    public int rank() {
        return 1;
    }

    @Override
    public String id() {
        return "lay-dark";
    }

    @Override
    public String key() {
        return "d";
    }

    @Override
    public Hand pick(Bench bench) {
        return new Moving(bench);
    }

    private record Held(Mark mark, int node, Point from) {}

    private static final class Moving implements Hand {
        private final Bench bench;
        private Optional<Held> held = Optional.empty();

        private Moving(Bench bench) {
            this.bench = bench;
        }

        @Override
        public Step feel(Gesture gesture) {
            return switch (gesture.act()) {
                case PRESS -> press(gesture.at());
                case DRAG -> held.map(h -> drag(h, gesture.at())).orElseGet(Step::idle);
                case RELEASE -> held.map(h -> release(h, gesture.at())).orElseGet(Step::idle);
                case ESCAPE -> escape();
                case HOVER, KEY -> Step.idle();
            };
        }

        private Step press(Point at) {
            double nearest = Double.POSITIVE_INFINITY;
            for (Mark mark : bench.study()
                    .get()
                    .thumbnail(bench.thumbnail().get())
                    .orElseThrow()
                    .marks()) {
                List<Node> nodes = mark.outline().nodes();
                for (int i = 0; i < nodes.size(); i++) {
                    double distance = nodes.get(i).at().distance(at);
                    if (distance < nearest) {
                        nearest = distance;
                        held = Optional.of(new Held(mark, i, at));
                    }
                }
            }
            return held.map(h -> drag(h, at)).orElseGet(Step::idle);
        }

        private Step drag(Held held, Point at) {
            Study asIf = moved(held, at).apply(bench.study().get());
            return Step.holding(new Preview(List.of(new Place.At(at)), Optional.of(asIf), Optional.empty()));
        }

        private Step release(Held moved, Point at) {
            held = Optional.empty();
            return Step.done(new Edit(Message.of("instrument.lay-dark.done"), moved(moved, at)));
        }

        private Step escape() {
            held = Optional.empty();
            return Step.idle();
        }

        private UnaryOperator<Study> moved(Held held, Point at) {
            double dx = at.x() - held.from().x();
            double dy = at.y() - held.from().y();
            List<Node> nodes = new ArrayList<>(held.mark().outline().nodes());
            Node node = nodes.get(held.node());
            nodes.set(
                    held.node(),
                    new Node(
                            node.at().plus(dx, dy),
                            node.in().plus(dx, dy),
                            node.out().plus(dx, dy),
                            node.round()));
            Mark changed = held.mark().withOutline(new Outline(nodes));
            return Edits.thumbnail(
                    bench.thumbnail().get(),
                    t -> t.withMarks(t.marks().stream()
                            .map(mark -> mark.id().equals(changed.id()) ? changed : mark)
                            .toList()));
        }
    }
}
