package corewright.demo;

import corewright.demo.Truth.Damage;
import corewright.demo.Truth.Size;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Every file of {@code demo-data}, by its path below it. */
final class DemoFiles {
    static final String BOAT = "quillwort";

    private static final String SURVEY = """
            format: 1
            name: "Brindlewisp, boat deck and wheelhouse side"
            surveyed: 2026-05-19
            vessel: "Brindlewisp, motor boat, 12.8 m, built 2007 (invented)"
            client: "O. Varnholt (invented)"
            surveyor: "E. Castellane (invented)"
            weather: "light cloud, 19 C, 58 % relative humidity, no rain for a week"
            days_ashore: 38
            notes: "An invented boat for trying the program; see ../README.md for what is truly wrong with her."
            units: { length: mm, depth: mm, temperature: C }
            faces:
              - { name: boat deck, tilt_deg: 2, uphill_deg: 180 }         # the roof of the saloon; rises forward
              - { name: wheelhouse side, tilt_deg: 78, uphill_deg: 90 }   # to port, from outboard; y runs up
            files:
              plan: plan.csv
              moisture: moisture.csv
              taps: taps.csv
              probes: probes.csv
              feelers: feelers.csv
              plugs: plugs.csv
            meters:
              - { name: A, full_scale: 100, dry: 10, wet: 25 }            # a relative scale, not a percentage
              - { name: B, full_scale: 100, dry: 6, wet: 16 }             # the same meter over foam, where it reads less
            laminates:
              - { name: deck, outer_skin_mm: 3.0, core_mm: 15.0, inner_skin_mm: 2.2, skin: e-glass-polyester, core: balsa-150, measured: yes }
              - { name: wheelhouse, outer_skin_mm: 2.6, core_mm: 12.0, inner_skin_mm: 2.0, skin: e-glass-polyester, core: pvc-80, core_form: scored, measured: yes }
            climate: { temperature_c: 19, humidity_percent: 58 }
            crew: { people: 2 }
            loads:
              - { name: "davit lifting the tender", face: boat deck, area: "POLYGON((2540 460,2740 460,2740 660,2540 660,2540 460))", force_N: 2600 }
              - { name: "two people folding down the mast", face: boat deck, area: "POLYGON((1880 -130,2280 -130,2280 170,1880 170,1880 -130))", force_N: 1700 }
              - { name: "snow in winter storage", face: boat deck, pressure_kPa: 1.5 }
            costs: { currency: "€", rate_per_hour: 68, resin_per_kg: 34, material_per_m2: 210 }
            """;

    private static final String FEELERS = """
            id,face,x1,y1,x2,y2,end,void_depth,note
            F1,boat deck,1790,-490,1525,-415,beyond,,a 275 mm rod from the aerial's gland
            F2,boat deck,1790,-490,1850,-520,firm,,from the same gland
            """;

    private static final String PLUGS = """
            id,face,x,y,mc_percent,note
            K1,boat deck,1790,-490,11.0,from the aerial's gland
            K2,boat deck,2760,690,38,
            """;

    private DemoFiles() {}

    static Map<String, String> all() {
        Walk walk = new Walk();
        Map<String, String> files = new LinkedHashMap<>();
        files.put(BOAT + "/survey.yaml", SURVEY);
        files.put(BOAT + "/plan.csv", Plan.csv());
        files.put(BOAT + "/moisture.csv", walk.moisture());
        files.put(BOAT + "/taps.csv", walk.taps());
        files.put(BOAT + "/probes.csv", walk.probes());
        files.put(BOAT + "/feelers.csv", FEELERS);
        files.put(BOAT + "/plugs.csv", PLUGS);
        files.put("README.md", readme());
        files.replaceAll((name, text) -> text.replace("\r\n", "\n"));
        return files;
    }

    private static String readme() {
        StringBuilder text = new StringBuilder("""
                # Demo data

                `quillwort` holds the survey of the **invented boat** *Brindlewisp*, a motor boat: nobody measured anything, and
                boat, people and readings are made up. The folder keeps the name of a water plant, so that commands stay as they
                are. Try `corewright run demo-data/quillwort --out quillwort-report`.

                A generator in the test tree (`src/test/java/corewright/demo`) first says what is wrong with her, then reads
                it as a surveyor does: chalked grids, closer where something was found, scatter from one seed, and a few
                honest troubles. `DemoDeckTest` makes the folder anew and fails when a byte differs;
                `mvn test -Dtest=DemoDeckTest -Ddemo.update=true` rewrites it.

                ## What is truly wrong

                | damage | face | wet | loose | area, m² | empty volume, litres | why |
                | --- | --- | --- | --- | --- | --- | --- |
                """);
        for (Damage d : Truth.DAMAGES) {
            Size size = Truth.size(d);
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s | %.3f | %.3f | %s |%n",
                    d.name(),
                    d.face(),
                    d.wet() ? "yes" : "no",
                    d.loose() ? "yes" : "no",
                    size.areaM2(),
                    size.volumeL(),
                    d.story()));
        }
        return text.append("""

                        Areas and volumes are summed on a 5 mm grid. Each damage is an ellipse whose edge wanders by about a
                        tenth; empty space is deepest in the middle. A gap of 0.25 or 0.35 mm at its deepest is a loose skin,
                        not an empty space (from 0.5 mm).

                        ## What makes it honest

                        - Metal fittings read up to 38 too high within 95 mm, over dry core too: the feet of davits and grab
                          rails, the tender's chock, the mast step, the shore-power inlet.
                        - Two readings beside the mast step are off the meter's scale.
                        - Two places were read twice, five readings stand over core that a plug proved dry.
                        - One tap was misheard: (1360, 480) is called hollow and is sound. Taps within some 15 mm of an edge
                          may fall on either side of it.
                        - Probe depths carry 0.35 mm of scatter and are read to half a millimetre. One pilot hole's note leaves
                          out the core: what it found of depth counts, but it proves nothing dry.
                        - From the gland of a former aerial a rod ran free for its whole length one way and met core the other
                          way; two core plugs were dried in an oven.
                        - A rib of solid glass stops the water: the mast step's leak does not reach the bay abaft it.
                        - The wheelhouse side has a core of scored foam, which holds water in its joints only. The meter reads
                          less over it, so that it has a scale of its own there, and a finding says what it cannot see.
                        """).toString();
    }
}
