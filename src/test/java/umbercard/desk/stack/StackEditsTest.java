package umbercard.desk.stack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import umbercard.desk.KilnHill;
import umbercard.model.Mark;
import umbercard.model.Study;
import umbercard.model.Thumbnail;

class StackEditsTest {
    private final Study study = KilnHill.study();

    private static List<String> marks(Study study) {
        return study.thumbnails().stream()
                .flatMap(t -> t.marks().stream())
                .map(Mark::id)
                .toList();
    }

    @Test
    void aCopyIsTheSameButForItsNameAndIds() {
        Thumbnail first = study.thumbnails().get(0);
        Thumbnail copy = StackEdits.copy(study, first);
        Study after = StackEdits.addCopy(copy, first).change().apply(study);

        assertThat(copy.name()).isEqualTo("first, copy");
        assertThat(copy.landEdge()).isEqualTo(first.landEdge());
        assertThat(copy.marks())
                .extracting(Mark::outline)
                .isEqualTo(first.marks().stream().map(Mark::outline).toList());
        assertThat(marks(after)).hasSize(6).doesNotHaveDuplicates();
        assertThat(after.thumbnails()).extracting(Thumbnail::id).doesNotHaveDuplicates();
    }

    @Test
    void namesAreNotGivenTwice() {
        Study after = study;
        for (int i = 0; i < 3; i++) {
            Thumbnail first = after.thumbnails().get(0);
            after = StackEdits.addCopy(StackEdits.copy(after, first), first)
                    .change()
                    .apply(after);
            after = StackEdits.addEmpty(StackEdits.another(after)).change().apply(after);
        }
        assertThat(after.thumbnails()).extracting(Thumbnail::name).hasSize(9).doesNotHaveDuplicates();
    }

    @Test
    void anotherIsEmptyAndTheFirstOneOfAStudyIsChosen() {
        Study bare = study.withThumbnails(List.of()).withChosen(Optional.empty());
        Thumbnail another = StackEdits.another(bare);
        Study after = StackEdits.addEmpty(another).change().apply(bare);
        assertThat(another.marks()).isEmpty();
        assertThat(after.chosen()).contains(another.id());
    }

    @Test
    void removingTheChosenOneLeavesNoneChosen() {
        Study after = StackEdits.remove(study.thumbnails().get(0)).change().apply(study);
        assertThat(after.thumbnails()).extracting(Thumbnail::id).containsExactly("t2", "t3");
        assertThat(after.chosen()).isEmpty();
        assertThat(StackEdits.remove(study.thumbnails().get(1))
                        .change()
                        .apply(study)
                        .chosen())
                .contains("t1");
    }

    @Test
    void theLastOneStays() {
        Study one = study.withThumbnails(study.thumbnails().subList(0, 1));
        assertThat(StackEdits.remove(one.thumbnails().get(0)).change().apply(one))
                .isEqualTo(one);
    }
}
