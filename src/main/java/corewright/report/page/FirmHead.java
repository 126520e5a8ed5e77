package corewright.report.page;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.store.Pictures;
import corewright.survey.Survey;
import corewright.survey.settings.Settings.Letterhead;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whose report it is: logo, firm, address, surveyor and title; it takes no room where nothing is said. */
public final class FirmHead {
    private static final double LOGO_WIDTH = PageFrame.ANSWERS - PageFrame.LEFT - 5;
    private static final double LOGO_HEIGHT = 15;
    private static final double BELOW = 3;

    private final String firm;
    private final @Nullable BufferedImage logo;
    private final String words;
    private final double left;

    public FirmHead(Survey survey, Pictures pictures) throws IOException {
        Letterhead head = survey.settings().letterhead();
        firm = head.firm();
        logo = head.logo().isEmpty() ? null : PictureFile.read(pictures, head.logo());
        String who = survey.heading().surveyor();
        String title = head.qualification();
        List<String> lines = new ArrayList<>();
        if (!head.equals(Letterhead.NONE)) {
            lines.add(firm.isBlank() ? "" : Prose.bold(Prose.plain(firm)));
            lines.add(Prose.plain(head.address()));
            lines.add(Prose.plain(who.isEmpty() || title.isEmpty() ? who + title : who + ", " + title));
        }
        lines.removeIf(String::isBlank);
        words = String.join("\n", lines);
        left = logo == null ? PageFrame.LEFT : PageFrame.ANSWERS;
    }

    /** With what is left free below. */
    public double heightMm() {
        double logoHigh = logo == null ? 0 : LOGO_HEIGHT;
        double high = Math.max(logoHigh, words.isEmpty() ? 0 : Flow.SMALL.height(words, PageFrame.RIGHT - left));
        return high == 0 ? 0 : high + BELOW;
    }

    public void paint(Paper paper, double top) {
        BufferedImage shown = logo;
        if (shown != null) {
            paper.figure(
                    "Logo of " + firm, p -> p.picture(shown, new Box(PageFrame.LEFT, top, LOGO_WIDTH, LOGO_HEIGHT)));
        }
        if (!words.isEmpty()) {
            Flow.SMALL.paint(paper, words, left, top, PageFrame.RIGHT - left, Anchor.LEFT);
        }
    }
}
