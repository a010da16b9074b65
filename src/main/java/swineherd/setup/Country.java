package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.EnumSet;
import java.util.Locale;

/** Countries whose law on pigs differs, as far as the rules know it. */
public enum Country {
  @JsonProperty("england")
  ENGLAND,
  @JsonProperty("wales")
  WALES,
  @JsonProperty("scotland")
  SCOTLAND,
  @JsonProperty("northern-ireland")
  NORTHERN_IRELAND,
  @JsonProperty("ireland")
  IRELAND,
  @JsonProperty("united-states")
  UNITED_STATES,
  @JsonProperty("canada")
  CANADA,
  @JsonProperty("australia")
  AUSTRALIA,
  @JsonProperty("new-zealand")
  NEW_ZEALAND,
  @JsonProperty("germany")
  GERMANY,
  @JsonProperty("austria")
  AUSTRIA,
  @JsonProperty("belgium")
  BELGIUM,
  @JsonProperty("denmark")
  DENMARK,
  @JsonProperty("finland")
  FINLAND,
  @JsonProperty("france")
  FRANCE,
  @JsonProperty("italy")
  ITALY,
  @JsonProperty("netherlands")
  NETHERLANDS,
  @JsonProperty("poland")
  POLAND,
  @JsonProperty("portugal")
  PORTUGAL,
  @JsonProperty("spain")
  SPAIN,
  @JsonProperty("sweden")
  SWEDEN,
  @JsonProperty("other-eu")
  OTHER_EU,
  @JsonProperty("norway")
  NORWAY,
  @JsonProperty("switzerland")
  SWITZERLAND,
  @JsonProperty("elsewhere")
  ELSEWHERE;

  private static final EnumSet<Country> UNITED_KINGDOM =
      EnumSet.of(ENGLAND, WALES, SCOTLAND, NORTHERN_IRELAND);
  private static final EnumSet<Country> EUROPEAN_UNION =
      EnumSet.of(
          IRELAND,
          GERMANY,
          AUSTRIA,
          BELGIUM,
          DENMARK,
          FINLAND,
          FRANCE,
          ITALY,
          NETHERLANDS,
          POLAND,
          PORTUGAL,
          SPAIN,
          SWEDEN,
          OTHER_EU);

  /** Whether it is a part of the United Kingdom. */
  public boolean isUnitedKingdom() {
    return UNITED_KINGDOM.contains(this);
  }

  /** Whether it is a member of the European Union. */
  public boolean isEuropeanUnion() {
    return EUROPEAN_UNION.contains(this);
  }

  /** The key under which tables and setup files know it: {@code northern-ireland}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
