package corewright.stiffness;

import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.overlay.Overlay;
import corewright.overlay.Pieces;
import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Strengths;
import corewright.sandwich.spec.Support;
import corewright.survey.EdgeSupport;
import corewright.survey.Feature;
import corewright.survey.Laminate;
import corewright.survey.Materials;
import corewright.survey.Probe;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** A deck panel in the terms of the finite-element model. */
final class Patches {
    /** Less of a region than one foot's tenth is not seen by any foot: 0.001 m². */
    private static final double SMALLEST_MM2 = 1000;

    private static final double NEARLY_ALL = 0.9;

    private final Survey survey;
    private final FaceDamage face;
    private final DeckPanel panel;
    private final List<Region> regions;
    private final CoreMaterial built;
    private final CoreStrengths strengths;
    private final double coreMm;
    private final Map<Extent, Geometry> extents = new ConcurrentHashMap<>();
    private final Map<Extent, Geometry> onPanel = new ConcurrentHashMap<>();
    private final Map<Part, Boolean> nearlyAll = new ConcurrentHashMap<>();
    private final Map<String, Softening> softenings = new ConcurrentHashMap<>();

    Patches(Survey survey, FaceDamage face, DeckPanel panel) {
        this.survey = survey;
        this.face = face;
        this.panel = panel;
        regions = face.regions().stream()
                .filter(r -> r.possible().intersects(panel.area()))
                .toList();
        Materials.Core core = survey.materials().core(panel.laminate().core());
        built = Cores.material(core);
        strengths = new CoreStrengths(core);
        coreMm = panel.laminate().coreMm();
    }

    /** A region as far as it reaches by an outlook's {@link Outlook#areaFactor}. */
    private record Extent(String region, double areaFactor) {}

    /** An area of a region. */
    private record Part(String region, Geometry area) {}

    /** Whether any part of the panel is damaged. */
    boolean damaged() {
        return !patches(Outlook.MIDDLE, List.of()).isEmpty();
    }

    PanelSpec asBuilt() {
        Laminate laminate = panel.laminate();
        Materials.Skin skin = survey.materials().skin(laminate.skin());
        return new PanelSpec(
                panel.area(),
                panel.edges().stream().map(Patches::support).toList(),
                openings(),
                Skin.isotropic(laminate.outerSkinMm(), skin.modulusMPa(), skin.poisson()),
                Skin.isotropic(laminate.innerSkinMm(), skin.modulusMPa(), skin.poisson()),
                new PanelSpec.Core(coreMm, built),
                List.of());
    }

    private PanelSpec.Openings openings() {
        return new PanelSpec.Openings(
                support(panel.openings()),
                panel.upstand().map(DeckPanel.Upstand::coaming).map(this::beam),
                panel.upstand().map(DeckPanel.Upstand::sides).orElse(List.of()));
    }

    private PanelSpec.Coaming beam(Feature.Coaming coaming) {
        String skin = coaming.skin().orElse(panel.laminate().skin());
        return new PanelSpec.Coaming(
                coaming.heightMm(),
                coaming.thicknessMm(),
                survey.materials().skin(skin).modulusMPa());
    }

    /** With areas treated; later treatments win. None treated is as found. */
    Prospects with(List<Treatment> treatments) {
        return new Prospects(
                with(Outlook.worse(face), treatments),
                with(Outlook.MIDDLE, treatments),
                with(Outlook.better(face), treatments));
    }

    /** With areas treated, as in one outlook. */
    PanelSpec with(Outlook outlook, List<Treatment> treatments) {
        return asBuilt().with(patches(outlook, treatments));
    }

    private List<Patch> patches(Outlook outlook, List<Treatment> treatments) {
        List<Patch> patches = new ArrayList<>();
        for (Region region : regions) {
            add(patches, onPanel(region, outlook), area -> found(region, area, outlook));
        }
        for (Treatment treatment : treatments) {
            if (!treatment.face().equals(panel.face())) {
                continue;
            }
            for (Region region : regions) {
                after(treatment, region, outlook)
                        .ifPresent(core ->
                                add(patches, treated(treatment, region, outlook), area -> new Patch.Core(area, core)));
            }
            if (treatment instanceof Treatment.Renew renew) { // sound core around the damage is cut away too
                add(patches, cut(renew.area()), area -> new Patch.Core(area, renewed(renew)));
            }
        }
        return patches.stream().allMatch(this::asBuilt) ? List.of() : patches;
    }

    /** The core a treatment leaves in a region; empty where it does nothing. */
    private Optional<CoreMaterial> after(Treatment treatment, Region region, Outlook outlook) {
        boolean bonded = region.condition() == Condition.WET;
        if (treatment instanceof Treatment.Renew renew) {
            return Optional.of(renewed(renew));
        } else if (treatment instanceof Treatment.Fill fill && !bonded) {
            return Optional.of(filled(region, outlook, fill));
        } else if (treatment instanceof Treatment.Dry && bonded) {
            Softening dried = softening(region).equals(Softening.ROTTED) ? Softening.ROTTED : Softening.DRIED;
            return Optional.of(
                    dried.equals(Softening.ROTTED) ? dried.of(built).with(strengths.softened(dried)) : dried.of(built));
        }
        return Optional.empty();
    }

    private CoreMaterial softened(Softening softening, Outlook outlook) {
        return softening.in(outlook).of(built).with(strengths.softened(softening));
    }

    /** The same core as before, put in anew, is as stiff; what it adds is a bond. */
    private CoreMaterial renewed(Treatment.Renew renew) {
        Materials.Core put = survey.materials().core(renew.core());
        return Cores.material(put).with(CoreStrengths.renewed(put));
    }

    private boolean asBuilt(Patch patch) {
        return patch instanceof Patch.Core core && core.material().asStiffAs(built);
    }

    /** What is treated of a region. Who treats nearly all of it follows the damage as far as it truly goes. */
    private Geometry treated(Treatment treatment, Region region, Outlook outlook) {
        Geometry extent = extent(region, outlook);
        if (apart(extent, treatment.area())) {
            return panel.area().getFactory().createPolygon();
        }
        return isNearlyAll(treatment.area(), region)
                ? onPanel(region, outlook)
                : cut(Overlay.intersection(extent, treatment.area()));
    }

    private boolean isNearlyAll(Geometry area, Region region) {
        return nearlyAll.computeIfAbsent(
                new Part(region.id(), area),
                part -> area.equals((Object) region.likely())
                        || Overlay.intersection(region.likely(), area).getArea()
                                > NEARLY_ALL * region.likely().getArea());
    }

    /** A region as far as it reaches, on the panel or off it. */
    private Geometry extent(Region region, Outlook outlook) {
        return extents.computeIfAbsent(new Extent(region.id(), outlook.areaFactor()), key -> outlook.extent(region));
    }

    /** What of a region is on the panel. */
    private Geometry onPanel(Region region, Outlook outlook) {
        return onPanel.computeIfAbsent(
                new Extent(region.id(), outlook.areaFactor()), key -> cut(extent(region, outlook)));
    }

    /** What of an area is on the panel. */
    private Geometry cut(Geometry area) {
        return large(Overlay.intersection(Pieces.areal(area), panel.area()));
    }

    private static boolean apart(Geometry a, Geometry b) {
        return !a.getEnvelopeInternal().intersects(b.getEnvelopeInternal());
    }

    /**
     * Adds a patch; one as stiff as built takes its area from those before it, and stays only for a strength of its own.
     *
     * @param on cut to the panel
     */
    private void add(List<Patch> patches, Geometry on, Function<Geometry, Patch> patch) {
        if (on.isEmpty()) {
            return;
        }
        Patch added = patch.apply(on);
        if (!asBuilt(added)) {
            patches.add(added);
            return;
        }
        List<Patch> before = List.copyOf(patches);
        patches.clear();
        for (Patch p : before) {
            if (p.area().equals((Object) on)) {
                continue;
            }
            Geometry left = apart(p.area(), on) ? p.area() : large(Overlay.difference(p.area(), on));
            if (!left.isEmpty()) {
                patches.add(
                        p instanceof Patch.Loose loose
                                ? new Patch.Loose(left, loose.depthMm(), loose.rest())
                                : new Patch.Core(left, ((Patch.Core) p).material()));
            }
        }
        if (!added.equals(new Patch.Core(on, built))) {
            patches.add(added);
        }
    }

    private Geometry large(Geometry area) {
        List<Polygon> parts = Pieces.polygons(area).stream()
                .filter(p -> p.getArea() > SMALLEST_MM2)
                .toList();
        return panel.area().getFactory().buildGeometry(parts);
    }

    private Patch found(Region region, Geometry area, Outlook outlook) {
        return switch (region.condition()) {
            case SOUND -> throw new IllegalArgumentException(region.id() + " is sound");
            case WET -> new Patch.Core(area, softened(softening(region), outlook));
            case DELAMINATED, WET_DELAMINATED -> new Patch.Loose(area, 0, below(region, outlook));
            case VOID -> new Patch.Loose(area, outlook.depthMm(region, coreMm), below(region, outlook));
        };
    }

    /** The core under a loose skin, where it is softer than as built. */
    private Optional<CoreMaterial> below(Region region, Outlook outlook) {
        Softening found = softening(region);
        return region.wet() || found.equals(Softening.ROTTED)
                ? Optional.of(found.in(outlook).of(built))
                : Optional.empty();
    }

    /** Foam above, what core remains below: shear and thickness compliances add up (Reuss). */
    private CoreMaterial filled(Region region, Outlook outlook, Treatment.Fill fill) {
        double depth = fill.cavity()
                .map(c -> outlook.depthMm(region, c, coreMm))
                .orElseGet(() -> outlook.depthMm(region, coreMm));
        CoreMaterial foam = Foam.material(fill.resin(), outlook.foamDerating(), outlook.expansionFactor());
        CoreMaterial rest = region.wet() ? softening(region).in(outlook).of(built) : built;
        Strengths.OfCore left = region.wet() ? strengths.softened(softening(region)) : strengths.sound();
        Optional<Strengths.OfCore> below = depth < coreMm ? Optional.of(left) : Optional.empty();
        return new CoreMaterial(
                        series(depth, foam.gxzMPa(), rest.gxzMPa()),
                        series(depth, foam.gyzMPa(), rest.gyzMPa()),
                        series(depth, foam.ezMPa(), rest.ezMPa()))
                .with(CoreStrengths.filled(fill.resin(), outlook.foamDerating(), below));
    }

    private double series(double depthMm, double foamMPa, double coreMPa) {
        return coreMm / (depthMm / foamMPa + (coreMm - depthMm) / coreMPa);
    }

    private Softening softening(Region region) {
        return softenings.computeIfAbsent(region.id(), id -> probed(region));
    }

    private Softening probed(Region region) {
        List<Probe> inside = survey.readings().probes().stream()
                .filter(p -> p.spot().face().equals(region.face()))
                .filter(p -> region.likely().covers(point(p)))
                .toList();
        return Softening.found(inside);
    }

    private Point point(Probe probe) {
        return panel.area().getFactory().createPoint(probe.spot().coordinate());
    }

    private static Support support(EdgeSupport edge) {
        return switch (edge) {
            case SIMPLE -> Support.SIMPLE;
            case SIMPLE_HARD -> Support.SIMPLE_HARD;
            case CLAMPED -> Support.CLAMPED;
            case FREE -> Support.FREE;
        };
    }
}
