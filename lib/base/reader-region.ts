let current: string | undefined;

/**
 * Runs `read` while the fields of a form know the region in which its reader writes numbers. Parsing never waits, so
 * no other request can come between; the region before is put back in any case.
 */
export function readInRegion<T>(region: string | undefined, read: () => T): T {
  const before = current;
  current = region;
  try {
    return read();
  } finally {
    current = before;
  }
}

/** BCP 47 tag of the reader whose form is being read, for instance 'es-ES'; undefined when nobody is known. */
export function readerRegion(): string | undefined {
  return current;
}
