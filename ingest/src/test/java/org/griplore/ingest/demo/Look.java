package org.griplore.ingest.demo;

import java.util.List;
import java.util.Map;
import org.griplore.store.vocabulary.Unit;

/** How one result table is laid out. Immutable; the with-methods vary one thing. */
record Look(
    Lingo lingo,
    int variant,
    Figures figures,
    UnitPlace unitPlace,
    NameStyle names,
    boolean makerColumn,
    boolean byName,
    boolean key,
    boolean monthOnly,
    boolean remarks,
    Overall overall,
    Map<String, Unit> units,
    List<String> gaps) {

  /** What the cells of the table say. */
  enum Figures {
    VALUES,
    SCHOOL_MARKS,
    PERCENT_OF_BEST,
    /** The tyre named by {@code Reference:} above the table is 100 per cent. */
    PERCENT_OF_REFERENCE,
    PLACES
  }

  /** Where units stand. */
  enum UnitPlace {
    BRACKETS,
    PARENTHESES,
    OWN_ROW,
    CELL
  }

  /** How the total is told, beside the place. */
  enum Overall {
    POINTS,
    SCHOOL_MARK,
    OF_100,
    PLACE_ONLY
  }

  static Look in(Lingo lingo) {
    return new Look(
        lingo,
        0,
        Figures.VALUES,
        UnitPlace.PARENTHESES,
        NameStyle.EXACT,
        false,
        false,
        true,
        false,
        false,
        Overall.POINTS,
        Map.of(),
        List.of("\u2013", "n/a", ""));
  }

  Look variant(int v) {
    return new Look(
        lingo,
        v,
        figures,
        unitPlace,
        names,
        makerColumn,
        byName,
        key,
        monthOnly,
        remarks,
        overall,
        units,
        gaps);
  }

  Look figures(Figures f) {
    return new Look(
        lingo,
        variant,
        f,
        unitPlace,
        names,
        makerColumn,
        byName,
        key,
        monthOnly,
        remarks,
        overall,
        units,
        gaps);
  }

  Look unitPlace(UnitPlace p) {
    return new Look(
        lingo,
        variant,
        figures,
        p,
        names,
        makerColumn,
        byName,
        key,
        monthOnly,
        remarks,
        overall,
        units,
        gaps);
  }

  Look names(NameStyle n) {
    return new Look(
        lingo,
        variant,
        figures,
        unitPlace,
        n,
        makerColumn,
        byName,
        key,
        monthOnly,
        remarks,
        overall,
        units,
        gaps);
  }

  Look withMakerColumn() {
    return new Look(
        lingo, variant, figures, unitPlace, names, true, byName, key, monthOnly, remarks, overall,
        units, gaps);
  }

  Look sortedByName() {
    return new Look(
        lingo,
        variant,
        figures,
        unitPlace,
        names,
        makerColumn,
        true,
        key,
        monthOnly,
        remarks,
        overall,
        units,
        gaps);
  }

  Look withoutKey() {
    return new Look(
        lingo,
        variant,
        figures,
        unitPlace,
        names,
        makerColumn,
        byName,
        false,
        monthOnly,
        remarks,
        overall,
        units,
        gaps);
  }

  Look datedByMonth() {
    return new Look(
        lingo,
        variant,
        figures,
        unitPlace,
        names,
        makerColumn,
        byName,
        key,
        true,
        remarks,
        overall,
        units,
        gaps);
  }

  Look withRemarks() {
    return new Look(
        lingo,
        variant,
        figures,
        unitPlace,
        names,
        makerColumn,
        byName,
        key,
        monthOnly,
        true,
        overall,
        units,
        gaps);
  }

  Look withoutRemarks() {
    return new Look(
        lingo,
        variant,
        figures,
        unitPlace,
        names,
        makerColumn,
        byName,
        key,
        monthOnly,
        false,
        overall,
        units,
        gaps);
  }

  Look overall(Overall o) {
    return new Look(
        lingo,
        variant,
        figures,
        unitPlace,
        names,
        makerColumn,
        byName,
        key,
        monthOnly,
        remarks,
        o,
        units,
        gaps);
  }

  Look units(Map<String, Unit> u) {
    return new Look(
        lingo,
        variant,
        figures,
        unitPlace,
        names,
        makerColumn,
        byName,
        key,
        monthOnly,
        remarks,
        overall,
        u,
        gaps);
  }

  Look gaps(String... g) {
    return new Look(
        lingo,
        variant,
        figures,
        unitPlace,
        names,
        makerColumn,
        byName,
        key,
        monthOnly,
        remarks,
        overall,
        units,
        List.of(g));
  }
}
