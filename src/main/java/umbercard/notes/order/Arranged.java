package umbercard.notes.order;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import umbercard.model.ColorNote;
import umbercard.words.Message;

/**
 * Color notes in an order of application.
 *
 * @param notes all of the study's, in the new order; breaks stay at their places in the row
 * @param because for each note's id why it stands where it stands
 * @param circles where rules contradicted one another and one gave way
 * @param kept what a pinned note keeps from holding, in the new order
 * @param broken what did not hold in the order that the notes had
 * @param dust how many pairs of that order dust alone would have the other way round
 */
public record Arranged(
        List<ColorNote> notes,
        Map<String, List<Message>> because,
        List<Circle> circles,
        List<Broken> kept,
        List<Broken> broken,
        int dust) {
    public Arranged {
        notes = List.copyOf(notes);
        because = Map.copyOf(because);
        circles = List.copyOf(circles);
        kept = List.copyOf(kept);
        broken = List.copyOf(broken);
    }

    /** Notes that rules send round in a circle, in the order that they had, and the rule that gave way. */
    public record Circle(List<ColorNote> notes, OrderRule gaveWay) {
        public Circle {
            notes = List.copyOf(notes);
        }

        public Message said() {
            return Message.of(
                    "order.circle",
                    notes.get(0).stick().title(),
                    notes.get(1).stick().title(),
                    notes.size() - 2,
                    gaveWay.words());
        }
    }

    /** A note that stands before one it should follow. */
    public record Broken(ColorNote early, ColorNote late, OrderRule rule) {
        public Message said() {
            return Message.of(
                    "order.broken", early.stick().title(), late.stick().title(), rule.words());
        }
    }

    /** Why a note stands where it stands; none for an id that is not among the notes. */
    public List<Message> reasons(String note) {
        return because.getOrDefault(note, List.of());
    }

    /** What could not be had: circles, and what pinned notes keep from holding. */
    public List<Message> remarks() {
        return Stream.concat(
                        circles.stream().map(Circle::said),
                        kept.stream().map(pair -> Message.of("order.kept", pair.said())))
                .toList();
    }
}
