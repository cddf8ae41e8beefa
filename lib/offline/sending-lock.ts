let busyHere = false;

/** Runs `work` unless a page on this phone is doing so already; answers undefined then. */
export async function withSendingLock<T>(work: () => Promise<T>): Promise<T | undefined> {
  if (typeof navigator !== 'undefined' && 'locks' in navigator)
    return navigator.locks.request('pinset-outbox', { ifAvailable: true }, async (lock) =>
      lock === null ? undefined : await work(),
    );
  // Browsers without locks: one round per page; that two pages send the same entry changes nothing at the server.
  if (busyHere) return undefined;
  busyHere = true;
  try {
    return await work();
  } finally {
    busyHere = false;
  }
}
