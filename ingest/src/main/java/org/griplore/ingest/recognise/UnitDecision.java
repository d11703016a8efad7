package org.griplore.ingest.recognise;

import java.util.List;
import java.util.Set;
import org.griplore.ingest.grid.GridCell;
import org.griplore.store.vocabulary.Dimension;
import org.griplore.store.vocabulary.Direction;
import org.griplore.store.vocabulary.Discipline;
import org.griplore.store.vocabulary.Finding;
import org.griplore.store.vocabulary.HeaderKey;
import org.griplore.store.vocabulary.Unit;
import org.griplore.store.vocabulary.UnitWords;

/**
 * Decides the unit of a column: stated in its header, in its cells or beside the table; else the
 * discipline's canonical unit where the figures can be in it, and then it is a finding. Scales of
 * points, marks and per cent are checked against the figures.
 */
final class UnitDecision {
  /** Disciplines whose per cents are mostly of the figure itself, so that less may be better. */
  private static final Set<String> OF_THE_FIGURE =
      Set.of(
          "rolling-resistance", "energy-use", "mass", "price", "exterior-noise", "interior-noise");

  /** Printed percentages are rounded to a tenth or a half. */
  private static final double ROUNDED = 0.51;

  private final TableFacts facts;
  private final TableArea.Head head;
  private final ColumnRole.Value role;
  private final RawColumn raw;
  private final ColumnMap.Rule rule;
  private int agreement;

  /**
   * @param rule what the user says of the column; null when nothing
   */
  UnitDecision(
      TableFacts facts,
      TableArea.Head head,
      ColumnRole.Value role,
      RawColumn raw,
      ColumnMap.Rule rule) {
    this.rule = rule;
    this.facts = facts;
    this.head = head;
    this.role = role;
    this.raw = raw;
  }

  /**
   * The unit.
   *
   * @param ranksOnly whether the table's columns without a unit are rankings
   * @param agreement how the column goes with the measured ones: 1 when high figures stand with
   *     good results, -1 when low ones do, 0 when that cannot be said
   */
  ColumnUnit decide(boolean ranksOnly, int agreement) {
    this.agreement = agreement;
    if (raw.count() == 0) {
      return ColumnUnit.NONE;
    }
    Discipline discipline = role.discipline();
    if (rule != null && rule.unit() != null) {
      return said(rule.unit());
    }
    if (role.better() != null && contradicts(role)) {
      refuse(
          Finding.Kind.CONFLICT,
          "figures of which "
              + (role.better() == Direction.LOW ? "more" : "less")
              + " is better, as in "
              + discipline.key()
              + " in such a unit; but the header says otherwise, and none was taken");
      return ColumnUnit.NONE;
    }
    if (role.unit() != null && role.better() == Direction.LOW && isRelative(role.unit())) {
      assume("less is better, as the header says; turned round");
      return new ColumnUnit(
          role.unit(),
          false,
          "turned round, 100 x 100 / x: less is better, as the header says",
          ColumnUnit.Turn.UPSIDE_DOWN);
    }
    if (role.unit() != null) {
      boolean bare =
          role.unit() == Unit.PERCENT_OF_BEST && recognised() != null && recognised().assumed();
      return checked(role.unit(), !bare);
    }
    Unit beside = facts.units().getOrDefault(discipline.key(), facts.forAll());
    if (beside != null && discipline.accepts(beside)) {
      return checked(beside, true);
    }
    Set<Unit> inCells = raw.unitsInCells();
    if (inCells.size() == 1) {
      Unit unit = inCells.iterator().next();
      return checked(unit, unit != Unit.PERCENT_OF_BEST);
    }
    return inCells.isEmpty() ? unstated(ranksOnly) : ColumnUnit.NONE;
  }

  private static boolean isRelative(Unit unit) {
    return unit.dimension() == Dimension.RELATIVE;
  }

  /** Whether a header says of a physical unit that the other way is better. */
  private static boolean contradicts(ColumnRole.Value role) {
    Unit unit = role.unit();
    if (unit == null) {
      return false;
    }
    return switch (unit.dimension()) {
      case POINTS, MARK, RELATIVE, NUMBER -> false;
      default ->
          role.discipline().accepts(unit) && role.discipline().directionOf(unit) != role.better();
    };
  }

  /** A unit that the user says is taken at the word, where the figures can be in it. */
  private ColumnUnit said(Unit unit) {
    if (unit == Unit.POINTS_10 && raw.max() > 10) {
      refuse(
          Finding.Kind.CONFLICT,
          "points from 1 to 10, as was said; but the highest is "
              + RawColumn.plain(raw.max())
              + ", and none was taken");
      return ColumnUnit.NONE;
    }
    if (rule.better() == Direction.LOW) {
      return new ColumnUnit(
          unit,
          false,
          "turned round as was said, 100 x 100 / x: more is worse",
          ColumnUnit.Turn.UPSIDE_DOWN);
    }
    boolean trusted = rule.better() != null || unit.dimension() == Dimension.MARK;
    return trusted ? ColumnUnit.stated(unit) : checked(unit, true);
  }

  private UnitWords.Recognised recognised() {
    String unitText = head.unitText();
    return unitText == null
        ? UnitWords.inHeader(head.text()).orElse(null)
        : UnitWords.ofText(unitText).or(() -> UnitWords.inHeader(unitText)).orElse(null);
  }

  private ColumnUnit checked(Unit unit, boolean certain) {
    if (!role.discipline().accepts(unit)) {
      refuse(
          Finding.Kind.NOT_READ,
          role.discipline().key()
              + " in "
              + role.discipline().unit().symbol()
              + " or a unit that converts to it; no figure of the column was taken");
      return ColumnUnit.NONE;
    }
    return switch (unit.dimension()) {
      case RELATIVE -> percent(unit, certain);
      case MARK -> marks();
      case POINTS -> unit == Unit.POINTS_10 ? points() : ColumnUnit.stated(unit);
      default -> ColumnUnit.stated(unit);
    };
  }

  private ColumnUnit points() {
    return raw.max() > 10 ? bigPoints() : ColumnUnit.stated(Unit.POINTS_10);
  }

  private ColumnUnit bigPoints() {
    if (raw.max() <= 100) {
      assume("taken as points of 100: the highest is " + RawColumn.plain(raw.max()));
      return ColumnUnit.assumed(Unit.POINTS_100);
    }
    assume("points of an unknown scale, taken as per cent of the highest");
    return new ColumnUnit(
        Unit.PERCENT_OF_BEST,
        false,
        "points of an unknown scale as per cent of the highest",
        ColumnUnit.Turn.SHARE_OF_HIGHEST);
  }

  private ColumnUnit marks() {
    if (raw.max() > 6.5 || raw.min() < 0.5) {
      return raw.max() <= 10 && raw.min() >= 0 ? tenPoints() : bigPoints();
    }
    if (facts.marks() < 0) {
      refuse(
          Finding.Kind.CONFLICT,
          "school marks, 1 best; but the best places have the highest marks, and none was taken");
      return ColumnUnit.NONE;
    }
    if (!facts.marksExplained() && !head.text().contains("1")) {
      assume("taken as school marks, 1 best and 6 worst");
    }
    return ColumnUnit.stated(Unit.SCHOOL_MARK);
  }

  private ColumnUnit tenPoints() {
    assume("taken as points from 1 to 10, more is better");
    return ColumnUnit.assumed(Unit.POINTS_10);
  }

  private ColumnUnit percent(Unit unit, boolean certain) {
    if (unit == Unit.PERCENT_OF_REFERENCE) {
      return ColumnUnit.stated(unit);
    }
    if (Math.abs(raw.max() - 100) <= ROUNDED) {
      if (!certain) {
        assume("taken as per cent of the best, more is better");
      }
      return ColumnUnit.stated(Unit.PERCENT_OF_BEST);
    }
    if (Math.abs(raw.min() - 100) <= ROUNDED) {
      assume("per cent of the best, where the best has 100 and more is worse; turned round");
      return new ColumnUnit(
          Unit.PERCENT_OF_BEST,
          false,
          "turned round, 100 x 100 / x: the best has 100 and more is worse",
          ColumnUnit.Turn.UPSIDE_DOWN);
    }
    if (raw.max() < 100) {
      assume("taken as per cent of the best; the best itself is not in the table");
      return ColumnUnit.stated(Unit.PERCENT_OF_BEST);
    }
    if (certain) {
      refuse(
          Finding.Kind.CONFLICT,
          "per cent of the best, where the best has 100; but the figures go from "
              + RawColumn.plain(raw.min())
              + " to "
              + RawColumn.plain(raw.max())
              + ", and none was taken");
      return ColumnUnit.NONE;
    }
    if (OF_THE_FIGURE.contains(role.discipline().key())) {
      refuse(
          Finding.Kind.CONFLICT,
          "per cent of which it is known what they are of and whether more is better; none was"
              + " taken");
      return ColumnUnit.NONE;
    }
    assume("taken as per cent of a reference tyre, more is better");
    return ColumnUnit.assumed(Unit.PERCENT_OF_REFERENCE);
  }

  private ColumnUnit unstated(boolean ranksOnly) {
    Discipline discipline = role.discipline();
    if (ranksOnly && raw.isRanking()) {
      return ColumnUnit.PLACES;
    }
    if (discipline.unit().dimension() == Dimension.POINTS) {
      return unstatedPoints();
    }
    PlausibleRange range = PlausibleRange.of(discipline.key());
    int plausible = 0;
    for (Double value : raw.values) {
      plausible += value != null && range.holds(value) ? 1 : 0;
    }
    if (plausible * 5 < raw.count() * 4) {
      refuse(
          Finding.Kind.NOT_READ,
          "a unit: the figures do not look like "
              + discipline.unit().symbol()
              + ", and none was taken");
      return ColumnUnit.NONE;
    }
    assume("no unit is stated; taken as " + discipline.unit().symbol());
    return ColumnUnit.assumed(discipline.unit());
  }

  private ColumnUnit unstatedPoints() {
    boolean total = role.discipline().key().equals("overall");
    int places = total ? TableFacts.withPlaces(facts.places(), List.<Double[]>of(raw.values)) : 0;
    boolean lowIsSaid = role.better() == Direction.LOW;
    boolean highIsSaid = role.better() == Direction.HIGH;
    boolean low = lowIsSaid || !highIsSaid && (places > 0 || places == 0 && agreement < 0);
    boolean high = highIsSaid || !lowIsSaid && (places < 0 || places == 0 && agreement > 0);
    boolean mayBeMarks = raw.min() >= 0.5 && raw.max() <= 6.5;
    if (mayBeMarks && (low || !high && total && facts.otherMarks())) {
      assume(
          low
              ? "taken as school marks, 1 best: the best have the lowest"
              : "taken as school marks, 1 best, as other columns of the table are");
      return ColumnUnit.assumed(Unit.SCHOOL_MARK);
    }
    if (low) {
      refuse(
          Finding.Kind.CONFLICT,
          "points, of which more is better; but the best have the lowest, and none was taken");
      return ColumnUnit.NONE;
    }
    if (mayBeMarks && !high && total && raw.min() < 5 && isNote()) {
      refuse(
          Finding.Kind.CONFLICT,
          "marks of which it is known whether 1 or the highest is best; none was taken");
      return ColumnUnit.NONE;
    }
    return raw.max() > 10 ? bigPoints() : tenPoints();
  }

  /** German marks: 1 is best at school, though not in every test. */
  private boolean isNote() {
    return HeaderKey.words(head.text()).stream().anyMatch(word -> word.endsWith("note"));
  }

  private void assume(String what) {
    say(Finding.Kind.ASSUMED, what);
  }

  private void refuse(Finding.Kind kind, String expected) {
    say(kind, expected);
  }

  private void say(Finding.Kind kind, String expected) {
    GridCell cell = head.cell();
    raw.findings.add(
        new FoundThing(
            kind,
            cell,
            head.text().isEmpty() ? "a column without a header" : head.text(),
            expected,
            "write the unit into the header, like \"Wet braking (m)\", or give it as `unit "
                + role.discipline().key()
                + "`, or say it in a map: `griplore add FILE --map MAP`"));
  }
}
