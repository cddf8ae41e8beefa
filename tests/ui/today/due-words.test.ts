import { createTranslator } from 'next-intl';
import { describe, expect, it } from 'vitest';
import type { BatchDueKind } from '@/lib/growing/due/batch-facts';
import type { RunDue } from '@/lib/growing/due/run-facts';
import type { BatchLine, RunLine } from '@/lib/records/today/due-line';
import type { DynamicWords } from '@/lib/ui/i18n/dynamic-words';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { dueWords } from '@/lib/ui/today/due-words';
import type { Reader } from '@/lib/ui/today/reader';

const now = new Date('2026-05-20T19:05:00Z');
const at = (time: string) => new Date(`2026-05-20T${time}:00Z`);

const reader = (language: 'en' | 'es'): Reader => ({
  words: createTranslator({
    locale: language,
    messages: loadMessages(language),
    onError: (error) => {
      throw error;
    },
  }) as unknown as DynamicWords,
  locale: language === 'en' ? 'en-US' : 'es-MX',
  language,
  temperatureUnit: 'celsius',
  now,
});
const plain = (text: string) => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ');

const place = {
  siteId: 's',
  siteName: 'Mill Lane Garden',
  timeZone: 'America/New_York',
  today: '2026-05-20',
} as const;
const run = (due: RunDue): RunLine => ({
  ...place,
  ...{ of: 'run', urgency: due.urgency, runId: 'r', code: 'T-1', method: 'cold_lime_soak', due },
});
const batch = (kind: BatchDueKind, changes: Partial<BatchLine> = {}): BatchLine => ({
  ...place,
  ...{ of: 'batch', urgency: 'today', batchId: 'b', code: 'KTR-7', container: 'bag', dayNumber: 22 },
  ...{ speciesEn: 'Oyster mushroom', speciesEs: 'Seta ostra', enteredOn: '2026-05-01' },
  due: { kind, from: '2026-05-19', to: '2026-05-24', own: { from: 21, to: 26, median: 23, batches: 6 } },
  ...changes,
});

const spell = { from: at('20:40'), by: at('23:40') };
const days = { day: 9, minDays: 5, maxDays: 15, ...spell };
const hold = { urgency: 'now', at: at('19:40'), minutes: 41, minMinutes: 60, doneAt: at('19:40') } as const;
const load = { at: at('14:00'), outAt: at('14:00'), limitCelsius: 27 } as const;

const everyRun: readonly RunDue[] = [
  { kind: 'lime-soaking', urgency: 'now', at: at('20:40'), ...spell },
  { kind: 'lime-lift', urgency: 'now', at: at('23:40'), ...spell },
  { kind: 'lime-late', urgency: 'now', at: at('18:40'), ...spell },
  { kind: 'ferment-under', urgency: 'soon', at: at('20:40'), ...days },
  { kind: 'ferment-ready', urgency: 'today', at: at('20:40'), ...days },
  { kind: 'ferment-late', urgency: 'overdue', at: at('18:40'), ...days },
  { kind: 'heat-unread', urgency: 'now', at: at('18:00'), minutes: 65 },
  { kind: 'heat-warming', urgency: 'now', at: at('19:00'), celsius: 40, limitCelsius: 65.6 },
  { kind: 'heat-below', urgency: 'now', at: at('19:00'), celsius: 58, limitCelsius: 65.6 },
  { kind: 'heat-above', urgency: 'now', at: at('19:00'), celsius: 90, limitCelsius: 82.2 },
  { kind: 'heat-holding', ...hold },
  { kind: 'heat-confirm', ...hold },
  { kind: 'heat-held', ...hold },
  { kind: 'unfinished', urgency: 'overdue', at: at('02:00') },
  { kind: 'load-cooling', urgency: 'now', celsius: 41, ...load },
  { kind: 'load-waiting', urgency: 'today', celsius: null, ...load },
];
const everyBatch: readonly BatchDueKind[] = [
  'first-look',
  'window-look',
  'colonised',
  'pins',
  'first-harvest',
  'next-flush',
  'quiet',
  'none-left',
];

describe('a line of what is due', () => {
  it.each(['en', 'es'] as const)('has words and an address for every kind in %s', (language) => {
    for (const line of [...everyRun.map(run), ...everyBatch.map((kind) => batch(kind))]) {
      const { text, why, href } = dueWords(line, reader(language));
      expect(text).not.toMatch(/today\.|undefined|\{/);
      expect(why).not.toMatch(/today\.|undefined|\{/);
      expect(href).toMatch(/^\/(treatments|quick|batches)\//);
    }
  });

  it('of a lime soak says when to lift it out, and in how long', () => {
    const line = dueWords(
      run({ kind: 'lime-soaking', urgency: 'now', at: at('20:40'), ...spell }),
      reader('en'),
    );
    expect(plain(line.text)).toBe('Lift T-1 out at 4:40 PM');
    expect(plain(line.left)).toBe('in 1 h 35 min');
    expect(line.href).toBe('/treatments/r');
  });

  it("says that the days are the site's own", () => {
    const line = dueWords(batch('first-harvest'), reader('en'));
    expect(plain(line.why)).toBe(
      'Oyster mushroom, bag, day 22 · expected 19 May to 24 May · the last 6 at this site took 21 to 26 days',
    );
    expect(line.href).toBe('/quick/harvest?batch=b');
  });

  it('keeps both years where its days end in another year, so that nobody reads them backwards', () => {
    const logs = batch('first-harvest', {
      due: { kind: 'first-harvest', from: '2026-05-24', to: '2027-05-19', own: null },
    });
    expect(plain(dueWords(logs, reader('en')).why)).toMatch(/expected 24 May 2026 to 19 May 2027$/);
    expect(plain(dueWords(logs, reader('es')).why)).toMatch(/se espera del 24 may 2026 al 19 may 2027$/);
  });

  it('names a span of one day once, in dates and in days taken', () => {
    const own = { from: 18, to: 18, median: 18, batches: 5 };
    const sure = batch('pins', { due: { kind: 'pins', from: '2026-05-30', to: '2026-05-30', own } });
    expect(plain(dueWords(sure, reader('en')).why)).toMatch(
      /expected 30 May · the last 5 at this site took 18 days$/,
    );
    expect(plain(dueWords(sure, reader('es')).why)).toMatch(
      /se esperan el 30 may · los últimos 5 de este sitio tardaron 18 días$/,
    );
  });

  it('counts the days by which it is late', () => {
    const late = batch('pins', {
      urgency: 'overdue',
      due: { kind: 'pins', from: '2026-05-10', to: '2026-05-17', own: null },
    });
    expect(dueWords(late, reader('en')).left).toBe('3 days late');
    expect(dueWords(late, reader('es')).left).toBe('3 días de atraso');
  });

  it.each(['first-look', 'window-look'] as const)(
    'names the day by which to look, from which it counts as late (%s)',
    (kind) => {
      const line = batch(kind, {
        urgency: 'overdue',
        due: { kind, from: '2026-05-11', to: '2026-05-17', own: null },
      });
      expect(plain(dueWords(line, reader('en')).why)).toContain('to be looked at by 17 May');
      expect(plain(dueWords(line, reader('es')).why)).toContain('a más tardar el 17 may');
      expect(dueWords(line, reader('en')).left).toBe('3 days late');
    },
  );

  it('of a load that waits leads to a batch with its run chosen', () =>
    expect(
      dueWords(run({ kind: 'load-waiting', urgency: 'today', celsius: null, ...load }), reader('en')).href,
    ).toBe('/batches/new?siteId=s&components.0.treatment=run:r'));
});
