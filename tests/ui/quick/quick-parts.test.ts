import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseMassEntry } from '@/lib/growing/mass-entry';
import { fillPlaces } from '@/lib/ui/quick/fill-places';
import { proposedFlush } from '@/lib/ui/quick/flush-box';
import { findBatches, likelyBatches } from '@/lib/ui/quick/likely-batches';
import { readNetMass, sentMass, settledMass } from '@/lib/ui/quick/read-net-mass';
import { shedBatch } from './shed-batch';

const today = '2026-05-20';
const batches = [
  shedBatch({ id: 'old', code: 'AAA-3', lastPickedOn: '2026-03-01', inoculatedOn: '2026-01-01' }),
  shedBatch({ id: 'young', code: 'CCC-3', lastPickedOn: null, pinsSeen: false, colonised: false }),
  shedBatch({ id: 'picked', code: 'EEE-3', lastPickedOn: '2026-05-18' }),
  shedBatch({ id: 'due', code: 'FFF-3', lastPickedOn: null, speciesEs: 'Champiñón', speciesEn: 'Button' }),
];
const due = [
  { text: 'Second flush', place: 'Mill Lane', when: 'today', href: '/quick/harvest?batch=due', dueAt: today },
];
const codes = (list: readonly { code: string }[]) => list.map(({ code }) => code);

describe('the short list of batches', () => {
  it('begins with what is due for a harvest, then what was lately picked', () => {
    expect(codes(likelyBatches(batches, 'harvest', due, today)).slice(0, 2)).toEqual(['FFF-3', 'EEE-3']);
  });

  it('puts batches that have not begun to crop first for contamination', () => {
    expect(codes(likelyBatches(batches, 'contamination', [], today))[0]).toBe('CCC-3');
  });

  it('loses and doubles none', () => {
    for (const kind of ['harvest', 'contamination', 'check'] as const)
      expect(codes(likelyBatches(batches, kind, due, today)).sort()).toEqual(codes(batches).sort());
  });

  it.each([
    ['eee', ['EEE-3']],
    ['EEE 3', ['EEE-3']],
    ['champinon', ['FFF-3']],
    ['-3', ['AAA-3', 'CCC-3', 'EEE-3', 'FFF-3']],
    ['xyz', []],
    [' ', []],
  ])('is searched for %j by code, species or site, however it is typed', (typed, found) => {
    expect(codes(findBatches(batches, typed))).toEqual(found);
  });
});

describe('the proposed flush', () => {
  it('goes on within a week and is the next one after', () => {
    const batch = shedBatch({ lastPickedOn: '2026-05-09', lastFlush: 1 });
    expect(proposedFlush(batch, '2026-05-12')).toBe(1);
    expect(proposedFlush(batch, '2026-05-16')).toBe(2);
    expect(proposedFlush(shedBatch({ ...batch, flushGapDays: 10 }), '2026-05-16')).toBe(1);
  });

  it('is the first for a batch never picked, and unknown without a batch', () => {
    expect(proposedFlush(shedBatch({ lastPickedOn: null, lastFlush: null }), today)).toBe(1);
    expect(proposedFlush(undefined, today)).toBeUndefined();
  });
});

describe('the mass on the scale', () => {
  const kg = (text: string) => ({ text, unit: 'kg' });

  it.each([
    ['1.36', '0.12', 1240],
    ['+0001.360 kg\r\n', '', 1360],
    ['3 lb', '4 oz', 1248],
  ])('%j less a crate of %j is %d g', (fresh, tare, net) => {
    expect(readNetMass(kg(fresh), kg(tare), 'en-US')).toMatchObject({ kind: 'net', net });
  });

  it('with two readings is never taken, and each of its buttons has one', () => {
    const mass = readNetMass(kg('1,250'), kg(''), 'en-US');
    expect(mass).toEqual({ kind: 'two-readings', readings: [1250, 1_250_000] });
    expect(settledMass(1250, 'kg', 'en-US')).toEqual({ text: '1.25', unit: 'kg' });
    expect(settledMass(1_250_000, 'kg', 'en-US')).toEqual({ text: '1250', unit: 'kg' });
    expect(settledMass(1255, 'kg', 'es-ES')).toEqual({ text: '1255 g', unit: 'kg' });
  });

  it('is sent so that every reader, whatever their decimal sign, reads the same grams', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 99_999_999 }),
        fc.constantFrom('en-US', 'es-ES', 'es-MX', 'es-US'),
        fc.constantFrom('kg', 'lb'),
        (grams, locale, unit) => {
          const settled = settledMass(grams, unit, locale);
          const sent = sentMass(settled, grams, locale);
          for (const sign of ['.', ',', null] as const)
            expect(parseMassEntry(sent.text, unit, sign)).toMatchObject({ kind: 'mass', grams });
        },
      ),
    );
  });
});

describe('the places of a sentence', () => {
  it('are filled by name, and unknown ones stay to be seen', () => {
    expect(fillPlaces('{mass} from {code}', { mass: '1 kg', code: 'KTR-7' })).toBe('1 kg from KTR-7');
    expect(fillPlaces('{toString} {code}', { code: '{mass}' })).toBe('{toString} {mass}');
  });
});
