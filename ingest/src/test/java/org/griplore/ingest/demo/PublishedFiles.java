package org.griplore.ingest.demo;

import java.util.Map;
import org.griplore.ingest.demo.Look.Figures;
import org.griplore.ingest.demo.Look.Overall;
import org.griplore.ingest.demo.Look.UnitPlace;
import org.griplore.store.vocabulary.Unit;

/** Tests printed by the four invented publications, each in its language. */
final class PublishedFiles {
  private final DemoArchive to;
  private final Look en = Look.in(Lingo.EN);
  private final Look de = Look.in(Lingo.DE).gaps("\u2013", "k. A.");
  private final Look fr = Look.in(Lingo.FR).gaps("n.c.", "\u2013", "");
  private final Look sv = Look.in(Lingo.SV).gaps("e.t.", "\u2013", "");

  PublishedFiles(DemoArchive to) {
    this.to = to;
  }

  void render() {
    swedish();
    french();
    english();
    to.delimited(
        "published/profil-und-piste/2016-03.csv",
        "pp-2016-1",
        Delimited.EXPORTED,
        de.figures(Figures.SCHOOL_MARKS).overall(Overall.SCHOOL_MARK).withoutKey(),
        "Noten: 1 = sehr gut, 6 = ungen\u00fcgend");
  }

  private void swedish() {
    String folder = "published/monsterdjup/";
    to.delimited(folder + "2015-vinter.csv", "md-2015-1", Delimited.SEMICOLON, sv);
    to.page(
        folder + "2016-sommar.html",
        "md-2016-1",
        sv.unitPlace(UnitPlace.OWN_ROW),
        false,
        "Alla d\u00e4ck k\u00f6pta i handeln.");
    to.delimited(
        folder + "2017-sommar-procent.csv",
        "md-2017-1",
        Delimited.SEMICOLON,
        sv.figures(Figures.PERCENT_OF_BEST).overall(Overall.PLACE_ONLY));
    to.delimited(folder + "2017-aretrunt.csv", "md-2017-2", Delimited.EXPORTED, sv.withoutKey());
    to.delimited(
        folder + "2018-placeringar.csv",
        "md-2018-1",
        Delimited.SEMICOLON,
        sv.figures(Figures.PLACES).overall(Overall.PLACE_ONLY),
        "Endast placeringar publicerades.");
    to.singleSheet(folder + "2020 sommar.xlsx", "md-2020-1", sv.unitPlace(UnitPlace.OWN_ROW));
    to.page(folder + "2023-vinter.html", "md-2023-1", sv.names(NameStyle.ALIAS), false);
    to.delimited(
        folder + "2023-sommar.csv",
        "md-2023-2",
        Delimited.SEMICOLON,
        sv.figures(Figures.PERCENT_OF_BEST).overall(Overall.POINTS));
    to.delimited(folder + "2023-aretrunt.tsv", "md-2023-3", Delimited.TAB, sv.sortedByName());
  }

  private void french() {
    String folder = "published/carnet-de-gomme/";
    to.delimited(
        folder + "2017 hiver.csv",
        "cg-2017-1",
        Delimited.EXPORTED,
        fr.unitPlace(UnitPlace.BRACKETS).withoutKey());
    to.page(
        folder + "2020-ete.html",
        "cg-2020-1",
        fr.names(NameStyle.CAPITALS),
        true,
        "1) Pneu achet\u00e9 une semaine apr\u00e8s les autres. * Semaine de fabrication inconnue.");
    to.narrowJson(folder + "2020-toutes-saisons.json", "cg-2020-2");
    to.delimited(folder + "2021-hiver-trois-pneus.csv", "cg-2021-1", Delimited.EXPORTED, fr);
    to.delimited(
        folder + "2021-ete-classement.csv",
        "cg-2021-2",
        Delimited.SEMICOLON,
        fr.figures(Figures.PLACES).overall(Overall.PLACE_ONLY));
    to.page(folder + "2022-ete.html", "cg-2022-1", fr.unitPlace(UnitPlace.CELL), false);
    to.singleSheet(folder + "2024 ete.xlsx", "cg-2024-1", fr);
  }

  private void english() {
    String folder = "published/groove-quarterly/";
    to.page(
        folder + "summer-2015.html",
        "gq-2015-1",
        en.datedByMonth().withoutKey(),
        true,
        "1) Front-row favourite of our last test. * Bought two weeks later.");
    Map<String, Unit> imperial =
        Map.of(
            "wet-braking", Unit.FOOT,
            "dry-braking", Unit.FOOT,
            "straight-aquaplaning", Unit.MILE_PER_HOUR,
            "mass", Unit.POUND);
    to.page(
        folder + "summer-2018.html",
        "gq-2018-1",
        en.units(imperial).datedByMonth(),
        false,
        "Stopping distances in feet from 50 mph (wet) and 62 mph (dry).");
    to.page(
        folder + "winter-2019.html",
        "gq-2019-1",
        en.variant(1).names(NameStyle.MISSPELT),
        true,
        "1) Supplied with a different speed symbol. * Tread depth at the upper tolerance.");
    to.delimited(
        folder + "summer-2019-percent.csv",
        "gq-2019-2",
        Delimited.COMMA,
        en.figures(Figures.PERCENT_OF_BEST).overall(Overall.OF_100));
    to.delimited(
        folder + "summer-2022.csv",
        "gq-2022-1",
        Delimited.COMMA,
        en.variant(1).overall(Overall.OF_100).withMakerColumn());
    to.page(
        folder + "summer-2024.html",
        "gq-2024-1",
        en.unitPlace(UnitPlace.CELL).names(NameStyle.SPACED),
        true,
        "1) Test winner in 2022 as well? See our archive. * Older stock, DOT 0823.");
  }
}
