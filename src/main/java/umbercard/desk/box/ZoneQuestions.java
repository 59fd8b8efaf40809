package umbercard.desk.box;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import umbercard.kernel.Latest;
import umbercard.model.Stick;
import umbercard.model.Zone;
import umbercard.notes.AtHand;
import umbercard.notes.ColorMatches;
import umbercard.notes.ColoredZone;
import umbercard.notes.Matching;
import umbercard.notes.SettingOut;
import umbercard.notes.Suggestion;
import umbercard.notes.Trust;
import umbercard.photo.FramedZones;

/**
 * Asks what the photograph is like in the zones of the thumbnail on the card, and which sticks fit; answered in the
 * background. Event thread only.
 */
public final class ZoneQuestions {
    /** How many sticks are named for a color. */
    private static final int CANDIDATES = 3;

    /**
     * What is asked.
     *
     * @param areas where the zones lie; empty where there is no photograph, or no zone on the thumbnail
     * @param sticks to choose from
     * @param most how many to set out at most, where that is asked as well
     */
    record Question(Map<Zone, FramedZones.Asked> areas, List<Stick> sticks, Trust trust, OptionalInt most) {}

    /**
     * What came of it.
     *
     * @param matches none where there are no sticks to choose from
     */
    record Answer(
            Question question, List<ColoredZone> zones, List<ColorMatches> matches, Optional<Suggestion> suggestion) {}

    private final FramedZones framed = new FramedZones();
    private final Latest<Question, Answer> worker;
    private final Consumer<Answer> told;
    private Optional<Question> asked = Optional.empty();
    private Optional<Answer> last = Optional.empty();

    ZoneQuestions(Consumer<Answer> told) {
        this.told = told;
        worker = new Latest<>(
                "umbercard-sticks", (question, stopped) -> answer(question), this::tell, SwingUtilities::invokeLater);
    }

    /** Tells the answer: at once, if it is the one told last, else when it is found, unless something else is asked by then. */
    void ask(Question question) {
        Optional<Answer> known = last.filter(answer -> answer.question().equals(question));
        boolean waits = known.isEmpty() && asked.equals(Optional.of(question));
        asked = Optional.of(question);
        if (known.isPresent()) {
            told.accept(known.get());
        } else if (!waits) {
            worker.ask(question);
        }
    }

    private void tell(Answer answer) {
        last = Optional.of(answer);
        if (asked.equals(Optional.of(answer.question()))) {
            told.accept(answer);
        }
    }

    private Answer answer(Question question) {
        List<ColoredZone> zones = colored(framed, question.areas());
        AtHand atHand = AtHand.of(question.sticks());
        return new Answer(
                question,
                zones,
                atHand.isEmpty() ? List.of() : new Matching(atHand, question.trust()).of(zones, CANDIDATES),
                suggestion(zones, atHand, question));
    }

    /** The zones with the photograph's colors in them; not on the event thread. */
    public static List<ColoredZone> colored(FramedZones framed, Map<Zone, FramedZones.Asked> areas) {
        return framed.of(areas).entrySet().stream()
                .map(zone -> new ColoredZone(
                        zone.getKey(), zone.getValue().share(), zone.getValue().main()))
                .toList();
    }

    private static Optional<Suggestion> suggestion(List<ColoredZone> zones, AtHand atHand, Question question) {
        if (question.most().isEmpty() || atHand.isEmpty() || zones.isEmpty()) {
            return Optional.empty();
        }
        SettingOut.Wish wish = SettingOut.Wish.USUAL
                .withTrust(question.trust())
                .withMost(question.most().getAsInt());
        return Optional.of(SettingOut.of(zones, atHand, wish));
    }
}
