package swineherd.advice.findings;

/**
 * A sign that no other item tells, beside something for which somebody is called sooner.
 *
 * @param pigs the group that shows it
 * @param sign key in the table signs
 */
public record Beside(String pigs, String sign) {}
