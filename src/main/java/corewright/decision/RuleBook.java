package corewright.decision;

import static corewright.decision.Method.DRY_OUT;
import static corewright.decision.Method.INJECT;
import static corewright.decision.Method.MONITOR;
import static corewright.decision.Method.RECORE;
import static corewright.decision.Rule.when;

import corewright.damage.Condition;
import java.util.List;
import java.util.Locale;

/**
 * All rules, in the order in which they are asked: (1) rotted core, or wet core under a loose skin, or wet core found, is cut out; (2)
 * nothing is injected under a load; (3) wet and bonded core is cut out with wet or rotted core that it touches, else watched or dried;
 * (4) loose over dry core is injected where the core is proven dry and the patch is not too large. Most are common practice; see
 * docs/repair.md.
 */
final class RuleBook {

    private static final String ARTICLES = "repair articles and owners' accounts, as common practice";

    static final List<Rule> RULES = List.of(
            when("rot", Facts::rotted)
                    .says(f -> f.evidence().rot().orElse("") + " Nothing bonds to it, so it is cut out.")
                    .advises(RECORE)
                    .refuses(MONITOR, "Rot goes on while it is wet: waiting makes it larger.")
                    .refuses(DRY_OUT, "Drying does not bring back rotted core.")
                    .refuses(INJECT, "The core is rotted: mix poured into it misses the point.")
                    .from(ARTICLES),
            when("wet and loose", Facts::wetLoose)
                    .says(f ->
                            "The core is wet and the skin is off it: drying does not bond a skin again, and mix does not "
                                    + "bond to wet core.")
                    .advises(RECORE)
                    .from(ARTICLES),
            when("loose and more probably wet", f -> f.loose() && f.region().wet() && !f.wetLoose())
                    .says(f -> "The skin stands off the core, and the core is more probably wet than dry ("
                            + f.wetChance() + "): mix does not bond to wet core.")
                    .advises(RECORE),
            when("wet core found", f -> f.wetFound().isPresent() && !f.rotted())
                    .says(f -> f.wetFound().orElse("") + " Core that is wet through is cut out.")
                    .advises(RECORE)
                    .from(ARTICLES),
            when(
                            "no bond to wet core",
                            f -> f.wetFound().isPresent()
                                    || (f.loose() && f.region().wet()))
                    .refuses(INJECT, "The core is wet: mix does not bond to it.")
                    .refuses(
                            DRY_OUT,
                            f -> f.loose()
                                    ? "Drying does not bond a loose skin again."
                                    : "Wet core was found, not only a raised reading: it dries too slowly under two skins."),
            when("load on a loose skin", f -> f.underLoad() && f.loose())
                    .says(f -> f.holds()
                            + " Injection is not offered under a load; a naval architect or surveyor decides.")
                    .refuses(INJECT, f -> f.holds() + " Injection is not offered under a load.")
                    .refuses(MONITOR, f -> f.holds() + " A loose skin under a load is not left as it is.")
                    .from(ARTICLES),
            when("load on bonded core", f -> f.underLoad() && !f.loose())
                    .says(f ->
                            f.holds() + " Take it off, seal the core's edge and bed it again before anything else; a "
                                    + "naval architect or surveyor decides."),
            when("no empty space", f -> !f.loose())
                    .refuses(INJECT, "The skin is bonded: there is no empty space to fill."),
            when("wet beside a cut", f -> f.bondedWet() && f.cutBeside().isPresent())
                    .says(f ->
                            "Its wet core shares an edge with " + f.cutBeside().orElse("")
                                    + ", which is wet or rotted and cut out: water and rot pass between them, and new core is not "
                                    + "bedded against wet core.")
                    .advises(RECORE)
                    .refuses(
                            MONITOR,
                            f -> "It touches " + f.cutBeside().orElse("")
                                    + ", whose core is cut out: what is left wet beside " + "new core wets it again.")
                    .refuses(
                            DRY_OUT,
                            f -> "It touches " + f.cutBeside().orElse("")
                                    + ", whose core is cut out: one opening is less work than drying beside it."),
            when("no time to dry", f -> f.bondedWet() && !f.driesInTime())
                    .refuses(DRY_OUT, RuleBook::tooSlow)
                    .from("diffusion, docs/repair.md; days available as set"),
            when("wet but little", f -> f.bondedWet() && f.low() && !f.underLoad())
                    .says(f -> f.mean() + "; below "
                            + Words.plain(f.thresholds().monitorIndex()) + " it is watched."
                            + "\nReseal the fittings around it and read again after a dry spell: what rises is a leak.")
                    .advises(MONITOR),
            when("cannot dry in time", f -> f.bondedWet() && !f.driesInTime())
                    .says(f -> f.mean() + ". " + tooSlow(f))
                    .advises(RECORE),
            when("wet and bonded", Facts::bondedWet)
                    .says(f -> f.mean()
                            + (f.low()
                                    ? ", but water at a load-bearing fitting is not left in."
                                    : ": it is dried before it rots.")
                            + "\nFind the leak and stop it first, then open the holes, dry, and read again.")
                    .advises(DRY_OUT)
                    .from(ARTICLES),
            when("dry core is not dried", f -> !f.lost() && f.loose())
                    .refuses(
                            DRY_OUT,
                            "The core is more probably dry than wet here, and drying does not bond a loose skin again."),
            when("loose under a load", f -> !f.lost() && f.loose() && f.underLoad())
                    .says(f -> "Where a fitting carries load, a loose skin is opened and bedded again on sound core.")
                    .advises(RECORE),
            when("too large to inject blind", f -> f.looseDry() && f.large())
                    .says(RuleBook::tooLarge)
                    .advises(RECORE)
                    .refuses(INJECT, RuleBook::tooLarge),
            when("cannot be planned", f -> f.looseDry() && !f.large() && f.cannotBePlanned())
                    .says(RuleBook::noPlan)
                    .advises(RECORE)
                    .refuses(INJECT, RuleBook::noPlan),
            when(
                            "proven dry in a part",
                            f -> f.injectable() && f.proven() && f.beyond().isPresent())
                    .says(f -> f.evidence().dryProof(f.thresholds()).orElse("") + "\n" + f.reachOfProof())
                    .advises(MONITOR)
                    .refuses(INJECT, f -> "The core is proven dry in a part only. " + f.reachOfProof())
                    .first("Drill a further pilot hole at ", Facts::beyondSpot),
            when("proven dry", f -> f.injectable() && f.proven())
                    .says(f -> f.evidence().dryProof(f.thresholds()).orElse("") + "\n"
                            + (f.region().condition() == Condition.VOID
                                    ? "The skin stands over an empty space that can be filled through small holes."
                                    : "The skin is loose and can be bonded again through small holes."))
                    .advises(INJECT)
                    .from(ARTICLES),
            when("not dry", f -> f.injectable() && f.against().isPresent())
                    .says(f -> "The skin is loose, and the core is not proven dry. "
                            + f.against().orElse(""))
                    .advises(MONITOR)
                    .refuses(
                            INJECT,
                            f -> "The core is not proven dry. " + f.against().orElse(""))
                    .first("Open the place to the air until it is dry, then drill a pilot hole at ", Facts::pilotSpot),
            when("not proven dry", f -> f.injectable() && f.against().isEmpty() && !f.proven())
                    .says(f ->
                            "The skin is loose over core that is more probably dry, but no pilot hole or core sample "
                                    + "inside proves it; a moisture meter proves nothing.")
                    .advises(MONITOR)
                    .refuses(
                            INJECT,
                            "The core is not proven dry: no pilot hole or core sample inside says so, and a moisture "
                                    + "meter proves nothing.")
                    .first("Drill a pilot hole at ", Facts::pilotSpot));

    private RuleBook() {}

    private static String tooSlow(Facts facts) {
        var time = facts.throughHoles().orElseThrow();
        var days = time.days();
        String middle = days == null || Double.isInfinite(days.p50())
                ? "never comes to " + Words.plain(time.gatePercent()) + " % in this air"
                : String.format(Locale.ROOT, "takes some %.0f days through holes", days.p50());
        return String.format(
                Locale.ROOT, "It %s, and it may dry for %.0f: it is opened.", middle, facts.daysAvailable());
    }

    private static String tooLarge(Facts facts) {
        return "At " + Words.squareMetres(facts.region().likely().getArea()) + " it is larger than the "
                + Words.squareMetres(facts.thresholds().injectLargestMm2())
                + " that are injected blind: it is opened, so that the bond can be seen.";
    }

    private static String noPlan(Facts facts) {
        return facts.options().refused().getOrDefault(facts.region().id(), "No injection could be planned here.");
    }
}
