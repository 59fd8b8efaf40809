package umbercard.desk.ledger;

import java.util.List;
import java.util.Optional;
import umbercard.door.Finding;
import umbercard.door.Place;
import umbercard.door.Rule;
import umbercard.readings.RuleWords;
import umbercard.words.Words;

/**
 * A reading among all.
 *
 * @param finding empty while it is not read or silenced
 */
record ReadingRow(Rule rule, Optional<Finding> finding, boolean silenced) {

    String name() {
        return RuleWords.name(rule);
    }

    String verdict() {
        return finding.map(found -> Words.say("trade.verdict." + found.verdict().key()))
                .orElseGet(() -> Words.say(silenced ? "ledger.silenced" : "ledger.waiting"));
    }

    String sentence() {
        return finding.map(found -> Words.say(found.sentence())).orElse("");
    }

    List<Place> places() {
        return finding.map(Finding::places).orElse(List.of());
    }

    /** As a screen reader says it. */
    String spoken() {
        return Words.say("ledger.row.spoken", name(), verdict(), sentence());
    }
}
