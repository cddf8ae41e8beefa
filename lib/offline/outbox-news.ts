const channelName = 'pinset-outbox';

/** Tells every page on this phone, this one included, that something about an entry has changed. */
export function outboxNews() {
  const listeners = new Set<(entryId: string) => void>();
  const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(channelName);
  const tellHere = (entryId: string) => {
    for (const listener of [...listeners]) listener(entryId);
  };
  if (channel)
    channel.onmessage = ({ data }: MessageEvent<unknown>) => {
      if (typeof data === 'string') tellHere(data);
    };
  return {
    tell: (entryId: string) => {
      tellHere(entryId);
      channel?.postMessage(entryId);
    },
    /** Answers how to stop listening. */
    listen: (listener: (entryId: string) => void): (() => void) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
