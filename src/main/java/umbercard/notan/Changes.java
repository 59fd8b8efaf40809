package umbercard.notan;

import java.util.List;
import java.util.Objects;
import umbercard.model.Mark;

/**
 * What stayed between two lists of marks.
 *
 * @param before so many marks at the start draw the same in both
 * @param after so many at the end do, none of them counted before
 */
record Changes(int before, int after) {
    static Changes between(List<Mark> old, List<Mark> now) {
        int fewer = Math.min(old.size(), now.size());
        int before = 0;
        while (before < fewer && draw(now.get(before), old.get(before))) {
            before++;
        }
        int after = 0;
        while (after < fewer - before && draw(now.get(now.size() - 1 - after), old.get(old.size() - 1 - after))) {
            after++;
        }
        return new Changes(before, after);
    }

    /** Whether two marks draw the same. */
    private static boolean draw(Mark one, Mark two) {
        return Objects.equals(one, two)
                || (one.kind() == two.kind() && one.outline().equals(two.outline()));
    }

    /** The marks of one of the lists that did not stay. */
    List<Mark> of(List<Mark> marks) {
        return marks.subList(before, marks.size() - after);
    }
}
