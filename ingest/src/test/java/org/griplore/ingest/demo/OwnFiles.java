package org.griplore.ingest.demo;

import java.util.Map;
import org.griplore.ingest.demo.Look.Overall;
import org.griplore.ingest.demo.Look.UnitPlace;
import org.griplore.store.vocabulary.Unit;

/** The tester's own tests: 2015 and 2016 in one long table, later ones by year. */
final class OwnFiles {
  private final DemoArchive to;

  OwnFiles(DemoArchive to) {
    this.to = to;
  }

  void render() {
    to.longTable(
        "own/archive-2015-2016.csv",
        "own-2015-1",
        "own-2015-2",
        "own-2016-1",
        "own-2016-2",
        "own-2016-3");
    first();
    second();
  }

  private void first() {
    Look de = Look.in(Lingo.DE).gaps("\u2013", "k. A.", "");
    Look en = Look.in(Lingo.EN);
    to.delimited(
        "own/2017/Winterreifen-Maerz.csv",
        "own-2017-1",
        Delimited.EXPORTED,
        de.unitPlace(UnitPlace.BRACKETS),
        "Alle Distanzen Mittel aus mindestens sechs g\u00fcltigen Bremsungen.");
    to.workbook(
        "own/2017/Sommerreifen 225-50 R17.xlsx",
        "own-2017-2",
        de.variant(1),
        "Hinweise",
        "Luftdruck kalt 2,5 bar rundum, bei 20 \u00b0C Hallentemperatur eingestellt.",
        "Reifen anonym im Handel gekauft.");
    to.workbook(
        "own/2018/winter test sheets.xlsx",
        "own-2018-1",
        en.variant(1).withRemarks(),
        "Read me",
        "Snow work done over two mornings; wet and dry on the third day.");
    to.delimited(
        "own/2018/Ergebnisse_195-65R15.csv",
        "own-2018-2",
        Delimited.MARKED,
        de.names(NameStyle.MISSPELT).sortedByName());
    to.put(
        "own/2018/Kopie von Ergebnisse_195-65R15.csv",
        to.files().get("own/2018/Ergebnisse_195-65R15.csv").clone());
    to.log("own/2019/snow-braking-runs.csv", "own-2019-1", "snow-braking", 0.014);
    to.delimited("own/2019/winter-results.csv", "own-2019-1", Delimited.COMMA, en);
    transposed("own/2019/summer-235-55-R19-side-by-side.csv", "own-2019-2", en.gaps("n/a"));
    to.singleSheet(
        "own/2019/all-season 2019.xlsx",
        "own-2019-3",
        en.unitPlace(UnitPlace.OWN_ROW).names(NameStyle.PLAIN).gaps("DNF", "\u2013"),
        "DNF: not finished");
    to.log("own/2020/Schneebremsen_Einzelwerte.csv", "own-2020-1", "snow-braking", -0.021);
    to.delimited(
        "own/2020/Winterreifen 245-35 R19.csv",
        "own-2020-1",
        Delimited.EXPORTED,
        de.variant(1).unitPlace(UnitPlace.CELL));
  }

  private void second() {
    Look de = Look.in(Lingo.DE).gaps("\u2013", "k. A.", "");
    Look en = Look.in(Lingo.EN);
    to.delimited(
        "own/2020/Sommertest Kompaktwagen.csv",
        "own-2020-2",
        Delimited.EXPORTED,
        de.overall(Overall.SCHOOL_MARK).withMakerColumn().unitPlace(UnitPlace.BRACKETS),
        "Gesamtwertung als Schulnote (1 = sehr gut).");
    to.singleSheet(
        "own/2021/Winterreifen_Elektro.xlsx",
        "own-2021-1",
        de.unitPlace(UnitPlace.OWN_ROW).names(NameStyle.ALIAS),
        "Ersatzbezeichnungen wie auf dem Lieferschein.");
    to.log("own/2021/wet-braking-runs.csv", "own-2021-2", "wet-braking", 0.022);
    to.delimited("own/2021/results.tsv", "own-2021-2", Delimited.TAB, en.variant(1));
    to.narrowJson("own/2022/winter-2022.json", "own-2022-1");
    to.log("own/2022/wet-braking-runs.csv", "own-2022-2", "wet-braking", 0.034);
    to.log("own/2022/exterior-noise-runs.csv", "own-2022-2", "exterior-noise", -0.3);
    to.log("own/2022/wet-handling-laps.csv", "own-2022-2", "wet-handling", 0.006);
    to.delimited(
        "own/2022/summer-mid-size.csv",
        "own-2022-2",
        Delimited.SEMICOLON,
        en.names(NameStyle.SPACED).withMakerColumn());
    to.workbook(
        "own/2022/Ganzjahresreifen Sportcoupe.xlsx",
        "own-2022-3",
        de.names(NameStyle.MISSPELT),
        "");
    to.delimited(
        "own/2023/winter-export.txt", "own-2023-1", Delimited.WIDE, en.variant(1).sortedByName());
    to.workbook(
        "own/2023/Summer 195-65 R15.xlsx",
        "own-2023-2",
        en.withoutKey().unitPlace(UnitPlace.OWN_ROW),
        "");
    to.wideJson("own/2024/winter-2024.json", "own-2024-1");
    to.delimited(
        "own/2024/large-crossover.csv",
        "own-2024-2",
        Delimited.COMMA,
        en.withRemarks().units(Map.of("wet-circle", Unit.STANDARD_GRAVITY)));
  }

  private void transposed(String path, String key, Look look) {
    Sheet sheet = to.sheet(path, key, look, "delimited text, tyres side by side");
    to.put(path, Delimited.COMMA.write(sheet.transposed(), look.lingo()));
  }
}
