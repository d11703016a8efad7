package org.griplore.ingest;

import java.util.Map;
import org.griplore.store.archive.RunRecord;
import org.griplore.store.archive.StoredFigure;
import org.griplore.store.archive.StoredNote;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Note;
import org.griplore.store.vocabulary.Result;

/**
 * One thing that a reading tells, in a form that the archive's and the original's word can be
 * compared in.
 *
 * @param key what tells it from others of its reading: what it is and where it stands
 * @param identity what a model has one figure of only; null where there can be more
 * @param cell where it stands; null when nowhere
 * @param of what it is, in words
 * @param model the model that it is told of; null for a test as a whole
 * @param says its content, in words
 */
record StoredFact(String key, String identity, Cell cell, String of, String model, String says) {
  /** The same of the model that a name means. */
  StoredFact meaning(Map<String, String> models) {
    return model == null
        ? this
        : new StoredFact(key, identity, cell, of, models.getOrDefault(model, model), says);
  }

  static StoredFact figure(StoredFigure figure) {
    return figure(figure.test(), figure.model(), figure.size(), figure.name(), figure.result());
  }

  static StoredFact figure(String test, String model, String size, Cell name, Result result) {
    Cell value = result.cells().value();
    Cell place = result.cells().place();
    String what = "|" + test + "|" + result.discipline() + "|";
    return new StoredFact(
        "figure" + what + (value == null && place == null ? at(name) : at(value) + at(place)),
        what + size,
        value != null ? value : place,
        result.discipline() + ", test " + test,
        model,
        says(result));
  }

  private static String says(Result result) {
    StringBuilder says = new StringBuilder();
    if (result.value() != null) {
      says.append(result.value()).append(' ').append(result.unit().symbol());
    }
    add(says, "spread ", result.spread());
    add(says, "runs ", result.runs());
    add(says, "place ", result.place());
    add(says, "found ", found(result.cells().value()));
    add(says, "place found ", found(result.cells().place()));
    add(says, "rule: ", result.rule().isEmpty() ? null : result.rule());
    return says.toString();
  }

  static StoredFact note(StoredNote note) {
    return note(note.test(), note.note());
  }

  static StoredFact note(String test, Note note) {
    return new StoredFact(
        "note|" + test + "|" + at(note.cell()) + note.discipline(),
        null,
        note.cell(),
        "note, test " + test,
        note.model(),
        note.text());
  }

  static StoredFact run(RunRecord run) {
    return run(run.run());
  }

  static StoredFact run(LoggedRun run) {
    StringBuilder says = new StringBuilder("sequence " + run.sequence());
    add(says, "", run.role());
    add(says, "from km/h ", run.fromKmh());
    add(says, "to km/h ", run.toKmh());
    add(says, "distance m ", run.distanceM());
    add(says, "time s ", run.timeS());
    add(says, "level dB ", run.levelDb());
    add(says, "value ", run.value());
    add(says, "", run.unit());
    add(says, "surface C ", run.surfaceC());
    add(says, "air C ", run.airC());
    add(says, "remark ", run.remark());
    return new StoredFact(
        "run|" + run.discipline() + "|" + at(run.cell()) + run.run(),
        null,
        run.cell(),
        "run, " + run.discipline(),
        run.model(),
        says.toString());
  }

  private static void add(StringBuilder says, String what, Object value) {
    if (value != null) {
      says.append(says.isEmpty() ? "" : ", ").append(what).append(value);
    }
  }

  private static String found(Cell cell) {
    return cell == null ? null : '"' + cell.found() + '"';
  }

  private static String at(Cell cell) {
    return cell == null ? "-;" : cell.sheet() + ":" + cell.row() + ":" + cell.column() + ";";
  }
}
