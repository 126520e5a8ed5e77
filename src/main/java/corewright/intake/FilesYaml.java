package corewright.intake;

import corewright.intake.text.Kind;
import corewright.intake.text.Notes;
import corewright.intake.text.Words;
import corewright.intake.yaml.YamlBlock;
import corewright.intake.yaml.YamlValue;
import corewright.intake.yaml.YamlValue.Shape;
import corewright.survey.Meter;
import corewright.survey.Side;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The section {@code files}. */
final class FilesYaml {
    private final List<String> faces;
    private final List<String> meters;
    private final Notes notes;

    private FilesYaml(List<String> faces, List<String> meters, Notes notes) {
        this.faces = faces;
        this.meters = meters;
        this.notes = notes;
    }

    static List<FileEntry> read(YamlBlock top, List<String> faces, List<Meter> meters, Notes notes) {
        return new FilesYaml(faces, meters.stream().map(Meter::name).toList(), notes).entries(top);
    }

    private List<FileEntry> entries(YamlBlock top) {
        List<FileEntry> entries = new ArrayList<>();
        YamlBlock files = top.block("files");
        files.only(Stream.concat(Kind.keys().stream(), Stream.of(RepairPlanYaml.KEY))
                .toList());
        if (!files.has("plan")) {
            files.expected("plan", "a file name such as plan.csv");
        }
        if (files.has("moisture") && !top.has("meters")) {
            top.expected("meters", "a list of meters such as - { name: A, full_scale: 100, dry: 10, wet: 25 }");
        }
        for (Kind kind : Kind.values()) {
            Set<String> listed = new HashSet<>();
            for (YamlValue item : files.list(kind.key())) {
                FileEntry entry = entry(kind, item);
                String once = entry.drawing() == null ? entry.file() : entry.file() + "\n" + entry.face();
                if (!entry.file().isEmpty() && !listed.add(once)) {
                    notes.complain(item.origin(), item.path(), "\"" + entry.file() + "\" is listed twice");
                } else if (!entry.file().isEmpty()) {
                    entries.add(entry);
                }
            }
        }
        return entries;
    }

    private FileEntry entry(Kind kind, YamlValue item) {
        if (item.shape() == Shape.TEXT) {
            boolean drawn = kind == Kind.PLAN && DrawingEntry.isDrawing(item.text());
            return new FileEntry(kind, item, item.text(), "", "", Side.OUTER, drawn ? DrawingEntry.plain() : null);
        }
        YamlBlock block = YamlBlock.of(item, notes);
        if (kind == Kind.PLAN && DrawingEntry.isDrawing(block.text("file"))) {
            block.only(DrawingEntry.KEYS);
            String file = block.required("file", "a file name");
            String face = known(block, "face", faces);
            return new FileEntry(kind, item, file, face, "", Side.OUTER, DrawingEntry.read(block, notes));
        }
        block.only(List.of("file", "face", "meter", "side"));
        Side side = block.word("side", Side.class);
        return new FileEntry(
                kind,
                item,
                block.required("file", "a file name"),
                known(block, "face", faces),
                known(block, "meter", meters),
                side == null ? Side.OUTER : side,
                null);
    }

    private static String known(YamlBlock block, String key, List<String> names) {
        String name = block.text(key);
        if (!name.isEmpty() && !names.contains(name)) {
            block.expected(key, names.isEmpty() ? "none, as survey.yaml lists no " + key : Words.or(names));
            return "";
        }
        return name;
    }
}
