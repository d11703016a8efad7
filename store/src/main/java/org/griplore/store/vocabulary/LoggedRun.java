package org.griplore.store.vocabulary;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * One run of a run log as it stands there. Every part but {@code sequence}, {@code tyre}, {@code
 * role} and {@code cell} may be null.
 *
 * @param discipline catalogue key
 * @param sequence the place of the set in the order of the day, from 1
 * @param model settled name of the tyre's model
 * @param role reference set or candidate
 * @param run number of the run within its set
 * @param fromKmh speed at the start of the measured window, km/h
 * @param toKmh speed at its end, km/h
 * @param distanceM distance covered in the window, m
 * @param timeS time, s
 * @param levelDb sound level, dB(A)
 * @param value any other measured figure, in {@code unit}
 * @param unit unit of {@code value}
 * @param surfaceC temperature of the surface, degrees Celsius
 * @param airC temperature of the air, degrees Celsius
 * @param remark the log's remark
 * @param cell where the run's tyre stands
 */
public record LoggedRun(
    String discipline,
    int sequence,
    String model,
    Role role,
    Integer run,
    Double fromKmh,
    Double toKmh,
    Double distanceM,
    Double timeS,
    Double levelDb,
    Double value,
    Unit unit,
    Double surfaceC,
    Double airC,
    String remark,
    Cell cell) {
  /** What a set of tyres is there for. */
  public enum Role {
    REFERENCE,
    CANDIDATE;

    /** The word used in files and stored. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** The role with this word. */
    public static Optional<Role> ofWord(String word) {
      return Arrays.stream(values()).filter(role -> role.word().equals(word)).findFirst();
    }
  }
}
