import { describe, expect, it } from 'vitest';
import { dueOfRun } from '@/lib/growing/due/due-of-run';
import type { RunFacts } from '@/lib/growing/due/run-facts';
import {
  fermentWindowDefault,
  hotWaterWindowDefault,
  limeWindowDefault,
} from '@/lib/growing/method-defaults';

const at = (time: string) => new Date(`2026-04-01T${time}:00Z`);
const load = (time: string, celsius: number) => ({
  at: at(time),
  place: 'load_middle' as const,
  celsius,
  ph: null,
});

const run = (changes: Partial<RunFacts>): RunFacts => ({
  window: hotWaterWindowDefault,
  startedAt: at('08:00'),
  endedAt: null,
  now: at('08:10'),
  readings: [],
  loadCelsiusAtSpawning: null,
  spawned: false,
  ...changes,
});

describe('a lime soak', () => {
  const soak = (time: string) => dueOfRun(run({ window: limeWindowDefault, now: at(time) }));
  it('is lifted out from six hours on', () =>
    expect(soak('13:25')).toEqual({
      kind: 'lime-soaking',
      urgency: 'now',
      at: at('14:00'),
      from: at('14:00'),
      by: at('20:00'),
    }));
  it('is to be lifted once its least time is over, and late after its most', () => {
    expect(soak('14:00')).toMatchObject({ kind: 'lime-lift' });
    expect(soak('20:01')).toMatchObject({ kind: 'lime-late' });
  });
  it('a day after its most time was forgotten, and its end is asked for', () => {
    const now = new Date('2026-04-02T20:01:00Z');
    expect(dueOfRun(run({ window: limeWindowDefault, now }))).toMatchObject({
      kind: 'unfinished',
      urgency: 'overdue',
    });
  });
});

describe('a fermentation', () => {
  const day = (date: string) =>
    dueOfRun(run({ window: fermentWindowDefault, now: new Date(`${date}T08:00:00Z`) }));
  it('counts its days of five to fifteen', () => {
    expect(day('2026-04-03')).toMatchObject({ kind: 'ferment-under', urgency: 'soon', day: 2 });
    expect(day('2026-04-10')).toMatchObject({
      kind: 'ferment-ready',
      urgency: 'today',
      day: 9,
      minDays: 5,
      maxDays: 15,
    });
    expect(day('2026-04-17')).toMatchObject({ kind: 'ferment-late', urgency: 'overdue' });
  });
});

describe('a hot-water bath', () => {
  const bath = (time: string, ...readings: ReturnType<typeof load>[]) =>
    dueOfRun(run({ now: at(time), readings }));
  it('is to be read when it was not for longer than the window allows', () => {
    expect(bath('08:31')).toMatchObject({ kind: 'heat-unread', minutes: 31 });
    expect(bath('09:31', load('09:00', 70))).toMatchObject({ kind: 'heat-unread', minutes: 31 });
  });
  it('warms up until it has been in the window, and is below it after', () => {
    expect(bath('08:20', load('08:15', 50))).toMatchObject({ kind: 'heat-warming', celsius: 50 });
    expect(bath('09:20', load('09:00', 70), load('09:15', 60))).toMatchObject({
      kind: 'heat-below',
      celsius: 60,
      limitCelsius: 65.6,
    });
  });
  it('is too hot above the window', () =>
    expect(bath('09:05', load('09:00', 90))).toMatchObject({ kind: 'heat-above', limitCelsius: 82.2 }));
  it('says how long it has held and when it is done', () =>
    expect(bath('09:25', load('09:00', 70), load('09:20', 71))).toMatchObject({
      kind: 'heat-holding',
      minutes: 20,
      minMinutes: 60,
      doneAt: at('10:00'),
    }));
  it('asks for a last reading when the time should be over', () =>
    expect(bath('10:01', load('09:00', 70), load('09:30', 71), load('09:45', 70))).toMatchObject({
      kind: 'heat-confirm',
      minutes: 45,
    }));
  it('has done its time once the readings say so', () =>
    expect(bath('10:05', load('09:00', 70), load('09:30', 71), load('10:00', 70))).toMatchObject({
      kind: 'heat-held',
      minutes: 60,
    }));
  it('does not take the temperature of the water for that of the load', () =>
    expect(
      dueOfRun(run({ now: at('09:00'), readings: [{ ...load('08:50', 75), place: 'water' }] })),
    ).toMatchObject({ kind: 'heat-unread' }));
  it('that nobody has read for half a day was forgotten', () =>
    expect(bath('20:01')).toMatchObject({ kind: 'unfinished', urgency: 'overdue' }));
});

describe('a load that is out', () => {
  const out = (changes: Partial<RunFacts>) => dueOfRun(run({ endedAt: at('10:00'), ...changes }));
  it('cools until a reading says otherwise, for half a day', () => {
    expect(out({ now: at('12:00') })).toMatchObject({ kind: 'load-cooling', celsius: null });
    expect(out({ now: at('12:00'), readings: [load('11:50', 41)] })).toMatchObject({
      kind: 'load-cooling',
      celsius: 41,
      limitCelsius: 27,
    });
    expect(out({ now: at('12:00'), readings: [load('11:50', 26)] })).toMatchObject({
      kind: 'load-waiting',
      urgency: 'today',
    });
    expect(out({ now: at('22:01') })).toMatchObject({ kind: 'load-waiting' });
  });
  it('of a lime soak waits for spawn at once', () =>
    expect(out({ now: at('10:30'), window: limeWindowDefault })).toMatchObject({
      kind: 'load-waiting',
      limitCelsius: null,
    }));
  it('is nothing once spawned, or after two weeks', () => {
    expect(out({ now: at('12:00'), spawned: true })).toBeNull();
    expect(out({ now: new Date('2026-04-16T10:00:00Z') })).toBeNull();
  });
});
