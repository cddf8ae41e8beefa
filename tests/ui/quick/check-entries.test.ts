import { describe, expect, it, test } from 'vitest';
import { recordCheckInput } from '@/lib/records/check/check.input';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { checkCheck } from '@/lib/ui/quick/check-check';
import { checkFinding } from '@/lib/ui/quick/check-finding';
import { checkHarvest } from '@/lib/ui/quick/check-harvest';
import type { CheckContext, CheckedEntry } from '@/lib/ui/quick/checked-entry';
import { checkContext, shedBatch, typedForm } from './shed-batch';

const batchId = shedBatch().id;

function harvest(changes: Record<string, string> = {}, context: Partial<CheckContext> = {}): CheckedEntry {
  const usual = {
    'lines.0.batchId': batchId,
    fresh: '1.36',
    fresh__unit: 'kg',
    tare: '',
    tare__unit: 'kg',
    'lines.0.flush': '2',
    weighedOn__quick: '2026-05-20',
  };
  return checkHarvest(typedForm({ ...usual, ...changes }), checkContext(context));
}

function finding(changes: Record<string, string> = {}): CheckedEntry {
  const usual = {
    batchId,
    sign: 'green',
    units: '2',
    action: 'discarded',
    stage: 'cropping',
    foundOn__quick: '2026-05-20',
  };
  return checkFinding(typedForm({ ...usual, ...changes }), checkContext());
}

function fieldsOf(checked: CheckedEntry): string[] {
  return checked.kind === 'wrong' ? checked.problems.map(({ field }) => field) : [];
}

function ready(checked: CheckedEntry) {
  if (checked.kind !== 'ready') throw new Error(JSON.stringify(checked));
  return checked;
}

describe('a quick harvest', () => {
  it('is ready with batch, mass, flush and day, and the server reads the same', () => {
    const { input, summary, after, entryKind } = ready(harvest());
    expect(entryKind).toBe('weighing');
    expect(summary.replaceAll('\u00a0', ' ')).toBe('1.36 kg (3 lb 0 oz) from KTR-7, flush 2, today');
    expect(recordWeighingInput.parse(input)).toMatchObject({
      weighedOn: '2026-05-20',
      fresh: { grams: 1360, entered: { text: '1.36', unit: 'kg' } },
      lines: [{ batchId, flush: 2 }],
      tare: null,
    });
    expect(after).toMatchObject({ lastFlush: 2, lastPickedOn: '2026-05-20', pickedGrams: 10_360 });
  });

  it('subtracts the crate and sends both as typed', () => {
    const { input, summary } = ready(harvest({ tare: '120 g' }));
    expect(summary).toContain('1.24');
    expect(recordWeighingInput.parse(input)).toMatchObject({
      fresh: { grams: 1240 },
      tare: { text: '120 g', unit: 'kg' },
    });
  });

  it('sends a mass with one reading for everybody, though its writer has settled it', () => {
    const { input } = ready(harvest({ fresh: '1.250' }));
    expect(recordWeighingInput.parse(input).fresh.grams).toBe(1250);
    const spanish = checkContext();
    const words = { ...spanish.words, form: { ...spanish.words.form, locale: 'es-ES' } };
    const comma = ready(harvest({ fresh: '1,250' }, { words }));
    expect(recordWeighingInput.parse(comma.input).fresh.grams).toBe(1250);
  });

  it.each([
    ['an empty mass', { fresh: '' }, ['fresh']],
    ['a mass with two readings', { fresh: '1,250' }, ['fresh']],
    ['no number', { fresh: 'plenty' }, ['fresh']],
    ['zero', { fresh: '0' }, ['fresh']],
    ['a crate as heavy as the whole', { tare: '1.36' }, ['tare']],
    ['a crate that is no mass', { tare: 'crate' }, ['tare']],
    ['no batch', { 'lines.0.batchId': '' }, ['lines.0.batchId']],
    ['nothing at all', { 'lines.0.batchId': '', fresh: '' }, ['lines.0.batchId', 'fresh']],
    ['a flush that is none', { 'lines.0.flush': 'first' }, ['lines.0.flush']],
    ['tomorrow', { weighedOn__quick: '2026-05-21' }, ['weighedOn']],
    ['a day before inoculation', { weighedOn__quick: '2026-03-31' }, ['weighedOn']],
    [
      'no real date',
      { weighedOn__quick: 'other', weighedOn__day: '31', weighedOn__month: '4' },
      ['weighedOn'],
    ],
    ['more than twenty bags can ever give', { fresh: '3000' }, ['fresh']],
  ])('with %s says which field', (_what, changes, fields) => {
    expect(fieldsOf(harvest(changes))).toEqual(fields);
  });

  it('far above the dry mass is asked about, and ready once that is answered', () => {
    const asked = harvest({ fresh: '95' });
    expect(asked).toMatchObject({
      kind: 'ask',
      questions: [{ code: 'unit-yield-high' }, { code: 'be-high' }],
    });
    expect(harvest({ fresh: '95' }, { confirmed: ['unit-yield-high', 'be-high'] }).kind).toBe('ready');
  });

  it('of an earlier day leaves the last picking as it was', () => {
    const { after } = ready(harvest({ weighedOn__quick: '2026-05-02', 'lines.0.flush': '1' }));
    expect(after).toMatchObject({ lastFlush: 1, lastPickedOn: '2026-05-09' });
  });
});

describe('a quick contamination', () => {
  it('is ready with sign, units, action, stage and day, and the server reads the same', () => {
    const { input, after, summary } = ready(finding({ unitNumbers: '3, 7' }));
    expect(recordFindingInput.parse(input)).toMatchObject({ units: 2, sign: 'green', unitNumbers: [3, 7] });
    expect(after.liveUnits).toBe(16);
    expect(summary).toBe('2 bags of KTR-7: green, today');
  });

  it('leaves isolated units standing', () => {
    expect(ready(finding({ action: 'isolated' })).after.liveUnits).toBe(18);
  });

  it.each([
    ['no sign', { sign: '' }, ['sign']],
    ['no units', { units: '' }, ['units']],
    ['half a unit', { units: '0,5' }, ['units']],
    ['more units than stand', { units: '19' }, ['units']],
    ['nothing done', { action: '' }, ['action']],
    ['no stage', { stage: '' }, ['stage']],
  ])('with %s says which field', (_what, changes, fields) => {
    expect(fieldsOf(finding(changes))).toEqual(fields);
  });
});

describe('a quick check', () => {
  const check = (kind: string) =>
    checkCheck(typedForm({ batchId, kind, checkedOn__quick: '2026-05-19' }), checkContext());

  it('of pins or colonisation is a check, all clean is a look', () => {
    const pins = ready(check('pins_seen'));
    expect(pins.entryKind).toBe('check');
    expect(recordCheckInput.parse(pins.input)).toMatchObject({ kind: 'pins_seen', checkedOn: '2026-05-19' });
    const clean = ready(check('all_clean'));
    expect(clean.entryKind).toBe('look');
    expect(recordLookInput.parse(clean.input)).toMatchObject({ lookedOn: '2026-05-19' });
    expect(clean.summary).toBe('KTR-7: Looked at all units: none newly contaminated, yesterday');
  });

  test('with nothing seen says so', () => {
    expect(fieldsOf(check(''))).toEqual(['kind']);
  });
});
