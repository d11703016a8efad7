package org.griplore.ingest.messy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.griplore.store.vocabulary.NameKey;
import org.griplore.store.vocabulary.Unit;

/**
 * What a messy file truly says, stated by whoever made it and not by what reads it.
 *
 * @param about the oddity in a sentence
 * @param decision what is to become of the file
 * @param tests the tests it tells
 * @param finds texts each of which must stand in a finding
 * @param allowed disciplines, {@code TYRE; discipline} or {@code TYRE; *}, of which anything may be
 *     read
 * @param count how many tests are to be told apart; 0 where that is not asked
 */
record Truth(
    String about,
    Decision decision,
    List<Test> tests,
    List<String> finds,
    Set<String> allowed,
    int count) {

  /** What is to become of a file. */
  enum Decision {
    /** It says clearly what it says. */
    TAKEN,
    /** It can be understood, yet asking first is no fault. */
    EITHER,
    /**
     * It is ambiguous on purpose: a draft, or what is ambiguous is told and left out. What is not
     * stated may not be taken.
     */
    DRAFT,
    /** It has results of no tyres: whatever becomes of it, no figure is taken without asking. */
    NOTHING,
    /** There is nothing in it at all. */
    REFUSED
  }

  /**
   * A test.
   *
   * @param details by topic as in {@code add}'s options; alternatives are set apart by {@code or}
   * @param figures what it tells of its tyres
   */
  record Test(Map<String, String> details, List<Stated> figures) {}

  /** Whether a figure has to be read. */
  enum Need {
    READ,
    /** A finding may tell of it instead. */
    READ_OR_TOLD,
    /** It may stay in a note, say. */
    FREE
  }

  /** A figure in a unit; places have none. */
  record Figure(double value, Unit unit) {}

  /**
   * One stated figure of a tyre.
   *
   * @param tyre the names under which it may stand in the archive
   * @param place whether it is a place and not a value
   * @param figures ways to say it, each as good as the others
   * @param marks what it holds for beyond the discipline: {@code window}, {@code state}, {@code
   *     kind}; empty where there is nothing of that
   * @param own details of this figure's own, where they differ from the test's
   * @param need whether it has to be read
   */
  record Stated(
      List<String> tyre,
      String discipline,
      boolean place,
      List<Figure> figures,
      Map<String, String> marks,
      Map<String, String> own,
      Need need) {

    boolean required() {
      return need == Need.READ;
    }

    boolean isOf(String model) {
      return tyre.stream().anyMatch(name -> NameKey.of(name).equals(NameKey.of(model)));
    }

    String words() {
      return tyre.get(0)
          + ", "
          + discipline
          + (place ? " place" : "")
          + " "
          + figures.get(0).value()
          + (figures.get(0).unit() == null ? "" : " " + figures.get(0).unit().symbol())
          + (marks.isEmpty() ? "" : " " + marks)
          + (own.isEmpty() ? "" : " " + own);
    }
  }

  boolean names(String model) {
    return allowed.stream()
            .filter(line -> line.contains(";"))
            .anyMatch(line -> NameKey.of(line.split(";")[0]).equals(NameKey.of(model)))
        || tests.stream().flatMap(test -> test.figures().stream()).anyMatch(f -> f.isOf(model));
  }

  boolean allows(String model, String discipline) {
    return allowed.contains(discipline)
        || allowed.stream()
            .filter(line -> line.contains(";"))
            .map(line -> line.split(";", 2))
            .anyMatch(
                parts ->
                    NameKey.of(parts[0]).equals(NameKey.of(model))
                        && (parts[1].strip().equals(discipline) || parts[1].strip().equals("*")));
  }

  int required() {
    return (int)
        tests.stream().flatMap(test -> test.figures().stream()).filter(Stated::required).count();
  }
}
