import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { hemisphereOf } from '@/lib/growing/hemisphere';
import { quarterIn, seasonOf } from '@/lib/growing/season';

const zoneTable = '/usr/share/zoneinfo/zone.tab';

describe('the season of a day at a place', () => {
  it('is the same quarter on both halves of the earth half a year apart', () => {
    expect(seasonOf('2026-01-15', hemisphereOf('America/New_York'))).toBe('1');
    expect(seasonOf('2026-07-15', hemisphereOf('America/Santiago'))).toBe('1');
    expect(seasonOf('2026-10-01', hemisphereOf('Africa/Johannesburg'))).toBe('2');
  });

  it('leads back to the months of the place', () => {
    expect(quarterIn(seasonOf('2026-11-26', 'south'), 'south')).toBe('4');
    expect(quarterIn(seasonOf('2026-11-26', 'north'), 'north')).toBe('4');
  });

  it('does not know the half of a zone that names no place', () => {
    for (const zone of ['UTC', 'Etc/GMT+3', 'GMT', 'EST']) expect(hemisphereOf(zone)).toBe('unknown');
    expect(hemisphereOf('Europe/Madrid')).toBe('north');
  });

  it('agrees with the latitudes of the time zone database where this machine has it', () => {
    const rows = existsSync(zoneTable) ? readFileSync(zoneTable, 'utf8').split('\n') : [];
    const wrong = rows
      .filter((row) => row !== '' && !row.startsWith('#') && !row.includes('Antarctica/'))
      .map((row) => row.split('\t'))
      .filter(([, place = '', zone = '']) => (hemisphereOf(zone) === 'south') !== place.startsWith('-'));
    expect(wrong).toEqual([]);
  });
});
