package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.LocalDate;

/**
 * Pigs of one kind that are kept together.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param name its name, by which the diary refers to it
 * @param pen name of the pen they are or will be in
 * @param count number of pigs
 * @param breed key of the breed in the table breeds
 * @param crossedWith key of the other breed of a cross
 * @param sex males, gilts or both
 * @param males state of the males
 * @param castratedOn when the males were castrated
 * @param secondVaccine second vaccination against taint
 * @param mated whether a male was used for mating
 * @param skin colour of the skin
 * @param raised where they have been so far
 * @param born date of birth
 * @param ageOnArrival age on arrival, days
 * @param source where they are bought
 * @param weanedAt age at weaning, days
 * @param carriedIn what they are brought home in
 * @param arrives day of arrival
 * @param arrivalWeight live weight on arrival, kg each
 * @param weighedBy how that weight is known
 * @param trained whether every one of them knows electric wire
 * @param wormedOn when they were last wormed
 * @param wormedAtSource whether the breeder wormed them, in writing
 * @param dungCount what the last dung counts said
 * @param countedOn when the last of them was made
 * @param targetWeight live weight at which they should go, kg
 * @param slaughterOn day on which they should go
 * @param booked whether that day is booked
 * @param slaughterAt where they will be slaughtered
 * @param cooler whether a cooler is named for a slaughter at home
 * @param meatFor for whom the meat is
 * @param forecast highest temperature forecast for the day they go, degC
 */
public record Group(
    String name,
    String pen,
    Integer count,
    String breed,
    String crossedWith,
    Sex sex,
    Males males,
    LocalDate castratedOn,
    LocalDate secondVaccine,
    Boolean mated,
    Skin skin,
    Raised raised,
    LocalDate born,
    Double ageOnArrival,
    Source source,
    Double weanedAt,
    CarriedIn carriedIn,
    LocalDate arrives,
    Double arrivalWeight,
    WeighedBy weighedBy,
    Boolean trained,
    LocalDate wormedOn,
    Boolean wormedAtSource,
    DungCount dungCount,
    LocalDate countedOn,
    Double targetWeight,
    LocalDate slaughterOn,
    Boolean booked,
    SlaughterAt slaughterAt,
    Boolean cooler,
    MeatFor meatFor,
    Double forecast) {

  /** Number of pigs; one where it was not said. */
  public int countOrOne() {
    return count == null ? 1 : count;
  }

  /** Males, gilts or both. */
  public enum Sex {
    @JsonProperty("gilts")
    GILTS,
    @JsonProperty("males")
    MALES,
    @JsonProperty("mixed")
    MIXED
  }

  /** State of the males of a group. */
  public enum Males {
    @JsonProperty("castrated")
    CASTRATED,
    @JsonProperty("entire")
    ENTIRE,
    @JsonProperty("one-testis")
    ONE_TESTIS,
    @JsonProperty("hernia")
    HERNIA,
    @JsonProperty("vaccinated")
    VACCINATED
  }

  /** Colour of the skin, as far as sun goes. */
  public enum Skin {
    @JsonProperty("pale")
    PALE,
    @JsonProperty("mixed")
    MIXED,
    @JsonProperty("pigmented")
    PIGMENTED
  }

  /** Where pigs have been so far. */
  public enum Raised {
    @JsonProperty("indoors")
    INDOORS,
    @JsonProperty("outdoors")
    OUTDOORS
  }

  /** Where pigs are bought. */
  public enum Source {
    @JsonProperty("breeder")
    BREEDER,
    @JsonProperty("dealer")
    DEALER,
    @JsonProperty("auction")
    AUCTION,
    @JsonProperty("several")
    SEVERAL;

    /** Whether pigs from there have met those of other farms. */
    public boolean isMixed() {
      return this != BREEDER;
    }
  }

  /** What pigs are brought home in. */
  public enum CarriedIn {
    @JsonProperty("trailer")
    TRAILER,
    @JsonProperty("crate")
    CRATE,
    @JsonProperty("open")
    OPEN,
    @JsonProperty("boot")
    BOOT
  }

  /** How a weight is known. */
  public enum WeighedBy {
    @JsonProperty("scale")
    SCALE,
    @JsonProperty("tape")
    TAPE,
    @JsonProperty("guess")
    GUESS
  }

  /** What dung counts said. */
  public enum DungCount {
    @JsonProperty("clean")
    CLEAN,
    @JsonProperty("positive")
    POSITIVE,
    @JsonProperty("none")
    NONE
  }

  /** Where pigs are slaughtered. */
  public enum SlaughterAt {
    @JsonProperty("abattoir")
    ABATTOIR,
    @JsonProperty("home")
    HOME
  }

  /** For whom the meat is. */
  public enum MeatFor {
    @JsonProperty("own")
    OWN,
    @JsonProperty("given")
    GIVEN,
    @JsonProperty("sold")
    SOLD,
    @JsonProperty("sold-live")
    SOLD_LIVE
  }
}
