package corewright.report;

import java.nio.file.Files;
import java.nio.file.Path;

/** A process that has written half of its outputs, and stays so until it is killed. */
final class HalfWritten {
    private HalfWritten() {}

    public static void main(String[] args) throws Exception {
        try (Destination destination = new Destination(Path.of(args[0]))) {
            Files.writeString(destination.work().resolve("summary.json"), "half");
            System.out.println("half written");
            Thread.sleep(600_000);
        }
    }
}
