package swineherd.outlook;

import java.util.List;

/**
 * A figure that could not be had from what was said, although the answers were there: they lie
 * outside what its source ever measured.
 *
 * @param figure what was to be worked out
 * @param about the group or pen
 * @param why the limits that were passed, in words
 */
public record NotWorkedOut(String figure, String about, String why, List<String> grounds)
    implements Outlook {}
