package corewright.mutation;

import corewright.SurveyFolders;
import corewright.intake.Intake;
import corewright.intake.SurveyCheck;
import corewright.intake.SurveyFolder;
import corewright.store.Pictures;
import corewright.store.SurveyFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A valid input: a survey folder or a single file. */
record Input(Kind kind, Map<String, byte[]> files) {
    enum Kind {
        FOLDER,
        SURVEY_FILE,
        PANEL,
        GRID,
        POINTS
    }

    static final String SURVEY_FILE = "survey.gpkg";

    /** A few folders, one survey file twice, and one of each single file. */
    static List<Input> all(Path scratch) {
        try {
            List<Input> inputs = new ArrayList<>();
            SurveyFolders minimal = SurveyFolders.minimal(Files.createDirectories(scratch.resolve("minimal")));
            inputs.add(of(minimal.path()));
            inputs.add(of(rich(Files.createDirectories(scratch.resolve("rich"))).path()));
            inputs.add(
                    of(drawn(Files.createDirectories(scratch.resolve("drawn"))).path()));
            for (int pageSize : new int[] {4096, 512}) {
                inputs.add(surveyFile(scratch.resolve("rich").resolve("survey"), pageSize));
            }
            inputs.add(single(Kind.PANEL, "panel.yaml", PANEL));
            inputs.add(single(Kind.GRID, "grid.asc", GRID));
            inputs.add(single(Kind.POINTS, "points.csv", "id;x;y;value\n1;0;0;3,5\n2;10;0;4\n3;0;10;-1e2\n"));
            return inputs;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Input single(Kind kind, String name, String text) {
        return new Input(kind, Map.of(name, text.getBytes(StandardCharsets.UTF_8)));
    }

    /** The survey of a folder in a file with pages of a size, so that a table takes one of them or several. */
    private static Input surveyFile(Path folder, int pageSize) throws IOException {
        Path file = folder.resolveSibling(SURVEY_FILE);
        Intake intake = SurveyFolder.read(folder);
        SurveyFile.create(file, intake.survey(), SurveyCheck.importNotes(intake), Pictures.in(folder));
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA page_size = " + pageSize);
            statement.execute("VACUUM");
        } catch (SQLException e) {
            throw new IOException(e);
        }
        byte[] bytes = Files.readAllBytes(file);
        Files.delete(file);
        return new Input(Kind.SURVEY_FILE, Map.of(SURVEY_FILE, bytes));
    }

    private static Input of(Path folder) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> entries = Files.list(folder)) {
            for (Path entry : entries.filter(Files::isRegularFile).toList()) {
                files.put(String.valueOf(entry.getFileName()), Files.readAllBytes(entry));
            }
        }
        return new Input(Kind.FOLDER, files);
    }

    /** Puts files into an emptied folder. */
    static void write(Map<String, byte[]> files, Path folder) {
        try {
            if (Files.exists(folder)) {
                try (Stream<Path> old = Files.walk(folder)) {
                    for (Path path : old.sorted(Comparator.reverseOrder()).toList()) {
                        Files.delete(path);
                    }
                }
            }
            Files.createDirectories(folder);
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Files.write(folder.resolve(file.getKey()), file.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every kind of file, two faces, a cross-tab, semicolons and decimal commas, overrides of all sections. */
    private static SurveyFolders rich(Path parent) {
        String yaml = SurveyFolders.YAML
                        .replace("faces:\n", "faces:\n  - { name: sole, tilt_deg: 20, uphill_deg: 90 }\n")
                        .replace("plan: plan.csv, moisture: moisture.csv, taps: taps.csv, probes: probes.csv", FILES)
                + OVERRIDES;
        return SurveyFolders.minimal(parent)
                .with("survey.yaml", yaml)
                .with(
                        "plan.csv",
                        SurveyFolders.PLAN + "sole,outline,,\"POLYGON((0 0,800 0,800 700,0 700,0 0))\",,,,,deck\n"
                                + "sole,opening,hatch,\"POLYGON((300 300,400 300,400 400,300 400,300 300))\",,,,,\n"
                                + "sole,laminate,pad,\"POLYGON((0 0,100 0,100 100,0 100,0 0))\",,,,,deck\n"
                                + "sole,solid,edge,\"POLYGON((700 600,800 600,800 700,700 700,700 600))\",,,,,\n"
                                + "foredeck,divider,frame,\"LINESTRING(600 0,600 600)\",,,,,\n"
                                + "foredeck,access,locker,POINT(200 200),,,,,\n"
                                + "foredeck,disturbance,screws,POINT(250 200),,,,,\n"
                                + "sole,support,beam,\"LINESTRING(0 350,800 350)\",,,,clamped,\n")
                .with("cross.csv", "y\\x,100,250,400\n100,7,8,41\n250,9,,>100\n400,8,7,12\n")
                .with("feelers.csv", "id;x1;y1;x2;y2;end;void_depth\nF1;100,5;500;200;500;beyond;4\n")
                .with("plugs.csv", "id,x,y,mc_percent\nG1,100,100,14.5\n")
                .with("temperatures.csv", "id,x,y,minutes,value\n,100,100,10,22.5\n,100,100,20,warm\n")
                .with("log.csv", "hole,minutes,grams,ooze_at\nR1-1,10,35,R1-V1\n")
                .with("photos.csv", "file,x,y,caption\nP.png,100,100,\"hatch, port side\"\n")
                .with("P.png", PNG);
    }

    private static final byte[] PNG = {
        (byte) 0x89,
        'P',
        'N',
        'G',
        13,
        10,
        26,
        10,
        0,
        0,
        0,
        13,
        'I',
        'H',
        'D',
        'R',
        0,
        0,
        0,
        9,
        0,
        0,
        0,
        9,
        8,
        2,
        0,
        0,
        0
    };

    private static final String FILES = """
            plan: [plan.csv], moisture: [{file: moisture.csv, face: foredeck, meter: A}, {file: cross.csv, face: sole, side: inner}],
              taps: {file: taps.csv, face: foredeck}, probes: {file: probes.csv, face: foredeck}, feelers: {file: feelers.csv, face: foredeck},
              plugs: {file: plugs.csv, face: sole}, temperatures: {file: temperatures.csv, face: sole}, log: log.csv, photos: {file: photos.csv, face: sole}""";

    private static final String OVERRIDES = """
            columns: { plugs: { mc_percent: mc_percent } }
            skins: { flax: { modulus_mpa: 9000, poisson: 0.32 } }
            cores: [ { name: cork, modulus_mpa: 90, shear_mpa: 20 } ]
            resins: [ { name: own, expansion: 4, work_s: 300 } ]
            costs: { currency: "EUR", rate_per_hour: 72 }
            thresholds: { inject_largest_mm2: 250000 }
            drilling: { hole_diameter_mm: 5 }
            crew: { people: 2 }
            climate: { temperature_c: 16, humidity_percent: 62 }
            method_overrides: [ { face: foredeck, x_mm: 525, y_mm: 525, method: recore, reason: "by hand" } ]
            reading_overrides: [ { kind: moisture, id: M2, face: foredeck, x_mm: 225, y_mm: 75, trust: set-aside, reason: "rain" } ]
            moved_holes: [ { face: foredeck, planned_x_mm: 480, planned_y_mm: 540, x_mm: 500, y_mm: 540 } ]
            loads: [ { name: crew, face: foredeck, line: "LINESTRING(100 100,400 100)", force_N: 200 }, { face: sole, pressure_kPa: 5 } ]
            """;

    private static SurveyFolders drawn(Path parent) {
        return SurveyFolders.minimal(parent)
                .with("survey.yaml", SurveyFolders.YAML.replace("plan: plan.csv", DRAWINGS))
                .with("deck.dxf", DXF)
                .with("deck.svg", SVG)
                .without("plan.csv");
    }

    private static final String DRAWINGS = """
            plan: [{file: deck.dxf, units: cm, origin: [1, 2], layers: {HULL: outline, FRAMES: {kind: support, edge: clamped}}},
              {file: deck.svg, units: mm, aft_deg: 0, join_mm: 2, layers: {cleats: {kind: fitting, metal: yes}}}]""";

    private static final String DXF = """
            0
            SECTION
            2
            ENTITIES
            0
            LINE
            8
            HULL
            10
            1
            20
            2
            11
            91
            21
            2
            0
            ARC
            8
            HULL
            10
            91
            20
            32
            40
            30
            50
            270
            51
            90
            0
            POLYLINE
            8
            HULL
            66
            1
            0
            VERTEX
            8
            HULL
            10
            91
            20
            62
            42
            0.1
            0
            VERTEX
            8
            HULL
            10
            1
            20
            62
            0
            VERTEX
            8
            HULL
            10
            1
            20
            2
            0
            SEQEND
            8
            HULL
            0
            LWPOLYLINE
            8
            FRAMES
            90
            2
            70
            0
            10
            40
            20
            2
            42
            0.2
            10
            40
            20
            62
            0
            TEXT
            8
            FRAMES
            1
            frame
            0
            ENDSEC
            0
            EOF
            """;

    private static final String SVG = """
            <?xml version="1.0"?>
            <!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 900 600">
              <g id="opening" transform="translate(200,-300) rotate(10)">
                <rect id="hatch" x="0" y="-50" width="100" height="60" rx="8"/>
                <path id="port" d="M200 0 l 40 0 q 10,10 0 20 c -5 5 -15 5 -20 0 a10 10 0 0 1 -20 0 z"/>
              </g>
              <g id="cleats"><circle cx="600" cy="-100" r="12"/><ellipse cx="700" cy="-100" rx="9" ry="4"/></g>
              <g id="layer1"><polyline id="support-1" points="0,-200 900,-200"/><line id="divider" x1="300" y1="0" x2="300" y2="-600"/></g>
              <defs><polygon points="0,0 1,1 2,0"/></defs>
              <text id="solid" x="1" y="2">hatch</text>
            </svg>
            """;

    private static final String PANEL = """
            outline: "POLYGON((0 0,900 0,900 600,0 600,0 0))"
            edges: [simple, clamped, free, simple-hard]
            outer_skin: { thickness_mm: 3.0, E_MPa: 11000, nu: 0.30 }
            inner_skin: { thickness_mm: 3.0, Ex_MPa: 11000, Ey_MPa: 9000, nu_xy: 0.30, Gxy_MPa: 4000 }
            core: { thickness_mm: 12.5, Gxz_MPa: 157, Gyz_MPa: 157, Ez_MPa: 3900, shear_strength_MPa: 2 }
            patches:
              - { area: "POLYGON((300 200,600 200,600 400,300 400,300 200))", void_depth_mm: 12.5 }
              - { area: "POLYGON((0 0,100 0,100 100,0 0))", core: { Gxz_MPa: 57.7, Gyz_MPa: 57.7, Ez_MPa: 202 } }
            loads:
              - { area: "POLYGON((400 250,500 250,500 350,400 350,400 250))", force_N: 1000 }
              - { line: "LINESTRING(0 300,900 300)", force_N: 100 }
              - { pressure_kPa: 5 }
            mesh_mm: 40
            probe_points: [[450,300],[300,300]]
            """;

    private static final String GRID = """
            ncols 4
            nrows 3
            xllcorner 100.5
            yllcenter -20
            cellsize 25
            NODATA_value -9999
            1 2 3 4
            5 6.5 -9999 8e0
            9 nan 11 12
            """;
}
