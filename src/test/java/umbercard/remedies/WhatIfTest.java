package umbercard.remedies;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import umbercard.door.Finding.Verdict;
import umbercard.door.Ranked;
import umbercard.door.Remedied;
import umbercard.door.Remedy;
import umbercard.door.Trial;
import umbercard.kernel.Plugins;
import umbercard.model.Level;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.edit.Edits;
import umbercard.readings.Evaluation;
import umbercard.readings.Plans;
import umbercard.readings.Wishes;
import umbercard.words.Words;

class WhatIfTest {
    private static final Thumbnail EVEN = Plans.dark(0.5).withLandEdge(Optional.of(Level.at(0.5)));

    private static WhatIf whatIf(Thumbnail thumbnail) {
        return new WhatIf(Trials.with(thumbnail), thumbnail, Optional.empty(), OptionalDouble.empty(), Wishes.NONE);
    }

    private static List<Outcome> outcomes(Plugins<Remedy> remedies, Thumbnail thumbnail) {
        return whatIf(thumbnail).outcomes(remedies, Evaluation.find(), () -> false);
    }

    @Test
    void anEvenSplitCanBeRaisedOrLoweredAndTheReadingsSayWhatItBecomes() {
        List<Outcome> outcomes = outcomes(WhatIf.find(), EVEN);
        assertThat(outcomes).extracting(Outcome::remedy).containsExactly("raise", "lower");
        Outcome raised = outcomes.get(0);
        assertThat(raised.before().get("dark-share").verdict()).isEqualTo(Verdict.LOOK_AGAIN);
        assertThat(raised.after().get("dark-share").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(raised.becomes().stream().map(becomes -> Words.say(becomes.words())))
                .contains("Dark share: look again becomes holds. Dark 62 %: 0.618, the golden section.");
    }

    @Test
    void whereNothingIsToBeLookedAtAgainNothingIsOffered() {
        Thumbnail good = Plans.dark(1 / 3.0).withLandEdge(Optional.of(Level.at(2 / 3.0)));
        assertThat(outcomes(Plugins.of(List.of(new RaiseLine(), new LowerLine())), good))
                .isEmpty();
    }

    @Test
    void aCopyHasIdsAndANameOfItsOwn() {
        WhatIf whatIf = whatIf(EVEN);
        Remedied remedied = outcomes(WhatIf.find(), EVEN).get(0).remedied();
        Study study = Edits.addThumbnail(whatIf.copy(remedied)).apply(whatIf.study());
        assertThat(study.thumbnails()).extracting(Thumbnail::name).containsExactly("first", "first, raised");
        assertThat(study.thumbnails().get(0)).isEqualTo(EVEN);
        assertThat(study.thumbnails().stream()
                        .flatMap(thumbnail -> thumbnail.marks().stream())
                        .map(Mark::id))
                .doesNotHaveDuplicates();
        assertThat(whatIf.asIf(remedied).thumbnails()).containsExactly(remedied.thumbnail());
    }

    @Test
    void aRemedyThatFailsIsSwitchedOffAndTheOthersDoNotNotice() {
        Remedy broken = new Remedy() {
            @Override
            public String id() {
                return "broken";
            }

            @Override
            public int rank() {
                return 1;
            }

            @Override
            public Set<String> mends() {
                return Set.of("dark-share");
            }

            @Override
            public Optional<Remedied> tried(Trial trial) {
                throw new IllegalStateException("on purpose");
            }
        };
        Plugins<Remedy> remedies = Plugins.of(List.of(broken, new RaiseLine()));
        assertThat(outcomes(remedies, EVEN)).extracting(Outcome::remedy).containsExactly("raise");
        assertThat(remedies.switchedOff()).hasSize(1);
    }

    @Test
    void everyRemedyMendsReadingsThatThereAre() {
        List<String> known = Evaluation.find().on().stream().map(Ranked::id).toList();
        assertThat(WhatIf.find().on())
                .hasSize(8)
                .allSatisfy(remedy -> assertThat(known).containsAll(remedy.mends()));
    }
}
