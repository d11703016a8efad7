package org.griplore.ui.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Sends forms as a page of the explorer would, with the token that stands in its pages. */
final class Sender {
  private static final HttpClient CLIENT = HttpClient.newHttpClient();
  private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([0-9a-f]{64})\"");

  private final String base;
  private final String token;

  Sender(String base) {
    this.base = base;
    Matcher found = TOKEN.matcher(Reader.get(base + "/add").body());
    this.token = found.find() ? found.group(1) : "";
  }

  /** Sends a form's fields. */
  HttpResponse<String> form(String path, Map<String, String> fields) {
    String body =
        fields.entrySet().stream()
            .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
            .collect(Collectors.joining("&", "token=" + token + "&", ""));
    return send(path, "application/x-www-form-urlencoded", body.getBytes(StandardCharsets.UTF_8));
  }

  /** Sends a text that was pasted, or a file, as the form of the page to add sends them. */
  HttpResponse<String> give(String pasted, String fileName, byte[] file) {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    part(body, "name=\"token\"", token.getBytes(StandardCharsets.UTF_8));
    part(body, "name=\"table\"", pasted.getBytes(StandardCharsets.UTF_8));
    part(body, "name=\"file\"; filename=\"" + fileName + "\"", file);
    body.writeBytes("--edge--\r\n".getBytes(StandardCharsets.US_ASCII));
    return send("/add", "multipart/form-data; boundary=edge", body.toByteArray());
  }

  /** Pastes a table and returns the address of its draft's page. */
  String paste(String table) {
    HttpResponse<String> answer = give(table, "", new byte[0]);
    return answer
        .headers()
        .firstValue("Location")
        .orElseThrow(() -> new AssertionError(answer.body()));
  }

  /** The id of a draft whose page this is. */
  static String id(String address) {
    return address.replaceAll(".*draft=", "");
  }

  private static void part(ByteArrayOutputStream body, String head, byte[] content) {
    body.writeBytes(
        ("--edge\r\nContent-Disposition: form-data; " + head + "\r\n\r\n")
            .getBytes(StandardCharsets.UTF_8));
    body.writeBytes(content);
    body.writeBytes("\r\n".getBytes(StandardCharsets.US_ASCII));
  }

  private HttpResponse<String> send(String path, String type, byte[] body) {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(base + path))
            .timeout(Duration.ofSeconds(60))
            .header("Content-Type", type)
            .header("Origin", base)
            .POST(BodyPublishers.ofByteArray(body))
            .build();
    try {
      return CLIENT.send(request, BodyHandlers.ofString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
