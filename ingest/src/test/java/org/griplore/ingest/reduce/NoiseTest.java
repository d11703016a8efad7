package org.griplore.ingest.reduce;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.griplore.ingest.reduce.CoastByNoise.Pass;
import org.griplore.store.tyre.TyreClass;
import org.griplore.store.vocabulary.Cell;
import org.griplore.store.vocabulary.LoggedRun;
import org.griplore.store.vocabulary.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoiseTest {
  private static final double[] SPEEDS = {70.4, 73.1, 76.2, 78.8, 81.5, 84.0, 87.1, 89.6};
  private static final double[] LEVELS = {68.1, 68.8, 69.2, 69.7, 70.3, 70.6, 71.3, 71.6};

  private static List<Pass> passes() {
    List<Pass> passes = new ArrayList<>();
    for (int i = 0; i < SPEEDS.length; i++) {
      passes.add(new Pass(SPEEDS[i], LEVELS[i]));
    }
    return passes;
  }

  /** Constructed passes, reckoned by hand from UN Regulation No. 117 annex 3, 4 (from memory). */
  @Test
  void theLevelAtTheReferenceSpeed() {
    CoastByNoise noise = CoastByNoise.of(passes(), TyreClass.C1, 20);
    assertThat(noise.line().meanX()).isCloseTo(-0.000873, within(5e-7));
    assertThat(noise.line().meanY()).isCloseTo(69.95, within(1e-9));
    assertThat(noise.line().slope()).isCloseTo(33.286, within(5e-4));
    assertThat(noise.atReferenceSpeed()).isCloseTo(69.979, within(5e-4));
    assertThat(noise.corrected()).isEqualTo(noise.atReferenceSpeed());
    assertThat(noise.declared()).isEqualTo(68);
    assertThat(noise.remarks()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"28, 70.219, 69", "12, 69.499, 68"})
  void theRoadsTemperature(double surfaceC, double corrected, int declared) {
    CoastByNoise noise = CoastByNoise.of(passes(), TyreClass.C1, surfaceC);
    assertThat(noise.corrected()).isCloseTo(corrected, within(5e-4));
    assertThat(noise.declared()).isEqualTo(declared);
    assertThat(noise.steps()).hasSize(3);
    assertThat(noise.steps().get(1).before()).isEqualTo(noise.atReferenceSpeed());
  }

  /** Coefficients from memory, check the official text. */
  @Test
  void theOtherClasses() {
    assertThat(CoastByNoise.temperatureCorrection(TyreClass.C2, 30)).isCloseTo(0.2, within(1e-12));
    assertThat(CoastByNoise.temperatureCorrection(TyreClass.C3, 30)).isZero();
    assertThat(CoastByNoise.referenceSpeed(TyreClass.C3)).isEqualTo(70);
  }

  /** Trap: less 1 dB, then down; a whole level stays whole. */
  @Test
  void roundedDownAfterOneDecibel() {
    List<Pass> flat = List.of(new Pass(75, 71.1), new Pass(80, 71.1), new Pass(85, 71.1));
    assertThat(CoastByNoise.of(flat, TyreClass.C3, 20).declared()).isEqualTo(70);
    List<Pass> whole = List.of(new Pass(75, 71), new Pass(80, 71), new Pass(85.3, 71));
    assertThat(CoastByNoise.of(whole, TyreClass.C1, 20).declared()).isEqualTo(70);
    List<Pass> below = List.of(new Pass(75, 70.99), new Pass(80, 70.99), new Pass(85, 70.99));
    assertThat(CoastByNoise.of(below, TyreClass.C1, 20).declared()).isEqualTo(69);
  }

  @Test
  void passesOnEachSideAreCounted() {
    CoastByNoise noise = CoastByNoise.of(passes().subList(0, 6), TyreClass.C1, 20);
    assertThat(noise.remarks().get(0)).startsWith("4 passes below and 2 above");
    CoastByNoise fast = CoastByNoise.of(passes(), TyreClass.C3, 20);
    assertThat(fast.remarks()).hasSize(2);
    assertThat(fast.remarks().get(1)).startsWith("4 passes more than 10 km/h off");
  }

  @Test
  void noSlopeIsRefused() {
    assertThatThrownBy(() -> CoastByNoise.of(passes().subList(0, 2), TyreClass.C1, 20))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("2 passes");
    List<Pass> same = List.of(new Pass(80, 70), new Pass(80, 71), new Pass(80, 72));
    assertThatThrownBy(() -> CoastByNoise.of(same, TyreClass.C1, 20))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("two different abscissae");
    List<Pass> standing = List.of(new Pass(0, 70), new Pass(80, 71), new Pass(90, 72));
    assertThatThrownBy(() -> CoastByNoise.of(standing, TyreClass.C1, 20))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("speed 0.0");
  }

  @Test
  void aLogsLevelsAreBroughtToTheReferenceSpeed() {
    List<LoggedRun> runs = new ArrayList<>();
    for (int sequence = 1; sequence <= 3; sequence++) {
      for (int i = 0; i < SPEEDS.length; i++) {
        double level = LEVELS[i] + (sequence == 2 ? 1.5 : 0);
        // the candidate's passes are faster, which must not count as noise
        double speed = SPEEDS[i] * (sequence == 2 ? 1.02 : 1);
        level += sequence == 2 ? 33.286 * Math.log10(1.02) : 0;
        runs.add(pass(sequence, i, speed, level, 28.0));
      }
    }
    ReductionOptions asLogged = ReductionOptions.ofDiscipline("exterior-noise");
    ReducedLog plain = RunReducer.reduce(runs, LogSketch.NOISE, asLogged).orElseThrow();
    ReducedLog log =
        RunReducer.reduce(runs, LogSketch.NOISE, asLogged.coastingBy(TyreClass.C1)).orElseThrow();
    assertThat(log.sets().get(0).mean()).isCloseTo(70.219, within(5e-4));
    assertThat(log.of("T").orElseThrow().effect().value()).isCloseTo(1.5, within(1e-4));
    assertThat(plain.of("T").orElseThrow().effect().value()).isCloseTo(1.786, within(1e-3));
    assertThat(log.sets().get(0).deviation()).isLessThan(0.15);
    assertThat(plain.sets().get(0).deviation()).isGreaterThan(1);
  }

  private static LoggedRun pass(int sequence, int run, double speed, double level, Double road) {
    return new LoggedRun(
        "exterior-noise",
        sequence,
        sequence == 2 ? "T" : "R",
        sequence == 2 ? LoggedRun.Role.CANDIDATE : LoggedRun.Role.REFERENCE,
        run,
        speed,
        null,
        null,
        null,
        level,
        null,
        null,
        road,
        null,
        null,
        new Cell("", 2 + run, 4, "T"));
  }

  /**
   * Level arithmetic (ISO 80000-8); "double the sound pressure is +6 dB" and about twice as loud
   * for 10 dB also stand in textbooks of acoustics.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 1.26, 1.12, 1.07",
    "2, 1.58, 1.26, 1.15",
    "3, 2.00, 1.41, 1.23",
    "5, 3.16, 1.78, 1.41",
    "6, 3.98, 2.00, 1.52",
    "10, 10, 3.16, 2"
  })
  void energyPressureAndLoudness(double db, double energy, double pressure, double loudness) {
    assertThat(SoundLevel.energyRatio(db)).isCloseTo(energy, within(0.005));
    assertThat(SoundLevel.pressureRatio(db)).isCloseTo(pressure, within(0.005));
    assertThat(SoundLevel.loudnessRatio(db)).isCloseTo(loudness, within(0.005));
  }

  /** Two decibels less is a 37 % cut in sound energy, not half of it. */
  @Test
  void twoDecibelsLess() {
    assertThat(100 * (1 - SoundLevel.energyRatio(-2))).isCloseTo(37, within(0.5));
    assertThat(SoundLevel.words(-2))
        .isEqualTo("-2.0 dB: sound energy x0.63, sound pressure x0.79, loudness about x0.87");
  }

  /** Trap: 70 and 76 dB are 73.96 dB by energy, not 73. */
  @Test
  void energiesAreAveraged() {
    assertThat(SoundLevel.energyAverage(List.of(70.0, 76.0))).isCloseTo(73.96, within(0.005));
    assertThat(SoundLevel.energyAverage(List.of(71.5))).isEqualTo(71.5);
    assertThatThrownBy(() -> SoundLevel.energyAverage(List.of())).isInstanceOf(Refusal.class);
  }
}
