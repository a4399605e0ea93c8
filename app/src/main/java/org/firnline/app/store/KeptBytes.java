package org.firnline.app.store;

/**
 * Bytes kept in the laboratory's folder.
 *
 * @param sha256 their SHA-256, 64 lower-case hexadecimal digits
 * @param size_bytes how many
 */
public record KeptBytes(String sha256, long size_bytes) {}
