import { describe, expect, it } from 'vitest';
import { guessLayout } from '@/lib/intake/conditions/guess-layout';
import { readMoment } from '@/lib/intake/conditions/read-moment';
import { readTable } from '@/lib/intake/conditions/read-table';
import { readValue } from '@/lib/intake/conditions/read-value';

const zone = 'America/New_York';
const now = new Date('2026-06-01T12:00:00Z');

const commas = `Tent 2 logger
Serial,00017

No.,Date-Time (EDT),"Temperature, °F",RH (%),Dew point,CO2 ppm
1,05/13/2026 08:00:00 AM,68.0,91.5,65,812
2,05/13/2026 01:30:00 PM,70.7,--,65,1 204
`;
const semicolons = `Fecha;Hora;Temperatura;Humedad
04/05/2026;08:00;18,5;92,1
04/05/2026;08:30;18,9;91,7
05/05/2026;08:00;17,0;90,0`;
const tabs = '2026-05-04T08:00:00-04:00\t18.5\t92\n2026-05-04T08:30:00-04:00\t18.6\t91\n';

const read = (text: string, order: 'dmy' | 'mdy' = 'mdy') => {
  const layout = guessLayout(text, order);
  return { layout, ...readTable(text, layout, zone, now) };
};

describe('a table with commas, quotes, lines before it and Fahrenheit', () => {
  const { layout, readings, problems, empty } = read(commas);
  it('is seen as such', () =>
    expect(layout).toEqual({
      delimiter: 'comma',
      decimal: 'point',
      dateOrder: 'mdy',
      temperatureUnit: 'fahrenheit',
      linesBefore: 4,
      columns: ['skip', 'moment', 'temperature', 'humidity', 'skip', 'carbon_dioxide'],
    }));
  it('gives Celsius at the instants of the site, and nothing for a sensor that gave nothing', () => {
    expect(problems).toEqual([]);
    expect(empty).toBe(1);
    expect(readings).toEqual([
      { at: new Date('2026-05-13T12:00:00Z'), measure: 'temperature', value: 20 },
      { at: new Date('2026-05-13T12:00:00Z'), measure: 'humidity', value: 91.5 },
      { at: new Date('2026-05-13T12:00:00Z'), measure: 'carbon_dioxide', value: 812 },
      { at: new Date('2026-05-13T17:30:00Z'), measure: 'temperature', value: 21.5 },
      { at: new Date('2026-05-13T17:30:00Z'), measure: 'carbon_dioxide', value: 1204 },
    ]);
  });
});

describe('a table with semicolons, decimal commas, date and time apart', () => {
  const { layout, readings } = read(semicolons);
  it('has its days before its months, for so its readings follow each other', () =>
    expect(layout).toMatchObject({
      delimiter: 'semicolon',
      decimal: 'comma',
      dateOrder: 'dmy',
      temperatureUnit: 'celsius',
      linesBefore: 1,
      columns: ['date', 'time', 'temperature', 'humidity'],
    }));
  it('is read by them', () =>
    expect(readings[0]).toEqual({
      at: new Date('2026-05-04T12:00:00Z'),
      measure: 'temperature',
      value: 18.5,
    }));
});

describe('a table with tabs and no names', () => {
  it('is read by its values, at the offset it names', () => {
    const { layout, readings } = read(tabs);
    expect(layout.columns).toEqual(['moment', 'temperature', 'humidity']);
    expect(readings.map(({ at }) => at.toISOString())).toContain('2026-05-04T12:30:00.000Z');
  });
});

describe('a table that cannot be read', () => {
  it('names each line that is wrong and what stands there', () => {
    const text =
      'date,temp C\n2026-05-04 08:00,18.5\nyesterday,18\n2026-05-04 09:00,warm\n2026-05-04 10:00,400\n2027-01-01 08:00,5\n';
    const { readings, problems } = read(text);
    expect(readings).toHaveLength(1);
    expect(problems).toEqual([
      { line: 3, code: 'no-moment', cell: 'yesterday' },
      { line: 4, code: 'no-number', cell: 'warm' },
      { line: 5, code: 'out-of-range', cell: '400' },
      { line: 6, code: 'future', cell: '2027-01-01 08:00' },
    ]);
  });
  it('of no table at all has no readings and does not fail', () =>
    expect(read('nothing to see here').readings).toEqual([]));
});

describe('a moment', () => {
  it.each([
    ['4/5/2026 8:05', 'dmy', '2026-05-04T12:05:00.000Z'],
    ['4/5/2026 8:05', 'mdy', '2026-04-05T12:05:00.000Z'],
    ['04.05.26 20:05:59', 'dmy', '2026-05-05T00:05:00.000Z'],
    ['2026-05-04 12:00 AM', 'ymd', '2026-05-04T04:00:00.000Z'],
    ['5/4/2026, 12:30 p.m.', 'mdy', '2026-05-04T16:30:00.000Z'],
    ['2026-05-04T08:05:00Z', 'ymd', '2026-05-04T08:05:00.000Z'],
    ['2026-05-04T08:05:00+0200', 'ymd', '2026-05-04T06:05:00.000Z'],
  ] as const)('%s read %s is %s', (text, order, instant) =>
    expect(readMoment(text, order, zone)?.toISOString()).toBe(instant),
  );
  it.each(['31/04/2026 08:00', '2026-05-04', '2026-05-04 25:00', 'noon'])('is not %s', (text) =>
    expect(readMoment(text, text.startsWith('31') ? 'dmy' : 'ymd', zone)).toBeUndefined(),
  );
});

describe('a value', () => {
  it.each([
    ['18.5', 'point', 18.5],
    ['18,5 °C', 'comma', 18.5],
    ['92 %', 'point', 92],
    ['1\u00a0204 ppm', 'point', 1204],
    ['−3', 'point', -3],
  ] as const)('%s with a decimal %s is %d', (cell, decimal, value) =>
    expect(readValue(cell, decimal)).toBe(value),
  );
  it('with the other sign is none, so that 18,5 never becomes 185', () =>
    expect(readValue('18,5', 'point')).toBeUndefined());
});
