package org.griplore.ingest.demo;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.griplore.ingest.demo.Expectations.ExpectedResult;
import org.griplore.store.scenario.SimulatedReport;

/** Two forms of JSON: an object a tyre, and an object a result. */
final class JsonForm {
  private static final ObjectMapper MAPPER =
      new ObjectMapper()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN);

  private JsonForm() {}

  /** An object a tyre, its keys as a table's header; a gap is null. */
  static byte[] wide(SimulatedReport report, Sheet sheet) {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (List<DemoCell> cells : sheet.rows()) {
      Map<String, Object> row = new LinkedHashMap<>();
      for (int c = 0; c < cells.size(); c++) {
        row.put(sheet.header().get(c), json(cells.get(c)));
      }
      rows.add(row);
    }
    return write(report, rows);
  }

  /** An object a result with discipline, value and unit apart. */
  static byte[] narrow(SimulatedReport report, List<ExpectedResult> results) {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (ExpectedResult r : results) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("tyre", r.written());
      row.put("discipline", r.discipline());
      row.put("value", r.value().orElse(null));
      row.put("unit", r.unit());
      row.put("place", r.place().orElse(null));
      rows.add(row);
    }
    return write(report, rows);
  }

  private static byte[] write(SimulatedReport report, List<Map<String, Object>> rows) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("test", report.key());
    all.put("title", report.title());
    all.put("date", report.date().text());
    if (!report.publication().isEmpty()) {
      all.put("source", report.publication());
    }
    all.put("source_kind", report.kind().key());
    all.put("size", report.size());
    all.put("season", report.season().key());
    all.put("vehicle", report.vehicle().description());
    all.put("vehicle_mass_kg", report.vehicle().massKg());
    all.put("venue", report.venue());
    all.put("air_c", report.airC());
    all.put("surface_c", report.surfaceC());
    all.put("results", rows);
    try {
      String text = MAPPER.writeValueAsString(all).replace("\r\n", "\n") + "\n";
      return text.getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Object json(DemoCell cell) {
    if (cell instanceof DemoCell.Figure figure) {
      return figure.value();
    }
    String text = cell.text(Lingo.EN);
    if (text.matches("\\d{1,2}")) {
      return Integer.valueOf(text);
    }
    return text.isEmpty() ? null : text;
  }
}
