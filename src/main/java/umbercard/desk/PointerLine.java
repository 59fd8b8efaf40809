package umbercard.desk;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import umbercard.color.HueFamily;
import umbercard.color.Lab;
import umbercard.color.MunsellValue;
import umbercard.desk.canvas.NotanCard;
import umbercard.desk.canvas.UnderPointer;
import umbercard.desk.theme.Swatch;
import umbercard.desk.theme.WordButton;
import umbercard.model.Keyed;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * One quiet line: what lies under the pointer while it is on the notan card, else what the values of the photograph tell.
 * The word at its end chooses over how wide a disk the photograph is read.
 */
final class PointerLine extends JPanel {
    /** How wide a disk the photograph is read over. */
    enum Disk implements Keyed {
        POINT(0),
        SMALL(0.01),
        BROAD(0.03);

        private final double radius;

        Disk(double radius) {
            this.radius = radius;
        }

        private Disk next() {
            return switch (this) {
                case POINT -> SMALL;
                case SMALL -> BROAD;
                case BROAD -> POINT;
            };
        }
    }

    private final NotanCard card;
    private final Supplier<String> atRest;
    private final JLabel line = new JLabel(" ");
    private final WordButton disk;
    private Disk chosen = Disk.SMALL;

    PointerLine(NotanCard card, Supplier<String> atRest) {
        super(new MigLayout("insets 0 " + ReferenceRules.WORD_MARGIN + " 0 0", "[grow, fill]8[]", "[]"));
        this.card = card;
        this.atRest = atRest;
        setOpaque(false);
        line.setName("pointer-line");
        disk = WordButton.onDesk("sample-disk", "", Words.say("desk.disk.tip"), this::another);
        add(line, "wmin 0");
        add(disk);
        say(chosen);
        MouseAdapter pointer = new MouseAdapter() {
            @Override
            public void mouseMoved(MouseEvent event) {
                follow(event);
            }

            @Override
            public void mouseDragged(MouseEvent event) {
                follow(event);
            }

            @Override
            public void mouseExited(MouseEvent event) {
                rest();
            }
        };
        card.addMouseListener(pointer);
        card.addMouseMotionListener(pointer);
    }

    private void another() {
        chosen = chosen.next();
        say(chosen);
    }

    private void say(Disk which) {
        disk.setText(Words.say("desk.disk." + which.key()));
    }

    private void follow(MouseEvent event) {
        Optional<UnderPointer> under = card.under(event.getX(), event.getY(), chosen.radius);
        under.ifPresentOrElse(this::tell, this::rest);
    }

    private void tell(UnderPointer under) {
        int dark = under.dark() ? 1 : 0;
        show(
                under.reference()
                        .map(color -> Words.say("desk.under.both", MunsellValue.of(color), hue(color), dark))
                        .orElseGet(() -> Words.say("desk.under.notan", dark)),
                under.reference());
    }

    private static Message hue(Lab color) {
        return Message.of("trade.hue-family." + HueFamily.of(color).key());
    }

    /** Says what the values tell, as no pointer is on the card. */
    void rest() {
        show(atRest.get(), Optional.empty());
    }

    private void show(String words, Optional<Lab> color) {
        line.setIcon(color.map(Swatch::new).orElse(null));
        line.setText(words.isEmpty() ? " " : words);
        line.setToolTipText(words.isEmpty() ? null : words);
    }
}
