package corewright.decision;

import corewright.damage.DamageMap;
import corewright.damage.Region;
import corewright.repair.mix.HeldCups;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Closing;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RecorePlan;
import corewright.survey.Face.Posture;
import corewright.survey.Survey;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What to buy for the chosen repairs, each line with its basis. All allowances are common practice. */
final class BuyingList {
    private static final double OFFCUT = 1.15;
    private static final double EPOXY_RESERVE = 1.2;
    private static final int HOLES_PER_BIT = 40;
    private static final int HOLES_PER_TAPE = 50;
    private static final int HOLES_PER_DAM_TAPE = 20;
    private static final int HOLES_PER_DISC = 15;
    private static final double TOP_G_A_HOLE = 1;
    private static final double FILLER_RESERVE = 1.5;
    private static final double PLACES_A_DAY = 4;
    private static final int PAIRS_PER_CUP = 2;
    private static final int PAIRS_PER_CUT = 6;
    private static final double PLATE_MARGIN = 1.2;

    private final Survey survey;
    private final List<InjectionPlan> injections;
    private final List<RecorePlan> recores;
    private final List<BuyingItem> items = new ArrayList<>();

    private BuyingList(Survey survey, List<InjectionPlan> injections, List<RecorePlan> recores) {
        this.survey = survey;
        this.injections = injections;
        this.recores = recores;
    }

    static List<BuyingItem> of(
            Survey survey, DamageMap damage, List<InjectionPlan> injections, List<RecorePlan> recores) {
        BuyingList list = new BuyingList(survey, injections, recores);
        list.mixes();
        list.cores();
        list.tools();
        list.plates(damage);
        return List.copyOf(list.items);
    }

    private void mixes() {
        Map<String, List<InjectionPlan>> byResin = injections.stream()
                .collect(Collectors.groupingBy(InjectionPlan::resin, LinkedHashMap::new, Collectors.toList()));
        byResin.forEach((name, plans) -> {
            Resin resin = survey.settings().resin(name);
            List<Batch> held = HeldCups.of(plans, survey.settings());
            double partA = plans.stream().mapToDouble(InjectionPlan::resinG).sum()
                    + held.stream().mapToDouble(Batch::partAG).sum();
            double partB = plans.stream().mapToDouble(InjectionPlan::hardenerG).sum()
                    + held.stream().mapToDouble(Batch::partBG).sum();
            double buy = plans.stream().mapToDouble(InjectionPlan::buyG).sum();
            double buyA = buy / (1 + resin.hardenerPerResin());
            String basis = regions(names(plans))
                    + ": plan for the most likely space and waste, buy for the space that 9 cases of 10 stay below, in "
                    + "whole packs";
            add(name + " resin", partA, packs(buyA), "g", basis);
            add(name + " hardener", partB, packs(buy - buyA), "g", basis);
        });
    }

    private void cores() {
        Map<String, List<RecorePlan>> bySheet = recores.stream()
                .collect(Collectors.groupingBy(
                        p -> String.format(Locale.ROOT, "%s, %s mm", p.core(), Words.plain(p.coreMm())),
                        LinkedHashMap::new,
                        Collectors.toList()));
        bySheet.forEach((sheet, plans) -> {
            double m2 = plans.stream().mapToDouble(p -> p.cut().getArea()).sum() / 1e6;
            List<String> names = plans.stream().map(RecorePlan::region).toList();
            add("core " + sheet, m2, up(m2 * OFFCUT, 0.1), "m2", regions(names) + ": the cuts, 15 % for offcut");
        });
        double epoxy = recores.stream().mapToDouble(RecorePlan::epoxyG).sum();
        if (epoxy > 0) {
            add(
                    "laminating epoxy, mixed",
                    epoxy,
                    packs(epoxy * EPOXY_RESERVE),
                    "g",
                    "wetting out 800 g/m2, bed 1.5 mm, joint 4 mm round the core, waste; buy a fifth more; the new skin's "
                            + "laminate is not in it");
        }
    }

    private void tools() {
        int cups = injections.stream().mapToInt(p -> p.batches().size()).sum()
                + HeldCups.of(injections, survey.settings()).size();
        int holes = (int) injections.stream()
                .flatMap(p -> p.holes().stream())
                .filter(Hole::drilled)
                .count();
        int pairs = PAIRS_PER_CUP * cups + PAIRS_PER_CUT * recores.size();
        if (pairs > 0) {
            add(
                    "gloves",
                    pairs,
                    2.0 * pairs,
                    "pairs",
                    "2 a cup and 6 a cut; buy double: they are changed when mix gets on them");
        }
        if (cups > 0) {
            double more = Math.ceil(1.2 * cups);
            add("mixing pots", cups, more, "pieces", "one a cup, a fifth spare");
            add("stirring sticks", cups, more, "pieces", "one a pot, a fifth spare");
            double diameterMm = injections.stream()
                    .flatMap(p -> p.holes().stream())
                    .filter(Hole::drilled)
                    .mapToDouble(Hole::diameterMm)
                    .max()
                    .orElse(0);
            double bits = Math.ceil((double) holes / HOLES_PER_BIT);
            add(
                    "drill bit " + Words.plain(diameterMm) + " mm",
                    bits,
                    bits + 1,
                    "pieces",
                    holes + " holes, glass dulls a bit after about " + HOLES_PER_BIT + "; one spare");
            add("collar stop for the bit", 1, 2, "pieces", "set to the depth stop of each hole; one spare");
            nozzles();
            closing(holes);
        }
        protection();
    }

    /** What keeps mix in a hole, and what closes it for good. */
    private void closing(int holes) {
        boolean overhead = postures().contains(Posture.OVERHEAD);
        int perRoll = overhead ? HOLES_PER_DAM_TAPE : HOLES_PER_TAPE;
        double rolls = Math.ceil((double) holes / perRoll);
        String why = overhead ? "for a dam round each of " : "round ";
        add("masking tape", rolls, rolls + 1, "rolls", why + holes + " holes, to keep the surface clean");
        if (holes > 0) {
            add("plugs for the holes", holes, Math.ceil(1.2 * holes), "pieces", "one a hole and vent, a fifth spare");
            double grams = injections.stream()
                    .mapToDouble(p -> Closing.of(p.holes()).fillerG())
                    .sum();
            double plan = Math.round(grams * 10) / 10.0;
            String each = holes + (holes == 1 ? " hole" : " holes");
            add(
                    "epoxy filler",
                    plan,
                    up(grams * FILLER_RESERVE, 50),
                    "g",
                    "to close " + each + " to the depth, with a shallow dish round each");
            double discs = Math.ceil((double) holes / HOLES_PER_DISC);
            add("sanding discs, 80 and 180", discs, discs + 1, "pairs", "to fair " + each + "; one pair spare");
            double topG = TOP_G_A_HOLE * holes;
            add("gelcoat or deck paint to match", topG, up(topG * FILLER_RESERVE, 50), "g", "to touch up " + each);
        }
    }

    private Set<Posture> postures() {
        return injections.stream()
                .map(p -> survey.face(p.holes().get(0).spot().face()).posture())
                .collect(Collectors.toSet());
    }

    /** For every person, as the cards ask; a mask's filters are spent after a day. */
    private void protection() {
        if (injections.isEmpty() && recores.isEmpty()) {
            return;
        }
        int people = survey.settings().crew().people();
        double days = Math.max(1, Math.ceil((injections.size() + 2.0 * recores.size()) / PLACES_A_DAY));
        add("dust mask P3", people * days, people * (days + 1), "pieces", "one a person and day of work, a day spare");
        add("half mask with A2 filters", people, people, "pieces", "one a person, for mixing and laminating");
        if (days > 1) {
            double more = people * (days - 1);
            add("A2 filters for the half masks", more, more, "pairs", "a pair a person and further day of work");
        }
        boolean overhead = overhead();
        add(
                overhead ? "sealed goggles and face shield" : "eye protection",
                people,
                people + 1.0,
                "pieces",
                "one a person, one spare");
    }

    private boolean overhead() {
        return survey.faces().stream().anyMatch(f -> f.posture() == Posture.OVERHEAD);
    }

    private void nozzles() {
        long cups = injections.stream()
                .mapToLong(p -> p.batches().stream()
                        .filter(b -> b.holes().stream().anyMatch(id -> byNozzle(p, id)))
                        .count())
                .sum();
        if (cups > 0) {
            Drilling drilling = survey.settings().drilling();
            add(
                    "long nozzle " + Words.plain(drilling.nozzleLengthMm()) + " mm, bore "
                            + Words.plain(drilling.nozzleBoreMm()) + " mm, "
                            + Words.plain(drilling.nozzleOuterMm()) + " mm outside",
                    cups,
                    cups + 1.0,
                    "pieces",
                    "one for each cup that goes in through an opening; one spare");
        }
    }

    private static boolean byNozzle(InjectionPlan plan, String id) {
        return plan.holes().stream().anyMatch(h -> h.id().equals(id) && !h.drilled());
    }

    private void plates(DamageMap damage) {
        List<String> names = names(injections);
        double m2 = damage.regions().stream()
                        .filter(r -> names.contains(r.id()))
                        .map(Region::likely)
                        .mapToDouble(p -> p.getArea())
                        .sum()
                / 1e6;
        boolean overhead = postures().contains(Posture.OVERHEAD);
        boolean deck = postures().contains(Posture.DECK);
        String how = deck ? "screwed or weighed down" : overhead ? "propped from below" : "screwed or strutted";
        String plates = "cover plate and release film" + (overhead ? ", with props" : "");
        if (m2 > 0) {
            add(
                    plates,
                    m2,
                    up(m2 * PLATE_MARGIN, 0.1),
                    "m2",
                    regions(names) + ": over each filled place, a fifth for overlap; " + how);
        }
    }

    private void add(String item, double plan, double buy, String unit, String basis) {
        items.add(new BuyingItem(item, plan, buy, unit, basis));
    }

    private static List<String> names(List<InjectionPlan> plans) {
        return plans.stream()
                .flatMap(p -> p.parts().stream())
                .map(InjectionPlan.Part::region)
                .distinct()
                .toList();
    }

    private static String regions(List<String> ids) {
        return String.join(", ", ids);
    }

    /** Up to whole packs: of 250 g, from 2 kg on of 500 g. */
    private static double packs(double grams) {
        return up(grams, grams < 2000 ? 250 : 500);
    }

    private static double up(double value, double step) {
        return Math.round(Math.ceil(value / step - 1e-9) * step * 1e6) / 1e6;
    }
}
