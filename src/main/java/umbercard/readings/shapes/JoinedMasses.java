package umbercard.readings.shapes;

import static umbercard.door.Finding.Verdict.HOLDS;
import static umbercard.door.Finding.Verdict.LOOK_AGAIN;

import java.util.List;
import java.util.Map;
import umbercard.door.Figure;
import umbercard.door.Finding;
import umbercard.door.Limit;
import umbercard.door.Limits;
import umbercard.door.Place;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.door.Rule;
import umbercard.geometry.Mass;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * How much of the value that takes up less of the frame hangs together in its largest mass: one mass should be the chief, and the
 * others keep company with it. Sources: {@code readings.joined-masses.source}.
 */
public final class JoinedMasses implements Reading {
    /** What a share may miss a limit by and still be on it. */
    private static final double HAIR = 1e-9;

    private static final Rule RULE = new Rule(
            "joined-masses",
            320,
            Map.of("least", new Limit(0.6, "share", 0, 1)),
            Words.say("readings.joined-masses.source"));

    @Override
    public Rule rule() {
        return RULE;
    }

    @Override
    public Finding read(Plan plan, Limits limits) {
        double dark = plan.design().darkShare();
        if (plan.isBlank() || dark < HAIR || dark > 1 - HAIR) {
            String key = plan.isBlank() ? "readings.nothing-laid" : "readings.one-value";
            return Finding.notSet(Message.of(key));
        }
        boolean ofDark = dark <= 0.5 + HAIR;
        double whole = ofDark ? dark : 1 - dark;
        List<Mass> masses = ofDark ? plan.masses().dark() : plan.masses().light();
        double largest = masses.isEmpty() ? 0 : masses.get(0).share();
        double part = Math.min(1, largest / whole);
        boolean again = part < limits.get("least") - HAIR;
        String key = masses.isEmpty() ? "none" : again ? "again" : "holds";
        Message value = Message.of("readings.value." + (ofDark ? "dark" : "light"));
        return new Finding(
                again ? LOOK_AGAIN : HOLDS,
                List.of(
                        new Figure("joined", part, "share"),
                        new Figure("largest", largest, "share"),
                        new Figure("of-dark", ofDark ? 1 : 0, "yes")),
                Message.of("readings.joined-masses." + key, 100 * part, value),
                masses.stream()
                        .limit(1)
                        .<Place>map(mass -> new Place.Over(mass.region()))
                        .toList());
    }
}
