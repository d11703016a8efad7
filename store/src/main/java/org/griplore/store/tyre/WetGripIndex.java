package org.griplore.store.tyre;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.griplore.store.vocabulary.Authority;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;
import org.griplore.store.vocabulary.Step;
import org.griplore.store.vocabulary.Unit;

/**
 * The wet grip index of a test with its edition. Indices of different editions are not
 * interchangeable, whatever their numbers.
 *
 * @param testIndex G(T) as the test gives it
 * @param terms what it is made of, in the order of the formula; they add up to {@code testIndex}
 * @param edition the text whose method it is, and how sure its coefficients are
 */
public record WetGripIndex(double testIndex, List<Term> terms, String edition) {
  /** m/s2 in a braking force coefficient of 1, as the method has it (not standard gravity). */
  public static final double GRAVITY = 9.81;

  /** The label's index is the test's less this (1235/2011 annex I part B 3; 2020/740 part B 2). */
  private static final double TEST_TO_LABEL = 0.03;

  /** The 2011 text, and how sure its coefficients are. */
  public static final String TEXT_OF_2011 =
      "Regulation (EC) 1222/2009 annex V, 2011 text; coefficients " + Authority.MEMORY.words();

  /** A part of the index. */
  public record Term(String name, double value) {}

  /** Keeps the terms from changing. */
  public WetGripIndex {
    Objects.requireNonNull(edition);
    terms = List.copyOf(terms);
  }

  /** What the candidate is sold as; the correction differs. */
  public enum Use {
    NORMAL(20, -0.4232, -8.297),
    SNOW(10, 0.7721, 31.18);

    private final double temperature;
    private final double a;
    private final double b;

    Use(double temperature, double a, double b) {
      this.temperature = temperature;
      this.a = a;
      this.b = b;
    }
  }

  /** How it was measured, with the reference's nominal coefficient. */
  public enum Method {
    CAR(0.68),
    TRAILER(0.85);

    private final double referenceLevel;

    Method(double referenceLevel) {
      this.referenceLevel = referenceLevel;
    }
  }

  /** Braking force coefficient of a mean deceleration in m/s2, all tyres under test alike. */
  public static double coefficient(double deceleration) {
    return positive(deceleration, "deceleration", "braking force coefficient") / GRAVITY;
  }

  /**
   * By the 2011 text: G(T) = [125 T/R + a (t - t0) + b (R/R0 - 1)] / 100.
   *
   * @param candidate its braking force (or peak) coefficient T
   * @param reference the interpolated reference's R
   * @param surfaceC wetted surface temperature when the candidate was tested, degrees Celsius
   */
  public static WetGripIndex of2011(
      double candidate, double reference, double surfaceC, Use use, Method method) {
    positive(candidate, "candidate coefficient", "wet grip index");
    positive(reference, "reference coefficient", "wet grip index");
    finite(surfaceC);
    return of(
        TEXT_OF_2011,
        new Term("1.25 x candidate / reference", 1.25 * candidate / reference),
        new Term("temperature", use.a * (surfaceC - use.temperature) / 100),
        new Term("surface", use.b * (reference / method.referenceLevel - 1) / 100));
  }

  /**
   * By the newer structure, a difference in place of the ratio: G = K {T - [a (R - R0) + b dt + c
   * dt^2 + d (MTD - MTD0)]}. None of its coefficients is shipped.
   *
   * @param textureDepthMm mean texture depth MTD of the surface, mm
   */
  public static WetGripIndex ofDifference(
      double candidate,
      double reference,
      double surfaceC,
      double textureDepthMm,
      DifferenceCoefficients by) {
    positive(candidate, "candidate coefficient", "wet grip index");
    positive(reference, "reference coefficient", "wet grip index");
    finite(surfaceC);
    positive(textureDepthMm, "texture depth", "wet grip index");
    double warmer = surfaceC - by.temperatureC();
    double factor = by.factor();
    return of(
        by.source() + "; " + Authority.USER.words(),
        new Term("factor x candidate", factor * candidate),
        new Term("reference level", -factor * by.a() * (reference - by.referenceLevel())),
        new Term("temperature", -factor * (by.b() * warmer + by.c() * warmer * warmer)),
        new Term("texture", -factor * by.d() * (textureDepthMm - by.textureDepthMm())));
  }

  /**
   * Coefficients of the newer structure, from the official text in the user's hands.
   *
   * @param factor K
   * @param referenceLevel R0
   * @param temperatureC t0, degrees Celsius
   * @param textureDepthMm MTD0, mm
   * @param source the text and edition they were taken from
   */
  public record DifferenceCoefficients(
      double factor,
      double a,
      double b,
      double c,
      double d,
      double referenceLevel,
      double temperatureC,
      double textureDepthMm,
      String source) {
    /** Checks that the source is told. */
    public DifferenceCoefficients {
      positive(factor, "factor", "wet grip coefficients");
      if (source == null || source.isBlank()) {
        throw refusal("wet grip coefficients", "no source", "the text they are from");
      }
    }
  }

  private static WetGripIndex of(String edition, Term... terms) {
    double sum = 0;
    for (Term term : terms) {
      sum += term.value();
    }
    return new WetGripIndex(sum, List.of(terms), edition);
  }

  /** G = G(T) - 0.03, unrounded. */
  public double labelIndex() {
    return testIndex - TEST_TO_LABEL;
  }

  /** The sum as steps, each from the sum before it to the sum after it. */
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    Double sum = null;
    for (Term term : terms) {
      double after = sum == null ? term.value() : sum + term.value();
      String rule = sum == null ? term.name() : "plus " + term.name() + " term";
      steps.add(
          new Step(rule, sum, sum == null ? null : Unit.NUMBER, after, Unit.NUMBER, null, null));
      sum = after;
    }
    steps.add(Step.of("label: less 0.03", sum, Unit.NUMBER, labelIndex(), Unit.NUMBER));
    return steps;
  }

  private static double positive(double value, String what, String where) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw refusal(where, what + " " + value, "a " + what + " above 0");
    }
    return value;
  }

  private static void finite(double surfaceC) {
    if (!Double.isFinite(surfaceC)) {
      throw refusal("wet grip index", "surface temperature " + surfaceC, "a number");
    }
  }

  private static Refusal refusal(String where, String found, String expected) {
    return new Refusal(
        where + ": found " + found + ", expected " + expected, new Problem(where, found, expected));
  }
}
