package org.griplore.ingest.demo;

import org.griplore.ingest.demo.Look.Figures;
import org.griplore.ingest.demo.Look.Overall;
import org.griplore.ingest.demo.Look.UnitPlace;

/** Tests supplied by makers, who choose the field and a little also the day. */
final class MakerFiles {
  private final DemoArchive to;
  private final Look en = Look.in(Lingo.EN);

  MakerFiles(DemoArchive to) {
    this.to = to;
  }

  void render() {
    to.longTable("makers/zelvartis-2016-2018.csv", "zel-2016-1", "zel-2018-1", "zel-2018-2");
    to.delimited("makers/quillarn/2015-crossover.csv", "qui-2015-1", Delimited.COMMA, en);
    to.delimited(
        "makers/quillarn/2019-percent.csv",
        "qui-2019-1",
        Delimited.SEMICOLON,
        en.figures(Figures.PERCENT_OF_REFERENCE).overall(Overall.PLACE_ONLY));
    to.wideJson("makers/quillarn/2020-winter.json", "qui-2020-1");
    to.delimited(
        "makers/quillarn/2023-summer.csv",
        "qui-2023-1",
        Delimited.COMMA,
        en.variant(1).unitPlace(UnitPlace.OWN_ROW));
    to.narrowJson("makers/quillarn/2024-winter.json", "qui-2024-1");
    to.page(
        "makers/velmora/2015-all-season.html",
        "vel-2015-1",
        en,
        false,
        "Tests carried out on behalf of Velmora.");
    to.singleSheet(
        "makers/velmora/2021 summer 20 inch.xlsx", "vel-2021-1", en.names(NameStyle.CAPITALS));
    to.delimited(
        "makers/velmora/2021-all-season.csv",
        "vel-2021-2",
        Delimited.COMMA,
        en.overall(Overall.OF_100));
    to.page(
        "makers/drevanox/2017-summer.html",
        "dre-2017-1",
        en.unitPlace(UnitPlace.CELL),
        true,
        "1) and * see conditions. Third-party measurement commissioned by Drevanox.");
    to.singleSheet(
        "makers/hjortmane/2022 winter.xlsx",
        "hjo-2022-1",
        en.unitPlace(UnitPlace.OWN_ROW).names(NameStyle.PLAIN));
    to.delimited(
        "makers/zelvartis/2024-all-season.csv", "zel-2024-1", Delimited.COMMA, en.sortedByName());
  }
}
