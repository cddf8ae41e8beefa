/**
 * What a site's batches of one method add up to as they count today: all batches; of those that count for contamination,
 * yield, cropped and log life how many, their units and amounts. As columns come from the database; those from `openUnits`
 * on are of logs only.
 */
export const cellColumns = [
  'batches',
  'contaminationBatches',
  'contaminationUnits',
  'contaminated',
  'contaminatedLater',
  'lostClean',
  'yieldBatches',
  'yieldUnits',
  'fresh',
  'yieldOver',
  'freshLater',
  'croppedBatches',
  'croppedUnits',
  'croppedOver',
  'croppedLater',
  'openUnits',
  'openUnitDays',
  'croppedOpenUnits',
  'croppedOpenUnitDays',
  'lifeBatches',
  'lifeUnits',
  'lifeFresh',
  'lifeDry',
] as const;

/** Where each column is within the numbers of a site and method. */
export const cellAt = {
  batches: 0,
  contaminationBatches: 1,
  contaminationUnits: 2,
  contaminated: 3,
  contaminatedLater: 4,
  lostClean: 5,
  yieldBatches: 6,
  yieldUnits: 7,
  fresh: 8,
  yieldOver: 9,
  freshLater: 10,
  croppedBatches: 11,
  croppedUnits: 12,
  croppedOver: 13,
  croppedLater: 14,
  openUnits: 15,
  openUnitDays: 16,
  croppedOpenUnits: 17,
  croppedOpenUnitDays: 18,
  lifeBatches: 19,
  lifeUnits: 20,
  lifeFresh: 21,
  lifeDry: 22,
} as const satisfies Record<(typeof cellColumns)[number], number>;

/** Where the runs to add for contamination, yield, cropped and life begin, after the columns. */
export const runsAt = 23;

/** So many numbers stand for a site and method. */
export const perCell = 27;

/** What one site adds to the sums of a question. */
export type SiteSums = {
  /** Each method once, by its number (`method-codes`); its sums begin at its place times `perCell`. */
  readonly methods: number[];
  /** One list: a network of a thousand sites has ten thousand methods at sites, and lists of their own take twice the time. */
  readonly numbers: number[];
  /** Two numbers a near batch: its code (see `near-codes`) and its units. */
  readonly near: number[];
};

export function noSums(): SiteSums {
  return { methods: [], numbers: [], near: [] };
}

/** The site's own sums, begun where there are none yet. */
export function siteIn(sites: Map<string, SiteSums>, id: string): SiteSums {
  const known = sites.get(id);
  if (known !== undefined) return known;
  const own = noSums();
  sites.set(id, own);
  return own;
}

/** Where the numbers of a method begin, put down as nothing where it is new. */
export function cellIn({ methods, numbers }: SiteSums, method: number): number {
  // A site uses few methods: going through them is faster than a map.
  const known = methods.indexOf(method);
  if (known !== -1) return known * perCell;
  methods.push(method);
  for (let at = 0; at < perCell; at += 1) numbers.push(0);
  return (methods.length - 1) * perCell;
}

export function addTo(numbers: number[], at: number, number: number): void {
  numbers[at] = (numbers[at] ?? 0) + number;
}

/** Adds the sums of the same site. */
export function addSums(into: SiteSums, own: SiteSums): void {
  own.methods.forEach((method, place) => {
    const cell = cellIn(into, method);
    for (let at = 0; at < perCell; at += 1)
      addTo(into.numbers, cell + at, own.numbers[place * perCell + at] ?? 0);
  });
  for (let at = 0; at < own.near.length; at += 1) into.near.push(own.near[at] ?? 0);
}
