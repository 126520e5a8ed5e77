package corewright.report.page;

import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Parts.Part;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Running text with words in bold between double asterisks, broken into lines. All weights share one set of widths, so
 * emphasis never moves a word.
 *
 * @param points size
 * @param leadMm baseline to baseline
 */
public record Prose(double points, double leadMm) {
    /** 10.5 on 14.3 pt: answers. */
    public static final Prose TEXT = new Prose(10.5, 5.04);

    /** 8.5 on 11.4 pt: notes. */
    public static final Prose NOTE = new Prose(8.5, 4.02);

    /** 9 on 11.5 pt: tables. */
    public static final Prose CELL = new Prose(9, 4.06);

    /** 20 on 22.4 pt, bold throughout: the finding. */
    public static final Prose TITLE = new Prose(20, 7.9);

    private static final String BOLD = "**";

    /** A figure and its unit, which no line parts. */
    private static final Pattern UNIT =
            Pattern.compile("(\\d) (m²|ft²|mm|cm|in|m|ft|g|kg|lb|h|%|°C|°F)(?![\\p{L}\\d²])");

    /** A word; a later part of one that was too long for a line stands alone too. */
    private record Word(String text, boolean bold) {}

    /** Text with nothing in it that would be taken for a mark of ours. */
    public static String plain(String text) {
        return text.replace("**", "*").replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
    }

    public static String bold(String text) {
        return BOLD + text + BOLD;
    }

    /** From the first line's top to the last line's foot. */
    public double height(String text, double widthMm) {
        return lines(text, widthMm).size() * leadMm;
    }

    /** Paints from {@code top} down and returns the height taken, millimetres. */
    public double paint(Paper paper, String text, double left, double top, double widthMm, Anchor anchor) {
        List<List<Word>> lines = lines(text, widthMm);
        paper.part(Part.PARAGRAPH, p -> lines(p, lines, left, top, widthMm, anchor));
        return lines.size() * leadMm;
    }

    private void lines(Paper paper, List<List<Word>> lines, double left, double top, double widthMm, Anchor anchor) {
        Type plain = new Type(Typeface.TEXT, points);
        Type strong = new Type(Typeface.TEXT_BOLD, points);
        // the line's middle is the middle of its capitals
        double baseline = top + (leadMm + plain.capMm()) / 2;
        for (List<Word> line : lines) {
            double x = start(line, left, widthMm, anchor);
            for (Run run : runs(line)) {
                paper.text(run.text.replace(Wording.TIED, " "), x, baseline, run.bold ? strong : plain, Anchor.LEFT);
                x += plain.width(run.text + " ");
            }
            baseline += leadMm;
        }
    }

    private record Run(String text, boolean bold) {}

    /** Neighbours of one weight joined, so that a reader can copy whole phrases. */
    private static List<Run> runs(List<Word> line) {
        List<Run> runs = new ArrayList<>();
        for (Word word : line) {
            int last = runs.size() - 1;
            if (last >= 0 && runs.get(last).bold == word.bold) {
                runs.set(last, new Run(runs.get(last).text + " " + word.text, word.bold));
            } else {
                runs.add(new Run(word.text, word.bold));
            }
        }
        return runs;
    }

    private double start(List<Word> line, double left, double widthMm, Anchor anchor) {
        double spare =
                widthMm - width(String.join(" ", line.stream().map(Word::text).toList()));
        return switch (anchor) {
            case LEFT -> left;
            case CENTRE -> left + spare / 2;
            case RIGHT -> left + spare;
        };
    }

    private double width(String text) {
        return new Type(Typeface.TEXT, points).width(text.replace(Wording.TIED, " "));
    }

    private List<List<Word>> lines(String text, double widthMm) {
        List<List<Word>> lines = new ArrayList<>();
        for (String paragraph : text.split("\n", -1)) {
            List<Word> line = new ArrayList<>();
            double used = 0;
            for (Word word : words(paragraph, widthMm)) {
                double more = width((line.isEmpty() ? "" : " ") + word.text);
                if (!line.isEmpty() && used + more > widthMm) {
                    lines.add(line);
                    line = new ArrayList<>();
                    used = 0;
                    more = width(word.text);
                }
                line.add(word);
                used += more;
            }
            lines.add(line);
        }
        return lines;
    }

    private List<Word> words(String paragraph, double widthMm) {
        List<Word> words = new ArrayList<>();
        boolean bold = false;
        for (String part : paragraph.split(Pattern.quote(BOLD), -1)) {
            for (String word :
                    UNIT.matcher(part).replaceAll("$1" + Wording.TIED + "$2").split(" ", -1)) {
                String rest = word;
                while (width(rest) > widthMm && rest.length() > 1) {
                    int fits = fitting(rest, widthMm);
                    words.add(new Word(rest.substring(0, fits), bold));
                    rest = rest.substring(fits);
                }
                if (!rest.isEmpty()) {
                    words.add(new Word(rest, bold));
                }
            }
            bold = !bold;
        }
        return words;
    }

    private int fitting(String word, double widthMm) {
        int end = word.length();
        while (end > 1 && width(word.substring(0, end)) > widthMm) {
            end--;
        }
        return end;
    }
}
