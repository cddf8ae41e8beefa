import type { Limited, NotAdjusted } from '../adjusted/adjusted-rates';
import type { FigureMethod, FigureUnit, LeftOut, ShownFigure } from '../shown-figure';
import { shownLevel } from '../shown-figure';

const contaminationSource =
  'Binomial mixed model by the Laplace approximation: Bates, Mächler, Bolker & Walker (2015), Journal of Statistical Software 67(1); shares of methods at a site as covariates: Mundlak (1978), Econometrica 46:69-85; limits of differences: Zou & Donner (2008), Statistics in Medicine 27:1693-1702 (citations from memory)';
const yieldSource =
  'Linear mixed model by REML with Satterthwaite degrees of freedom: Bates, Mächler, Bolker & Walker (2015), Journal of Statistical Software 67(1); shares of methods at a site as covariates: Mundlak (1978), Econometrica 46:69-85 (citations from memory)';

export const levelledMethods = {
  contamination: { code: 'binomial-mixed', source: contaminationSource, clusteredBy: 'everything-random' },
  yield: { code: 'linear-mixed', source: yieldSource, clusteredBy: 'everything-random' },
} as const satisfies Record<string, FigureMethod>;

/**
 * An adjusted figure on the ground of raw ones: the same batches, sums and rows left out, another value, interval and
 * method. Of several (the two sides of a difference) the grounds are added up; nothing links to rows then.
 */
export function levelledFigure(
  grounds: readonly ShownFigure[],
  unit: FigureUnit,
  of: keyof typeof levelledMethods,
  value: Limited | NotAdjusted,
  fewLevels: boolean,
): ShownFigure {
  const [first] = grounds;
  if (first === undefined) throw new Error('a figure needs the ground it stands on');
  const n = { batches: 0, units: 0, runs: 0, sites: first.n.sites };
  const sums = { numerator: 0, denominator: 0 };
  for (const ground of grounds) {
    n.batches += ground.n.batches;
    n.units += ground.n.units;
    n.runs += ground.n.runs;
    if (ground.kind === 'cannot') continue;
    sums.numerator += ground.parts.numerator;
    sums.denominator += ground.parts.denominator;
  }
  const about = {
    unit,
    n: grounds.length === 1 ? n : { ...n, sites: Math.max(...grounds.map((ground) => ground.n.sites)) },
    method: levelledMethods[of],
    marks: [
      ...new Set(grounds.flatMap(({ marks }) => marks.filter((mark) => mark !== 'few-groups'))),
      ...(fewLevels ? (['few-levels'] as const) : []),
    ],
    leftOut: addedUp(grounds.flatMap(({ leftOut }) => leftOut)),
    asOf: first.asOf,
    rowsQuery: grounds.length === 1 ? first.rowsQuery : '',
  };
  if (typeof value === 'string') return { ...about, kind: 'cannot', reason: value };
  const { estimate, low, high } = value;
  return {
    ...about,
    parts: { ...sums, unit: of === 'yield' ? 'grams' : 'units' },
    kind: 'figure',
    value: estimate,
    interval: { kind: 'interval', low, high, level: shownLevel, method: about.method.code },
  };
}

function addedUp(lines: readonly LeftOut[]): LeftOut[] {
  const sums = new Map<string, LeftOut>();
  for (const line of lines) {
    const sum = sums.get(line.reason);
    sums.set(line.reason, {
      reason: line.reason,
      batches: line.batches + (sum?.batches ?? 0),
      units: line.units + (sum?.units ?? 0),
    });
  }
  return [...sums.values()].sort((a, b) => a.reason.localeCompare(b.reason));
}
