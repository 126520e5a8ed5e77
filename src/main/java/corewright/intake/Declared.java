package corewright.intake;

import corewright.intake.text.Kind;
import corewright.intake.text.Units;
import corewright.intake.yaml.YamlValue;
import corewright.survey.Heading;
import corewright.survey.Judgements;
import corewright.survey.Laminate;
import corewright.survey.Materials;
import corewright.survey.Meter;
import corewright.survey.settings.Settings;
import java.util.List;
import java.util.Map;

/**
 * What survey.yaml says.
 *
 * @param columns kind of file, to column of ours, to header in the file
 */
record Declared(
        Heading heading,
        Units units,
        List<DeclaredFace> faces,
        List<FileEntry> files,
        List<Meter> meters,
        List<Laminate> laminates,
        Materials materials,
        Map<Kind, Map<String, String>> columns,
        Settings settings,
        Judgements judgements) {
    /** A face before its outline is known. */
    record DeclaredFace(YamlValue at, String name, double tiltDeg, double uphillDeg) {}

    List<String> faceNames() {
        return faces.stream().map(DeclaredFace::name).toList();
    }

    List<String> meterNames() {
        return meters.stream().map(Meter::name).toList();
    }

    List<String> laminateNames() {
        return laminates.stream().map(Laminate::name).toList();
    }
}
