import type { Reply } from '@/lib/offline/after-reply';
import type { Entry } from '@/lib/offline/entry';
import type { Transport } from '@/lib/offline/send-entries';

/** How often each thing goes wrong, each in [0, 1]; what is left over goes well. */
export type Weather = {
  readonly dropRequest: number;
  readonly dropAnswer: number;
  readonly duplicate: number;
  /** Delivered once more some time after the answer. */
  readonly lateCopy: number;
  readonly falseAnswer: number;
  readonly mostDelay: number;
};

export const storm: Weather = {
  dropRequest: 0.1,
  dropAnswer: 0.12,
  duplicate: 0.1,
  lateCopy: 0.05,
  falseAnswer: 0.12,
  mostDelay: 30,
};
export const calm: Weather = {
  ...{ dropRequest: 0, dropAnswer: 0, duplicate: 0, lateCopy: 0, falseAnswer: 0, mostDelay: 0 },
};

const falseStatuses = [401, 409, 413, 422, 429, 500, 502];
const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));
const lost: Reply = { kind: 'lost' };

/**
 * A network between phones and server that drops, delays, doubles, reorders and makes answers up, by chance from
 * `random`. `settled` waits for the copies that are still under way.
 */
export function badNetwork(port: () => number | undefined, weather: () => Weather, random: () => number) {
  const underWay = new Set<Promise<unknown>>();

  async function deliver(entry: Entry): Promise<Reply> {
    const to = port();
    if (to === undefined) return lost;
    try {
      const response = await fetch(`http://127.0.0.1:${to}/api/entries`, {
        method: 'POST',
        body: JSON.stringify(entry),
        headers: {
          'content-type': 'application/json',
          'idempotency-key': entry.key,
          'sec-fetch-site': 'same-origin',
          'x-test-person': entry.personId,
        },
        signal: AbortSignal.timeout(10_000),
      });
      const text = await response.text();
      return {
        kind: 'answered',
        status: response.status,
        retryAfter: response.headers.get('retry-after'),
        body: text.startsWith('{') ? JSON.parse(text) : null,
      };
    } catch {
      return lost;
    }
  }

  function send(entry: Entry): Promise<Reply> {
    const sending = deliver(entry);
    underWay.add(sending);
    void sending.finally(() => underWay.delete(sending));
    return sending;
  }

  const transport: Transport = async (entry) => {
    const now = weather();
    await pause(random() * now.mostDelay);
    if (random() < now.dropRequest) return lost;
    if (random() < now.falseAnswer) {
      const status = falseStatuses[Math.floor(random() * falseStatuses.length)] ?? 500;
      return { kind: 'answered', status, retryAfter: status === 429 ? '1' : null, body: null };
    }
    const copy = random() < now.duplicate ? send(entry) : undefined;
    const reply = await send(entry);
    await copy;
    if (random() < now.lateCopy) {
      const again = pause(random() * 400).then(() => send(entry));
      underWay.add(again);
      void again.finally(() => underWay.delete(again));
    }
    await pause(random() * now.mostDelay);
    return random() < now.dropAnswer ? lost : reply;
  };
  const settled = async () => {
    while (underWay.size > 0) await Promise.allSettled([...underWay]);
  };
  return { transport, settled };
}
