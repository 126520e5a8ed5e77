package corewright.survey;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A mark by which it shows whether the readings of the deck are still those that a plan rests on: the first twelve hexadecimal
 * digits of the SHA-256 of every reading's kind, place and value. From which file a reading came does not count, nor what was
 * read during and after the work.
 */
public final class ReadingsMark {
    private static final int DIGITS = 12;
    private static final String FIELD = "\u001f";

    private ReadingsMark() {}

    /** The mark of a survey, and how many readings of each kind it has. */
    public static FrozenPlan.Issue issue(Survey survey, int revision) {
        Readings r = survey.readings();
        return new FrozenPlan.Issue(
                revision,
                survey.heading().surveyed(),
                of(r),
                r.moisture().size(),
                r.taps().size(),
                r.probes().size(),
                r.feelers().size(),
                r.plugs().size());
    }

    static String of(Readings r) {
        StringBuilder text = new StringBuilder();
        r.moisture().forEach(m -> line(text, m, m.value(), m.offScale(), m.meter(), m.side(), m.reference()));
        r.taps().forEach(t -> line(text, t, t.sound(), t.contactUs(), t.side()));
        r.probes().forEach(p -> line(text, p, p.voidDepthMm(), p.coreState(), p.coreMoisture()));
        r.feelers().forEach(f -> line(text, f, f.tip().xMm(), f.tip().yMm(), f.end(), f.voidDepthMm()));
        r.plugs().forEach(p -> line(text, p, p.moisturePercent()));
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes(text));
            return HexFormat.of().formatHex(hash).substring(0, DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Two bytes a letter. */
    private static byte[] bytes(CharSequence text) {
        byte[] bytes = new byte[2 * text.length()];
        for (int i = 0; i < text.length(); i++) {
            bytes[2 * i] = (byte) (text.charAt(i) >> 8);
            bytes[2 * i + 1] = (byte) text.charAt(i);
        }
        return bytes;
    }

    private static void line(StringBuilder text, Reading reading, @Nullable Object... values) {
        Spot at = reading.spot();
        Stream<Object> place = Stream.of(reading.key().kind(), at.face(), at.xMm(), at.yMm());
        List<String> words =
                Stream.concat(place, Arrays.stream(values)).map(String::valueOf).toList();
        text.append(String.join(FIELD, words)).append('\n');
    }
}
