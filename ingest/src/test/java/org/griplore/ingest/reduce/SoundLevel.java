package org.griplore.ingest.reduce;

import java.util.List;
import java.util.Locale;
import org.griplore.ingest.reduce.run.RunPosition;

/**
 * What differences of sound levels mean. Energy, pressure and loudness are three things: 3 dB is
 * twice the energy, 6 dB twice the pressure, 10 dB about twice the loudness. Per cent of a level in
 * dB means nothing. (ISO 80000-8 for levels; arithmetic.)
 */
public final class SoundLevel {
  private SoundLevel() {}

  /** Ratio of energies, 10^(d/10). */
  public static double energyRatio(double differenceDb) {
    return Math.pow(10, RunPosition.finite(differenceDb, "difference", "sound level") / 10);
  }

  /** Ratio of sound pressures, 10^(d/20). */
  public static double pressureRatio(double differenceDb) {
    return Math.pow(10, RunPosition.finite(differenceDb, "difference", "sound level") / 20);
  }

  /** Ratio of loudness, about 2^(d/10); a rule of thumb for hearing, not a measurement. */
  public static double loudnessRatio(double differenceDb) {
    return Math.pow(2, RunPosition.finite(differenceDb, "difference", "sound level") / 10);
  }

  /**
   * The level of the mean energy, 10 lg(mean of 10^(L/10)); never below the mean of the levels.
   *
   * @throws org.griplore.store.vocabulary.Refusal for no level
   */
  public static double energyAverage(List<Double> levelsDb) {
    if (levelsDb.isEmpty()) {
      throw RunPosition.refusal("sound level", "no level to average", "at least one");
    }
    double loudest = levelsDb.stream().mapToDouble(d -> d).max().orElseThrow();
    double sum = 0;
    for (double level : levelsDb) {
      sum += Math.pow(10, (RunPosition.finite(level, "level", "sound level") - loudest) / 10);
    }
    return loudest + 10 * Math.log10(sum / levelsDb.size());
  }

  /** A difference in words, with what each ratio is of. */
  public static String words(double differenceDb) {
    return String.format(
        Locale.ROOT,
        "%+.1f dB: sound energy x%.2f, sound pressure x%.2f, loudness about x%.2f",
        differenceDb,
        energyRatio(differenceDb),
        pressureRatio(differenceDb),
        loudnessRatio(differenceDb));
  }
}
