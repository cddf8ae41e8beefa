import { otherSpeciesWindow } from '@/lib/growing/assessment-window-defaults';
import type { BatchFacts, DerivedComponent } from '@/lib/growing/derive-batch';
import { componentRoles, moistureSources } from '@/lib/growing/vocabulary';
import { readEntries } from './read-entries';
import type { SumFacts, SumInput } from './sum-input';

/** Rows that the form of a batch can have. */
const mostComponents = 4;
const mostShares = 3;
/** A sum needs no dates; the derivation works out the days of judging from any. */
const anyDay = '2000-01-01';

export type ChosenComponent = DerivedComponent & {
  readonly row: number;
  readonly materialKind: SumFacts['lots'][number]['materialKind'];
};

/** What a batch form holds so far: its materials with what the records say about them, and the rest as typed. */
export type BatchEntries = {
  readonly components: readonly ChosenComponent[];
  readonly facts: BatchFacts;
  readonly shares: readonly { readonly lotId: string; readonly grams: number | null }[];
  readonly entries: ReturnType<typeof readEntries>;
};

function methodOf(facts: SumFacts, treatment: string): string | undefined {
  const [kind, id] = treatment.split(':');
  return kind === 'run' ? facts.runs.find((run) => run.id === id)?.methodId : id;
}

function component(
  facts: SumFacts,
  entries: ReturnType<typeof readEntries>,
  row: number,
): readonly ChosenComponent[] {
  const name = `components.${row}`;
  const lot = facts.lots.find(({ id }) => id === entries.text(`${name}.lotId`));
  const methodId = methodOf(facts, entries.text(`${name}.treatment`));
  const method = facts.methods.find(({ id }) => id === methodId);
  if (!lot || !method) return [];
  return [
    {
      row,
      role: componentRoles.find((one) => one === entries.text(`${name}.role`)) ?? 'substrate',
      grams: entries.mass(`${name}.mass`),
      massStage: entries.text(`${name}.massStage`) === 'before_treatment' ? 'before_treatment' : 'filled',
      materialId: lot.materialId,
      materialKind: lot.materialKind,
      methodId: method.id,
      methodKind: method.kind,
      asReceived: lot.received,
      drainedPercent:
        facts.drained.find((one) => one.materialId === lot.materialId && one.methodId === method.id)
          ?.percent ?? null,
    },
  ];
}

/** Mass filled without the spawn in it, grams; null when that cannot be told. */
function filledGrams(entries: ReturnType<typeof readEntries>, shares: BatchEntries['shares']): number | null {
  const filled = entries.mass('filledMass');
  if (filled === null || entries.text('filledWith') !== 'with_spawn') return filled;
  const spawn = shares.reduce<number | null>(
    (sum, { grams }) => (sum === null || grams === null ? null : sum + grams),
    0,
  );
  return shares.length === 0 || spawn === null || spawn >= filled ? null : filled - spawn;
}

/** Reads a batch form as far as it is filled in; undefined without what the records say about its choices. */
export function batchEntries(input: SumInput): BatchEntries | undefined {
  const { facts } = input;
  if (facts === null) return undefined;
  const entries = readEntries(input);
  const components = Array.from({ length: mostComponents }, (_, row) =>
    component(facts, entries, row),
  ).flat();
  const shares = Array.from({ length: mostShares }, (_, row) => {
    const lotId = entries.text(`spawn.${row}.lotId`);
    return lotId === '' ? [] : [{ lotId, grams: entries.mass(`spawn.${row}.mass`) }];
  }).flat();
  const isLog = facts.containerKind === 'log';
  return {
    entries,
    components,
    shares,
    facts: {
      containerKind: facts.containerKind,
      unitCount: entries.count('unitCount') ?? 1,
      inoculatedOn: anyDay,
      components,
      spawnGrams: shares.map(({ grams }) => grams),
      filledGrams: filledGrams(entries, shares),
      moisture: {
        source: moistureSources.find((one) => one === entries.text('moistureSource')) ?? 'none',
        percent: entries.percent('moisturePercent'),
      },
      log: {
        woodCode: isLog ? entries.count('logWoodCode') : null,
        diameterMm: isLog ? entries.millimetres('logDiameter') : null,
        lengthMm: isLog ? entries.millimetres('logLength') : null,
        greenGrams: isLog ? entries.mass('logGreenMass') : null,
      },
      window: otherSpeciesWindow[facts.containerKind],
    },
  };
}
