package org.griplore.store.scenario;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.griplore.store.vocabulary.SeasonClass;
import org.griplore.store.vocabulary.SourceKind;
import org.griplore.store.vocabulary.TestDate;

/**
 * One simulated comparison of tyres.
 *
 * @param key unique in its archive, for example {@code own-2019-2}
 * @param date the day of the test
 * @param kind who stands behind it
 * @param publication where it was printed; empty for own tests
 * @param language two-letter code of the report's language: en, de, fr or sv
 * @param title the report's title in that language
 * @param maker for a maker's own test, whose; empty otherwise
 * @param season the season of the comparison (other seasons may be in the field)
 * @param size the size with load index and speed symbol
 * @param vehicle the vehicle
 * @param venue the proving ground
 * @param airC air temperature of the wet and dry work, degrees Celsius, to 0.5
 * @param surfaceC surface temperature of the wet and dry work, degrees Celsius, to 0.5
 * @param snowC snow temperature, degrees Celsius, to 0.5; empty where there was no snow work
 * @param disciplines catalogue keys run, without {@code overall}
 * @param entries the field, best overall first
 */
public record SimulatedReport(
    String key,
    TestDate date,
    SourceKind kind,
    String publication,
    String language,
    String title,
    Optional<String> maker,
    SeasonClass season,
    String size,
    ScenarioVehicle vehicle,
    String venue,
    double airC,
    double surfaceC,
    OptionalDouble snowC,
    List<String> disciplines,
    List<SimulatedEntry> entries) {}
