package corewright.survey;

import org.jspecify.annotations.Nullable;

/** What a finding is about, with its place. Two are equal where they are the same thing. */
public sealed interface About {
    /** The thing's name as it is printed; empty where it has none. An identity only together with the type. */
    String id();

    /** Where on the boat, null where nowhere in particular. */
    default @Nullable Spot spot() {
        return null;
    }

    /** The face it belongs to; empty where to none or to several. */
    default String face() {
        Spot spot = spot();
        return spot == null ? "" : spot.face();
    }

    /** A reading of the survey. */
    static About of(Reading reading) {
        return new OfReading(reading.key(), reading.spot());
    }

    /** A feature of a face. */
    static About of(Face face, Feature feature) {
        var at = feature.geometry().getCoordinate();
        return new OfFeature(feature.name(), new Spot(face.name(), at.getX(), at.getY()));
    }

    /** @param spot where on the reading: a rod has two ends */
    record OfReading(Reading.Key reading, Spot spot) implements About {
        @Override
        public String id() {
            return reading.id();
        }
    }

    /** A judgement of a reading, where the survey has no such reading. */
    record OfJudgement(Reading.Key reading) implements About {
        @Override
        public String id() {
            return reading.id();
        }

        @Override
        public Spot spot() {
            return reading.spot();
        }
    }

    /** @param id known within one assessment only: the next one counts its regions anew */
    record OfRegion(String id, Spot spot) implements About {}

    record OfPanel(String id, Spot spot) implements About {}

    /** @param id the feature's name @param spot its first point */
    record OfFeature(String id, Spot spot) implements About {}

    /** @param id the case's name @param spot a place under the load */
    record OfLoad(String id, Spot spot) implements About {}

    /** A place where nothing of the above is, or several things are. */
    record OfPlace(Spot spot) implements About {
        @Override
        public String id() {
            return "";
        }
    }

    /** A hole of the repair plan, or what the work log takes for one. */
    record OfHole(String id) implements About {}

    record OfBay(String id, String face) implements About {}

    record OfFace(String face) implements About {
        @Override
        public String id() {
            return "";
        }
    }

    record OfMeter(String id) implements About {}

    record OfLaminate(String id) implements About {}

    /** A file, or a line of it. */
    record OfFile(Origin origin) implements About {
        @Override
        public String id() {
            return "";
        }
    }
}
