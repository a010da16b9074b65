/**
 * What rules conclude for other rules: records without reasons, so that equal conclusions are one.
 */
package swineherd.advice.findings;
