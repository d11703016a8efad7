package org.griplore.query.evidence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.griplore.query.option.Choices;
import org.griplore.store.tyre.TyreSize;

/**
 * Which tests are like the one to come: the same rim diameter, a section width no more than {@link
 * #WIDTH_MM} mm away, a car whose mass differs by no more than {@link #MASS_SHARE}. What was not
 * asked does not count; a test that does not state what was asked is not like.
 */
public final class Likeness {
  /** One step of nominal section widths either way. */
  static final double WIDTH_MM = 10;

  /** About the difference of an unladen and a fully laden car. */
  static final double MASS_SHARE = 0.15;

  private final TyreSize size;
  private final Double massKg;

  private Likeness(TyreSize size, Double massKg) {
    this.size = size;
    this.massKg = massKg;
  }

  /**
   * Reads {@code size} and {@code mass}.
   *
   * @throws org.griplore.store.vocabulary.Refusal when one is not understood
   */
  public static Likeness of(Choices choices) {
    String text = choices.text("size");
    TyreSize size =
        text == null
            ? null
            : TyreSize.find(text)
                .orElseThrow(() -> Choices.refusal("size", text, "a size like 205/55 R16"));
    Double mass =
        choices.has("mass") ? (Double) choices.number("mass", 100, 100_000).getAsDouble() : null;
    return new Likeness(size, mass);
  }

  /** Whether every test is like. */
  public boolean isOpen() {
    return size == null && massKg == null;
  }

  /** Whether an entry was tested in a like size on a like car. */
  public boolean takes(Evidence evidence, int entry) {
    if (size != null) {
      Optional<TyreSize> its = Optional.ofNullable(evidence.sizeOf(entry)).flatMap(TyreSize::find);
      if (its.isEmpty()
          || its.get().rimCode() != size.rimCode()
          || Math.abs(its.get().widthMm() - size.widthMm()) > WIDTH_MM) {
        return false;
      }
    }
    if (massKg != null) {
      Double its = evidence.tests().get(evidence.entries().test()[entry]).details().vehicleMassKg();
      return its != null && Math.abs(its - massKg) <= MASS_SHARE * massKg;
    }
    return true;
  }

  /** What was asked, to go on a sentence; empty for nothing. */
  public String words() {
    List<String> words = new ArrayList<>();
    if (size != null) {
      words.add("in " + size.key());
    }
    if (massKg != null) {
      words.add(String.format(Locale.ROOT, "on a car of %.0f kg", massKg));
    }
    return words.isEmpty() ? "" : " " + String.join(" ", words);
  }

  /** What counts as like, in words. */
  public String meaning() {
    List<String> words = new ArrayList<>();
    if (size != null) {
      words.add(
          String.format(
              Locale.ROOT,
              "rim diameter %s, section width %.0f to %.0f mm",
              trimmed(size.rimCode()),
              size.widthMm() - WIDTH_MM,
              size.widthMm() + WIDTH_MM));
    }
    if (massKg != null) {
      words.add(
          String.format(
              Locale.ROOT,
              "car of %.0f to %.0f kg",
              massKg - MASS_SHARE * massKg,
              massKg + MASS_SHARE * massKg));
    }
    return String.join(", ", words);
  }

  /** The bounds, for reading by programs. */
  public Map<String, Object> bounds() {
    Map<String, Object> bounds = new LinkedHashMap<>();
    if (size != null) {
      bounds.put("rim", size.rimCode());
      bounds.put("widthFrom", size.widthMm() - WIDTH_MM);
      bounds.put("widthTo", size.widthMm() + WIDTH_MM);
    }
    if (massKg != null) {
      bounds.put("massFrom", massKg - MASS_SHARE * massKg);
      bounds.put("massTo", massKg + MASS_SHARE * massKg);
    }
    return bounds;
  }

  private static String trimmed(double number) {
    return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
  }
}
