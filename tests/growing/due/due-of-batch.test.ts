import { describe, expect, it } from 'vitest';
import { dueOfBatch } from '@/lib/growing/due/due-of-batch';
import { expectColonised } from '@/lib/growing/due/expect-colonised';
import { expectFirstHarvest } from '@/lib/growing/due/expect-first-harvest';
import { expectPins } from '@/lib/growing/due/expect-pins';
import { firstLook } from '@/lib/growing/due/first-look';
import { goneQuiet } from '@/lib/growing/due/gone-quiet';
import { nextFlush } from '@/lib/growing/due/next-flush';
import { noneLeft } from '@/lib/growing/due/none-left';
import { windowLook } from '@/lib/growing/due/window-look';
import { aBatch, someLogs } from './a-batch';

const own = { from: 21, to: 26, median: 23, batches: 6 };

describe('the first look for contamination', () => {
  it('is due on the tenth day and overdue on the fifteenth', () => {
    expect(firstLook(aBatch())).toEqual({
      kind: 'first-look',
      from: '2026-04-11',
      to: '2026-04-15',
      own: null,
    });
  });
  it('is done once anybody has looked', () =>
    expect(firstLook(aBatch({ inspectedOn: '2026-04-03' }))).toBeNull());
  it('is not asked of logs, nor of a second life', () => {
    expect(firstLook(someLogs())).toBeNull();
    expect(firstLook(aBatch({ secondLife: true }))).toBeNull();
  });
  it('gives way to the look that decides where a batch is judged as early', () =>
    expect(firstLook(aBatch({ judgedOn: '2026-04-11' }))).toBeNull());
});

describe('the look that decides', () => {
  it('is due from the day the batch is judged, for a week', () =>
    expect(windowLook(aBatch())).toMatchObject({ from: '2026-04-29', to: '2026-05-05' }));
  it('is not settled by a look on the day before', () => {
    expect(windowLook(aBatch({ inspectedOn: '2026-04-28' }))).not.toBeNull();
    expect(windowLook(aBatch({ inspectedOn: '2026-04-29' }))).toBeNull();
  });
  it('does not exist for a batch without a window', () =>
    expect(windowLook(aBatch({ judgedOn: null }))).toBeNull());
});

describe('full colonisation', () => {
  it('is expected by the days of the network', () =>
    expect(expectColonised(aBatch())).toMatchObject({ from: '2026-04-13', to: '2026-04-26', own: null }));
  it("is expected by the site's own batches where there are enough", () =>
    expect(expectColonised(aBatch({ own: { colonised: own, firstHarvest: null } }))).toMatchObject({
      from: '2026-04-22',
      to: '2026-04-27',
      own,
    }));
  it.each([{ colonisedOn: '2026-04-20' }, { pinsOn: '2026-04-20' }, { pickedOn: '2026-04-30' }])(
    'is no longer asked after %o',
    (seen) => expect(expectColonised(aBatch(seen))).toBeNull(),
  );
});

describe('pins', () => {
  it('are looked for from day 16 to day 32', () =>
    expect(expectPins(aBatch())).toMatchObject({ from: '2026-04-17', to: '2026-05-03' }));
  it('are not looked for where the species has no such days', () =>
    expect(expectPins(someLogs())).toBeNull());
});

describe('the first harvest', () => {
  it('is expected three to seven days after pins were seen', () =>
    expect(expectFirstHarvest(aBatch({ pinsOn: '2026-04-18' }))).toMatchObject({
      from: '2026-04-21',
      to: '2026-04-25',
    }));
  it("goes by the site's own batches before the network's days", () => {
    expect(expectFirstHarvest(aBatch())).toMatchObject({ from: '2026-04-22', to: '2026-05-11' });
    expect(expectFirstHarvest(aBatch({ own: { colonised: null, firstHarvest: own } }))).toMatchObject({
      from: '2026-04-22',
      to: '2026-04-27',
      own,
    });
  });
  it('of a second life is expected in two to six weeks, whatever the species takes', () =>
    expect(expectFirstHarvest(aBatch({ secondLife: true }))).toMatchObject({
      from: '2026-04-15',
      to: '2026-05-13',
    }));
  it('of logs keeps its own calendar though pins were seen', () =>
    expect(expectFirstHarvest(someLogs({ pinsOn: '2025-06-01' }))).toMatchObject({
      from: '2025-09-28',
      to: '2026-09-23',
    }));
});

describe('the next flush', () => {
  it('is expected one to two weeks after the last picking', () =>
    expect(nextFlush(aBatch({ pickedOn: '2026-05-01' }))).toMatchObject({
      from: '2026-05-08',
      to: '2026-05-15',
    }));
  it('is not announced for logs', () => expect(nextFlush(someLogs({ pickedOn: '2026-05-01' }))).toBeNull());
});

describe('a quiet batch', () => {
  const late = { today: '2026-06-20', enteredOn: '2026-05-01', pickedOn: '2026-05-01' };
  it('is asked about after thirty days without an entry', () => {
    expect(goneQuiet(aBatch(late), null)).toMatchObject({ kind: 'quiet', from: '2026-05-31' });
    expect(goneQuiet(aBatch({ ...late, today: '2026-05-30' }), null)).toBeNull();
  });
  it('is not asked about while its first harvest may still come', () => {
    const batch = aBatch({ today: '2026-05-20' });
    expect(goneQuiet(batch, expectFirstHarvest(batch))).toBeNull();
    const later = aBatch({ today: '2026-05-26' });
    expect(goneQuiet(later, expectFirstHarvest(later))).not.toBeNull();
  });
  it('of logs is one of a whole year', () => {
    const rested = { enteredOn: '2025-10-01', pickedOn: '2025-10-01' };
    expect(goneQuiet(someLogs({ ...rested, today: '2026-09-30' }), null)).toBeNull();
    expect(goneQuiet(someLogs({ ...rested, today: '2026-10-01' }), null)).not.toBeNull();
  });
});

describe('what is due of a batch', () => {
  const kinds = (changes: Parameters<typeof aBatch>[0]) =>
    dueOfBatch(aBatch(changes)).map(({ kind }) => kind);

  it('is at most one look and one step of its growth', () =>
    expect(kinds({ today: '2026-04-12' })).toEqual(['first-look', 'colonised']));
  it('is the furthest step whose days have come', () => {
    expect(kinds({ today: '2026-04-18' })).toEqual(['first-look', 'pins']);
    expect(kinds({ today: '2026-04-23' })).toEqual(['first-look', 'first-harvest']);
  });
  it('is the look that decides once the batch is judged', () =>
    expect(kinds({ today: '2026-04-30' })).toEqual(['window-look', 'first-harvest']));
  it('is the next flush after a picking, and to close it when nothing came', () => {
    const picked = { pickedOn: '2026-05-01', inspectedOn: '2026-05-01', enteredOn: '2026-05-01' };
    expect(kinds({ ...picked, today: '2026-05-09' })).toEqual(['next-flush']);
    expect(kinds({ ...picked, today: '2026-06-01' })).toEqual(['quiet']);
  });
  it('is only to close it once it is quiet, though nobody looked', () =>
    expect(kinds({ today: '2026-09-01' })).toEqual(['quiet']));
  it('is to close it when no unit is left, and nothing else', () => {
    expect(noneLeft(aBatch())).toBeNull();
    expect(kinds({ liveUnits: 0 })).toEqual(['none-left']);
  });
});
