import type { RowValues } from '../read-row';
import type { TableField } from '../table-field';

/** How a heading says which harvest of the batch it is, first to fourth. */
const ordinals: readonly (readonly string[])[] = [
  ['1', '1st', 'first', '1a', '1ra', 'primera'],
  ['2', '2nd', 'second', '2a', '2da', 'segunda'],
  ['3', '3rd', 'third', '3a', '3ra', 'tercera'],
  ['4', '4th', 'fourth', '4a', '4ta', 'cuarta'],
];
const nouns = ['flush', 'harvest', 'picking', 'break', 'cosecha', 'oleada', 'brote'];

function headings(words: readonly string[]): { readonly masses: string[]; readonly days: string[] } {
  const named = words.flatMap((word) => nouns.flatMap((noun) => [`${noun} ${word}`, `${word} ${noun}`]));
  return {
    masses: named.flatMap((name) => [
      name,
      `${name} weight`,
      `${name} mass`,
      `peso ${name}`,
      `peso de ${name}`,
    ]),
    days: [
      ...named.flatMap((name) => [`${name} date`, `date ${name}`, `date of ${name}`, `${name} on`]),
      ...named.flatMap((name) => [
        `fecha ${name}`,
        `fecha de ${name}`,
        `fecha de la ${name}`,
        `${name} fecha`,
      ]),
      ...words.flatMap((word) => [`date ${word}`, `fecha ${word}`]),
    ],
  };
}

/** A line can tell of several harvests of its batch, each in columns of its own: by flush, mass and day. */
export const numberedHarvests = ordinals.map((words, index) => {
  const flush = index + 1;
  return { flush, fresh: `fresh${flush}`, weighedOn: `weighedOn${flush}`, ...headings(words) };
});

export const numberedFields: readonly TableField[] = numberedHarvests.flatMap(
  ({ fresh, weighedOn, masses, days }): TableField[] => [
    { name: fresh, target: fresh, cell: 'mass', words: masses },
    {
      ...{ name: weighedOn, target: weighedOn, words: days },
      cell: 'date',
      asked: { with: [fresh], unless: 'weighedOn' },
    },
  ],
);

/** One harvest of a line as a table of harvests would tell it; `named`: how the line calls its mass and day. */
export type LineHarvest = {
  readonly values: RowValues;
  readonly named: { readonly fresh: string; readonly weighedOn: string };
};

const ofOne = ['sold', 'given', 'kept', 'discarded', 'grade', 'note'];

/** The harvests of a line: the one without a number, then the numbered ones in their order. */
export function harvestsOf(values: RowValues, names: readonly string[]): readonly LineHarvest[] {
  const common = [...values].filter(([name]) => names.includes(name));
  const plain: LineHarvest[] = values.has('fresh')
    ? [{ values: new Map(common), named: { fresh: 'fresh', weighedOn: 'weighedOn' } }]
    : [];
  const said = numberedHarvests.filter(({ fresh }) => values.has(fresh));
  const only = said.length === 1 && plain.length === 0;
  const numbered = said.map(({ flush, fresh, weighedOn }, index): LineHarvest => {
    const first = index === 0 && plain.length === 0;
    const own = new Map(common.filter(([name]) => name !== 'weighedOn' && (first || !ofOne.includes(name))));
    // The one day of a line is that of its one harvest, and of none of several.
    const day = values.get(weighedOn) ?? (only ? values.get('weighedOn') : undefined);
    if (day !== undefined) own.set('weighedOn', day);
    own.set('fresh', values.get(fresh)).set('flush', { text: String(flush), unit: null });
    return {
      values: own,
      named: { fresh, weighedOn: only && !values.has(weighedOn) ? 'weighedOn' : weighedOn },
    };
  });
  return [...plain, ...numbered];
}

/** What the sums of a line belong to cannot be told where it tells of several harvests by number and of none without. */
export function halfNumbered(values: RowValues): readonly string[] {
  const orphans = numberedHarvests.filter(
    ({ fresh, weighedOn }) => values.has(weighedOn) && !values.has(fresh),
  );
  const several = numberedHarvests.filter(({ fresh }) => values.has(fresh)).length > 1;
  const placed = ['sold', 'given', 'kept', 'discarded'].some((name) => values.has(name));
  return [
    ...orphans.map(({ fresh }) => fresh),
    ...(several && placed && !values.has('fresh') ? ['fresh'] : []),
  ];
}
