package swineherd.units;

import com.fasterxml.jackson.annotation.JsonProperty;

/** The units a keeper reads. */
public enum UnitSystem {
  @JsonProperty("metric")
  METRIC,
  @JsonProperty("us")
  US
}
