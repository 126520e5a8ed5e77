package corewright.desktop;

import corewright.Main;
import java.lang.management.ManagementFactory;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import javafx.stage.Window;

/**
 * From the start of the virtual machine to the window, to its painted plan and to its painted map, by clock and by processor
 * time of the whole process, on a real or virtual screen:
 *
 * <pre>DISPLAY=:7 java -cp ... corewright.desktop.StartBenchmark demo-data/quillwort</pre>
 *
 * Ends once the whole chain is done. An archive of classes needs jars on the class path.
 */
final class StartBenchmark {
    private static final long PAUSE_MS = 10;

    private StartBenchmark() {}

    public static void main(String[] args) throws Exception {
        Thread watch = new Thread(StartBenchmark::watch, "start-benchmark");
        watch.setDaemon(true);
        watch.start();
        Main.main(new String[] {"desktop", args[0]});
    }

    private static void watch() {
        Map<String, Predicate<MainView>> marks = new LinkedHashMap<>();
        marks.put("window", v -> true);
        marks.put("plan painted", v -> v.plan().settled());
        marks.put("map known", v -> damage(v).contains("region"));
        marks.put("map painted", v -> damage(v).contains("region") && v.plan().settled());
        marks.put("all calculated", v -> !word(v, "#step-stiffness").contains("follow"));
        try {
            for (Map.Entry<String, Predicate<MainView>> mark : marks.entrySet()) {
                while (!reached(mark.getValue())) {
                    Thread.sleep(PAUSE_MS);
                }
                say(mark.getKey());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        Platform.exit();
    }

    private static boolean reached(Predicate<MainView> mark) {
        for (Window window : Window.getWindows()) {
            if (window instanceof Stage stage
                    && stage.isShowing()
                    && stage.getScene() != null
                    && stage.getScene().getRoot() instanceof MainView view
                    && mark.test(view)) {
                return true;
            }
        }
        return false;
    }

    private static String damage(MainView view) {
        return word(view, "#step-damage");
    }

    private static String word(MainView view, String step) {
        Node node = view.lookup(step);
        return node instanceof Labeled l ? String.valueOf(l.getAccessibleText()) + l.getText() : "";
    }

    private static void say(String what) {
        long clock = System.currentTimeMillis()
                - ManagementFactory.getRuntimeMXBean().getStartTime();
        long cpu = ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
        System.out.printf("%s | %.2f s | %.2f s of processor time%n", what, clock / 1e3, cpu / 1e9);
    }
}
