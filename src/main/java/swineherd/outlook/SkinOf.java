package swineherd.outlook;

import swineherd.figures.Breed;
import swineherd.figures.Sun;
import swineherd.setup.Group;

/** The skin of a group, which decides how it stands the sun. */
final class SkinOf {
  private SkinOf() {}

  /** As said, or usual for the breed (of a cross the paler), or pale if not known. */
  static Sun.Skin group(Group group) {
    if (group.skin() != null) {
      return Sun.Skin.valueOf(group.skin().name());
    }
    if (group.breed() == null) {
      return Sun.Skin.PALE;
    }
    Sun.Skin skin = usual(group.breed());
    return group.crossedWith() == null ? skin : skin.paler(usual(group.crossedWith()));
  }

  /** In words for the keeper. */
  static String words(Group group) {
    return group.skin() == null && group.breed() == null
        ? "not known and taken as pale"
        : group(group).words();
  }

  /** The answers on which it rests. */
  static Grounds grounds(String path, Group group) {
    if (group.skin() != null) {
      return Grounds.of(path, "skin");
    }
    Grounds grounds = Grounds.of(path, "breed");
    return group.crossedWith() == null ? grounds : grounds.and(path, "crossedWith");
  }

  private static Sun.Skin usual(String breed) {
    return Sun.Skin.valueOf(Breed.named(breed).skin().name());
  }
}
