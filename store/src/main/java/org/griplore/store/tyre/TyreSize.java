package org.griplore.store.tyre;

import java.util.Optional;
import java.util.OptionalInt;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * A size designation with what is written behind it.
 *
 * @param prefix what stands before the width
 * @param section width and aspect ratio, or diameter and width in inches
 * @param structure the structure code
 * @param rimCode nominal rim diameter code (inches; may end in .5)
 * @param commercial whether a {@code C} follows the rim diameter
 * @param service load index and speed symbol, where given
 * @param extraLoad whether marked XL, RF, REINF, REINFORCED or EXTRA LOAD behind the rim diameter
 * @param mudAndSnow whether marked M+S; no proof of winter grip
 * @param snowflake whether marked with the three-peak mountain and snowflake (3PMSF)
 */
public record TyreSize(
    SizePrefix prefix,
    Section section,
    Structure structure,
    double rimCode,
    boolean commercial,
    Optional<ServiceDescription> service,
    boolean extraLoad,
    boolean mudAndSnow,
    boolean snowflake) {
  /** What a size is expected to look like, for messages. */
  public static final String EXPECTED = "like 205/55 R16 91V";

  /** Checks the rim diameter. */
  public TyreSize {
    if (!(rimCode >= 8 && rimCode <= 30) || rimCode * 2 != Math.rint(rimCode * 2)) {
      throw new IllegalArgumentException("rim diameter code 8 to 30, not " + rimCode);
    }
  }

  /**
   * Reads a text that is a size and nothing else.
   *
   * @throws Refusal when it is not understood as a whole
   */
  public static TyreSize parse(String text) {
    try {
      return SizeReader.whole(text).orElseThrow(() -> refusal(text, ""));
    } catch (IllegalArgumentException beyond) {
      throw refusal(text, " (" + beyond.getMessage() + ")");
    }
  }

  private static Refusal refusal(String text, String reason) {
    return new Refusal(
        "The size \"" + text + "\" is not understood" + reason + "; expected " + EXPECTED,
        new Problem("size", text, EXPECTED));
  }

  /** The first size in a longer text such as a title, if there is one. */
  public static Optional<TyreSize> find(String text) {
    return SizeReader.within(text).map(Within::size);
  }

  /**
   * A size that stands in a longer text.
   *
   * @param start where it begins
   * @param end where what follows it begins
   */
  public record Within(TyreSize size, int start, int end) {}

  /** The first size in a text, and where it stands; the text must have single blanks only. */
  public static Optional<Within> locate(String text) {
    return SizeReader.within(text);
  }

  /** The size alone, as written: prefix, section, structure, rim diameter and C or LT. */
  public String designation() {
    return designation(prefix, structure.symbol());
  }

  /**
   * The key by which two tyres are of one size: without service description and marks. The prefixes
   * P and HL and the kinds of radial (ZR, RF) fall away, as they leave the dimensions alone; LT, T
   * and C stay, being another kind of tyre.
   */
  public String key() {
    return designation(
        prefix.anotherKind() ? prefix : SizePrefix.METRIC,
        structure.radial() ? Structure.RADIAL.symbol() : structure.symbol());
  }

  private String designation(SizePrefix shown, String code) {
    String rim = number(rimCode);
    if (section instanceof Section.Flotation flotation) {
      String kind = shown == SizePrefix.METRIC ? "" : " " + shown.symbol();
      String inches = number(flotation.diameterIn()) + "x" + number(flotation.widthIn());
      return inches + " " + code + rim + kind;
    }
    Section.Metric metric = (Section.Metric) section;
    String aspect = metric.aspect().isPresent() ? "/" + metric.aspect().getAsInt() : "";
    return shown.symbol() + metric.widthMm() + aspect + " " + code + rim + (commercial ? "C" : "");
  }

  /** The canonical text; {@link #parse} gives the same size back. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(designation());
    service.ifPresent(given -> text.append(' ').append(given));
    text.append(extraLoad ? " XL" : "");
    text.append(mudAndSnow ? " M+S" : "");
    text.append(snowflake ? " 3PMSF" : "");
    return text.toString();
  }

  static final double MM_PER_INCH = 25.4;

  /** The nominal section width in mm; inches of a flotation size are turned into mm. */
  public double widthMm() {
    return section instanceof Section.Flotation flotation
        ? flotation.widthIn() * MM_PER_INCH
        : ((Section.Metric) section).widthMm();
  }

  /** The highest speed in km/h that the speed symbol states. */
  public OptionalInt speedKmh() {
    return service.isPresent() ? OptionalInt.of(service.get().speed().kmh()) : OptionalInt.empty();
  }

  /**
   * Whether the highest speed is not defined by the marking: {@code ZR} without a service
   * description (above 240 km/h), or a description in brackets such as {@code (98Y)} (above 300).
   * From memory, check the official text.
   */
  public boolean speedOpenEnded() {
    return service.map(ServiceDescription::bracketed).orElse(structure.z());
  }

  private static String number(double value) {
    return value == Math.rint(value) ? Integer.toString((int) value) : Double.toString(value);
  }
}
