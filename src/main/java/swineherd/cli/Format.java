package swineherd.cli;

/** How a command prints its answer. */
enum Format {
  text,
  json,
  markdown
}
