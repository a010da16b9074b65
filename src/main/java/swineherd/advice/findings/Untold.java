package swineherd.advice.findings;

import swineherd.rulebook.Referral;

/**
 * A sign that no other item tells.
 *
 * @param pigs the group that shows it
 * @param sign key in the table signs
 * @param level how soon somebody must be called for it
 */
public record Untold(String pigs, String sign, Referral level) {}
