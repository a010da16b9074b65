package swineherd.advice.findings;

/** Pigs may meet a winter of which too little is known to get ready for it. */
public record WinterUnknown() {}
