package corewright.sandwich;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.sandwich.FootLoadMap.Place;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

class FootLikenessTest {
    /** Beside a step of the gap two feet sink alike by the linear theory, but one rests and the other hangs. */
    @Test
    void aFootThatRestsIsLikeAnotherThatRestsRatherThanANearerOneThatHangs() {
        PanelModel model = PanelModel.of(Panels.loose(3), MeshSize.uniform(60));
        Place[] places = {resting(430), hanging(450), resting(480)};
        List<Foot> feet = Stream.of(places)
                .map(p -> Foot.at(model, new Coordinate(p.x(), p.y())).orElseThrow())
                .toList();

        FootLikeness alike = new FootLikeness(feet, model.loose.cells, places);

        assertThat(alike.mostAlike(0, List.of(1, 2), 1)).containsExactly(2);
    }

    private static Place resting(double x) {
        return new Place(x, 300, 5, 15, Theory.CONTACT);
    }

    private static Place hanging(double x) {
        return new Place(x, 300, 15);
    }
}
