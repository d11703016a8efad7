package org.griplore.store.export;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.griplore.store.archive.views.ArchiveTable;

/**
 * The {@code datapackage.json} of a package by Data Package, Tabular Data Resource and Table Schema
 * v1 (specs.frictionlessdata.io).
 */
final class Descriptor {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final ObjectNode root = JSON.createObjectNode();
  private final ArrayNode resources;

  Descriptor() {
    root.put("profile", "data-package");
    root.put("name", "griplore-archive");
    root.put("title", "An archive of comparative car-tyre tests");
    root.put(
        "description",
        "What counts of every source, with each figure's cell, and every source as it was given."
            + " Results of different reports hold for their own size, car, track and day.");
    resources = root.putArray("resources");
  }

  /** Adds a table that was written to a file. */
  void add(ArchiveTable table, String path, HashedFile written) {
    ObjectNode resource = resource("tabular-data-resource", table.name(), path, table.title());
    resource.put("description", table.describes());
    resource.put("format", "csv");
    resource.put("mediatype", "text/csv");
    resource.put("encoding", "utf-8");
    // the defaults of CSV Dialect, said all the same: readers that guess do not guess then
    resource
        .putObject("dialect")
        .put("delimiter", ",")
        .put("lineTerminator", "\r\n")
        .put("quoteChar", "\"")
        .put("doubleQuote", true)
        .put("header", true);
    measure(resource, written);
    ObjectNode schema = resource.putObject("schema");
    ArrayNode fields = schema.putArray("fields");
    table.fields().forEach(field -> add(fields.addObject(), field));
    schema.putArray("missingValues").add("");
    strings(schema.putArray("primaryKey"), table.key());
    if (!table.references().isEmpty()) {
      ArrayNode keys = schema.putArray("foreignKeys");
      table.references().forEach(reference -> add(keys.addObject(), reference));
    }
  }

  private static void add(ObjectNode node, ArchiveTable.Field field) {
    node.put("name", field.name());
    node.put("type", field.type().word());
    node.put("description", field.describes());
    if (field.required() || !field.words().isEmpty()) {
      ObjectNode constraints = node.putObject("constraints");
      if (field.required()) {
        constraints.put("required", true);
      }
      if (!field.words().isEmpty()) {
        strings(constraints.putArray("enum"), field.words());
      }
    }
  }

  private static void add(ObjectNode node, ArchiveTable.Reference reference) {
    node.put("fields", reference.field());
    node.putObject("reference")
        .put("resource", reference.table())
        .put("fields", reference.tableField());
  }

  private static void strings(ArrayNode array, List<String> words) {
    words.forEach(array::add);
  }

  /** Adds a file that is given away as it is. */
  void add(String name, String path, String title, HashedFile written) {
    measure(resource("data-resource", name, path, title), written);
  }

  private ObjectNode resource(String profile, String name, String path, String title) {
    return resources
        .addObject()
        .put("profile", profile)
        .put("name", name)
        .put("path", path)
        .put("title", title);
  }

  private static void measure(ObjectNode resource, HashedFile written) {
    resource.put("bytes", written.bytes());
    resource.put("hash", "sha256:" + written.sha256());
  }

  /** Writes it with line feeds on every machine. */
  void write(Path file) throws IOException {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(lines);
    printer.indentArraysWith(lines);
    Files.writeString(file, JSON.writer(printer).writeValueAsString(root) + "\n");
  }
}
