package org.griplore.store.archive.reading;

import java.sql.Connection;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.archive.names.Meaning;

/**
 * Puts entries of one model together that a report writes differently, in one sheet and another,
 * say. Two that hold a figure of the same discipline stay apart: both were told, and neither is
 * dropped.
 */
public final class OneEntry {
  private final Connection connection;
  private final Set<Integer> severalNames = new HashSet<>();
  private final Map<Subject, List<Together>> entries = new HashMap<>();

  private record Subject(int report, int model, String size) {}

  /** The disciplines are looked up when a second name comes: most models have one in a report. */
  private static final class Together {
    final int first;
    final int name;
    Set<Integer> disciplines;

    Together(int first, int name) {
      this.first = first;
      this.name = name;
    }
  }

  public OneEntry(Connection connection) {
    this.connection = connection;
    Meaning.holding(connection)
        .forEach(
            (name, meaning) -> {
              severalNames.add(name);
              severalNames.add(meaning.model());
            });
  }

  /** The entry that this one is put together with: itself, when with none before it. */
  public int with(int entry, int report, int name, int model, String size) {
    if (!severalNames.contains(name)) {
      return entry;
    }
    List<Together> before =
        entries.computeIfAbsent(
            new Subject(report, model, Objects.requireNonNullElse(size, "")),
            subject -> new ArrayList<>(1));
    Set<Integer> own = null;
    for (Together together : before) {
      if (together.name != name) {
        own = own == null ? disciplines(entry) : own;
        if (together.disciplines == null) {
          together.disciplines = disciplines(together.first);
        }
        if (Collections.disjoint(together.disciplines, own)) {
          together.disciplines.addAll(own);
          return together.first;
        }
      }
    }
    before.add(new Together(entry, name));
    return entry;
  }

  private Set<Integer> disciplines(int entry) {
    return new HashSet<>(
        Sql.list(
            connection,
            "SELECT discipline_id FROM result WHERE entry_id = ?",
            row -> row.getInt(1),
            entry));
  }
}
