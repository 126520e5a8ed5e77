package corewright.report.template;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.decision.drying.DryingPattern;
import corewright.drawing.template.Job;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RecorePlan;
import corewright.report.page.Wording;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/** What is laid out on the faces, a job for each card. */
final class Jobs {
    private Jobs() {}

    /** Injections, then cuts, then what is opened to dry. */
    static List<Job> of(Assessment assessment) {
        List<Job> jobs = new ArrayList<>();
        assessment.decision().injections().forEach(p -> jobs.add(injection(assessment, p)));
        assessment.decision().recores().stream()
                .filter(p -> !p.cut().isEmpty())
                .forEach(p -> jobs.add(cut(assessment, p)));
        assessment.damage().regions().stream()
                .filter(r -> assessment.decision().on(r.id()).opensToDry())
                .forEach(r -> jobs.add(drying(assessment, r)));
        return jobs.stream().filter(Jobs::holdsWork).toList();
    }

    /** Where all is filled through openings that are there, nothing is laid out. */
    private static boolean holdsWork(Job job) {
        return job.cut().isPresent()
                || !job.drying().isEmpty()
                || job.holes().stream().anyMatch(Hole::drilled);
    }

    private static Job injection(Assessment assessment, InjectionPlan plan) {
        List<String> parts =
                plan.parts().stream().map(InjectionPlan.Part::region).toList();
        List<Region> regions = regions(assessment, parts);
        String lead = plan.region();
        List<String> others = parts.stream().filter(p -> !p.equals(lead)).toList();
        String title = others.isEmpty() ? lead : lead + " with " + Wording.list(others);
        return new Job(
                assessment,
                title + " drill",
                face(assessment, lead),
                regions,
                plan.holes(),
                List.of(),
                Optional.empty(),
                0);
    }

    private static Job cut(Assessment assessment, RecorePlan plan) {
        FaceDamage face = face(assessment, plan.region());
        Coordinate middle = plan.cut().getInteriorPoint().getCoordinate();
        double skin = assessment
                .survey()
                .laminateAt(new Spot(face.face().name(), middle.x, middle.y))
                .outerSkinMm();
        List<Region> regions = regions(assessment, List.of(plan.region()));
        return new Job(
                assessment,
                plan.region() + " cut out",
                face,
                regions,
                List.of(),
                List.of(),
                Optional.of(plan.cut()),
                skin);
    }

    private static Job drying(Assessment assessment, Region region) {
        return new Job(
                assessment,
                region.id() + " open to dry",
                assessment.damage().face(region.face()),
                List.of(region),
                List.of(),
                DryingPattern.of(assessment.survey(), region).holes(),
                Optional.empty(),
                0);
    }

    private static List<Region> regions(Assessment assessment, List<String> ids) {
        return assessment.damage().regions().stream()
                .filter(r -> ids.contains(r.id()))
                .toList();
    }

    private static FaceDamage face(Assessment assessment, String region) {
        Region lead = regions(assessment, List.of(region)).get(0);
        return assessment.damage().face(lead.face());
    }
}
