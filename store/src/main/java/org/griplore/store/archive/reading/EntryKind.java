package org.griplore.store.archive.reading;

import java.sql.ResultSet;
import java.sql.SQLException;
import org.griplore.store.archive.database.Sql;
import org.griplore.store.vocabulary.TyreState;
import org.griplore.store.vocabulary.Variant;

/** Reads the state and variant of an entry's row; the common ones are shared. */
public final class EntryKind {
  private EntryKind() {}

  public static TyreState state(ResultSet row) throws SQLException {
    TyreState state =
        new TyreState(
            TyreState.Wear.ofKey(row.getString("state")).orElseThrow(),
            Sql.real(row, "tread_mm"),
            Sql.real(row, "mileage_km"),
            Sql.real(row, "age_years"));
    return state.equals(TyreState.NEW) ? TyreState.NEW : state;
  }

  public static Variant variant(ResultSet row) throws SQLException {
    Variant variant =
        new Variant(
            row.getInt("ev") == 1,
            row.getInt("extra_load") == 1,
            row.getInt("run_flat") == 1,
            row.getInt("seal") == 1);
    return variant.equals(Variant.STANDARD) ? Variant.STANDARD : variant;
  }
}
