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
            name: "Quillwort, foredeck and cabin front"
            surveyed: 2026-03-24
            vessel: "Quillwort, cutter, 10.6 m, built 1986 (invented)"
            client: "M. Tannahill (invented)"
            surveyor: "H. Abrahamsen (invented)"
            weather: "dry and overcast, 14 C, 62 % relative humidity, no rain for four days"
            days_ashore: 23
            notes: "An invented boat for trying the program; see ../README.md for what is truly wrong with her."
            units: { length: mm, depth: mm, temperature: C }
            faces:
              - { name: foredeck, tilt_deg: 3, uphill_deg: 180 }    # rises towards the bow
              - { name: cabin front, tilt_deg: 65, uphill_deg: 0 }  # x runs up the slope
            files:
              plan: plan.csv
              moisture: moisture.csv
              taps: taps.csv
              probes: probes.csv
              feelers: feelers.csv
              plugs: plugs.csv
            meters:
              - { name: A, full_scale: 100, dry: 10, wet: 25 }      # a relative scale, not a percentage
            laminates:
              - { name: deck, outer_skin_mm: 3.2, core_mm: 12.7, inner_skin_mm: 2.4, skin: e-glass-polyester, core: balsa-150, measured: yes }
              - { name: cabin, outer_skin_mm: 2.8, core_mm: 9.5, inner_skin_mm: 2.2, skin: e-glass-polyester, core: balsa-150, measured: yes }
            climate: { temperature_c: 16, humidity_percent: 62 }
            crew: { people: 2 }
            loads:
              - { name: "two people at the forestay plate", face: foredeck, area: "POLYGON((900 -150,1300 -150,1300 150,900 150,900 -150))", force_N: 1600 }
              - { name: "crew landing from the rail", face: foredeck, area: "POLYGON((2565 -740,2715 -740,2715 -640,2565 -640,2565 -740))", force_N: 2400 }
              - { name: "a wave on the foredeck", face: foredeck, pressure_kPa: 2 }
            costs: { currency: "€", rate_per_hour: 72, resin_per_kg: 31, material_per_m2: 190 }
            """;

    private static final String FEELERS = """
            id,face,x1,y1,x2,y2,end,void_depth,note
            F1,foredeck,1840,430,1560,390,beyond,,a 28 cm rod from the old core-drilled hole
            F2,foredeck,1840,430,1905,470,firm,,from the same hole
            """;

    private static final String PLUGS = """
            id,face,x,y,mc_percent,note
            K1,foredeck,1840,430,11.5,from the old core-drilled hole
            K2,foredeck,2930,900,41,
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

                `quillwort` is the survey of an **invented boat**: nobody measured anything, and boat, people and readings are
                made up. Try `corewright run demo-data/quillwort --out quillwort-report`.

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

                        - Metal fittings read up to 38 too high within 95 mm, over dry core too: both bow cleats, the
                          stanchion bases, the handrail foot.
                        - Two readings beside the forestay plate are off the meter's scale.
                        - Two places were read twice, five readings stand over core that a plug proved dry.
                        - One tap was misheard: (2320, 640) is called hollow and is sound. Taps within some 15 mm of an edge
                          may fall on either side of it.
                        - Probe depths carry 0.35 mm of scatter and are read to half a millimetre.
                        - From an old core-drilled hole a rod ran free for its whole length one way and met core the other way; two core plugs were dried in an
                          oven.
                        - A web of solid glass stops the water: the bay forward of it is dry.
                        """).toString();
    }
}
