package org.griplore.query.network;

/** What the network says of two models: an estimate, or that it cannot compare them and why. */
public sealed interface ModelComparison permits EstimatedComparison, NotCompared {}
