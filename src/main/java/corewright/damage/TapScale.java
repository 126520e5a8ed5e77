package corewright.damage;

import corewright.survey.Readings;
import corewright.survey.Sound;
import corewright.survey.Survey;
import corewright.survey.Tap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Contact times turned into calls. The stiffness felt by the hammer goes with one over the contact time squared (half-sine
 * contact, Hsu and others, Materials Evaluation 67 (2009) 785), so a time is judged against that of sound skin of the same
 * laminate: dull from two thirds, hollow from one third of the sound stiffness down. The two shares are our own choice; a
 * loose skin of common size is softer still.
 */
public final class TapScale {
    private static final double DULL_STIFFNESS = 2.0 / 3;
    private static final double HOLLOW_STIFFNESS = 1.0 / 3;

    /** Without calls the quicker contacts are taken for sound: this quantile of all. */
    private static final double QUICK = 0.25;

    private final Survey survey;
    private final Map<String, Double> soundUs = new HashMap<>();

    /** @param survey whose taps share one hammer; times are compared within one laminate over all faces */
    TapScale(Survey survey) {
        this(survey, survey.readings().taps());
    }

    private TapScale(Survey survey, List<Tap> taps) {
        this.survey = survey;
        List<Tap> timed = taps.stream().filter(t -> t.contactUs() != null).toList();
        timed.stream()
                .map(t -> survey.laminateAt(t.spot()).name())
                .distinct()
                .forEach(laminate -> soundUs.put(laminate, soundTime(laminate, timed)));
    }

    /** The scale for taps after cure: the same hammer, the same rule, all times together. */
    public static TapScale afterCure(Survey survey) {
        Readings r = survey.readings();
        return new TapScale(
                survey, Stream.concat(r.taps().stream(), r.curedTaps().stream()).toList());
    }

    private double soundTime(String laminate, List<Tap> timed) {
        List<Tap> own = timed.stream()
                .filter(t -> survey.laminateAt(t.spot()).name().equals(laminate))
                .toList();
        double[] called =
                times(own.stream().filter(t -> t.sound() == Sound.SOUND).toList());
        double[] all = times(own);
        return called.length > 0 ? called[called.length / 2] : all[(int) (QUICK * (all.length - 1))];
    }

    private static double[] times(List<Tap> taps) {
        return taps.stream()
                .map(Tap::contactUs)
                .filter(t -> t != null)
                .mapToDouble(t -> t)
                .sorted()
                .toArray();
    }

    /** The call by ear where there is one, else what the contact time comes to. */
    public Sound call(Tap tap) {
        Sound sound = tap.sound();
        Double us = tap.contactUs();
        if (sound != null || us == null) {
            return sound == null ? Sound.SOUND : sound;
        }
        double ratio = soundUs.getOrDefault(survey.laminateAt(tap.spot()).name(), us) / us;
        double stiffness = ratio * ratio;
        return stiffness <= HOLLOW_STIFFNESS ? Sound.HOLLOW : stiffness <= DULL_STIFFNESS ? Sound.DULL : Sound.SOUND;
    }
}
