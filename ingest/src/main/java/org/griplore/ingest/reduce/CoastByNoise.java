package org.griplore.ingest.reduce;

import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.reduce.run.RunPosition;
import org.griplore.ingest.reduce.sample.StraightLine;
import org.griplore.store.tyre.TyreClass;
import org.griplore.store.vocabulary.Authority;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;

/**
 * Coast-by noise at the reference speed: L_R = mean L - a mean v with v = lg(V / V_ref) and a the
 * slope of L on v; corrected for the road's temperature, L + K (20 - t); less 1 dB and rounded down
 * for the declared value (UN Regulation No. 117 annex 3, 4; Directive 2001/43/EC annex V appendix
 * 1, 4; formulas from memory, check the official text).
 *
 * @param line level on lg(V / V_ref); its slope is in dB per decade
 * @param atReferenceSpeed L_R, dB(A)
 * @param corrected at 20 degrees Celsius, dB(A); equal to L_R for C3
 * @param declared less 1 dB, rounded down, dB(A)
 * @param remarks what the method asks for and the passes do not have
 */
public record CoastByNoise(
    StraightLine line,
    double atReferenceSpeed,
    double corrected,
    int declared,
    List<String> remarks) {
  private static final double REFERENCE_C = 20;
  private static final double TOLERANCE_DB = 1;
  private static final int FEWEST_EACH_SIDE = 4;
  private static final double SPAN_KMH = 10;

  /**
   * A pass.
   *
   * @param speedKmh speed at the microphones, km/h
   * @param levelDb highest level, dB(A)
   */
  public record Pass(double speedKmh, double levelDb) {}

  /** Keeps the remarks from changing. */
  public CoastByNoise {
    remarks = List.copyOf(remarks);
  }

  /** V_ref: 80 km/h, for C3 70 km/h. */
  public static double referenceSpeed(TyreClass tyreClass) {
    return tyreClass == TyreClass.C3 ? 70 : 80;
  }

  /** dB to add at a road temperature to be at 20 degrees Celsius. */
  public static double temperatureCorrection(TyreClass tyreClass, double surfaceC) {
    RunPosition.finite(surfaceC, "surface temperature", "coast-by noise");
    double perDegree =
        switch (tyreClass) {
          case C1 -> surfaceC > REFERENCE_C ? -0.03 : -0.06;
          case C2 -> -0.02;
          case C3 -> 0;
        };
    return perDegree * (REFERENCE_C - surfaceC);
  }

  /**
   * Of the passes of one tyre.
   *
   * @param surfaceC road temperature, degrees Celsius
   * @throws org.griplore.store.vocabulary.Refusal for fewer than three passes, passes of one speed,
   *     or a speed that is not positive
   */
  public static CoastByNoise of(List<Pass> passes, TyreClass tyreClass, double surfaceC) {
    double reference = referenceSpeed(tyreClass);
    StraightLine line = line(passes, reference, "coast-by noise");
    double atReference = line.at(0);
    double corrected = atReference + temperatureCorrection(tyreClass, surfaceC);
    // nine digits: 71.0 - 1 is meant as 70, whatever the last bit says
    double exact = Math.rint((corrected - TOLERANCE_DB) * 1e9) / 1e9;
    return new CoastByNoise(
        line, atReference, corrected, (int) Math.floor(exact), remarks(passes, reference));
  }

  static StraightLine line(List<Pass> passes, double referenceKmh, String where) {
    if (passes.size() < 3) {
      throw RunPosition.refusal(
          where, passes.size() + " passes with speed and level", "three or more for a slope");
    }
    double[] v = new double[passes.size()];
    double[] level = new double[passes.size()];
    for (int i = 0; i < v.length; i++) {
      Pass pass = passes.get(i);
      v[i] = Math.log10(RunPosition.positive(pass.speedKmh(), "speed", where) / referenceKmh);
      level[i] = RunPosition.finite(pass.levelDb(), "level", where);
    }
    return StraightLine.fit(v, level);
  }

  private static List<String> remarks(List<Pass> passes, double reference) {
    List<String> remarks = new ArrayList<>();
    long below = passes.stream().filter(pass -> pass.speedKmh() < reference).count();
    long above = passes.stream().filter(pass -> pass.speedKmh() > reference).count();
    if (below < FEWEST_EACH_SIDE || above < FEWEST_EACH_SIDE) {
      remarks.add(
          below
              + " passes below and "
              + above
              + " above the reference speed; the method asks for at"
              + " least four each ("
              + Authority.MEMORY.words()
              + ")");
    }
    long far =
        passes.stream().filter(pass -> Math.abs(pass.speedKmh() - reference) > SPAN_KMH).count();
    if (far > 0) {
      remarks.add(
          far
              + " passes more than 10 km/h off the reference speed ("
              + Authority.MEMORY.words()
              + ")");
    }
    return remarks;
  }

  /** Standard error of L_R, dB. */
  public double standardError() {
    return line.errorAt(0);
  }

  /** From the mean level to the declared one. */
  public List<Step> steps() {
    return List.of(
        step("to the reference speed by regression on lg(V)", line.meanY(), atReferenceSpeed),
        step("to 20 \u00b0C of the road", atReferenceSpeed, corrected),
        step("less 1 dB, rounded down", corrected, declared));
  }

  private static Step step(String rule, double before, double after) {
    return Step.of(rule, before, Unit.DECIBEL_A, after, Unit.DECIBEL_A);
  }
}
