package corewright.survey.settings;

import java.util.List;

/** Every rule, threshold and assumption that a survey may override, in one place. */
public record Settings(
        Thresholds thresholds,
        Drilling drilling,
        List<Resin> resins,
        Costs costs,
        Crew crew,
        Climate climate,
        Numerics numerics,
        Terms terms,
        Drying drying,
        Goal goal,
        Letterhead letterhead) {
    public Settings {
        resins = List.copyOf(resins);
    }

    /** In the terms of the default, drying as by default, no goal. */
    public Settings(
            Thresholds thresholds,
            Drilling drilling,
            List<Resin> resins,
            Costs costs,
            Crew crew,
            Climate climate,
            Numerics numerics) {
        this(
                thresholds,
                drilling,
                resins,
                costs,
                crew,
                climate,
                numerics,
                Terms.DEFAULT,
                Drying.DEFAULT,
                Goal.NONE,
                Letterhead.NONE);
    }

    /** The defaults, each explained where it is declared. */
    public static Settings defaults() {
        return new Settings(
                Thresholds.DEFAULT,
                Drilling.DEFAULT,
                Resin.builtIn(),
                Costs.DEFAULT,
                Crew.DEFAULT,
                Climate.DEFAULT,
                Numerics.DEFAULT);
    }

    /** The same by other thresholds. */
    public Settings with(Thresholds others) {
        return new Settings(others, drilling, resins, costs, crew, climate, numerics, terms, drying, goal, letterhead);
    }

    /** The resin of that name. */
    public Resin resin(String name) {
        return resins.stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow();
    }

    /**
     * People at work.
     *
     * @param people 1 or 2
     */
    public record Crew(int people) {
        static final Crew DEFAULT = new Crew(1);

        public Crew {
            Check.within("people", people, 1, 2);
        }
    }

    /**
     * What the least work is looked for to reach; 0 is no goal.
     *
     * @param stiffness share of its stiffness as built that every damaged panel has again
     * @param budget in the survey's currency
     */
    public record Goal(double stiffness, double budget) {
        /** Nothing asked. */
        public static final Goal NONE = new Goal(0, 0);

        public Goal {
            Check.within("stiffness", stiffness, 0, 1);
            Check.notNegative("budget", budget);
        }
    }

    /**
     * Whose record it is, beside the surveyor's name; an empty text where nothing is said.
     *
     * @param firm its name
     * @param address in one line
     * @param qualification the surveyor's title
     * @param logo a picture inside the survey folder
     */
    public record Letterhead(String firm, String address, String qualification, String logo) {
        public static final Letterhead NONE = new Letterhead("", "", "", "");
    }

    /**
     * Weather the work is planned for.
     *
     * @param temperatureC the colder of deck and cup, degrees Celsius
     * @param humidityPercent relative humidity of the air that dries the core
     */
    public record Climate(double temperatureC, double humidityPercent) {
        static final Climate DEFAULT = new Climate(20, 60);

        public Climate {
            Check.within("temperatureC", temperatureC, -10, 50);
            Check.within("humidityPercent", humidityPercent, 0, 100);
        }
    }

    /**
     * How finely and how often to compute.
     *
     * @param cellMm side of a raster cell
     * @param realisations draws of the conditional simulation
     * @param seed of every random number: the same survey gives the same bytes
     * @param fewReadings below this many readings of a kind no variogram is fitted: a fixed range is used and said so
     */
    public record Numerics(double cellMm, int realisations, long seed, int fewReadings) {
        static final Numerics DEFAULT = new Numerics(25, 500, 20260402L, 20);

        public Numerics {
            Check.within("cellMm", cellMm, 2, 200);
            Check.within("realisations", realisations, 50, 20000);
        }
    }

    /**
     * In which terms the reader wants figures; nothing that is stored or calculated depends on it.
     *
     * @param display units on pages, cards, maps, in the window and in findings
     * @param decimal sign there
     * @param csv decimal sign in the tables of a run; with a comma the fields are parted by semicolons, as spreadsheets of comma
     *     countries expect
     * @param paper that his printer takes
     */
    public record Terms(Display display, Sign decimal, Sign csv, Sheet paper) {
        public static final Terms DEFAULT = new Terms(Display.METRIC, Sign.POINT, Sign.POINT, Sheet.A4);

        /** Millimetres, square metres, litres; or inches, square feet, US quarts. */
        public enum Display {
            METRIC,
            US
        }

        /** Between the whole and its parts. */
        public enum Sign {
            POINT,
            COMMA
        }

        /** Sheets of ISO 216 and ANSI Y14.1, upright. */
        public enum Sheet {
            A4(210, 297),
            A3(297, 420),
            LETTER(215.9, 279.4);

            private final double widthMm;
            private final double heightMm;

            Sheet(double widthMm, double heightMm) {
                this.widthMm = widthMm;
                this.heightMm = heightMm;
            }

            /** What people who read in those units have in their printers. */
            public static Sheet usual(Display display) {
                return display == Display.US ? LETTER : A4;
            }

            public double widthMm() {
                return widthMm;
            }

            public double heightMm() {
                return heightMm;
            }
        }
    }
}
