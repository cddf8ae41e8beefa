import { describe, expect, it } from 'vitest';
import { oneAtATime } from '@/lib/analysis/fitted/one-at-a-time';

/** Jobs that end when told to, and what happened to them in order. */
function jobs() {
  const events: string[] = [];
  const ends = new Map<string, { done: () => void; fail: () => void }>();
  const job = (name: string) => () =>
    new Promise<string>((resolve, reject) => {
      events.push(`${name} starts`);
      ends.set(name, {
        done: () => {
          events.push(`${name} ends`);
          resolve(name);
        },
        fail: () => reject(new Error(name)),
      });
    });
  const end = (name: string, how: 'done' | 'fail' = 'done') => ends.get(name)?.[how]();
  return { events, job, end };
}

/** Long enough for every promise that is already settled to have been heard of. */
const settled = () => new Promise((resolve) => setImmediate(resolve));

describe('the fits of a network', () => {
  it('run one after another, whatever the order in which they could end', async () => {
    const { events, job, end } = jobs();
    const first = oneAtATime('one', 'a', job('a'));
    const second = oneAtATime('one', 'b', job('b'));
    await settled();
    expect(events).toEqual(['a starts']);
    end('a');
    await first;
    await settled();
    expect(events).toEqual(['a starts', 'a ends', 'b starts']);
    end('b');
    expect(await second).toBe('b');
  });

  it('are joined by whoever asks the same while they are waiting or under way, and made anew for whoever asks after', async () => {
    const { events, job, end } = jobs();
    const first = oneAtATime('two', 'a', job('a'));
    const waiting = oneAtATime('two', 'b', job('b'));
    const again = [oneAtATime('two', 'a', job('a2')), oneAtATime('two', 'b', job('b2'))];
    await settled();
    end('a');
    await first;
    await settled();
    end('b');
    expect(await Promise.all([waiting, ...again])).toEqual(['b', 'a', 'b']);
    expect(events.filter((event) => event.endsWith('starts'))).toEqual(['a starts', 'b starts']);
    const later = oneAtATime('two', 'a', job('a3'));
    await settled();
    end('a3');
    expect(await later).toBe('a3');
  });

  it('do not wait for another network, and are not held up by one that failed', async () => {
    const { events, job, end } = jobs();
    const broken = oneAtATime('three', 'a', job('a'));
    const next = oneAtATime('three', 'b', job('b'));
    const elsewhere = oneAtATime('four', 'a', job('c'));
    await settled();
    expect(events).toEqual(['a starts', 'c starts']);
    end('a', 'fail');
    await expect(broken).rejects.toThrow('a');
    await settled();
    end('b');
    end('c');
    expect(await Promise.all([next, elsewhere])).toEqual(['b', 'c']);
  });
});
