package org.griplore.ui.web;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandler;
import java.net.http.HttpResponse.BodyHandlers;

/** Asks an explorer over HTTP. */
final class Reader {
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private Reader() {}

  static HttpResponse<String> get(String address) {
    return send("GET", address);
  }

  static HttpResponse<byte[]> bytes(String address) {
    return send("GET", address, BodyHandlers.ofByteArray());
  }

  static HttpResponse<String> send(String method, String address) {
    return send(method, address, BodyHandlers.ofString());
  }

  private static <T> HttpResponse<T> send(String method, String address, BodyHandler<T> as) {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(address))
            .method(method, HttpRequest.BodyPublishers.noBody())
            .build();
    try {
      return CLIENT.send(request, as);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
