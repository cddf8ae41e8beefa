import { addDays } from '@/lib/growing/calendar-date';
import type { BuiltReport } from './build-content';
import type { GroundSum } from './ground';
import { hiddenKey } from './ground';
import type { ToldTable } from './hide-cells';
import type { KnownStretch } from './known-stretches';
import type { ProtectionRule } from './protect-cells';
import { stretchTells } from './stretch-tells';
import { unionOf } from './tells-few';
import { type TablePart, tableParts, toldTable } from './told-tables';

type Keys = ReadonlySet<string>;

function hiddenOf({ table: { total, cells } }: ToldTable): Keys {
  const hidden = cells.filter(({ kind }) => kind === 'protected').map(({ key }) => key);
  return new Set(total.kind === 'shown' ? hidden : []);
}

const meets = (one: Keys, other: Keys) => [...one].some((key) => other.has(key));
const nameOf = (keys: Keys) => [...keys].sort().join('\n');

/**
 * Cells that readers know together only, in one report or another. Where two such groups share a cell, both reports tell
 * what the two groups come to together, so that this is one more.
 */
function groupsOf(tables: readonly ToldTable[]): Keys[] {
  const groups = new Map<string, Keys>();
  const waiting = tables.map(hiddenOf).filter(({ size }) => size > 0);
  for (let group = waiting.pop(); group !== undefined; group = waiting.pop()) {
    if (groups.has(nameOf(group))) continue;
    for (const other of groups.values()) if (meets(group, other)) waiting.push(new Set([...group, ...other]));
    groups.set(nameOf(group), group);
  }
  return [...groups.values()];
}

/** What a table tells of some cells together: undefined where readers cannot work it out. */
function togetherOf(
  { table: { total, cells }, known }: ToldTable,
  keys: Keys,
): ReadonlyMap<string, number> | undefined {
  const isShown = ({ kind }: { readonly kind: string }) => kind === 'shown';
  const within = ({ key }: GroundSum) => keys.has(key) || key === hiddenKey;
  if (total.kind === 'shown' && cells.filter(({ key }) => !keys.has(key)).every(isShown))
    return unionOf(known.filter(within));
  if (cells.filter(({ key }) => keys.has(key)).every(isShown))
    return unionOf(known.filter(({ key }) => keys.has(key)));
  return undefined;
}

function stretchOf(report: BuiltReport, part: TablePart, keys: Keys): KnownStretch[] {
  const told = toldTable(report, part);
  const together = told && togetherOf(told, keys);
  if (!together) return [];
  const { from, to } = report.content;
  return [{ from, until: addDays(to, 1), bySite: Object.fromEntries(together) }];
}

/** Parts of which cells that are hidden, here or in other reports, tell together of few sites beside those over other days. */
export function partsHiddenTogether(
  built: BuiltReport,
  earlier: readonly BuiltReport[],
  rule: ProtectionRule,
): TablePart[] {
  return tableParts.filter((part) => {
    const tables = [built, ...earlier].flatMap((report) => toldTable(report, part) ?? []);
    return groupsOf(tables).some((keys) => {
      const known = earlier.flatMap((report) => stretchOf(report, part, keys));
      return stretchOf(built, part, keys).some((own) => stretchTells(own, known, rule));
    });
  });
}
