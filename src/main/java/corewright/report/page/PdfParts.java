package corewright.report.page;

import corewright.drawing.kit.Parts;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Graphics2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.jspecify.annotations.Nullable;

/**
 * The structure of a PDF (ISO 32000-1, 14.7 and 14.8): what its words and drawings are, in the order of painting, and its
 * bookmarks, which are its titles and headings. Words that nobody says anything of are a paragraph.
 */
final class PdfParts implements Parts {
    /** Draws words. */
    interface Drawing {
        void draw() throws IOException;
    }

    /** A part that is open; it becomes an element when something is painted in it. */
    private static final class Open {
        private final Part part;
        private final StringBuilder words = new StringBuilder();
        private @Nullable PDStructureElement element;

        Open(Part part) {
            this.part = part;
        }
    }

    /** Parts the boat's name, which a bookmark need not repeat, from what the page is. */
    private static final char BOAT = '·';

    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final PDStructureElement whole;
    private final PDDocumentOutline outline = new PDDocumentOutline();
    private final COSArray parents = new COSArray();
    private final Deque<Open> open = new ArrayDeque<>();
    private @Nullable PDOutlineItem title;
    private PDPage page = new PDPage();
    private COSArray onPage = new COSArray();
    private int pages;

    PdfParts(PDDocument document) {
        whole = new PDStructureElement("Document", root);
        root.appendKid(whole);
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        document.getDocumentCatalog().setMarkInfo(marked);
        document.getDocumentCatalog().setStructureTreeRoot(root);
        document.getDocumentCatalog().setDocumentOutline(outline);
    }

    /** What is painted from now on stands on this page. */
    void begin(PDPage next) {
        page = next;
        onPage = new COSArray();
        parents.add(COSInteger.get(pages));
        parents.add(onPage);
        page.setStructParents(pages++);
    }

    /** All pages are painted. */
    void finish() {
        COSDictionary tree = new COSDictionary();
        tree.setItem(COSName.NUMS, parents);
        root.setParentTree(new PDNumberTreeNode(tree, PDParentTreeValue.class));
        root.setParentTreeNextKey(pages);
        outline.openNode();
    }

    @Override
    public void part(Part part, String says, Graphics2D graphics, Consumer<Graphics2D> painting) {
        if (within(Part.FIGURE) || within(Part.ASIDE)) {
            painting.accept(graphics);
            return;
        }
        Open own = new Open(part);
        open.push(own);
        if (part == Part.FIGURE && graphics instanceof PdfBoxGraphics2D pdf) {
            PDStructureElement element = element(own);
            element.setAlternateDescription(says);
            COSDictionary properties = new COSDictionary();
            properties.setInt(COSName.MCID, mark(element));
            pdf.drawInMarkedContentSequence(
                    COSName.getPDFName(element.getStructureType()),
                    PDPropertyList.create(properties),
                    painting::accept);
        } else {
            painting.accept(graphics);
        }
        open.pop();
        bookmark(own);
    }

    /** Draws words as what they are. */
    void words(PDPageContentStream content, String words, Drawing drawing) throws IOException {
        if (within(Part.FIGURE)) {
            drawing.draw();
            return;
        }
        if (within(Part.ASIDE)) {
            content.beginMarkedContent(COSName.ARTIFACT);
        } else {
            Open top = open.peek();
            boolean named = top != null && leaf(top.part);
            Open own = named ? top : new Open(Part.PARAGRAPH);
            PDStructureElement element = element(own);
            own.words.append(own.words.isEmpty() ? "" : " ").append(words.strip());
            content.beginMarkedContent(COSName.getPDFName(element.getStructureType()), mark(element));
        }
        drawing.draw();
        content.endMarkedContent();
    }

    private boolean within(Part part) {
        return open.stream().anyMatch(o -> o.part == part);
    }

    private static boolean leaf(Part part) {
        return part != Part.TABLE && part != Part.ROW;
    }

    /** The next mark on this page, which belongs to the element. */
    private int mark(PDStructureElement element) {
        int id = onPage.size();
        onPage.add(element);
        element.appendKid(id);
        return id;
    }

    private PDStructureElement element(Open own) {
        PDStructureElement known = own.element;
        if (known != null) {
            return known;
        }
        PDStructureNode parent = whole;
        List<Open> outer = new ArrayList<>(open);
        int at = outer.indexOf(own) + 1; // 0 where it is not open itself: the innermost is then its parent
        if (at < outer.size()) {
            parent = element(outer.get(at));
        }
        PDStructureElement element = new PDStructureElement(type(own.part), parent);
        element.setPage(page);
        if (own.part == Part.HEAD_CELL) {
            element.addAttribute(scope());
        }
        parent.appendKid(element);
        own.element = element;
        return element;
    }

    private static PDTableAttributeObject scope() {
        PDTableAttributeObject scope = new PDTableAttributeObject();
        scope.setScope("Column");
        return scope;
    }

    private static String type(Part part) {
        return switch (part) {
            case TITLE -> "H1";
            case HEADING -> "H2";
            case PARAGRAPH, ASIDE -> "P";
            case TABLE -> "Table";
            case ROW -> "TR";
            case HEAD_CELL -> "TH";
            case CELL -> "TD";
            case FIGURE -> "Figure";
        };
    }

    private void bookmark(Open own) {
        if (own.words.isEmpty() || own.part != Part.TITLE && own.part != Part.HEADING) {
            return;
        }
        PDOutlineItem item = new PDOutlineItem();
        String words = own.words.toString();
        item.setTitle(words.substring(words.indexOf(BOAT) + 1).strip());
        PDPageFitDestination place = new PDPageFitDestination();
        place.setPage(page);
        item.setDestination(place);
        PDOutlineItem above = title;
        if (own.part == Part.TITLE || above == null) {
            outline.addLast(item);
            title = item;
        } else {
            above.addLast(item);
        }
    }
}
