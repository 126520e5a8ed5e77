package corewright.reuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LatestTest {
    @Test
    void keepsWhatBelongsToTheInputsAskedForLast() {
        Latest<List<Integer>, List<String>> latest = new Latest<>(2, ArrayList::new);
        List<Integer> one = List.of(1);
        List<Integer> alike = new ArrayList<>(one);
        List<Integer> three = List.of(3);
        latest.of(one).add("one");
        assertThat(latest.of(alike)).as("equal, not the same").isEmpty();
        assertThat(latest.of(one)).containsExactly("one");
        latest.of(three);
        assertThat(latest.of(one)).as("asked for since the other was").containsExactly("one");
        latest.of(alike);
        latest.of(three);
        assertThat(latest.of(one)).as("forgotten").isEmpty();
    }
}
