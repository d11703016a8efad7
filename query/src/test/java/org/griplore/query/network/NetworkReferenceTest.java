package org.griplore.query.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.griplore.query.statistics.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The network of Senn et al. 2013 (a three-arm study in it) and a simulated archive, against
 * netmeta and exact restricted likelihood.
 */
class NetworkReferenceTest {
  private static final String[] DRUGS = {
    "acar", "benf", "metf", "migl", "piog", "plac", "rosi", "sita", "sulf", "vild"
  };

  @ParameterizedTest
  @CsvSource({"common,NONE,1e-8", "random.DL,DL,1e-8", "random.REML,REML,1e-6"})
  void estimatesOfSennAndOthers(String key, VarianceMethod method, double relative) {
    ReferenceCase c = ReferenceCase.carried("senn-2013");
    NetworkFit fit = NetworkFitter.fit(senn(1), FitOptions.of(method).conventional());
    Heterogeneity h = fit.heterogeneity().orElseThrow();
    c.check(h.q(), "Q", "", "", 1e-8);
    c.check(h.df(), "Q.df", "", "", 0);
    c.check(h.p(), "Q.p", "", "", 1e-8);
    c.check(h.iSquared(), "I2", "", "", 1e-8);
    if (method != VarianceMethod.NONE) {
      // a network package states the variance of a contrast, twice that of an arm
      c.check(2 * fit.tauSquared().orElseThrow(), "tau2." + method, "", "", relative);
    }
    int checked = 0;
    for (int a = 0; a < DRUGS.length; a++) {
      for (int b = 0; b < DRUGS.length; b++) {
        if (c.has("TE." + key, DRUGS[a], DRUGS[b])) {
          EstimatedComparison compared = (EstimatedComparison) fit.compare(a, b);
          c.check(compared.difference(), "TE." + key, DRUGS[a], DRUGS[b], relative);
          c.check(compared.se().orElseThrow(), "seTE." + key, DRUGS[a], DRUGS[b], relative);
          checked++;
        }
      }
    }
    assertThat(checked).isGreaterThanOrEqualTo(method == VarianceMethod.REML ? 5 : 45);
  }

  @ParameterizedTest
  @CsvSource({"common,NONE,1e-8", "random.DL,DL,1e-8", "random.REML,REML,1e-6"})
  void scoresOfSennAndOthersWhereSmallIsDesirable(
      String key, VarianceMethod method, double relative) {
    ReferenceCase c = ReferenceCase.carried("senn-2013");
    List<ModelStanding> standings =
        NetworkFitter.fit(senn(-1), FitOptions.of(method).conventional()).standings();
    assertThat(standings).hasSize(10);
    for (ModelStanding s : standings) {
      double score = s.score().orElseThrow();
      // the worst drug scores 6e-7: an absolute bound beside the relative one
      assertThat(score).isCloseTo(c.value("Pscore." + key, DRUGS[s.model()], ""), within(relative));
    }
  }

  @Test
  void printedFiguresOfSennAndOthers() {
    NetworkFit fit = NetworkFitter.fit(senn(-1), FitOptions.of(VarianceMethod.NONE).conventional());
    Map<String, Double> actual = new HashMap<>();
    fit.standings().forEach(s -> actual.put(DRUGS[s.model()], s.score().orElseThrow()));
    int checked = 0;
    for (Map<String, String> row : ReferenceCase.table("senn-2013/published.csv")) {
      Double value =
          switch (row.get("quantity")) {
            case "Pscore.common" -> actual.get(row.get("key"));
            case "Q" -> fit.heterogeneity().orElseThrow().q();
            case "Q.within" -> fit.designSplit().orElseThrow().within().q();
            case "Q.between" -> fit.designSplit().orElseThrow().between().q();
            default -> throw new IllegalArgumentException(row.get("quantity"));
          };
      double half = 0.5 * Math.pow(10, -Integer.parseInt(row.get("decimals")));
      assertThat(value)
          .as("%s", row)
          .isCloseTo(Double.parseDouble(row.get("value")), within(half + 1e-12));
      checked++;
    }
    assertThat(checked).isEqualTo(13);
  }

  @ParameterizedTest
  @CsvSource({"common,NONE", "random.DL,DL"})
  void directAndIndirectEvidenceOfSennAndOthers(String key, VarianceMethod method) {
    ReferenceCase c = ReferenceCase.carried("senn-2013");
    NetworkFit fit = NetworkFitter.fit(senn(1), FitOptions.of(method).conventional());
    int direct = 0;
    int indirect = 0;
    for (int a = 0; a < DRUGS.length; a++) {
      for (int b = 0; b < DRUGS.length; b++) {
        if (!c.has("direct.TE." + key, DRUGS[a], DRUGS[b])) {
          continue;
        }
        EvidenceSplit e = fit.evidence(a, b);
        check(c, e.direct().orElseThrow(), "direct.TE." + key, "direct.seTE." + key, a, b);
        direct++;
        if (c.has("indirect.TE." + key, DRUGS[a], DRUGS[b])) {
          check(c, e.indirect().orElseThrow(), "indirect.TE." + key, "indirect.seTE." + key, a, b);
          Estimate d = e.inconsistency().orElseThrow();
          c.check(d.value(), "split.diff." + key, DRUGS[a], DRUGS[b], 1e-7);
          c.check(d.z().orElseThrow(), "split.z." + key, DRUGS[a], DRUGS[b], 1e-7);
          c.check(d.p().orElseThrow(), "split.p." + key, DRUGS[a], DRUGS[b], 1e-6);
          indirect++;
        } else {
          assertThat(e.indirect()).isEmpty();
          assertThat(e.inconsistency()).isEmpty();
        }
      }
    }
    assertThat(direct).isGreaterThanOrEqualTo(14);
    assertThat(indirect).isGreaterThanOrEqualTo(10);
  }

  private static void check(ReferenceCase c, Estimate e, String value, String se, int a, int b) {
    c.check(e.value(), value, DRUGS[a], DRUGS[b], 1e-8);
    c.check(e.se().orElseThrow(), se, DRUGS[a], DRUGS[b], 1e-8);
  }

  @Test
  void shareOfDirectEvidenceAndPredictionOfSennAndOthers() {
    ReferenceCase c = ReferenceCase.carried("senn-2013");
    NetworkFit fit = NetworkFitter.fit(senn(1), FitOptions.of(VarianceMethod.DL).conventional());
    int shares = 0;
    int predictions = 0;
    for (int a = 0; a < DRUGS.length; a++) {
      for (int b = 0; b < DRUGS.length; b++) {
        if (c.has("prop.direct.random.DL", DRUGS[a] + ":" + DRUGS[b], "")) {
          double share = fit.evidence(a, b).directShare().orElseThrow();
          c.check(share, "prop.direct.random.DL", DRUGS[a] + ":" + DRUGS[b], "", 1e-8);
          shares++;
        }
        if (c.has("pi.lb.random.DL", DRUGS[a], DRUGS[b])) {
          Interval p = ((EstimatedComparison) fit.compare(a, b)).prediction(0.95).orElseThrow();
          c.check(p.low(), "pi.lb.random.DL", DRUGS[a], DRUGS[b], 1e-8);
          c.check(p.high(), "pi.ub.random.DL", DRUGS[a], DRUGS[b], 1e-8);
          predictions++;
        }
      }
    }
    assertThat(shares).isEqualTo(45);
    assertThat(predictions).isEqualTo(9);
  }

  @Test
  void simulatedArchive() {
    ReferenceCase c = ReferenceCase.carried("simulated-archive");
    Archive archive = Archive.read();
    NetworkFit wls =
        NetworkFitter.fit(archive.arms(true), FitOptions.of(VarianceMethod.NONE).conventional());
    NetworkFit dl =
        NetworkFitter.fit(archive.arms(true), FitOptions.of(VarianceMethod.DL).conventional());
    NetworkFit reml =
        NetworkFitter.fit(archive.arms(true), FitOptions.of(VarianceMethod.REML).conventional());
    NetworkFit ols =
        NetworkFitter.fit(archive.arms(false), FitOptions.of(VarianceMethod.REML).conventional());
    c.check(2 * dl.tauSquared().orElseThrow(), "tau2.DL", "", "", 1e-8);
    c.check(reml.tauSquared().orElseThrow(), "tau2arm.REML", "", "", 1e-6);
    c.check(wls.heterogeneity().orElseThrow().q(), "Q", "", "", 1e-8);
    c.check(wls.heterogeneity().orElseThrow().iSquared(), "I2", "", "", 1e-8);
    DesignSplit split = wls.designSplit().orElseThrow();
    c.check(split.within().q(), "Q.within", "", "", 1e-8);
    c.check(split.within().df(), "Q.within.df", "", "", 0);
    c.check(split.between().q(), "Q.between", "", "", 1e-8);
    c.check(split.between().df(), "Q.between.df", "", "", 0);
    assertThat(ols.residualVariance()).isPresent();
    int checked = 0;
    for (String a : archive.models) {
      for (String b : archive.models) {
        if (!c.has("ols.diff", a, b)) {
          continue;
        }
        archive.check(c, ols, "ols", a, b, 1e-8);
        archive.check(c, wls, "wls", a, b, 1e-8);
        archive.check(c, dl, "dl", a, b, 1e-8);
        archive.check(c, reml, "reml", a, b, 1e-6);
        EvidenceSplit common = wls.evidence(archive.model(a), archive.model(b));
        c.check(common.directTests(), "shared.tests", a, b, 0);
        archive.checkSplit(c, common, "common", a, b);
        archive.checkSplit(c, dl.evidence(archive.model(a), archive.model(b)), "random", a, b);
        checked++;
      }
    }
    assertThat(checked).isEqualTo(41);
    for (ModelStanding s : dl.standings()) {
      c.check(s.score().orElseThrow(), "Pscore.random.DL", archive.models.get(s.model()), "", 1e-8);
    }
    for (ModelStanding s : wls.standings()) {
      c.check(s.score().orElseThrow(), "Pscore.common", archive.models.get(s.model()), "", 1e-8);
    }
  }

  /** Arms of the contrasts: variances of a two-arm study halved, of three arms solved. */
  private static Arms senn(int sign) {
    Map<String, Map<String, double[]>> studies = new HashMap<>();
    for (Map<String, String> row : ReferenceCase.table("senn-2013/data.csv")) {
      double se = Double.parseDouble(row.get("se"));
      studies
          .computeIfAbsent(row.get("study"), s -> new HashMap<>())
          .put(
              row.get("treat1") + " " + row.get("treat2"),
              new double[] {Double.parseDouble(row.get("te")), se * se});
    }
    ArmList arms = new ArmList();
    int test = 0;
    for (String study : new TreeSet<>(studies.keySet())) {
      Map<String, double[]> contrasts = studies.get(study);
      if (contrasts.size() == 1) {
        String[] pair = contrasts.keySet().iterator().next().split(" ");
        double[] c = contrasts.values().iterator().next();
        arms.add(test, drug(pair[0]), sign * c[0], c[1] / 2);
        arms.add(test, drug(pair[1]), 0, c[1] / 2);
      } else {
        double[] ma = contrasts.get("metf acar");
        double[] mp = contrasts.get("metf plac");
        double[] ap = contrasts.get("acar plac");
        arms.add(test, drug("metf"), sign * mp[0], (ma[1] + mp[1] - ap[1]) / 2);
        arms.add(test, drug("acar"), sign * ap[0], (ma[1] + ap[1] - mp[1]) / 2);
        arms.add(test, drug("plac"), 0, (mp[1] + ap[1] - ma[1]) / 2);
      }
      test++;
    }
    return arms.build();
  }

  private static int drug(String name) {
    return List.of(DRUGS).indexOf(name);
  }

  /** The simulated archive with models numbered by name. */
  private record Archive(List<Map<String, String>> rows, List<String> tests, List<String> models) {
    static Archive read() {
      List<Map<String, String>> rows = ReferenceCase.table("simulated-archive/data.csv");
      return new Archive(
          rows,
          rows.stream().map(r -> r.get("test")).distinct().sorted().toList(),
          rows.stream().map(r -> r.get("model")).distinct().sorted().toList());
    }

    Arms arms(boolean withVariance) {
      ArmList arms = new ArmList();
      for (Map<String, String> row : rows) {
        double se = Double.parseDouble(row.get("se"));
        arms.add(
            tests.indexOf(row.get("test")),
            model(row.get("model")),
            Double.parseDouble(row.get("y")),
            withVariance ? se * se : Double.NaN);
      }
      return arms.build();
    }

    int model(String name) {
      return models.indexOf(name);
    }

    void check(ReferenceCase c, NetworkFit fit, String key, String a, String b, double relative) {
      EstimatedComparison compared = (EstimatedComparison) fit.compare(model(a), model(b));
      c.check(compared.difference(), key + ".diff", a, b, relative);
      c.check(compared.se().orElseThrow(), key + ".se", a, b, relative);
    }

    void checkSplit(ReferenceCase c, EvidenceSplit e, String key, String a, String b) {
      if (c.has("split.direct.diff." + key, a, b)) {
        Estimate direct = e.direct().orElseThrow();
        c.check(direct.value(), "split.direct.diff." + key, a, b, 1e-8);
        c.check(direct.se().orElseThrow(), "split.direct.se." + key, a, b, 1e-8);
        Estimate indirect = e.indirect().orElseThrow();
        c.check(indirect.value(), "split.indirect.diff." + key, a, b, 1e-6);
        c.check(indirect.se().orElseThrow(), "split.indirect.se." + key, a, b, 1e-6);
        c.check(e.inconsistency().orElseThrow().p().orElseThrow(), "split.p." + key, a, b, 1e-6);
      } else {
        assertThat(e.direct()).isEmpty();
        assertThat(e.directShare()).hasValue(0);
      }
    }
  }
}
