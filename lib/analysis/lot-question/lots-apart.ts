import type { OriginsAnswer } from './judged-origin';

/** Lots by the name of their maker or source. */
export type LotsOfMaker = Readonly<Record<string, readonly string[]>>;

/** From this share of a maker's lots on, those called out are not single bad lots of it any more. Our choice. */
const tooManyToBeSingle = 0.5;

/**
 * Of each maker or source the lots that are called out themselves, whose losses say nothing about its others: it is judged
 * without them. Where half of its lots or more are called out nothing is left out, since that is what a bad maker looks like.
 */
export function lotsApart(lots: OriginsAnswer, makerOf: ReadonlyMap<string, string>): LotsOfMaker {
  if (lots.kind === 'cannot') return {};
  const all = new Map<string, { readonly called: string[]; judged: number }>();
  for (const { origin, verdict } of lots.origins) {
    const maker = makerOf.get(origin);
    if (maker === undefined) continue;
    const own = all.get(maker) ?? { called: [], judged: 0 };
    own.judged += 1;
    if (verdict === 'loses-more') own.called.push(origin);
    all.set(maker, own);
  }
  return Object.fromEntries(
    [...all].flatMap(([maker, { called, judged }]) =>
      called.length === 0 || called.length >= tooManyToBeSingle * judged ? [] : [[maker, called] as const],
    ),
  );
}
