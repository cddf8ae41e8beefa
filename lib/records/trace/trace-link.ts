/** What a trace goes through, by the name it has in addresses. */
export const tracedKinds = ['spawn-lot', 'substrate-lot', 'treatment', 'batch', 'weighing'] as const;
export type TracedKind = (typeof tracedKinds)[number];

export type TraceEnd = { readonly kind: TracedKind; readonly id: string };

/** One record that says that something went from one thing into another, earlier to later. */
export type TraceLink = {
  readonly from: TraceEnd;
  readonly to: TraceEnd;
  /** Grams of spawn, material or harvest, or units that went on to a second life; null where nobody weighed. */
  readonly amount: number | null;
  /** Why the link, or the later end of it, does not count any more. */
  readonly voided: string | null;
  /** Whether it does not count only because a site at its ends withdrew its figures as it left. */
  readonly withdrawn: boolean;
};

/** Two ends as one text, to compare links by what they join. */
export const joined = ({ from, to }: TraceLink): string => `${from.kind} ${from.id} ${to.kind} ${to.id}`;
