package corewright.report.page;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.Orientation;
import org.apache.pdfbox.printing.PDFPageable;

/** A file to a printer of the system, every page at its own size. */
public final class PdfPrint {
    private PdfPrint() {}

    /** Names of the printers that the system offers; asking may take seconds. */
    public static List<String> printers() {
        return Arrays.stream(services()).map(PrintService::getName).toList();
    }

    private static PrintService[] services() {
        return PrintServiceLookup.lookupPrintServices(null, null);
    }

    /**
     * Prints all pages at 100 %, never fitted to the sheet.
     *
     * @param printer one of {@link #printers}
     * @throws IOException where the file or the printer will not do
     */
    public static void print(Path file, String printer) throws IOException {
        PrintService service = Arrays.stream(services())
                .filter(s -> s.getName().equals(printer))
                .findFirst()
                .orElseThrow(() -> new IOException("there is no printer " + printer + " any more"));
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            PrinterJob job = PrinterJob.getPrinterJob();
            job.setPrintService(service);
            job.setJobName(String.valueOf(file.getFileName()));
            job.setPageable(new PDFPageable(document, Orientation.AUTO));
            job.print();
        } catch (PrinterException e) {
            throw new IOException("the printer " + printer + " refused: " + e.getMessage(), e);
        }
    }
}
