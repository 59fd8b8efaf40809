package umbercard.notes.layers;

import java.util.List;
import java.util.OptionalDouble;
import umbercard.color.Lab;
import umbercard.model.Zone;
import umbercard.words.Message;

/**
 * What a zone comes to after all its layers, as a rough guide.
 *
 * @param coats its notes that count, in the order of application
 * @param color the mean color expected
 * @param value the Munsell value of that
 * @param wanted the zone's target value, else the mean value of the reference in it; empty where neither is known
 * @param words how value and wanted compare, in a sentence
 */
public record ExpectedZone(Zone zone, List<Coat> coats, Lab color, double value, OptionalDouble wanted, Message words) {
    public ExpectedZone {
        coats = List.copyOf(coats);
    }
}
