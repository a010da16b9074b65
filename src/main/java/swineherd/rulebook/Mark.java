package swineherd.rulebook;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How a value came to us: whether somebody saw it in the source that is named beside it. */
public enum Mark {
  /** Seen in the named publication or a stored copy of it. */
  @JsonProperty("read")
  READ,
  /** Known to stand in the named publication, but the page was not opened. */
  @JsonProperty("memory")
  MEMORY,
  /** A fact of the trade without a source. */
  @JsonProperty("common")
  COMMON,
  /** Computed from values that carry their own marks. */
  @JsonProperty("derived")
  DERIVED,
  /** Chosen here, within bounds that are given. */
  @JsonProperty("judgement")
  JUDGEMENT
}
