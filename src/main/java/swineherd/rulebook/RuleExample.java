package swineherd.rulebook;

import java.util.Map;

/**
 * An example that stands beside a rule and runs as a test.
 *
 * @param base the setup every example of the topic begins with
 * @param fires the answers on top of it, by their path, that make the rule fire; may be null
 * @param silent why it stays silent, and the answers changed for that
 */
public record RuleExample(Object base, Object fires, Map<?, ?> silent) {}
